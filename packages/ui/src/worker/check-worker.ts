import { checkPlan } from "@headfall/hydraulics";
import { type CheckRequest, stepsTo, type WorkerMessage } from "./protocol.js";

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
    tell({ turn, outcome: checkPlan(plan, { samples: count, day, progress }), isCoarse: count !== samples });
  }
});
