import { checkPlan } from "@headfall/hydraulics";
import type { CheckAnswer, CheckRequest } from "./protocol.js";

/** Checks plans off the page's own thread, one question after the other. */
addEventListener("message", (event: MessageEvent<CheckRequest>) => {
  const { turn, plan, samples } = event.data;
  const answer: CheckAnswer = { turn, outcome: checkPlan(plan, { samples }) };
  postMessage(answer);
});
