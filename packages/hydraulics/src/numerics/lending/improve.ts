import type { Borrower } from "./borrower.js";
import { cheapestPath } from "./path.js";
import type { LendingSearch } from "./searched.js";

/** Rounds in which each borrower looks for a better way with what the others leave. */
const MOST_ROUNDS = 8;

/**
 * Makes a way of lending better, borrower by borrower, each with what the others leave, until none finds anything; kept
 * where it is better than the best so far.
 *
 * @param from  by borrower, by period: states that keep to the stock and leave no more short than must be
 */
export function improve(search: LendingSearch, from: readonly (readonly number[])[]): void {
  const { borrowers, lending } = search;
  const states = [...from];
  const free = new Float64Array(lending.stock.length);
  const prices = lending.lasts.map(() => free);
  const unpriced = new Float64Array(lending.lasts.length);
  let value = costOfWay(search, states);
  for (let before = Number.POSITIVE_INFINITY, round = 0; value < before && round < MOST_ROUNDS; round += 1) {
    before = value;
    for (const [b, borrower] of borrowers.entries()) {
      const left = leftBy(search, states, b);
      const path = cheapestPath(borrower, {
        handed: search.handed,
        pieces: prices,
        short: unpriced,
        least: search.limits.least[b],
        most: left.most,
        shortMost: left.short,
      });
      states[b] = path?.states ?? states[b];
    }
    value = costOfWay(search, states);
  }
  if (value < search.best.value) search.best = { value, states };
}

/** By period, what the others leave to one borrower: pieces, by digit; and what may be left short. */
function leftBy(
  { borrowers, lending, short }: LendingSearch,
  states: readonly (readonly number[])[],
  own: number,
): { most: Uint16Array[]; short: Float64Array } {
  const left = lending.lasts.map(() => [...lending.stock]);
  const allowed = Float64Array.from(short);
  for (const [b, borrower] of borrowers.entries())
    if (b !== own) takeFrom(borrower, states[b], left, allowed);
  return {
    most: left.map((pieces) => Uint16Array.from(borrowers[own].kinds, (kind) => pieces[kind])),
    short: allowed,
  };
}

/** Takes what one borrower has off what is left, period by period: pieces by kind, and what may be left short. */
export function takeFrom(
  { kinds, counts, short: theirs }: Borrower,
  states: readonly number[],
  left: readonly number[][],
  short: Float64Array,
): void {
  for (const [t, state] of states.entries()) {
    short[t] -= theirs[t][state];
    for (const [d, kind] of kinds.entries()) left[t][kind] -= counts[d][state];
  }
}

/** What a way costs, what is short left aside. */
export function costOfWay(
  { borrowers, handed }: LendingSearch,
  states: readonly (readonly number[])[],
): number {
  let value = 0;
  for (const [b, { counts, upkeep }] of borrowers.entries())
    states[b].forEach((state, t) => {
      value += upkeep[t][state];
      for (const of of counts)
        value += handed * Math.max(0, of[state] - (t === 0 ? 0 : of[states[b][t - 1]]));
    });
  return value;
}
