import fc from "fast-check";
import { expect, it } from "vitest";
import { solveLoopHeads } from "../../../packages/hydraulics/src/solve/loop-step.js";
import { farthestApart, rings, trees } from "../../laws/drawn-lines.js";
import { halfWay, headsByDenseSolve } from "./linear-step.js";

it("solveLoopHeads gives the heads of a full matrix of the same tangents, from any heads before", () => {
  fc.assert(
    fc.property(rings(), fc.nat(1e6), (drawn, seed) => {
      const step = halfWay(drawn, "darcyWeisbach", seed);
      fc.pre(step.network.topology.chordCount > 0);
      const dense = headsByDenseSolve(step);
      // The chord flow of the step follows from those heads by its tangent.
      const { nodeCount, chordFrom, chordTo } = step.network.topology;
      const { flow, loss, slope } = step.work;
      const chordFlow =
        flow[nodeCount]! +
        (dense[chordFrom[0]!]! - dense[chordTo[0]!]! - loss[nodeCount]!) / slope[nodeCount]!;
      expect(solveLoopHeads(step.network, step.demand, step.work)).toBe(true);
      const largest = Math.max(1, ...dense.map(Math.abs));
      expect(farthestApart(step.work.head, dense) / largest).toBeLessThan(1e-7);
      expect(step.work.trialFlow[nodeCount]).toBeCloseTo(chordFlow, 9);
    }),
    { numRuns: 100 },
  );
});

it("solveLoopHeads refuses a tree, which has no pattern of equations", () => {
  fc.assert(
    fc.property(trees(), (drawn) => {
      const { network, demand, work } = halfWay(drawn, "darcyWeisbach", 1);
      expect(solveLoopHeads(network, demand, work)).toBe(false);
    }),
    { numRuns: 5 },
  );
});
