import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  absorbMember,
  buildQuotientGraph,
  deferHubs,
  ELEMENT,
  enlist,
  GONE,
  makeRoom,
  type QuotientGraph,
  unlist,
} from "../../../packages/hydraulics/src/numerics/quotient-graph.js";
import { adjacencyOf, chainPairs, completePairs, type Pairs } from "../../arbitraries/network-pairs.js";

const graphOf = (size: number, pairs: Pairs) => buildQuotientGraph(adjacencyOf(size, pairs));
const listOf = ({ lists, start, length }: QuotientGraph, v: number) => [
  ...lists.slice(start[v], start[v]! + length[v]!),
];

/** Those listed at a degree, read along the chain, which has to hold backwards as well. */
function listedAt({ degreeHead, degreeNext, degreePrevious }: QuotientGraph, degree: number): number[] {
  const found: number[] = [];
  for (let v = degreeHead[degree]!; v >= 0; v = degreeNext[v]!) {
    const before = degreePrevious[v]!;
    if (found.includes(v) || (found.at(-1) ?? -1) !== before) throw new Error(`the chain breaks at ${v}`);
    found.push(v);
  }
  return found;
}

describe("buildQuotientGraph", () => {
  it("has a list of neighbours for each vertex, which stands for itself alone", () => {
    const graph = graphOf(4, chainPairs(4));
    expect([0, 1, 2, 3].map((v) => listOf(graph, v))).toEqual([[1], [0, 2], [1, 3], [2]]);
    expect([...graph.weight]).toEqual([1, 1, 1, 1]);
    expect([...graph.lastMember]).toEqual([0, 1, 2, 3]);
    expect(graph.free).toBe(6);
  });

  it("is made of points without any pipe, too", () => {
    const graph = graphOf(3, []);
    expect([0, 1, 2].map((v) => listOf(graph, v))).toEqual([[], [], []]);
  });
});

describe("enlist and unlist", () => {
  it("keep each degree's list, the latest first, whatever comes and goes", () => {
    const moves = fc.array(fc.record({ v: fc.nat(5), degree: fc.nat(2) }), { maxLength: 30 });
    fc.assert(
      fc.property(moves, (all) => {
        const graph = graphOf(6, []);
        const model: number[][] = [[], [], []];
        for (const { v, degree } of all) {
          const at = model.findIndex((list) => list.includes(v));
          if (at >= 0) {
            unlist(graph, v);
            model[at] = model[at]!.filter((other) => other !== v);
          } else {
            graph.degree[v] = degree;
            enlist(graph, v);
            model[degree]!.unshift(v);
          }
          expect([0, 1, 2].map((d) => listedAt(graph, d))).toEqual(model);
        }
      }),
    );
  });
});

describe("deferHubs", () => {
  // 10 √400 = 200: vertex 0 has 200 neighbours and stays, 1 and 2 have more.
  const pairs: Pairs = [
    [0, 201],
    [1, 2],
  ].concat(
    Array.from({ length: 199 }, (_, k) => [0, k + 1]),
    Array.from({ length: 201 }, (_, k) => [1, 199 + k]),
    Array.from({ length: 203 }, (_, k) => [2, 197 + k]),
  ) as Pairs;

  it("puts those joined to more than 10 √n others at the end, and lists the others by degree", () => {
    const graph = graphOf(400, pairs);
    const order = new Int32Array(400).fill(-1);
    expect(graph.length[0]).toBe(200);
    expect(deferHubs(graph, order)).toBe(2);
    expect([...order.slice(397)]).toEqual([-1, 1, 2]);
    expect([graph.state[1], graph.state[2]]).toEqual([GONE, GONE]);
    const listed = Array.from({ length: 400 }, (_, degree) =>
      listedAt(graph, degree).map((v) => [v, graph.length[v], degree]),
    ).flat();
    expect(listed.length).toBe(398);
    expect(listed.every(([, length, degree]) => length === degree)).toBe(true);
  });

  it("takes none of fewer than 17 neighbours for a hub, however small the graph", () => {
    const order = new Int32Array(17);
    expect(deferHubs(graphOf(17, completePairs(17)), order)).toBe(0);
  });
});

describe("absorbMember", () => {
  it("hangs one, with all that it stands for, behind the other's last", () => {
    const graph = graphOf(5, []);
    absorbMember(graph, 0, 3);
    absorbMember(graph, 2, 1);
    absorbMember(graph, 0, 2);
    absorbMember(graph, 0, 4);
    const members = [];
    for (let v = 0; v >= 0; v = graph.nextMember[v]!) members.push(v);
    expect(members).toEqual([0, 3, 2, 1, 4]);
    expect([...graph.state]).toEqual([0, GONE, GONE, GONE, GONE]);
  });
});

describe("makeRoom", () => {
  /** A path of five whose second vertex is gone and whose third is joined to an element, with so much room taken. */
  const worn = (free: number) => {
    const graph = graphOf(5, chainPairs(5));
    graph.state[1] = GONE;
    graph.state[3] = ELEMENT;
    graph.lists.set([3, 1], graph.start[2]);
    graph.elementCount[2] = 1;
    graph.free = free;
    return graph;
  };

  // The room is 17. What vertex 2 could form is its one neighbour and the element's two.
  it("leaves the lists where they are while what the pivot could form fits behind them", () => {
    const graph = worn(14);
    const before = graph.lists;
    makeRoom(graph, 2);
    expect(graph.lists).toBe(before);
    expect(graph.free).toBe(14);
  });

  it("closes the gaps where it would not, and changes no list", () => {
    const graph = worn(15);
    const before = [0, 2, 3, 4].map((v) => listOf(graph, v));
    makeRoom(graph, 2);
    expect([0, 2, 3, 4].map((v) => listOf(graph, v))).toEqual(before);
    expect([...graph.lists.slice(0, 6)]).toEqual(before.flat());
    expect(graph.free).toBe(6);
    expect(graph.spareLists).not.toBe(graph.lists);
  });
});
