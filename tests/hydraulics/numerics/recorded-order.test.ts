import { expect, it } from "vitest";
import { digestOf } from "../../../packages/hydraulics/src/numerics/digest.js";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { analyseSymmetric } from "../../../packages/hydraulics/src/numerics/symmetric-pattern.js";
import {
  firstEnds,
  gridPairs,
  type Pairs,
  ringPairs,
  secondEnds,
  wheelPairs,
} from "../../arbitraries/network-pairs.js";

/** Points joined at random, of which some have many neighbours and some the same ones. */
function randomPairs(size: number, count: number, seed: number): Pairs {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const i = random.integerBelow(size);
    const j = Math.floor(size * random.uniform() ** 2);
    return [i, j === i ? (j + 1) % size : j];
  });
}

/** A ring of rings, each point of which hangs on a branch. */
const ringOfRings: Pairs = [
  ...ringPairs(12).map(([i, j]): [number, number] => [10 * i, 10 * j]),
  ...Array.from({ length: 12 }, (_, k) =>
    ringPairs(10).map(([i, j]): [number, number] => [10 * k + i, 10 * k + j]),
  ).flat(),
  ...Array.from({ length: 60 }, (_, k): [number, number] => [120 + k, 2 * k]),
];

/**
 * Recorded, not reckoned: the order in which unknowns are eliminated, and where the factor has its entries. Any order
 * gives the same answer but for its last bits, and no other test would notice one that is a little worse; but those
 * bits, and how long a solve takes, hang on it. Who finds a better order records it.
 */
it.each<[string, number, Pairs, entries: number, digest: string]>([
  ["a grid of side 12", 144, gridPairs(12), 891, "4d67dfc6c3a6be32"],
  ["a grid of side 30", 900, gridPairs(30), 9371, "f9e759d8c47ef03f"],
  ["a wheel of 40 spokes", 41, wheelPairs(40), 117, "6d034b856423c1f1"],
  ["rings of a ring with branches", 180, ringOfRings, 285, "9ceb47da209caffb"],
  ["40 points joined at random", 40, randomPairs(40, 90, 1), 167, "221984da6aad6a53"],
  ["120 points joined at random", 120, randomPairs(120, 300, 2), 870, "2c26dfec638e0175"],
  ["300 points loosely joined at random", 300, randomPairs(300, 420, 3), 1294, "754bae63d5143862"],
  ["100 points joined at random", 100, randomPairs(100, 200, 113), 438, "feb120f078df0a89"],
  ["60 points thickly joined at random", 60, randomPairs(60, 600, 4), 1061, "741c103b887fd189"],
])("analyseSymmetric orders %s as it did", (_, size, pairs, entries, digest) => {
  const { order, factorEntries, workspace } = analyseSymmetric(size, firstEnds(pairs), secondEnds(pairs));
  const { firstColumn, panelRowStarts, panelRows, valueStarts, rowStarts, rowPanels } = workspace;
  expect(factorEntries).toBe(entries);
  const all = [order, firstColumn, panelRowStarts, panelRows, valueStarts, rowStarts, rowPanels];
  expect(digestOf(all.map((one) => one.join()).join("\n"))).toBe(digest);
});
