import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stepDrinkers, sumFlows } from "../../../packages/hydraulics/src/solve/direction.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";
import { solveTreeHeads } from "../../../packages/hydraulics/src/solve/tree-step.js";
import { farthestApart, trees } from "../../laws/drawn-lines.js";
import { halfWay, headsByDenseSolve } from "./linear-step.js";

describe.each(FRICTION_LAWS)("solveTreeHeads (%s)", (friction) => {
  it("gives the heads of a full matrix of the same tangents", () => {
    fc.assert(
      fc.property(trees(), fc.nat(1e6), (drawn, seed) => {
        const step = halfWay(drawn, friction, seed);
        const dense = headsByDenseSolve(step);
        solveTreeHeads(step.network, step.demand, step.work);
        const largest = Math.max(1, ...dense.map(Math.abs));
        expect(farthestApart(step.work.head, dense) / largest).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
  });
});

it("sumFlows after a tree step leaves water in balance at every node", () => {
  fc.assert(
    fc.property(trees(), fc.nat(1e6), (drawn, seed) => {
      const { network, demand, work } = halfWay(drawn, "darcyWeisbach", seed);
      solveTreeHeads(network, demand, work);
      stepDrinkers(network, demand, work);
      sumFlows(network, demand, work);
      const { nodeCount, rootCount, parent } = network.topology;
      const left = work.trialFlow.map((q, i) => q - (demand.draw?.[i] ?? 0));
      for (let i = nodeCount - 1; i >= rootCount; i -= 1) left[parent[i]!]! -= work.trialFlow[i]!;
      for (const d of demand.working) left[network.drinkers.node[d]!]! -= work.trialDrinkerFlow[d]!;
      const largest = Math.max(1e-12, ...work.trialFlow.map(Math.abs));
      expect(Math.max(...left.map(Math.abs)) / largest).toBeLessThan(1e-13);
    }),
    { numRuns: 100 },
  );
});
