import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { madeReady } from "./long-enough.js";
import { mutatedFrom } from "./mutate-plan.js";
import { drawnPlan, type PlanData, type PlanSize, USUAL_SIZE } from "./plans.js";

const SMALL: PlanSize = { fewestRuns: 1, mostRuns: 4, mostDrinkers: 12 };
/** A hundred to two thousand drinkers. */
const LARGE: PlanSize = { fewestRuns: 12, mostRuns: 40, mostDrinkers: 300 };
const LARGE_ONE_IN = 2000;
const USUAL_ONE_IN = 4;
/** So many hostile documents are made of one plan. */
const FROM_ONE_PLAN = 20;

/** How large the plan of a number is: three in four small, as most plans are; one in two thousand large. */
function sizeOf(number: number): PlanSize {
  if (number % LARGE_ONE_IN === 0) return LARGE;
  return number % USUAL_ONE_IN === 0 ? USUAL_SIZE : SMALL;
}

/** The plan of a number as it is drawn; some of its runs may still be shorter than their ends are apart. */
export const nightPlan = (number: number): PlanData => drawnPlan(number, sizeOf(number));

/** Gives hostile documents by number; the plan that the last one was made of is kept for the next. */
export function createNightDocuments() {
  let last = { number: -1, plan: {} as PlanData };
  return (number: number): unknown => {
    const whole = Math.floor(number / FROM_ONE_PLAN);
    if (last.number !== whole) last = { number: whole, plan: madeReady(nightPlan(whole)).data };
    return mutatedFrom(last.plan, randomFrom(number));
  };
}
