import { expect, it } from "vitest";
import { leastToAdd } from "../../packages/hydraulics/src/numerics/lending/least-to-add.js";
import {
  type Ask,
  type Lending,
  mayHave,
  shortOf,
} from "../../packages/hydraulics/src/numerics/lending/lending.js";
import { type Random, randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { cases } from "../runner/cases.js";

/** More of them: `HEADFALL_CASES=3000 npx vitest run --config tests/vitest.config.ts --project node tests/oracle/least-to-add.test.ts`. */
const CASES = cases(200).numRuns;
/** No ask needs more than this of any kind, so that no purchase needs more than twice it. */
const MOST = 3;

function smallLending(random: Random): { lending: Lending; costs: number[] } {
  const upTo = (least: number, most: number) => least + random.integerBelow(most - least + 1);
  const periods = upTo(1, 3);
  const ask = (): Ask => ({
    weight: random.uniform() < 0.2 ? 0 : upTo(1, 30),
    met: random.uniform() < 0.7 ? 0 : random.uniform(),
    shares: [0, 1].map(() => (random.uniform() < 0.25 ? 0 : 1 / upTo(1, MOST))),
  });
  return {
    lending: {
      stock: [upTo(0, 2), upTo(0, 2)],
      lasts: Array.from({ length: periods }, () => upTo(1, 7)),
      upkeep: [0, 0],
      asks: [0, 1].map(() => Array.from({ length: periods }, ask)),
    },
    costs: [upTo(1, 5), upTo(1, 5)],
  };
}

/** The least short of a period with such a stock, every dealing tried. */
function leastByForce(
  { asks, lasts }: Lending,
  [first, second]: readonly [number, number],
  t: number,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let a = 0; a <= first; a += 1)
    for (let b = 0; b <= second; b += 1) {
      const dealing = [
        [a, b],
        [first - a, second - b],
      ];
      // What may not be there is left on the shelf.
      const short = asks.reduce((sum, own, who) => {
        const has = dealing[who]!.map((count, k) => (mayHave(own[t]!, k) ? count : 0));
        return sum + shortOf(own[t]!, lasts[t]!, has);
      }, 0);
      least = Math.min(least, short);
    }
  return least;
}

function byForce(lending: Lending, costs: readonly number[]): number {
  const [one, other] = [lending.stock[0]!, lending.stock[1]!];
  const never = lending.lasts.map((_, t) => leastByForce(lending, [one + 2 * MOST, other + 2 * MOST], t));
  let best = Number.POSITIVE_INFINITY;
  for (let a = 0; a <= 2 * MOST; a += 1)
    for (let b = 0; b <= 2 * MOST; b += 1) {
      const cost = a * costs[0]! + b * costs[1]!;
      if (cost >= best) continue;
      if (never.every((short, t) => leastByForce(lending, [one + a, other + b], t) <= short)) best = cost;
    }
  return best;
}

it("leastToAdd finds what trying every purchase finds, at the same cost, on random small stocks", () => {
  let bought = 0;
  for (let seed = 1; seed <= CASES; seed += 1) {
    const { lending, costs } = smallLending(randomFrom(seed));
    const found = leastToAdd(lending, costs);
    expect([seed, found?.cost, found?.bound]).toEqual([seed, byForce(lending, costs), found?.cost]);
    expect([seed, found?.pieces.reduce((sum, count, k) => sum + count * costs[k]!, 0)]).toEqual([
      seed,
      found?.cost,
    ]);
    if ((found?.cost ?? 0) > 0) bought += 1;
  }
  expect(bought).toBeGreaterThan(CASES / 4);
}, 600_000);
