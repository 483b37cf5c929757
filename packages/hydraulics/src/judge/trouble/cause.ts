import type { Expectation } from "./expectation.js";
import type { Severity, Trial } from "./trial.js";

/** What may be wrong. The words, and what to do, are in report/trouble-sentences.ts. */
export const CAUSE_CODES = [
  "asDesigned",
  "waterLow",
  "moreDrunk",
  "lessDrunk",
  "givesLessThanThought",
  "sealsWorn",
  "drinkerStuckOpen",
  "drinkerBlocked",
  "runBlocked",
  "tapShut",
  "tapOpen",
  "jointApart",
  "airLocked",
  "sagHoldsAir",
  "ventBlocked",
  "lidOff",
  "floatStuckOpen",
  "floatStuckShut",
  "cupTipped",
  "feedStuckOpen",
  "feedStuckShut",
  "regulatorGone",
  "regulatorShut",
  "oneWayShut",
  "notRefilled",
  "somethingElse",
] as const;
/** A cause of trouble, told apart. */
export type CauseCode = (typeof CAUSE_CODES)[number];

/** What sort of place a cause sits at. */
export type CausePlace = "drinker" | "group" | "run" | "point" | "source" | "pen" | "line";

/** One thing that may be wrong, and where. */
export interface Cause {
  readonly code: CauseCode;
  readonly at: CausePlace;
  /** Name of the place; empty for the line as a whole. */
  readonly id: string;
  /** Position among its like in the line. */
  readonly index: number;
}

/** One supposed state of the line: a cause at one severity. */
export interface Supposed {
  /** Share of its cause; those of a cause add up to 1. */
  readonly weight: number;
  readonly severity: Severity;
  readonly trial: Trial;
  readonly expectation: Expectation;
}

/** A cause with all its states, before anything was looked at. */
export interface Candidate {
  readonly cause: Cause;
  /** Weight against the other causes, on any scale. */
  readonly prior: number;
  /** None for a cause that says nothing of what is seen. */
  readonly states: readonly Supposed[];
}

/**
 * How often each kind of thing goes wrong, against the others: all common practice, no source, and gentle: none of those
 * that are tried is more than six times as likely as another. Of a kind that has n places each gets 1/sqrt(n) of it: more places are more chances, but
 * nobody counts every one.
 */
export const PRIORS: Readonly<Record<CauseCode, number>> = {
  asDesigned: 3,
  waterLow: 4,
  moreDrunk: 5,
  lessDrunk: 3,
  givesLessThanThought: 1.5,
  sealsWorn: 1,
  drinkerStuckOpen: 6,
  drinkerBlocked: 6,
  runBlocked: 6,
  tapShut: 3,
  tapOpen: 1,
  jointApart: 3,
  airLocked: 4,
  sagHoldsAir: 2,
  ventBlocked: 3,
  lidOff: 2,
  floatStuckOpen: 2,
  floatStuckShut: 2,
  cupTipped: 2,
  feedStuckOpen: 2,
  feedStuckShut: 2,
  regulatorGone: 2,
  regulatorShut: 3,
  oneWayShut: 1,
  notRefilled: 2,
  somethingElse: 0.5,
};

/**
 * The same for the design itself, where the plan's own check finds it wanting: more than any one kind, but less than all
 * others together, since what a plan does of itself it has done from its first day.
 */
export const FAULTY_PLAN = 20;
