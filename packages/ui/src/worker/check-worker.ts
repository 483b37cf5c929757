import { type Checked, checkPlan, FIRST_SAMPLES } from "@headfall/hydraulics";
import { type CheckOutcome, type CheckRequest, COARSE_SAMPLES, type WorkerMessage } from "./protocol.js";

/** Rest between two words about how far the work has come [ms]. */
const TELL_EVERY_MS = 150;

/**
 * Checks plans off the page's own thread, one question after the other. What the first samples say is told while more
 * are taken; with as many as are tried at first, more still for those verdicts that these did not decide.
 */
addEventListener("message", (event: MessageEvent<CheckRequest>) => {
  const { turn, plan, day, samples } = event.data;
  const tell = (message: WorkerMessage) => postMessage(message);
  const start = performance.now();
  const answer = (outcome: CheckOutcome, isCoarse: boolean) =>
    tell({ turn, outcome, isCoarse, ms: performance.now() - start });
  let told = start;
  const progress = (share: number) => {
    if (performance.now() - told < TELL_EVERY_MS) return;
    told = performance.now();
    tell({ turn, share });
  };
  const asked = samples === FIRST_SAMPLES ? {} : { samples };
  const soFar = {
    after: [COARSE_SAMPLES, FIRST_SAMPLES],
    tell: (checked: Checked) => answer({ ok: true, checked }, true),
  };
  answer(checkPlan(plan, { ...asked, day, progress, soFar }), false);
});
