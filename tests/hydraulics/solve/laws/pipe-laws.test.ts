import { describe, expect, it } from "vitest";
import { headLossDarcyWeisbach } from "../../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossHazenWilliams } from "../../../../packages/hydraulics/src/physics/hazen-williams.js";
import { prepareLine } from "../../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw } from "../../../../packages/hydraulics/src/solve/solution.js";
import { makeLine, type PipePart } from "../../../arbitraries/make-line.js";

const GRAVITY = 9.80665;
/** Added to every slope, so that a pipe of no length can be divided by [s/m2]. */
const SLOPE_FLOOR = 1e-4;

/** Neighbours that share a bore, a coefficient, both or neither: powers of them are worked out once and kept. */
const PIPES: readonly Omit<PipePart, "from" | "to">[] = [
  { length: 10 },
  { length: 4 },
  { length: 4, hazenWilliams: 120, roughness: 5e-5 },
  { length: 4, hazenWilliams: 120, bore: 0.009, roughness: 5e-5 },
  { length: 7, bore: 0.009, kInfinity: 3, k1: 800 },
  { length: 0, bore: 0.02, kInfinity: 10, k1: 300 },
  { length: 30, bore: 0.0158, roughness: 1e-4 },
];

/** The pipes one after the other; the law of pipe s at the flow given to it, by the solver's kernel. */
function lawOf(friction: FrictionLaw, pipes: readonly Omit<PipePart, "from" | "to">[]) {
  const line = makeLine({
    heights: [0, ...pipes.map(() => 0)],
    pipes: pipes.map((pipe, i) => ({ ...pipe, from: i, to: i + 1 })),
    drinkers: [],
    sources: [0],
    temperatureC: 12,
  });
  const { pipes: laws, topology } = prepareLine(line, friction).current.network;
  const count = topology.segment.length;
  return {
    line,
    laws,
    /** Loss and slope of every pipe, each at the same flow; the root, which is no pipe, comes first. */
    at(flow: number) {
      const [loss, slope] = [new Float64Array(count), new Float64Array(count)];
      laws.kernel(laws, count, new Float64Array(count).fill(flow), loss, slope);
      return { loss, slope };
    },
  };
}

type Law = ReturnType<typeof lawOf>;

/** What a pipe loses by the formulas of the trade, fittings and all. */
function lossByFormula(friction: FrictionLaw, { line }: Law, s: number, flow: number): number {
  const { segments, water } = line;
  const [length, bore] = [segments.length[s]!, segments.bore[s]!];
  const velocity = (4 * flow) / (Math.PI * bore ** 2);
  const reynolds = (Math.abs(velocity) * bore) / water.viscosity;
  const fittings =
    ((segments.k1[s]! / reynolds + segments.kInfinity[s]!) * velocity * Math.abs(velocity)) / (2 * GRAVITY);
  const pipe =
    friction === "hazenWilliams"
      ? headLossHazenWilliams({ length, bore, coefficient: segments.hazenWilliams[s]! }, flow)
      : headLossDarcyWeisbach(
          { length, bore, roughness: segments.roughness[s]!, viscosity: water.viscosity },
          flow,
        );
  return pipe + fittings;
}

/** From a crawl to a torrent, through the change from laminar to turbulent. */
const FLOWS = [-1e-3, -1e-6, 1e-8, 3e-6, 1e-5, 2e-5, 3e-5, 5e-5, 1e-4, 1e-3, 1e-2];

describe.each(FRICTION_LAWS)("the kernel of pipes (%s)", (friction) => {
  it.each(FLOWS)("loses what the published formulas have at %f m3/s", (flow) => {
    const law = lawOf(friction, PIPES);
    const { loss } = law.at(flow);
    PIPES.forEach((_, s) => {
      expect(loss[s + 1]! / lossByFormula(friction, law, s, flow)).toBeCloseTo(1, 9);
    });
  });

  it.each(FLOWS)("rises at %f m3/s as the loss a little on either side has it", (flow) => {
    const law = lawOf(friction, PIPES);
    const step = Math.abs(flow) * 1e-5;
    const [before, after] = [law.at(flow - step).loss, law.at(flow + step).loss];
    const floors = law.laws.slopeFloor;
    const { slope } = law.at(flow);
    PIPES.forEach((_, s) => {
      const rise = (after[s + 1]! - before[s + 1]!) / (2 * step);
      expect((slope[s + 1]! - floors[s + 1]!) / rise).toBeCloseTo(1, 5);
    });
  });

  it("loses nothing where nothing flows, and still rises there", () => {
    const { loss, slope } = lawOf(friction, PIPES).at(0);
    expect([...loss]).toEqual(new Array(PIPES.length + 1).fill(0));
    expect(slope.every((one) => one >= SLOPE_FLOOR)).toBe(true);
  });

  it("has at a root, which is no pipe, nothing but the floor of the slope", () => {
    const { loss, slope } = lawOf(friction, PIPES).at(1e-4);
    expect([loss[0], slope[0]]).toEqual([0, SLOPE_FLOOR]);
  });
});

describe("the slope that Hazen-Williams is not followed below", () => {
  const r = (length: number, bore: number) => (10.67 * length) / (150 ** 1.852 * bore ** 4.8704);

  it("is that at 1e-10 m3/s, where the pipe is wide", () => {
    const { laws } = lawOf("hazenWilliams", [{ length: 10 }, { length: 50, bore: 0.01 }]);
    const expected = [r(10, 0.0158), r(50, 0.01)].map((one) => 1.852 * one * 1e-10 ** 0.852 + SLOPE_FLOOR);
    expected.forEach((slope, s) => void expect(laws.slopeFloor[s + 1]! / slope).toBeCloseTo(1, 12));
    expect([...laws.floorFlow]).toEqual([0, 1e-10, 1e-10]);
  });

  it("is that at the flow which loses 1e-9 m, where the pipe is as fine as a hair", () => {
    const { laws, at } = lawOf("hazenWilliams", [{ length: 5, bore: 0.00005 }]);
    const floorFlow = laws.floorFlow[1]!;
    expect(floorFlow).toBeLessThan(1e-10);
    expect(at(floorFlow).loss[1]).toBeCloseTo(1e-9, 15);
    // h' = 1.852 h / Q.
    expect(laws.slopeFloor[1]! / ((1.852 * 1e-9) / floorFlow + SLOPE_FLOOR)).toBeCloseTo(1, 9);
  });

  it("is asked about in rings only where the law is flat at no flow", () => {
    expect(lawOf("hazenWilliams", [{ length: 1 }]).laws.hasCorner).toBe(true);
    expect(lawOf("darcyWeisbach", [{ length: 1 }]).laws.hasCorner).toBe(false);
  });
});
