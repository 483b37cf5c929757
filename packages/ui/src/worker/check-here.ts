import { checkPlan } from "@headfall/hydraulics";
import type { CheckOutcome, CheckRequest } from "./protocol.js";

/** A check on the page's own thread, where no worker can be had. */
export const checkHere = ({ plan, samples, day }: CheckRequest): CheckOutcome =>
  checkPlan(plan, { samples, day });
