import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DrawnLine,
  farthestApart,
  lineOf,
  RUNS,
  rings,
  SAME_HEAD,
  solved,
  trees,
} from "./drawn-lines.js";

/** The line with every height, opening head and source head times `factor`; lengths of pipe are kept. */
function steeper(drawn: DrawnLine, factor: number): DrawnLine {
  return {
    ...drawn,
    parts: {
      ...drawn.parts,
      heights: drawn.parts.heights.map((h) => h * factor),
      drinkers: drawn.parts.drinkers.map((one) => ({ ...one, openingHead: (one.openingHead ?? 0) * factor })),
    },
    sourceHead: drawn.sourceHead.map((h) => h * factor),
  };
}

const factors = fc.double({ min: 0.2, max: 5, noNaN: true });
const none = fc.constant(0);
const relative = (a: ArrayLike<number>, b: ArrayLike<number>) => {
  const largest = Math.max(1e-12, ...Array.from(b, Math.abs));
  return farthestApart(a, b) / largest;
};

/** Drinkers that are straight in head, so fine that all flow is laminar (Re under 500), fittings laminar too. */
const laminar = {
  exponent: fc.constant(1),
  coefficient: fc.double({ min: 1e-8, max: 1e-7, noNaN: true }),
  kInfinity: none,
};
/** All laws of the same power: pipes by Hazen-Williams, and drinkers that answer alike. */
const alike = { exponent: fc.constant(1 / 1.852), k1: none, kInfinity: none };

describe("solveLine", () => {
  it("by Hazen-Williams with drinkers of exponent 1/1.852 at heads n times as great gives flows n^(1/1.852) times", () => {
    fc.assert(
      fc.property(fc.oneof(trees(alike), rings(alike)), factors, (drawn, n) => {
        const [one, other] = [solved(drawn, "hazenWilliams"), solved(steeper(drawn, n), "hazenWilliams")];
        const expected = one.drinkerFlow.map((q) => q * n ** (1 / 1.852));
        expect(relative(other.drinkerFlow, expected)).toBeLessThan(1e-6);
        expect(
          farthestApart(
            other.head,
            one.head.map((h) => h * n),
          ),
        ).toBeLessThan(3e-7);
      }),
      RUNS,
    );
  });

  it("by Darcy-Weisbach in laminar flow with straight drinkers doubles every flow when heads double", () => {
    fc.assert(
      fc.property(fc.oneof(trees(laminar), rings(laminar)), (drawn) => {
        const [one, two] = [solved(drawn, "darcyWeisbach"), solved(steeper(drawn, 2), "darcyWeisbach")];
        expect(
          relative(
            two.drinkerFlow,
            one.drinkerFlow.map((q) => 2 * q),
          ),
        ).toBeLessThan(1e-6);
        expect(
          relative(
            two.sourceFlow,
            one.sourceFlow.map((q) => 2 * q),
          ),
        ).toBeLessThan(1e-6);
      }),
      RUNS,
    );
  });

  it("by Darcy-Weisbach in laminar flow adds: heads of two sources' states are the states of their sum", () => {
    // Drinkers all open and at the source's height: nothing one-sided is left, so the line is linear.
    const flat = { ...laminar, height: none, openingHead: none };
    fc.assert(
      fc.property(trees(flat), factors, factors, (drawn, a, b) => {
        const at = (head: number) => solved({ ...drawn, sourceHead: [head] }, "darcyWeisbach").head;
        const [first, second, both] = [at(a), at(b), at(a + b)];
        expect(
          farthestApart(
            both,
            first.map((h, p) => h + second[p]!),
          ),
        ).toBeLessThan(3 * SAME_HEAD);
      }),
      RUNS,
    );
  });

  it("by Hazen-Williams does not know how warm the water is; by Darcy-Weisbach it does", () => {
    const still = { k1: none };
    fc.assert(
      fc.property(fc.oneof(trees(still), rings(still)), (drawn) => {
        const at = (temperatureC: number) => ({ ...drawn, parts: { ...drawn.parts, temperatureC } });
        const [cold, warm] = [at(5), at(35)];
        expect(solved(warm, "hazenWilliams").head).toStrictEqual(solved(cold, "hazenWilliams").head);
        // Laminar, cold water is 1518/719 times as thick (5 and 35 degC); so all that draws loses more.
        const [thick, thin] = [solved(cold, "darcyWeisbach"), solved(warm, "darcyWeisbach")];
        if (thick.sourceFlow[0]! > 1e-8) expect(farthestApart(thick.head, thin.head)).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it("by Darcy-Weisbach in laminar flow loses in proportion to viscosity: 1.518/0.7194 between 5 and 35 degC", () => {
    const { water: cold } = lineOf(flatLine(5));
    const { water: warm } = lineOf(flatLine(35));
    const lost = (temperatureC: number) => {
      const { head, flow } = solved(flatLine(temperatureC), "darcyWeisbach");
      return (head[0]! - head[1]!) / flow[0]!;
    };
    expect(lost(5) / lost(35)).toBeCloseTo(cold.viscosity / warm.viscosity, 6);
    // Kinematic viscosities from the tables: 1.5182 and 0.7234 mm2/s (IAPWS SR6-08).
    expect(lost(5) / lost(35)).toBeCloseTo(1.5182 / 0.7234, 3);
  });
});

const flatLine = (temperatureC: number): DrawnLine => ({
  parts: {
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 20 }],
    drinkers: [{ point: 1, coefficient: 1e-6, exponent: 1 }],
    sources: [0],
    temperatureC,
  },
  sourceHead: [1],
  atWork: [true],
});
