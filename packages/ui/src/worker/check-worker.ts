import { checkPlan, FIRST_SAMPLES } from "@headfall/hydraulics";
import { type CheckOutcome, type CheckRequest, stepsTo, type WorkerMessage } from "./protocol.js";

/** Rest between two words about how far the work has come [ms]. */
const TELL_EVERY_MS = 150;

/** Checks plans off the page's own thread, one question after the other: coarsely at first, then with all samples. */
addEventListener("message", (event: MessageEvent<CheckRequest>) => {
  const { turn, plan, day, samples } = event.data;
  const tell = (message: WorkerMessage) => postMessage(message);
  let told = performance.now();
  const progress = (share: number) => {
    if (performance.now() - told < TELL_EVERY_MS) return;
    told = performance.now();
    tell({ turn, share });
  };
  for (const count of stepsTo(samples)) {
    const { outcome, ms } = timed(() => checkPlan(plan, { samples: count, day, progress }));
    const goesOn = count === samples && samples >= FIRST_SAMPLES && isUndecided(outcome);
    tell({ turn, outcome, isCoarse: count !== samples || goesOn, ms });
    // While that is looked at, more plans are tried for those that it did not decide.
    if (goesOn) tell({ turn, ...timed(() => checkPlan(plan, { day, progress })), isCoarse: false });
  }
});

function timed(check: () => CheckOutcome): { outcome: CheckOutcome; ms: number } {
  const start = performance.now();
  return { outcome: check(), ms: performance.now() - start };
}

/** Whether more samples would tell which side of sure a verdict is on. */
const isUndecided = (outcome: CheckOutcome): boolean =>
  outcome.ok &&
  outcome.checked.drinkers.some(({ certainty }) => certainty.kind !== "notSampled" && !certainty.isDecided);
