import { improve, takeFrom } from "./improve.js";
import { cheapestPath } from "./path.js";
import type { LendingSearch } from "./searched.js";

/**
 * Makes a way that keeps to the stock from prices at which the borrowers' own ways do not: one borrower after the other
 * goes its cheapest way at these prices with what those before it have left. Where that leaves more short than must be,
 * nothing is made of it.
 *
 * @param begin  which borrower goes first
 */
export function repair(
  search: LendingSearch,
  prices: { readonly pieces: readonly Float64Array[]; readonly short: Float64Array },
  begin: number,
): void {
  const { borrowers, lending, handed, limits } = search;
  const left = lending.lasts.map(() => [...lending.stock]);
  const short = Float64Array.from(search.short);
  const states: (readonly number[])[] = borrowers.map(() => []);
  for (let turn = 0; turn < borrowers.length; turn += 1) {
    const b = (begin + turn) % borrowers.length;
    const borrower = borrowers[b];
    const path = cheapestPath(borrower, {
      handed,
      pieces: prices.pieces,
      short: prices.short,
      least: limits.least[b],
      most: left.map((own) => Uint16Array.from(borrower.kinds, (kind) => own[kind])),
      shortMost: short,
    });
    if (path === undefined) return;
    states[b] = path.states;
    takeFrom(borrower, path.states, left, short);
  }
  improve(search, states);
}
