import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { type Devices, deviceLine } from "../../arbitraries/device-line.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

const { regulator, oneWay } = SEGMENT_KIND;

describe.each(FRICTION_LAWS)("solveLine (%s) of devices one behind another", (friction) => {
  it("carries what three zones take, one below the other, up to the source to the last digit", () => {
    const line = makeLine({
      heights: [0, 0, 0, 0, 0, 0, 0],
      pipes: [0, 1, 2, 3, 4, 5].map((from) => ({
        ...{ from, to: from + 1, length: from % 2 === 0 ? 8 : 0, bore: 0.01 },
        ...(from % 2 === 0 ? {} : { kind: regulator, setting: 0.6 - 0.1 * from, kInfinity: 2 }),
      })),
      drinkers: [2, 4, 6].map((point) => ({ point, coefficient: 1e-5 })),
      sources: [0],
    });
    const solution = solveLine(prepareLine(line, friction), makeMoment(line, [2]));
    expect(solution.outcome).toBe("solved");
    // Each regulator holds 0.5, 0.3, 0.1 m: the drinkers there pass k sqrt h.
    [0.5, 0.3, 0.1].forEach((held, i) => {
      expect(solution.head[2 + 2 * i]).toBeCloseTo(held, 9);
      expect(solution.drinkerFlow[i]! / (1e-5 * Math.sqrt(held))).toBeCloseTo(1, 8);
    });
    const [a, b, c] = [...solution.drinkerFlow] as [number, number, number];
    const sums = [a + b + c, a + b + c, b + c, b + c, c, c];
    sums.forEach((sum, s) => void expect(solution.flow[s]! / sum).toBeCloseTo(1, 14));
  });

  it("settles a regulator and a valve that would keep changing together by taking them one at a time", () => {
    // A high source, a regulator that holds 0.22 m, a valve that 0.05 m opens, a low source at 0.2 m: wide open, water
    // runs; held, it cannot open the valve; both shut, the regulator would open again.
    const line = makeLine({
      heights: [0, 0, 0, 0],
      pipes: [
        { from: 1, to: 0, length: 2, bore: 0.02, kind: oneWay, setting: 0.05 },
        { from: 2, to: 1, length: 3, bore: 0.02, kind: regulator, setting: 0.22, kInfinity: 10 },
        { from: 2, to: 3, length: 7, bore: 0.02 },
      ],
      drinkers: [
        { point: 0, coefficient: 1e-5 },
        { point: 2, coefficient: 1e-5 },
      ],
      sources: [0, 3],
    });
    const solution = solveLine(prepareLine(line, friction), makeMoment(line, [0.2, 0.43]));
    expect(solution.outcome).toBe("solved");
    expect([solution.flow[0], solution.flow[1]]).toEqual([0, 0]);
    expect(solution.drinkerFlow[0]! / (1e-5 * Math.sqrt(0.2))).toBeCloseTo(1, 9);
    expect(solution.flow[2]).toBeCloseTo(-solution.drinkerFlow[1]!, 15);
  });
});

/** A regulator lies in no ring: such a plan is refused. */
const SHAPES: readonly (readonly [string, Devices])[] = [
  ["valves, with rings", { valves: 0.6, regulators: 0, rings: 2, sources: 2 }],
  ["regulators", { valves: 0, regulators: 0.5, rings: 0, sources: 2 }],
  ["valves and regulators", { valves: 0.4, regulators: 0.3, rings: 0, sources: 2 }],
];

/** The first hundred, and of 4,000 those in which taking the first device alone goes round in a circle too. */
const SEEDS = [...Array.from({ length: 100 }, (_, i) => i + 1), 570, 681, 1226, 1384, 1724, 3747];

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it.each(SHAPES)("solves every small line of little but %s", (_, devices) => {
    for (const seed of SEEDS) {
      const { line, moment } = deviceLine(seed, devices);
      const { outcome } = solveLine(prepareLine(line, friction), moment);
      expect({ seed, outcome }).toEqual({ seed, outcome: "solved" });
    }
  });
});
