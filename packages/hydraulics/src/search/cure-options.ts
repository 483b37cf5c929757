import type { UnitSystem } from "../units/quantity.js";
import type { CostMeasure } from "./cost.js";
import type { CureKind } from "./cure-kinds.js";

/** What a search for cures may be told. Lengths and heads in SI. */
export interface CureOptions {
  /** What counts. Money where the plan gives any price, else parts. */
  readonly by?: CostMeasure | undefined;
  /** The highest stand to think of [m]; 1.5 where left out (common practice, no source). */
  readonly standMost?: number | undefined;
  /** Heights of a stand that are tried lie this far apart [m]; 5 cm, or 2 in, where left out. */
  readonly standStep?: number | undefined;
  /**
   * Kinds of remedy that are out of the question; none where left out. Without "stand" no stand moves, without "pipe"
   * no run that lies there gets another size, whatever else is done.
   */
  readonly never?: readonly CureKind[] | undefined;
  /** Head that every drinker must have to spare, both against starving and against dripping [m]; 0 where left out. */
  readonly margin?: number | undefined;
  /** Coming weeks in which the cure must hold as well; 8 where birds grow, else none. */
  readonly weeks?: number | undefined;
  /** The day asked about, for ages, where the plan names none. */
  readonly day?: string | undefined;
  /** Whose units new figures of the plan are typed in; metric where left out. */
  readonly system?: UnitSystem | undefined;
  /** How many plans may be judged; the search says how far it came where they do not suffice. */
  readonly mostJudged?: number | undefined;
  /** Told how many plans have been judged, and what is being tried. What it does changes no answer. */
  readonly progress?: ((judged: number, trying: string) => void) | undefined;
  /** Asked before each plan: true ends the search, which then says how far it came. */
  readonly isStopped?: (() => boolean) | undefined;
}

/** Highest stand that is thought of unless the user says so [m]; common practice, no source: higher ones want an engineer. */
export const STAND_MOST = 1.5;
/** Between heights of a stand [m]: what blocks and boards make; common practice, no source. */
export const STAND_STEP: Readonly<Record<UnitSystem, number>> = { metric: 0.05, us: 0.0508 };
/** Weeks ahead that are judged where birds grow. */
export const WEEKS_AHEAD = 8;
/** Plans judged before a search gives up; a few seconds for a line of some dozen drinkers. */
export const MOST_JUDGED = 1600;
