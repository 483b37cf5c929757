import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildAdjacency, buildTopology } from "../../../packages/hydraulics/src/solve/topology.js";
import { type LineParts, makeLine } from "../../arbitraries/make-line.js";
import { randomLine } from "../../arbitraries/random-line.js";

const topologyOf = (parts: LineParts, roots: readonly number[] = parts.sources) => {
  const line = makeLine(parts);
  return buildTopology(line, buildAdjacency(line), roots, line.segments.shut);
};

describe("buildTopology", () => {
  it("numbers a parent before its children, each point once, and every drinker by the order of its node", () => {
    fc.assert(
      fc.property(fc.nat(1e9), (seed) => {
        const { line, parts } = randomLine(seed);
        const topology = buildTopology(line, buildAdjacency(line), parts.sources, line.segments.shut);
        const { nodeCount, rootCount, parent, point, segment, sign, drinker, drinkerNode } = topology;
        expect([...point.slice(0, rootCount)]).toEqual([...new Set(parts.sources)]);
        expect(new Set(point).size).toBe(nodeCount);
        for (let i = rootCount; i < nodeCount; i += 1) {
          expect(parent[i]).toBeGreaterThanOrEqual(0);
          expect(parent[i]).toBeLessThan(i);
          const s = segment[i]!;
          const [from, to] = [line.segments.from[s], line.segments.to[s]];
          const [start, end] = [point[parent[i]!], point[i]];
          expect([from, to]).toEqual(sign[i] === 1 ? [start, end] : [end, start]);
        }
        expect([...drinkerNode]).toEqual([...drinkerNode].sort((a, b) => a - b));
        drinker.forEach((d, k) => void expect(line.drinkers.point[d]).toBe(point[drinkerNode[k]!]));
      }),
      { numRuns: 200 },
    );
  });

  it("uses every open pipe between reached points exactly once, as an edge of the tree or as a chord", () => {
    fc.assert(
      fc.property(fc.nat(1e9), (seed) => {
        const { line, parts } = randomLine(seed);
        const topology = buildTopology(line, buildAdjacency(line), parts.sources, line.segments.shut);
        const reached = new Set(topology.point);
        const open = parts.pipes.flatMap(({ from, to, shut }, s) =>
          !shut && reached.has(from) && reached.has(to) ? [s] : [],
        );
        expect([...topology.segment].filter((s) => s >= 0).sort((a, b) => a - b)).toEqual(open);
        expect(topology.chordCount).toBe(open.length - (topology.nodeCount - topology.rootCount));
        expect(topology.pattern === undefined).toBe(topology.chordCount === 0);
        // No open pipe leads out of what is reached.
        for (const { from, to, shut } of parts.pipes)
          if (!shut) expect(reached.has(from)).toBe(reached.has(to));
      }),
      { numRuns: 200 },
    );
  });

  it("leaves the pipe of most resistance out of a ring, wherever it is written", () => {
    for (const narrow of [0, 1, 2]) {
      const sides = [
        [0, 1],
        [1, 2],
        [2, 0],
      ] as const;
      const pipes = sides.map(([from, to], s) => ({
        from,
        to,
        length: 10,
        bore: s === narrow ? 0.006 : 0.03,
      }));
      const topology = topologyOf({ heights: [0, 0, 0], pipes, drinkers: [], sources: [0] });
      expect(topology.chordCount).toBe(1);
      expect(topology.segment[topology.nodeCount]).toBe(narrow);
    }
  });

  it.each([
    ["of most fittings", { kInfinity: 2 }, { kInfinity: 3 }],
    ["of most fittings where water creeps", { k1: 2000 }, { k1: 3000 }],
    [
      "of fittings that tell where water creeps more than of those that do not",
      { kInfinity: 1 },
      { k1: 2000 },
    ],
    ["that is longest", { length: 10 }, { length: 11 }],
    ["that is longest, though others are fitted", { kInfinity: 3 }, { length: 20 }],
    ["that is written last, where all are alike", {}, {}],
  ])("leaves out of a ring the pipe %s", (_, other, most) => {
    for (const at of Object.keys(most).length === 0 ? [2] : [0, 1, 2]) {
      const pipes = [0, 1, 2].map((from) => ({
        ...{ from, to: (from + 1) % 3, length: 10, bore: 0.02 },
        ...(from === at ? most : other),
      }));
      const topology = topologyOf({ heights: [0, 0, 0], pipes, drinkers: [], sources: [0] });
      expect(topology.segment[topology.nodeCount]).toBe(at);
    }
  });

  it("takes three sources as one: each pipe more between them and the rest closes a ring, none before", () => {
    const between = [0, 1, 2].map((from) => ({ from, to: 3, length: 1 + from }));
    const parts = { heights: [0, 0, 0, 0], pipes: between, drinkers: [], sources: [0, 1, 2] };
    const topology = topologyOf(parts);
    expect([topology.rootCount, topology.nodeCount, topology.chordCount]).toEqual([3, 4, 2]);
    expect([...topology.segment]).toEqual([-1, -1, -1, 0, 1, 2]);
    expect([...topology.chordFrom, ...topology.chordTo]).toEqual([1, 2, 3, 3]);
  });

  it("reaches nothing beyond a shut tap, and makes of a pipe between two sources a chord", () => {
    const pipes = [
      { from: 0, to: 1, length: 1 },
      { from: 1, to: 2, length: 1, shut: true },
    ];
    const parts = { heights: [0, 0, 0], pipes, drinkers: [{ point: 2, coefficient: 1e-6 }], sources: [0] };
    expect([...topologyOf(parts).point]).toEqual([0, 1]);
    expect(topologyOf(parts).drinker).toHaveLength(0);
    const two = topologyOf(
      { ...parts, pipes: [{ from: 0, to: 1, length: 1 }], heights: [0, 0], drinkers: [] },
      [0, 1],
    );
    expect([two.nodeCount, two.rootCount, two.chordCount]).toEqual([2, 2, 1]);
  });

  it("follows a line of 100,000 points without running out of stack", () => {
    const count = 100_000;
    const pipes = Array.from({ length: count - 1 }, (_, i) => ({ from: i, to: i + 1, length: 0.3 }));
    const topology = topologyOf({
      heights: new Array<number>(count).fill(0),
      pipes,
      drinkers: [],
      sources: [0],
    });
    expect(topology.nodeCount).toBe(count);
    expect(topology.parent[count - 1]).toBe(count - 2);
  });
});

it("buildTopology makes one root of two sources at one point", () => {
  const parts = { heights: [0, 0], pipes: [{ from: 0, to: 1, length: 1 }], drinkers: [], sources: [0] };
  for (const roots of [
    [0, 0],
    [0, 1, 0, 1],
  ]) {
    const { rootCount, nodeCount } = topologyOf(parts, roots);
    expect([rootCount, nodeCount]).toEqual([new Set(roots).size, 2]);
  }
});
