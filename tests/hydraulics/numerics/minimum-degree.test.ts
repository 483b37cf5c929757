import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderByMinimumDegree } from "../../../packages/hydraulics/src/numerics/minimum-degree.js";
import {
  adjacencyOf,
  chainPairs,
  completePairs,
  countByElimination,
  gridPairs,
  type Pairs,
  ringPairs,
  wheelPairs,
} from "../../arbitraries/network-pairs.js";
import { pairsBelow } from "../../arbitraries/symmetric-system.js";

const orderOf = (size: number, pairs: Pairs) => orderByMinimumDegree(adjacencyOf(size, pairs));
const entriesOf = (size: number, pairs: Pairs) => countByElimination(size, pairs, orderOf(size, pairs));
const isPermutation = (order: Int32Array) => order.toSorted().every((v, k) => v === k);

/**
 * The fewest entries that any order of all leaves, by trying them all: what was eliminated before, in whatever order,
 * is joined through, so that the fewest over a set of vertices hang on the set alone.
 */
function fewestEntries(size: number, pairs: Pairs): number {
  const next = new Array<number>(size).fill(0);
  for (const [i, j] of pairs) {
    next[i]! |= 1 << j;
    next[j]! |= 1 << i;
  }
  /** How many are left that vertex v touches, itself or through those eliminated. */
  const degreeThrough = (gone: number, v: number) => {
    let [seen, found] = [1 << v, 0];
    for (const queue = [v]; queue.length > 0; ) {
      const at = queue.pop()!;
      for (let w = 0; w < size; w++) {
        if (((next[at]! & ~seen) >> w) % 2 === 0) continue;
        seen |= 1 << w;
        if ((gone >> w) % 2 === 1) queue.push(w);
        else found++;
      }
    }
    return found;
  };
  const fewest = new Array<number>(2 ** size).fill(Number.POSITIVE_INFINITY);
  fewest[0] = 0;
  for (let gone = 0; gone < 2 ** size; gone++) {
    for (let v = 0; v < size; v++) {
      if ((gone >> v) % 2 === 1) continue;
      const after = gone | (1 << v);
      fewest[after] = Math.min(fewest[after]!, fewest[gone]! + degreeThrough(gone, v));
    }
  }
  return fewest.at(-1)!;
}

/** Every vertex of one part joined to every one of the other. */
const twoParts = (first: number, second: number): Pairs =>
  Array.from({ length: first * second }, (_, k) => [k % first, first + Math.floor(k / first)]);
const starPairs = (points: number) => twoParts(1, points);
const cubePairs: Pairs = [1, 2, 4].flatMap((bit) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((v) => (v & bit) === 0).map((v): [number, number] => [v, v | bit]),
);

describe("orderByMinimumDegree", () => {
  it.each<[string, number, Pairs]>([
    ["points without pipes", 5, []],
    ["a path", 9, chainPairs(9)],
    ["a star", 9, starPairs(8)],
    ["a ring", 9, ringPairs(9)],
    ["a wheel", 9, wheelPairs(8)],
    ["a complete graph", 7, completePairs(7)],
    ["a grid of side 3", 9, gridPairs(3)],
    ["a cube", 8, cubePairs],
    ["two rings that share a pipe", 8, [...ringPairs(5), [4, 5], [5, 6], [6, 7], [7, 3]]],
  ])("leaves %s as few entries as any order of all", (_, size, pairs) => {
    expect(isPermutation(orderOf(size, pairs))).toBe(true);
    expect(entriesOf(size, pairs)).toBe(fewestEntries(size, pairs));
  });

  // Two points that six others have in common soon count as one: those two that are left of the six have two neighbours
  // each, and so has the pair, which is taken first. By the fewest neighbours of all, 13 entries would do.
  it("leaves two points joined to six others one entry more than the best order, for pairs count as one", () => {
    expect(fewestEntries(8, twoParts(2, 6))).toBe(13);
    expect(entriesOf(8, twoParts(2, 6))).toBe(14);
  });

  it("orders graphs of twins and of many neighbours once through", () => {
    // Each point of a small graph stands for some that have all neighbours in common.
    const graphs = fc.tuple(pairsBelow(8, 16, 6), fc.array(fc.nat(7), { minLength: 20, maxLength: 30 }));
    fc.assert(
      fc.property(graphs, ([pairs, standsFor]) => {
        const blown = standsFor.flatMap((a, i) =>
          standsFor
            .slice(0, i)
            .flatMap(
              (b, j): Pairs =>
                pairs.some(([x, y]) => (x === a && y === b) || (x === b && y === a)) ? [[i, j]] : [],
            ),
        );
        expect(isPermutation(orderOf(standsFor.length, blown))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  /**
   * 0, 1 and 2 have the neighbours 3, 4 and 5 in common, and the seven from 6 on are joined to each other but for 8,
   * which hangs between them. Once 0 has made one of 3, 4 and 5, all that is left of 1 and 2 goes with these, at the
   * same step, while 8 stays behind with a list whose mark, 6 + 7 of 13, is that of nothing.
   */
  it("eliminates those that go with the pivot once, when another that stays has their mark", () => {
    const three = [3, 4, 5];
    const clique = [6, 7, 9, 10, 11, 12];
    const pairs: Pairs = [
      ...[0, 1, 2, 8].flatMap((v) => three.map((w): [number, number] => [v, w])),
      ...clique.flatMap((v, i) => clique.slice(0, i).map((w): [number, number] => [w, v])),
      [6, 8],
      [7, 8],
    ];
    const order = orderOf(13, pairs);
    expect([...order.slice(0, 6)].toSorted()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(isPermutation(order)).toBe(true);
  });
});
