import { describe, expect, it } from "vitest";
import { evaluateTrial } from "../../../packages/hydraulics/src/solve/damping.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { ENERGY_TOLERANCE, energyLeft, hasSettled } from "../../../packages/hydraulics/src/solve/stopping.js";
import { createWorkspace } from "../../../packages/hydraulics/src/solve/workspace.js";
import { makeLine } from "../../arbitraries/make-line.js";

/** One pipe and one drinker with chosen flows and heads: what is left of the energy. */
function left(flow: number, heads: readonly [number, number], start = 0): number {
  const line = makeLine({
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 10 }],
    drinkers: [{ point: 1, coefficient: 1e-5, openingHead: start }],
    sources: [0],
  });
  const { network } = prepareLine(line, "darcyWeisbach").current;
  const work = createWorkspace(network);
  const demand = { rootHead: Float64Array.of(heads[0]), working: Int32Array.of(0), draw: undefined };
  work.trialFlow.fill(flow);
  work.trialDrinkerFlow.fill(flow);
  evaluateTrial(network, demand, work);
  work.head.set(heads);
  return energyLeft(network, demand, work);
}

describe("energyLeft", () => {
  it("is the head that neither pipe nor drinker takes", () => {
    expect(left(0, [1, 0.4])).toBeCloseTo(0.6, 12);
    expect(left(5e-6, [0.25, 0.25])).toBeGreaterThan(0);
    // The drinker takes (q/k)^2 = 0.25 m; no loss in the pipe is accounted for, so that is what is left.
    const perFlow = (128 * 1.0034e-6 * 10) / (Math.PI * 9.80665 * 0.0158 ** 4);
    expect(left(5e-6, [0.25, 0.25])).toBeCloseTo(perFlow * 5e-6, 6);
  });

  it("asks of a shut drinker only that its node has no head to open it", () => {
    expect(left(0, [0.3, 0.3], 0.5)).toBe(0);
    expect(left(0, [0.7, 0.7], 0.5)).toBeCloseTo(0.2, 12);
  });
});

it("energyLeft sees each pipe and each drinker of a ring, the one that closes it and the last of all, too", () => {
  const line = makeLine({
    heights: [0, 0, 0],
    pipes: [
      { from: 0, to: 1, length: 10 },
      { from: 1, to: 2, length: 10 },
      { from: 2, to: 0, length: 10 },
    ],
    drinkers: [1, 1, 2].map((point) => ({ point, coefficient: 1e-5 })),
    sources: [0],
  });
  const { network } = prepareLine(line, "darcyWeisbach").current;
  const demand = { rootHead: Float64Array.of(0), working: Int32Array.of(0, 1, 2), draw: undefined };
  for (let e = 1; e < 4; e += 1) {
    const work = createWorkspace(network);
    work.trialFlow[e] = 1e-4;
    evaluateTrial(network, demand, work);
    expect(work.trialLoss[e]).toBeGreaterThan(0.1);
    expect(energyLeft(network, demand, work)).toBe(work.trialLoss[e]);
  }
  for (let d = 0; d < 3; d += 1) {
    const work = createWorkspace(network);
    work.trialDrinkerFlow[d] = 5e-6;
    evaluateTrial(network, demand, work);
    expect(energyLeft(network, demand, work)).toBeCloseTo(0.25, 12);
  }
});

describe("hasSettled", () => {
  it("stops at the tolerance, or a quarter of the bar once nothing is gained any more", () => {
    expect(hasSettled(ENERGY_TOLERANCE, 1)).toBe(true);
    expect(hasSettled(2e-8, 3e-8)).toBe(true);
    expect(hasSettled(2e-8, 1e-3)).toBe(false);
    expect(hasSettled(3e-8, 3e-8)).toBe(false);
    expect(hasSettled(Number.NaN, 1)).toBe(false);
  });
});
