import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  FRICTION_RANGE,
  frictionFactorChurchill,
  frictionFactorColebrook,
  frictionFactorLaminar,
  frictionFactorSwameeJain,
  headLossDarcyWeisbach,
  headLossLaminar,
  regimeAt,
  reynoldsNumber,
  velocityInBore,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";

const FOOT = 0.3048;
const GALLON_PER_MINUTE = 3.785411784e-3 / 60;

describe("frictionFactorChurchill", () => {
  // Values printed with the formula on a public page, and by a general fluids library (seen).
  it.each([
    [1000, 1e-4, 0.064],
    [3000, 1e-4, 0.043049],
    [1e5, 1e-4, 0.0184626],
    [1e5, 1e-2, 0.0387336],
  ])("at Re %d and relative roughness %d is %d", (reynolds, roughness, factor) => {
    expect(Math.abs(frictionFactorChurchill(reynolds, roughness) / factor - 1)).toBeLessThan(1e-4);
  });

  it("is 64/Re below Re 500 because there the other terms vanish in a double", () => {
    // The whole formula, unguarded, written out again: equal to 64/Re but for the rounding of its own powers.
    for (const re of [1, 10, 100, 400, 499.999]) {
      const laminar = (8 / re) ** 12;
      for (const roughness of [0, 1e-6, 0.05]) {
        const a = (2.457 * Math.log(1 / ((7 / re) ** 0.9 + 0.27 * roughness))) ** 16;
        const turbulent = (a + (37530 / re) ** 16) ** -1.5;
        expect(turbulent / laminar).toBeLessThan(4e-24);
        expect(laminar + turbulent).toBe(laminar);
        expect(frictionFactorChurchill(re, roughness)).toBe(64 / re);
      }
    }
  });

  it("does not jump where the guard ends at Re 500", () => {
    expect(Math.abs((frictionFactorChurchill(500, 0) * 500) / 64 - 1)).toBeLessThan(1e-15);
  });

  it("holds for a Reynolds number as small as a double can be", () => {
    expect(frictionFactorChurchill(1e-300, 0)).toBe(64 / 1e-300);
  });

  // Reference comparison with Colebrook for smooth 15.8 mm plastic: +-1.7 % from 3000 up.
  it("stays within 2 % of Colebrook on smooth plastic from Re 3000 to 1e5", () => {
    for (let re = 3000; re <= 1e5; re *= 1.05) {
      const ratio = frictionFactorChurchill(re, 1e-4) / frictionFactorColebrook(re, 1e-4);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
    }
  });

  it("is within 0.1 % of 64/Re up to Re 1900, and 0.14 % at 2000", () => {
    expect(Math.abs((frictionFactorChurchill(1900, 1e-4) * 1900) / 64 - 1)).toBeLessThan(1e-3);
    expect(Math.abs((frictionFactorChurchill(2000, 1e-4) * 2000) / 64 - 1)).toBeLessThan(1.4e-3);
  });
});

describe("frictionFactorColebrook", () => {
  // Printed by a general fluids library (seen).
  it("at Re 1e5 and relative roughness 1e-4 is 0.018513866077", () => {
    expect(Math.abs(frictionFactorColebrook(1e5, 1e-4) / 0.018513866077471648 - 1)).toBeLessThan(1e-14);
  });

  it("meets its own implicit law to machine precision over the whole range", () => {
    const { reynolds, relativeRoughness } = FRICTION_RANGE.colebrook;
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(reynolds.least), max: Math.log(reynolds.greatest), noNaN: true }),
        fc.double({ min: relativeRoughness.least, max: relativeRoughness.greatest, noNaN: true }),
        (logRe, roughness) => {
          const re = Math.exp(logRe);
          const x = 1 / Math.sqrt(frictionFactorColebrook(re, roughness));
          const residual = x + 2 * Math.log10(roughness / 3.7 + (2.51 * x) / re);
          expect(Math.abs(residual) / x).toBeLessThan(1e-15);
        },
      ),
    );
  });

  // Technical Paper 410M, Example 7-1, smooth plastic pipe (seen): Re 100600, f 0.0179.
  it("gives a handbook's 0.0179 for smooth plastic at Re 100600", () => {
    expect(Math.abs(frictionFactorColebrook(100600, 1.52e-6 / 0.05251) / 0.0179 - 1)).toBeLessThan(0.02);
  });
});

