import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  buildEliminationTree,
  countColumnEntries,
  invertOrder,
  orderChildrenFirst,
} from "../../../packages/hydraulics/src/numerics/elimination-tree.js";
import { adjacencyOf, type Pairs } from "../../arbitraries/network-pairs.js";
import { pairsBelow } from "../../arbitraries/symmetric-system.js";

const orderedGraphs = fc.integer({ min: 1, max: 25 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    pairs: pairsBelow(size, 3 * size),
    order: fc.shuffledSubarray([...Array(size).keys()], { minLength: size, maxLength: size }),
  }),
);

/** Rows below the diagonal of each column of the factor, by elimination on a full table of booleans. */
function columnsOfFactor(size: number, pairs: Pairs, order: number[]): number[][] {
  const place = invertOrder(Int32Array.from(order));
  const filled = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const [i, j] of pairs) {
    filled[place[i]!]![place[j]!] = true;
    filled[place[j]!]![place[i]!] = true;
  }
  return filled.map((row, k) => {
    const below = [...row.keys()].filter((i) => i > k && row[i]);
    for (const a of below) for (const b of below) filled[a]![b] = true;
    return below;
  });
}

describe("buildEliminationTree", () => {
  it("makes the first entry below the diagonal of each column its parent", () => {
    fc.assert(
      fc.property(orderedGraphs, ({ size, pairs, order }) => {
        const parent = buildEliminationTree(adjacencyOf(size, pairs), Int32Array.from(order));
        const expected = columnsOfFactor(size, pairs, order).map((below) => below[0] ?? -1);
        expect([...parent]).toEqual(expected);
      }),
    );
  });
});

describe("countColumnEntries", () => {
  it("counts each column as elimination on a full table does", () => {
    fc.assert(
      fc.property(orderedGraphs, ({ size, pairs, order }) => {
        const graph = adjacencyOf(size, pairs);
        const given = Int32Array.from(order);
        const counts = countColumnEntries(graph, given, buildEliminationTree(graph, given));
        expect([...counts]).toEqual(columnsOfFactor(size, pairs, order).map((below) => below.length));
      }),
    );
  });
});

describe("orderChildrenFirst", () => {
  it("keeps every subtree in one stretch that ends with its root", () => {
    fc.assert(
      fc.property(orderedGraphs, ({ size, pairs, order }) => {
        const parent = buildEliminationTree(adjacencyOf(size, pairs), Int32Array.from(order));
        const visit = orderChildrenFirst(parent);
        const place = invertOrder(visit);
        const lowest = [...place];
        const members = Array<number>(size).fill(1);
        for (const i of visit) {
          expect(place[i]! - lowest[i]!).toBe(members[i]! - 1);
          const above = parent[i]!;
          if (above < 0) continue;
          expect(place[above]!).toBeGreaterThan(place[i]!);
          lowest[above] = Math.min(lowest[above]!, lowest[i]!);
          members[above]! += members[i]!;
        }
      }),
    );
  });
});
