import type { Borrower } from "./borrower.js";
import type { LeastShort } from "./least-short.js";
import type { Lending } from "./lending.js";

/** By borrower, by period, by digit: least and most pieces. */
export interface Limits {
  readonly least: readonly (readonly Uint16Array[])[];
  readonly most: readonly (readonly Uint16Array[])[];
}

/** What a search for the best way of lending goes by, and the best way so far. */
export interface LendingSearch {
  readonly lending: Lending;
  readonly borrowers: readonly Borrower[];
  /** By period: what is left short, no more. */
  readonly short: Float64Array;
  /** Price of a piece handed out against a unit of upkeep: all upkeep there can be never outweighs one. */
  readonly handed: number;
  /** Of all ways. */
  readonly limits: Limits;
  best: { readonly value: number; readonly states: readonly (readonly number[])[] };
}

export function createSearch(
  lending: Lending,
  borrowers: readonly Borrower[],
  least: readonly LeastShort[],
): LendingSearch {
  const longest = lending.lasts.reduce((sum, lasts) => sum + lasts, 0);
  const dearest = lending.stock.reduce((sum, pieces, k) => sum + pieces * lending.upkeep[k], 0);
  const forEach = (value: (most: number) => number) =>
    borrowers.map(({ most }) => lending.lasts.map(() => Uint16Array.from(most, value)));
  return {
    lending,
    borrowers,
    short: Float64Array.from(least, ({ short }) => short),
    handed: 1 + longest * dearest,
    limits: { least: forEach(() => 0), most: forEach((most) => most) },
    best: { value: Number.POSITIVE_INFINITY, states: [] },
  };
}

/** Handed and upkeep of a value that has both in it. */
export function weighted({ handed }: LendingSearch, value: number): { handed: number; upkeep: number } {
  const pieces = Math.floor(value / handed);
  return { handed: pieces, upkeep: value - pieces * handed };
}
