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
  /** Where birds come, move or go in time: every batch with its stays, for other days to be made from. */
  readonly roster?: readonly RosterEntry[];
}

/** One batch of a plan and where it is when. */
export interface RosterEntry {
  /** As old as it is on the flock's day, wherever it is then. */
  readonly batch: Batch;
  /** In time order, without gaps; days since 1970-01-01. */
  readonly stays: readonly Stay[];
}

/** A batch in a pen from one day to another; undefined where it was there before, or stays on. */
export interface Stay {
  /** Position in the plan's list of pens, and in that pen's list of batches. */
  readonly pen: number;
  readonly place: number;
  /** First day there, and first day no longer there; undefined where there is no end. */
  readonly from: number | undefined;
  readonly to: number | undefined;
}

/** A pen of the flock: its batches, and the drinkers of the line it reaches, by index. */
export interface Pen {
  readonly id: string;
  /** Position in the plan's list of pens. */
  readonly index: number;
  /** Those the plan gives it, then those that move in; they keep their places in this list on other days. */
  readonly batches: readonly Batch[];
  /** Drinkers of the line they reach, by index. */
  readonly drinkers: readonly number[];
  /** Where only the line is asked about: they drink from loose waterers, and count for nothing here. */
  readonly isElsewhere?: true;
}

/** Birds of one kind and age. */
export interface Batch {
  readonly kind: BirdKind;
  /** Position in the pen's list of birds; those that move in come after it. */
  readonly index: number;
  /** 0 once they have left, and in a pen they have yet to move to. */
  readonly count: number;
  /** Age on the flock's day [days]; below 0 they have not come yet and drink nothing. */
  readonly ageDays: number;
  /** Eggs a day per bird, from 0 to 1. */
  readonly lay: number;
}

/** Whether birds of a batch are in the pen on the flock's day. */
export const isThere = ({ ageDays, count }: Pick<Batch, "ageDays" | "count">): boolean =>
  ageDays >= 0 && count > 0;

/** The air of a day [°C], and its light [s, s after midnight]. */
export interface Weather {
  readonly high: number;
  readonly low: number;
  readonly light: number;
  readonly dawn: number;
  readonly hotSpell: { readonly high: number; readonly low: number; readonly days: number } | undefined;
}
