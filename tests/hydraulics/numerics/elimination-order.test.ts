import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderElimination } from "../../../packages/hydraulics/src/numerics/elimination-order.js";
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
import { pairsBelow, treePairs } from "../../arbitraries/symmetric-system.js";

const orderOf = (size: number, pairs: Pairs) => orderElimination(adjacencyOf(size, pairs));
const entriesOf = (size: number, pairs: Pairs) => countByElimination(size, pairs, orderOf(size, pairs));
const isPermutation = (order: Int32Array, size: number) =>
  order.length === size && order.toSorted().every((v, k) => v === k);

describe("orderElimination", () => {
  it("orders every graph once through: a permutation", () => {
    const graphs = fc
      .integer({ min: 0, max: 60 })
      .chain((size) => fc.tuple(fc.constant(size), pairsBelow(size, 4 * size)));
    fc.assert(
      fc.property(graphs, ([size, pairs]) => isPermutation(orderOf(size, pairs), size)),
      { numRuns: 500 },
    );
  });

  it("leaves a tree without fill", () => {
    const trees = fc
      .integer({ min: 1, max: 60 })
      .chain((size) => fc.tuple(fc.constant(size), treePairs(size)));
    fc.assert(fc.property(trees, ([size, pairs]) => entriesOf(size, pairs) === size - 1));
  });

  // Any elimination of a ring adds the n - 3 chords of a triangulated polygon, and no order adds fewer.
  it.each([3, 4, 5, 17, 200])("fills a ring of %i with its n - 3 chords", (size) => {
    expect(entriesOf(size, ringPairs(size))).toBe(size + (size - 3));
  });

  // The hub already touches every rim point, so the rim's own n - 3 chords are all the fill there is.
  it.each([4, 16, 17, 300, 5000])("fills a wheel of %i spokes with the n - 3 chords of its rim", (size) => {
    expect(entriesOf(size + 1, wheelPairs(size))).toBe(2 * size + (size - 3));
  });

  it("adds nothing to a complete graph, nor to two joined at a point", () => {
    const first = completePairs(9);
    const second = completePairs(6).map(([i, j]): [number, number] => [i + 8, j + 8]);
    expect(entriesOf(9, first)).toBe(36);
    expect(entriesOf(14, [...first, ...second])).toBe(36 + 15);
  });

  it("fills a ring with branches hanging on it as the ring alone", () => {
    const branches = Array.from({ length: 40 }, (_, k): [number, number] => [20 + k, k]);
    expect(entriesOf(60, [...ringPairs(20), ...branches])).toBe(20 + 17 + 40);
  });

  it("stays near the best order of all on every graph of six points tried", () => {
    const orders = permutationsOf([0, 1, 2, 3, 4, 5]);
    fc.assert(
      fc.property(pairsBelow(6, 12), (pairs) => {
        const best = Math.min(...orders.map((order) => countByElimination(6, pairs, order)));
        return entriesOf(6, pairs) <= best + 1;
      }),
      { numRuns: 60 },
    );
  });

  // Row by row, a grid of side m has a band of m: about m³ entries. Nested dissection brings it to order m² log m
  // (George 1973, from memory); an order that is any good is far below the band.
  it.each([
    [20, 0.5],
    [50, 0.35],
    [100, 0.22],
  ])("keeps a grid of side %i below %f of its band", (side, share) => {
    expect(entriesOf(side * side, gridPairs(side))).toBeLessThan(share * side ** 3);
  });

  it("does not explode on a grid of 99,856 points", () => {
    const graph = adjacencyOf(316 * 316, gridPairs(316));
    const order = orderElimination(graph);
    expect(isPermutation(order, graph.size)).toBe(true);
  });

  it("gives a hub in 90,000 loops hardly any fill, and a chain none", () => {
    // Spokes, rim, and one entry of fill for each rim point taken but the last three: 3 n - 3. (How long it takes is for the bench.)
    expect(entriesOf(90_001, wheelPairs(90_000))).toBe(3 * 90_000 - 3);
    expect(entriesOf(90_000, chainPairs(90_000))).toBe(89_999);
  });

  it("orders graphs of 300 points once through, long enough that the lists are closed up on the way", () => {
    fc.assert(
      fc.property(pairsBelow(300, 900, 400), (pairs) => isPermutation(orderOf(300, pairs), 300)),
      { numRuns: 30, endOnFailure: true },
    );
  });
});

function permutationsOf(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((head) =>
    permutationsOf(items.filter((v) => v !== head)).map((tail) => [head, ...tail]),
  );
}
