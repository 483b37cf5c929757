import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  DISCHARGE_COEFFICIENT,
  drinkerLawThrough,
  flowAtHead,
  flowThroughOrifice,
  headAtFlow,
} from "../../../packages/hydraulics/src/physics/orifice.js";

describe("flowAtHead and headAtFlow", () => {
  it("undo each other above the opening head", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-8, max: 1e-3, noNaN: true }),
        fc.double({ min: 0.3, max: 1.1, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 1e-3, max: 20, noNaN: true }),
        (coefficient, exponent, openingHead, above) => {
          const law = { coefficient, exponent, openingHead };
          const head = openingHead + above;
          expect(Math.abs(headAtFlow(law, flowAtHead(law, head)) - head)).toBeLessThan(1e-12 * head);
        },
      ),
    );
  });

  it("flowAtHead passes nothing at, below and far below the opening head", () => {
    const law = { coefficient: 2e-6, exponent: 0.5, openingHead: 0.05 };
    expect([0.05, 0.01, 0, -3].map((head) => flowAtHead(law, head))).toEqual([0, 0, 0, 0]);
    expect(flowAtHead(law, 1.05)).toBeCloseTo(2e-6, 18);
    expect(headAtFlow(law, 0)).toBe(0.05);
  });

  it("flowAtHead of an orifice doubles when the head is four times as high", () => {
    const law = { coefficient: 2e-6, exponent: 0.5, openingHead: 0 };
    expect(flowAtHead(law, 0.8) / flowAtHead(law, 0.2)).toBeCloseTo(2, 14);
  });

  it("refuse a law or a number that makes no sense", () => {
    const law = { coefficient: 2e-6, exponent: 0.5, openingHead: 0 };
    expect(() => flowAtHead({ ...law, exponent: 0 }, 1)).toThrow("law.exponent is 0");
    expect(() => flowAtHead({ ...law, openingHead: -1 }, 1)).toThrow("law.openingHead is -1");
    expect(() => flowAtHead(law, Number.NaN)).toThrow("head is NaN");
    expect(() => headAtFlow({ ...law, coefficient: 0 }, 1e-6)).toThrow("law.coefficient is 0");
    expect(() => headAtFlow(law, -1e-6)).toThrow("flow is -0.000001");
  });
});

describe("drinkerLawThrough", () => {
  it("passes through its point, with 0.5 and no opening head unless told", () => {
    expect(drinkerLawThrough({ head: 0.25, flow: 1e-6 })).toEqual({
      coefficient: 2e-6,
      exponent: 0.5,
      openingHead: 0,
    });
    const law = drinkerLawThrough({ head: 0.6, flow: 3e-6, exponent: 0.8, openingHead: 0.1 });
    expect(flowAtHead(law, 0.6)).toBeCloseTo(3e-6, 18);
  });

  it("refuses a head that does not open the drinker", () => {
    expect(() => drinkerLawThrough({ head: 0.1, flow: 1e-6, openingHead: 0.1 })).toThrow(
      "above the opening head 0.1",
    );
  });
});

describe("flowThroughOrifice", () => {
  // Choudhary & Om Prakash, Fluid Mechanics, Example 6.7 (seen): 20 mm opening under 1 m gives 0.85 L/s, C_d 0.61.
  it("gives a textbook's 0.85 L/s through 20 mm under 1 m", () => {
    const orifice = { area: (Math.PI / 4) * 0.02 ** 2, dischargeCoefficient: DISCHARGE_COEFFICIENT.sharp };
    expect(Math.abs(flowThroughOrifice(orifice, 1) / 0.85e-3 - 1)).toBeLessThan(0.01);
  });

  // Two textbook siphons (seen): 8.85 m/s for 4 m and 4.43 m/s for 1 m, both with g = 9.8 m/s².
  it("is Torricelli's speed times the area where nothing is lost", () => {
    const open = { area: 1, dischargeCoefficient: 1 };
    expect(flowThroughOrifice(open, 4)).toBeCloseTo(8.85, 1);
    expect(flowThroughOrifice(open, 1)).toBeCloseTo(4.43, 2);
  });

  it("runs the other way under a negative head and not at all under none", () => {
    const orifice = { area: 1e-4, dischargeCoefficient: 0.61 };
    expect(flowThroughOrifice(orifice, -1)).toBe(-flowThroughOrifice(orifice, 1));
    expect(flowThroughOrifice(orifice, 0)).toBe(0);
    expect(() => flowThroughOrifice({ ...orifice, area: -1 }, 1)).toThrow(RangeError);
  });
});
