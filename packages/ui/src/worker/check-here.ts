import { checkPlan } from "@headfall/hydraulics";
import type { CheckOutcome, CheckRequest } from "./protocol.js";

/** A check on the page's own thread: of what is cheap, and of all where no worker can be had. */
export const checkHere = ({ plan, samples, day }: Omit<CheckRequest, "turn">): CheckOutcome =>
  checkPlan(plan, { samples, day });
