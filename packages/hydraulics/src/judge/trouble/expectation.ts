import type { Place } from "./signs.js";

/** What one supposed state of the line would show: plain figures from the solver, in SI. */
export interface Expectation {
  /** By drinker: what it passes when worked besides those that are at work anyway [m3/s]. */
  readonly flow: Float64Array;
  /** By drinker: share by which its idle head passes the limits within which it holds; above 0 it drips; Infinity: it runs. */
  readonly overSeal: Float64Array;
  /** Where water runs to the ground with nobody drinking, and how much [m3/s]. */
  readonly leaks: readonly Leak[];
  /** By source. */
  readonly sources: readonly ExpectedSource[];
  /** By run: what comes out of its far end, opened, against what should [-]; NaN where there is no such end to open. */
  readonly endShare: (run: number) => number;
  /** By source: flow of the drinker that gains most with the lid off, against that with it on [-]. */
  readonly lidGain: (source: number) => number;
}

export interface Leak {
  readonly at: Place;
  readonly index: number;
  /** Run on which it lies; -1 for a source's own. */
  readonly run: number;
  readonly flow: number;
}

export interface ExpectedSource {
  /** Fall of the level from dark to light [m], and that of the plan as it should be. */
  readonly nightFall: number;
  readonly nightUsual: number;
  /** Fall in a whole day, and that of the plan as it should be [m]. */
  readonly dayFall: number;
  readonly dayUsual: number;
  /** From the level it is thought to stand at until it gives no more [s]. */
  readonly timeToEmpty: number;
  /** How far below where it is thought to stand its water stands [m]; Infinity where it is empty. */
  readonly below: number;
  /** Whether what fills it hides every fall. */
  readonly isKeptFull: boolean;
}

/** What every expectation is held against: the plan as it should be. */
export interface Usual {
  /** By drinker: flow when worked, as it should be, and flow needed [m3/s]. */
  readonly flow: Float64Array;
  readonly need: Float64Array;
  /** How long ago each source was last seen with water in it [s]. */
  readonly lastSeen: number;
}
