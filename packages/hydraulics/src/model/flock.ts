import type { BirdKind } from "../tables/bird-types.js";

/**
 * Who drinks from the line, on one day: plain SI data, as `line.ts` is for the pipes. Never changed after `buildFlock`
 * made it; another week or a hot spell is a new `Flock` (see `flock-on.ts`).
 */
export interface Flock {
  /** Days since 1970-01-01; undefined when the plan names no day and none was asked for. */
  readonly day: number | undefined;
  readonly pens: readonly Pen[];
  readonly weather: Weather;
}

export interface Pen {
  readonly id: string;
  /** Position in the plan's list of pens. */
  readonly index: number;
  readonly batches: readonly Batch[];
  /** Drinkers of the line they reach, by index. */
  readonly drinkers: readonly number[];
}

/** Birds of one kind and age. */
export interface Batch {
  readonly kind: BirdKind;
  /** Position in the pen's list of birds. */
  readonly index: number;
  readonly count: number;
  /** Age on the flock's day [days]; below 0 they have not come yet and drink nothing. */
  readonly ageDays: number;
  /** Eggs a day per bird, from 0 to 1. */
  readonly lay: number;
}

/** The air of a day [°C], and its light [s, s after midnight]. */
export interface Weather {
  readonly high: number;
  readonly low: number;
  readonly light: number;
  readonly dawn: number;
  readonly hotSpell: { readonly high: number; readonly low: number; readonly days: number } | undefined;
}
