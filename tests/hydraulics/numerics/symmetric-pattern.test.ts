import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyseSymmetric } from "../../../packages/hydraulics/src/numerics/symmetric-pattern.js";
import {
  chainPairs,
  completePairs,
  countByElimination,
  firstEnds,
  gridPairs,
  type Pairs,
  ringPairs,
  secondEnds,
} from "../../arbitraries/network-pairs.js";
import { pairsBelow, treePairs } from "../../arbitraries/symmetric-system.js";

const analyse = (size: number, pairs: Pairs) => analyseSymmetric(size, firstEnds(pairs), secondEnds(pairs));
const graphs = fc
  .integer({ min: 0, max: 40 })
  .chain((size) => fc.tuple(fc.constant(size), pairsBelow(size, 3 * size)));

describe("analyseSymmetric", () => {
  it("counts the entries of the factor as elimination played out on sets does", () => {
    fc.assert(
      fc.property(graphs, ([size, pairs]) => {
        const pattern = analyse(size, pairs);
        expect(pattern.factorEntries).toBe(countByElimination(size, pairs, pattern.order));
      }),
    );
  });

  it("counts distinct pairs once, whichever way round they are given", () => {
    fc.assert(
      fc.property(graphs, ([size, pairs]) => {
        const distinct = new Set(pairs.map(([i, j]) => `${Math.min(i, j)} ${Math.max(i, j)}`)).size;
        expect(analyse(size, pairs).matrixEntries).toBe(distinct);
        expect(analyse(size, pairs).pairCount).toBe(pairs.length);
      }),
    );
  });

  it("finds no fill in a tree, and calls it a forest", () => {
    const trees = fc
      .integer({ min: 1, max: 60 })
      .chain((size) => fc.tuple(fc.constant(size), treePairs(size)));
    fc.assert(
      fc.property(trees, ([size, pairs]) => {
        expect(analyse(size, pairs)).toMatchObject({ factorEntries: size - 1, pieces: 1, isForest: true });
      }),
    );
  });

  // A panel of the whole chain would hold about n² places. Only the last two columns share a panel: its one entry
  // is stored as a row of two.
  it("makes room for the factor's own entries and one place more on a chain of 5,000", () => {
    expect(analyse(5000, chainPairs(5000)).workspace.values).toHaveLength(4999 + 1);
  });

  // A panel stores its triangle as a square, at most twice the entries; a tenth of those may be zeros: 2 / 0.9.
  it("makes room for at most 2 / 0.9 of the factor's own entries", () => {
    const isModest = (size: number, pairs: Pairs) => {
      const { workspace, factorEntries } = analyse(size, pairs);
      return workspace.values.length <= (2 / 0.9) * factorEntries;
    };
    expect(isModest(3600, gridPairs(60))).toBe(true);
    expect(isModest(90, completePairs(90))).toBe(true);
    fc.assert(fc.property(graphs, ([size, pairs]) => isModest(size, pairs)));
  });

  it.each<[string, number, Pairs, number, boolean]>([
    ["nothing", 0, [], 0, true],
    ["one unknown", 1, [], 1, true],
    ["five unknowns apart", 5, [], 5, true],
    ["two chains", 7, [...chainPairs(4), [4, 5], [5, 6]], 2, true],
    [
      "a pair given three times",
      2,
      [
        [0, 1],
        [1, 0],
        [0, 1],
      ],
      1,
      true,
    ],
    ["a ring and a point apart", 6, ringPairs(5), 2, false],
    ["a grid", 9, gridPairs(3), 1, false],
    ["a complete graph", 8, completePairs(8), 1, false],
  ])("counts the pieces of %s", (_, size, pairs, pieces, isForest) => {
    expect(analyse(size, pairs)).toMatchObject({ pieces, isForest });
  });

  it("gives the same order for the same pairs", () => {
    expect(analyse(400, gridPairs(20)).order).toEqual(analyse(400, gridPairs(20)).order);
  });

  it.each<[string, number, number[], number[], string]>([
    ["a size below zero", -1, [], [], "analyseSymmetric: size is -1; it must be a whole number from 0 up"],
    ["a broken size", 1.5, [], [], "analyseSymmetric: size is 1.5; it must be a whole number from 0 up"],
    [
      "arrays of two lengths",
      3,
      [0, 1],
      [1],
      "analyseSymmetric: columns has 1 entries; it must have as many as rows, 2",
    ],
    [
      "a pair outside",
      3,
      [0, 1],
      [1, 3],
      "analyseSymmetric: pair 1 is (1, 3); it must be two different numbers from 0 to 2",
    ],
    [
      "a pair whose first is outside",
      3,
      [3],
      [1],
      "analyseSymmetric: pair 0 is (3, 1); it must be two different numbers from 0 to 2",
    ],
    [
      "a pair whose second is below zero",
      3,
      [1],
      [-1],
      "analyseSymmetric: pair 0 is (1, -1); it must be two different numbers from 0 to 2",
    ],
    [
      "a pair below zero",
      3,
      [-1],
      [1],
      "analyseSymmetric: pair 0 is (-1, 1); it must be two different numbers from 0 to 2",
    ],
    [
      "a pair on the diagonal",
      3,
      [2],
      [2],
      "analyseSymmetric: pair 0 is (2, 2); it must be two different numbers from 0 to 2",
    ],
  ])("refuses %s", (_, size, rows, columns, message) => {
    expect(() => analyseSymmetric(size, Int32Array.from(rows), Int32Array.from(columns))).toThrow(
      new RangeError(message),
    );
  });
});
