import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import type { Problem } from "../../packages/hydraulics/src/document/problem.js";
import {
  birdsForPlan,
  buildSheetOf,
  carryingOf,
  compareSizes,
  dailyMark,
  findCures,
  frostOfPlan,
  goingAway,
  heatOfPlan,
  howLongItLasts,
  judgeWeeks,
  mishapsOfPlan,
  simulateDay,
  yardForPlan,
  yearForPlan,
} from "../../packages/hydraulics/src/index.js";

/** The day on which hostile and random plans are asked about. */
export const ASKED_DAY = "2026-07-04";

export type Answer =
  | ({ readonly ok: true } & object)
  | { readonly ok: false; readonly problems: readonly Problem[] };

export type Questions = Readonly<Record<string, (plan: Plan) => Answer>>;

const day = ASKED_DAY;

/** Every question about birds and time, small. */
export const TIME_QUESTIONS: Questions = {
  birdsForPlan: (plan) => birdsForPlan(plan, { day, weeks: 2 }),
  judgeWeeks: (plan) => judgeWeeks(plan, { day, weeks: 1 }),
  howLongItLasts: (plan) => howLongItLasts(plan, { day }),
  goingAway: (plan) => goingAway(plan, { day, days: 3 }),
  dailyMark: (plan) => dailyMark(plan, { day }),
  carryingOf: (plan) => carryingOf(plan, { day, weeks: 1 }),
  simulateDay: (plan) => simulateDay(plan, { day }),
};

/** The other questions; small too, and still what takes longest. */
export const LONG_QUESTIONS: Questions = {
  frostOfPlan: (plan) => frostOfPlan(plan),
  heatOfPlan: (plan) => heatOfPlan(plan, { day }),
  yardForPlan: (plan) => yardForPlan(plan, { day }),
  yearForPlan: (plan) => yearForPlan(plan, { day, weeks: 10 }),
  compareSizes: (plan) => compareSizes(plan),
  buildSheetOf: (plan) => buildSheetOf(plan, { day, samples: 8, weeks: 1 }),
  mishapsOfPlan: (plan) => mishapsOfPlan(plan, { day, guardsFor: 2 }),
  findCures: (plan) => findCures(plan, { mostJudged: 8, weeks: 0, standStep: 0.3, day }),
};
