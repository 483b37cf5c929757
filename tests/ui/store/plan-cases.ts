import { buildLine, type Plan } from "@headfall/hydraulics";
import { randomPlan } from "../../arbitraries/plans.js";

const known = new Map<number, Plan>();
/** Plans are drawn from so many, each made once: their making would cost more than what is tried on them. */
export const PLANS = 200;

/** The random plan of a number, which nothing may write to. */
export function planOf(seed: number): Plan {
  const plan = known.get(seed) ?? frozen(randomPlan(seed) as unknown as Plan);
  known.set(seed, plan);
  return plan;
}

/** Whether a plan can be solved. */
export const isSound = (plan: Plan): boolean => buildLine(plan).ok;

/** The value with all in it closed to writing: whoever changes it in place fails at once. */
export function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
