import { describe, expect, it } from "vitest";
import { linearizeDrinkers, stepDrinkers } from "../../../packages/hydraulics/src/solve/direction.js";
import { evaluateDrinkers } from "../../../packages/hydraulics/src/solve/laws/drinker-laws.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { createWorkspace } from "../../../packages/hydraulics/src/solve/workspace.js";
import { makeLine } from "../../arbitraries/make-line.js";

const K = 1e-5;

/** Two drinkers of q = 1e-5 sqrt(h) at one point, opened by 0.1 m; the second alone is at work. */
function linearized(flow: number, spare: number) {
  const line = makeLine({
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 2 }],
    drinkers: [0, 1].map(() => ({ point: 1, coefficient: K, openingHead: 0.1 })),
    sources: [0],
  });
  const { network } = prepareLine(line, "darcyWeisbach").current;
  const work = createWorkspace(network);
  const demand = { rootHead: Float64Array.of(1), working: Int32Array.of(1), draw: undefined };
  work.head[1] = 0.1 + spare;
  work.drinkerFlow.fill(flow);
  evaluateDrinkers(network.drinkers, demand.working, work.drinkerFlow, work.drinkerLoss, work.drinkerSlope);
  linearizeDrinkers(network, demand, work);
  stepDrinkers(network, demand, work);
  return { conductance: work.conductance[1]!, trial: work.trialDrinkerFlow[1]!, work };
}

describe("linearizeDrinkers", () => {
  // At 5e-6 m3/s a drinker takes 0.25 m, and its loss rises by 1e5 m for each m3/s.
  it("follows the tangent of a drinker that flows, up to thrice its flow", () => {
    for (const spare of [0.05, 0.25, 0.25 + 1.49])
      expect(linearized(5e-6, spare).conductance).toBeCloseTo(1e-5, 12);
  });

  it("beyond that takes the chord to the flow that the head there would drive", () => {
    const spare = 0.25 + 1.51;
    const { conductance, trial } = linearized(5e-6, spare);
    expect(conductance).toBeCloseTo((K * Math.sqrt(spare) - 5e-6) / 1.51, 12);
    expect(trial).toBeCloseTo(K * Math.sqrt(spare), 15);
  });

  it("opens a shut drinker along the chord to what its head would drive", () => {
    const { conductance, trial } = linearized(0, 0.36);
    expect(conductance).toBeCloseTo((K * 0.6) / 0.36, 12);
    expect(trial).toBeCloseTo(6e-6, 15);
  });

  it("opens it at the first hair of head no faster than a millionth of a metre would", () => {
    expect(linearized(0, 1e-9).conductance).toBeCloseTo((K * 1e-3) / 1e-6, 12);
  });

  it("leaves a drinker shut that has no head, and looks at no other than those at work", () => {
    for (const spare of [0, -0.5]) expect(linearized(0, spare)).toMatchObject({ conductance: 0, trial: 0 });
    const { work } = linearized(5e-6, 0.3);
    expect([work.conductance[0], work.trialDrinkerFlow[0]]).toEqual([0, 0]);
  });
});

describe("stepDrinkers", () => {
  it("never runs a drinker backwards: one that would is shut", () => {
    expect(linearized(5e-6, -0.4).trial).toBe(0);
  });
});
