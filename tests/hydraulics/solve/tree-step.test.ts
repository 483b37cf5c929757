import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stepDrinkers, sumFlows } from "../../../packages/hydraulics/src/solve/direction.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";
import { matchDrinkersToPipes, solveTreeHeads } from "../../../packages/hydraulics/src/solve/tree-step.js";
import { type DrawnLine, farthestApart, trees } from "../../laws/drawn-lines.js";
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

describe("matchDrinkersToPipes", () => {
  /** A tree with so much head that every drinker flows, and none is held at nothing, after its linear step. */
  const stepped = (drawn: DrawnLine, seed: number) => {
    const step = halfWay(drawn, "darcyWeisbach", seed);
    step.demand.rootHead[0] = 50;
    solveTreeHeads(step.network, step.demand, step.work);
    stepDrinkers(step.network, step.demand, step.work);
    return step;
  };

  it("changes nothing where pipes and drinkers agree", () => {
    fc.assert(
      fc.property(trees(), fc.nat(1e6), (drawn, seed) => {
        const { network, demand, work } = stepped(drawn, seed);
        const before = work.trialDrinkerFlow.slice();
        matchDrinkersToPipes(network, demand, work);
        for (const d of demand.working) expect(work.trialDrinkerFlow[d]! / before[d]!).toBeCloseTo(1, 6);
      }),
      { numRuns: 50 },
    );
  });

  it("gives all beyond a pipe from the source together what it delivers by the heads, whatever they had of it", () => {
    fc.assert(
      fc.property(trees(), fc.nat(1e6), (drawn, seed) => {
        const { network, demand, work } = stepped(drawn, seed);
        const { nodeCount, rootCount, parent } = network.topology;
        demand.working.forEach((d, w) => {
          work.trialDrinkerFlow[d]! *= 1 + 1e-2 * (w % 3);
        });
        const answers = work.nodeConductance.slice();
        matchDrinkersToPipes(network, demand, work);
        sumFlows(network, demand, work);
        for (let i = rootCount; i < nodeCount; i += 1) {
          if (parent[i]! >= rootCount || answers[i] === 0) continue;
          const drop = work.head[parent[i]!]! - work.head[i]!;
          const delivered = work.flow[i]! + (drop - work.loss[i]!) / work.slope[i]!;
          expect(work.trialFlow[i]! / delivered).toBeCloseTo(1, 6);
        }
      }),
      { numRuns: 50 },
    );
  });
});
