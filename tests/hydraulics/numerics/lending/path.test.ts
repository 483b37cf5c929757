import { expect, it } from "vitest";
import {
  type Borrower,
  createBorrower,
} from "../../../../packages/hydraulics/src/numerics/lending/borrower.js";
import type { Lending } from "../../../../packages/hydraulics/src/numerics/lending/lending.js";
import { cheapestPath, type PathPrices } from "../../../../packages/hydraulics/src/numerics/lending/path.js";
import { type Random, randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";

function drawn(random: Random): { borrower: Borrower; prices: PathPrices } {
  const upTo = (least: number, most: number) => least + random.integerBelow(most - least + 1);
  const periods = upTo(1, 3);
  const kinds = upTo(1, 2);
  const list = <T>(count: number, make: () => T): T[] => Array.from({ length: count }, make);
  const lending: Lending = {
    stock: list(kinds, () => upTo(0, 2)),
    lasts: list(periods, () => upTo(1, 4)),
    upkeep: list(kinds, () => upTo(0, 5)),
    asks: [
      list(periods, () => ({
        weight: upTo(0, 3),
        met: 0,
        shares: list(kinds, () => [0, 0.4, 0.6][upTo(0, 2)]!),
      })),
    ],
  };
  const borrower = createBorrower(lending, 0);
  const digits = borrower.kinds.length;
  const prices: PathPrices = {
    handed: upTo(1, 20),
    pieces: list(periods, () => Float64Array.from(list(kinds, () => upTo(0, 6)))),
    short: Float64Array.from(list(periods, () => random.integerBelow(2) / 1000)),
    least: list(periods, () => Uint16Array.from(list(digits, () => (random.uniform() < 0.2 ? 1 : 0)))),
    most: list(periods, () => Uint16Array.from(list(digits, () => upTo(1, 2)))),
    shortMost: Float64Array.from(list(periods, () => (random.uniform() < 0.3 ? 4000 : 1e9))),
  };
  return { borrower, prices };
}

/** What a way costs, infinite where the limits forbid it. */
function costOf(borrower: Borrower, prices: PathPrices, way: readonly number[]): number {
  let cost = 0;
  for (const [t, state] of way.entries()) {
    const short = borrower.short[t]![state]!;
    if (!(short <= prices.shortMost[t]!)) return Number.POSITIVE_INFINITY;
    cost += borrower.upkeep[t]![state]! + prices.short[t]! * short;
    for (const [d, kind] of borrower.kinds.entries()) {
      const count = borrower.counts[d]![state]!;
      if (count < prices.least[t]![d]! || count > prices.most[t]![d]!) return Number.POSITIVE_INFINITY;
      const before = t === 0 ? 0 : borrower.counts[d]![way[t - 1]!]!;
      cost += count * prices.pieces[t]![kind]! + prices.handed * Math.max(0, count - before);
    }
  }
  return cost;
}

function* everyWay(states: number, periods: number): Generator<number[]> {
  if (periods === 0) yield [];
  else
    for (const rest of everyWay(states, periods - 1))
      for (let state = 0; state < states; state += 1) yield [...rest, state];
}

it("cheapestPath costs what trying every way finds, or nothing where the limits leave none", () => {
  let none = 0;
  for (let seed = 1; seed <= 150; seed += 1) {
    const { borrower, prices } = drawn(randomFrom(seed));
    let least = Number.POSITIVE_INFINITY;
    for (const way of everyWay(borrower.states, borrower.short.length))
      least = Math.min(least, costOf(borrower, prices, way));
    const found = cheapestPath(borrower, prices);
    expect([seed, found?.cost.toFixed(9)]).toEqual([
      seed,
      least < Number.POSITIVE_INFINITY ? least.toFixed(9) : undefined,
    ]);
    if (found === undefined) none += 1;
    else expect(costOf(borrower, prices, found.states)).toBeCloseTo(found.cost, 9);
  }
  expect(none).toBeGreaterThan(5);
  expect(none).toBeLessThan(100);
});