describe("frictionFactorSwameeJain", () => {
  // Printed by a general fluids library (seen), which writes the term as (6.97/Re)^0.9: 6.97^0.9 = 5.73997 is 5.74 only
  // to its printed digits, hence the tolerance.
  it("at Re 1e5 and relative roughness 1e-4 is 0.018452424", () => {
    expect(Math.abs(frictionFactorSwameeJain(1e5, 1e-4) / 0.018452424431901808 - 1)).toBeLessThan(2e-6);
  });

  it("stays within 3 % of Colebrook over its published range", () => {
    for (let re = 5e3; re <= 1e8; re *= 1.3) {
      for (const roughness of [1e-6, 1e-5, 1e-4, 1e-3, 1e-2]) {
        const ratio = frictionFactorSwameeJain(re, roughness) / frictionFactorColebrook(re, roughness);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
      }
    }
  });

  it("refuses a Reynolds number at which its logarithm passes nought", () => {
    expect(() => frictionFactorSwameeJain(5, 1e-4)).toThrow("must be above 11");
  });
});

describe("headLossDarcyWeisbach", () => {
  // Hydraulic Institute Engineering Data Book, friction tables for Schedule 40 steel at 60 °F (seen):
  // gpm, bore in, ft per 100 ft. Tolerance: printed digits; Churchill departs up to 2 % from Colebrook.
  const steel = (boreIn: number) => ({
    length: 100,
    bore: boreIn * 0.0254,
    roughness: 0.00015 * FOOT,
    viscosity: 1.217e-5 * FOOT ** 2,
  });
  it.each([
    [0.02, 0.269, 0.272, 0.02],
    [0.1, 0.269, 1.359, 0.02],
    [1.0, 0.269, 87, 0.03],
    [1.0, 0.364, 19.1, 0.03],
    [1.5, 0.622, 2.85, 0.03],
    [2.0, 0.622, 4.78, 0.03],
    [5.0, 0.622, 25.8, 0.03],
    [5.0, 0.824, 6.32, 0.03],
    [2.0, 1.049, 0.379, 0.03],
    [10, 1.38, 1.77, 0.03],
  ])("agrees with a friction table at %d gpm in %d in", (gallons, boreIn, expected, relative) => {
    const loss = headLossDarcyWeisbach(steel(boreIn), gallons * GALLON_PER_MINUTE);
    expect(Math.abs(loss / expected - 1)).toBeLessThan(relative);
  });

  // Cengel & Cimbala, Fluid Mechanics, Example 8-3 (from memory): 200 ft of 2 in at 0.2 ft³/s loses 27.3 ft.
  it("agrees with a textbook's 27.3 ft in 200 ft of 2 in drawn pipe", () => {
    const run = {
      length: 200 * FOOT,
      bore: 2 * 0.0254,
      roughness: 7e-6 * FOOT,
      viscosity: (0.0007536 / 62.36) * FOOT ** 2,
    };
    const loss = headLossDarcyWeisbach(run, 0.2 * FOOT ** 3) / FOOT;
    expect(Math.abs(loss / 27.3 - 1)).toBeLessThan(0.01);
  });

  it("is the laminar law exactly in slow water, down to the least flow a double holds", () => {
    const run = { length: 30, bore: 0.0158, roughness: 1.5e-6, viscosity: 1.0034e-6 };
    expect(headLossDarcyWeisbach(run, 1e-6)).toBe(headLossLaminar(run, 1e-6));
    expect(headLossDarcyWeisbach(run, 1e-300)).toBeGreaterThan(0);
    expect(headLossDarcyWeisbach(run, 0)).toBe(0);
  });

  it("is odd in flow and rises with it through every regime", () => {
    const run = { length: 30, bore: 0.0158, roughness: 1.5e-6, viscosity: 1.0034e-6 };
    let before = 0;
    for (let flow = 1e-7; flow < 1e-2; flow *= 1.01) {
      const loss = headLossDarcyWeisbach(run, flow);
      expect(loss).toBeGreaterThan(before);
      expect(headLossDarcyWeisbach(run, -flow)).toBe(-loss);
      before = loss;
    }
  });

  it("refuses negative roughness, a bore of nought and a flow that is no number", () => {
    const run = { length: 30, bore: 0.0158, roughness: 1.5e-6, viscosity: 1.0034e-6 };
    expect(() => headLossDarcyWeisbach({ ...run, roughness: -1 }, 1e-5)).toThrow("run.roughness is -1");
    expect(() => headLossDarcyWeisbach({ ...run, roughness: 1 }, 5e-5)).toThrow("relativeRoughness");
    expect(() => headLossDarcyWeisbach({ ...run, bore: 0 }, 1e-5)).toThrow(RangeError);
    expect(() => headLossDarcyWeisbach(run, Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

describe("headLossLaminar", () => {
  // Cengel & Cimbala, Fluid Mechanics, Example 8-2 (from memory): Re 1803, 14.9 ft in 30 ft of 0.12 in at 3 ft/s.
  it("agrees with a textbook's 14.9 ft in 30 ft of 0.12 in tube", () => {
    const bore = 0.12 * 0.0254;
    const run = { length: 30 * FOOT, bore, viscosity: (0.001038 / 62.42) * FOOT ** 2 };
    const flow = 3 * FOOT * (Math.PI / 4) * bore ** 2;
    expect(Math.abs(headLossLaminar(run, flow) / FOOT / 14.9 - 1)).toBeLessThan(0.01);
    expect(Math.abs(reynoldsNumber(run, flow) / 1803 - 1)).toBeLessThan(0.001);
  });

  it("equals the textbook's flow form 128 ν L Q / (π g d⁴)", () => {
    const run = { length: 30, bore: 0.016, viscosity: 1.004e-6 };
    const expected = (128 * 1.004e-6 * 30 * 2e-5) / (Math.PI * 9.80665 * 0.016 ** 4);
    expect(headLossLaminar(run, 2e-5)).toBeCloseTo(expected, 15);
  });
});

describe("reynoldsNumber, velocityInBore, regimeAt, frictionFactorLaminar", () => {
  it("reynoldsNumber is |v| d / ν and takes no notice of direction", () => {
    const pipe = { bore: 0.0158, viscosity: 1.0034e-6 };
    const re = (velocityInBore(0.0158, 2.4e-5) * 0.0158) / 1.0034e-6;
    expect(reynoldsNumber(pipe, 2.4e-5)).toBeCloseTo(re, 9);
    expect(reynoldsNumber(pipe, -2.4e-5)).toBe(reynoldsNumber(pipe, 2.4e-5));
    expect(velocityInBore(0.0158, -2.4e-5)).toBe(-velocityInBore(0.0158, 2.4e-5));
  });

  it("regimeAt names each regime with its bounds", () => {
    expect([0, 1, 1999.9, 2000, 3000, 4000, 4000.1].map(regimeAt)).toEqual([
      "still",
      "laminar",
      "laminar",
      "critical",
      "critical",
      "critical",
      "turbulent",
    ]);
    expect(() => regimeAt(-1)).toThrow(RangeError);
  });

  it("frictionFactorLaminar is 64/Re and refuses Re 0", () => {
    expect(frictionFactorLaminar(640)).toBe(0.1);
    expect(() => frictionFactorLaminar(0)).toThrow(RangeError);
  });
});
