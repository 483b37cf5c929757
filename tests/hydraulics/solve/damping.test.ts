import { describe, expect, it } from "vitest";
import {
  contentSlope,
  dampStep,
  evaluateTrial,
  overshoots,
} from "../../../packages/hydraulics/src/solve/damping.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { acceptTrial, createWorkspace } from "../../../packages/hydraulics/src/solve/workspace.js";
import { makeLine } from "../../arbitraries/make-line.js";

const K = 1e-5;
const HEAD = 1;
/** Loss of the pipe per flow, laminar: 128 nu L / (pi g d^4). */
const resistance = (viscosity: number) => (128 * viscosity * 2) / (Math.PI * 9.80665 * 0.0158 ** 4);

/** One drinker on one pipe, at the flow `now` and stepping to `then`. */
function step(now: number, then: number) {
  const line = makeLine({
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 2 }],
    drinkers: [{ point: 1, coefficient: K }],
    sources: [0],
  });
  const { network } = prepareLine(line, "darcyWeisbach").current;
  const work = createWorkspace(network);
  const demand = { rootHead: Float64Array.of(HEAD), working: Int32Array.of(0), draw: undefined };
  const setTrial = (q: number) => {
    work.trialFlow.fill(q);
    work.trialDrinkerFlow.fill(q);
    evaluateTrial(network, demand, work);
  };
  setTrial(now);
  acceptTrial(work);
  setTrial(then);
  return { network, demand, work, r: resistance(line.water.viscosity) };
}

/** Slope of the content with flow: what pipe and drinker take at q, less the head there is. */
const slopeAt = (q: number, r: number) => r * q + (q / K) ** 2 - HEAD;

describe("contentSlope", () => {
  it("at either end of a step is the head left over times the step, in closed form", () => {
    const [now, then] = [2e-6, 7e-6];
    const { network, demand, work, r } = step(now, then);
    expect(contentSlope(network, demand, work, "start")).toBeCloseTo(slopeAt(now, r) * (then - now), 15);
    expect(contentSlope(network, demand, work, "trial")).toBeCloseTo(slopeAt(then, r) * (then - now), 15);
  });
});

it("contentSlope adds up over every pipe and every drinker at work, and over none that rests", () => {
  const line = makeLine({
    heights: [0, 0, 0],
    pipes: [
      { from: 0, to: 1, length: 2 },
      { from: 1, to: 2, length: 3 },
    ],
    drinkers: [1, 2, 2].map((point) => ({ point, coefficient: K, openingHead: 0.04 })),
    sources: [0],
  });
  const { network } = prepareLine(line, "darcyWeisbach").current;
  const work = createWorkspace(network);
  const demand = { rootHead: Float64Array.of(HEAD), working: Int32Array.of(0, 1), draw: undefined };
  work.trialFlow.set([7e-6, 7e-6, 4e-6]);
  work.trialDrinkerFlow.set([3e-6, 4e-6, 9e-6]);
  evaluateTrial(network, demand, work);
  const r = resistance(line.water.viscosity);
  const pipes = r * 7e-6 * 7e-6 + 1.5 * r * 4e-6 * 4e-6;
  const drinkers = (0.04 + 0.09) * 3e-6 + (0.04 + 0.16) * 4e-6;
  expect(contentSlope(network, demand, work, "trial")).toBeCloseTo(pipes + drinkers - HEAD * 7e-6, 15);
});

describe("dampStep", () => {
  it("takes a step that still goes downhill at its end whole", () => {
    const { network, demand, work } = step(2e-6, 9e-6);
    expect(overshoots(network, demand, work)).toBe(false);
    expect(dampStep(network, demand, work)).toBe(0);
    expect(work.trialDrinkerFlow[0]).toBe(9e-6);
  });

  it.each([3e-5, 1e-4, 1e-2, 1])(
    "cuts a step to %f m3/s until it rises by no more than half of what it fell at first",
    (far) => {
      const now = 1e-6;
      const { network, demand, work, r } = step(now, far);
      expect(overshoots(network, demand, work)).toBe(true);
      expect(dampStep(network, demand, work)).toBeGreaterThan(0);
      const then = work.trialDrinkerFlow[0]!;
      expect(then).toBeGreaterThan(now);
      expect(slopeAt(then, r)).toBeLessThanOrEqual(-0.5 * slopeAt(now, r));
      // Pipe and drinker are cut alike, so that water stays in balance.
      expect(work.trialFlow[1]).toBeCloseTo(then, 15);
      expect(work.trialDrinkerLoss[0]).toBeCloseTo((then / K) ** 2, 12);
    },
  );

  it("leaves a step uphill alone: there is nothing to find along it", () => {
    const { network, demand, work } = step(2e-5, 3e-5);
    expect(dampStep(network, demand, work)).toBe(0);
  });
});
