import { type CheckSteps, checkPlan, checkPlanInSteps } from "@headfall/hydraulics";
import type { CheckOutcome, CheckRequest } from "./protocol.js";

type Asked = Omit<CheckRequest, "turn">;

/** A check on the page's own thread: of what is cheap, and of all where no worker can be had. */
export const checkHere = ({ plan, samples, day }: Asked): CheckOutcome => checkPlan(plan, { samples, day });

/** The same in steps, for what else the thread has to do while a hand drags. */
export const checkHereInSteps = ({ plan, samples, day }: Asked): CheckSteps =>
  checkPlanInSteps(plan, { samples, day });
