import type { BirdsWeek, FlockReport, Plan, WeekReport } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface BirdsRoom {
  readonly plan: Plan;
  /** Of the plan that was checked last. */
  readonly flock: FlockReport | undefined;
  readonly system: UnitSystem;
  /** The day ages are counted on. */
  readonly day: string;
  /** The day it is; undefined on a page that does not tell. */
  readonly today: string | undefined;
  readonly typing: TypingController;
  readonly weeks: readonly WeekReport[];
  readonly hotWeeks: readonly WeekReport[];
  /** What all drink, those at loose waterers too; undefined until it is known, and where none drinks elsewhere. */
  readonly everyBird: readonly BirdsWeek[] | undefined;
  /** Whether the weeks are of an older plan. */
  readonly isOld: boolean;
  /** The pen that has just been added. */
  readonly newPen: number | undefined;
  readonly isWide: boolean;
}

/** The day a week begins: its date where a day is known. */
export const weekName = (week: number): string =>
  week === 0 ? "this week" : week === 1 ? "in 1 week" : `in ${week} weeks`;
