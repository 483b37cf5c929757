import { describe, expect, it } from "vitest";
import { reynoldsNumber, velocityInBore } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import {
  headLossFitting,
  headLossOfCoefficient,
  lossCoefficientAtSize,
  lossCoefficientFromCv,
  lossCoefficientFromEquivalentLength,
  lossCoefficientFromKv,
  lossCoefficientOfBoreRatio,
  lossCoefficientOfWidening,
  lossCoefficientTwoK,
} from "../../../packages/hydraulics/src/physics/fittings.js";

const INCH = 0.0254;

describe("lossCoefficientTwoK", () => {
  // Hooper 1981, p. 97, as quoted by a general fluids library (seen): 2 in globe valve at Re 1e4.
  it("of a 2 in standard globe valve at Re 1e4 is 6.15", () => {
    expect(lossCoefficientTwoK({ k1: 1500, kInfinity: 4, bore: 2 * INCH }, 1e4)).toBeCloseTo(6.15, 12);
  });

  it("rises as flow slows and settles at the size-corrected coefficient", () => {
    const elbow = { k1: 800, kInfinity: 0.4, bore: 0.622 * INCH };
    const row = [1e5, 1e4, 2000, 1000, 500, 100].map((re) => lossCoefficientTwoK(elbow, re));
    for (let i = 1; i < row.length; i++) expect(row[i]!).toBeGreaterThan(row[i - 1]!);
    expect(lossCoefficientTwoK(elbow, 1e15)).toBeCloseTo(lossCoefficientAtSize(elbow), 10);
    expect(() => lossCoefficientTwoK(elbow, 0)).toThrow("reynolds is 0");
    expect(() => lossCoefficientTwoK({ ...elbow, k1: -1 }, 100)).toThrow("fitting.k1 is -1");
  });
});

describe("headLossFitting", () => {
  const fitting = { k1: 800, kInfinity: 1.04, bore: 0.0158, viscosity: 1.0034e-6 };

  it("is (K₁/Re + K∞) v²/2g", () => {
    for (const flow of [1e-8, 2.4e-5, 3e-4]) {
      const k = fitting.k1 / reynoldsNumber(fitting, flow) + fitting.kInfinity;
      const expected = headLossOfCoefficient(k, velocityInBore(fitting.bore, flow));
      expect(Math.abs(headLossFitting(fitting, flow) / expected - 1)).toBeLessThan(1e-14);
    }
  });

  it("is odd in flow, 0 at rest, and linear as flow vanishes", () => {
    expect(headLossFitting(fitting, 0)).toBe(0);
    expect(headLossFitting(fitting, -2e-5)).toBe(-headLossFitting(fitting, 2e-5));
    expect(headLossFitting(fitting, 2e-12) / headLossFitting(fitting, 1e-12)).toBeCloseTo(2, 6);
    expect(headLossFitting(fitting, 1e-300)).toBeGreaterThan(0);
  });

  it("at Reynolds 1 exactly is (K₁ + K∞) v²/2g, with v = ν/d", () => {
    const round = { ...fitting, bore: 0.5, viscosity: 1e-6 };
    const flow = (Math.PI * 0.5 * 1e-6) / 4;
    expect(reynoldsNumber(round, flow)).toBe(1);
    const velocity = 1e-6 / 0.5;
    expect(headLossFitting(round, flow) / ((801.04 * velocity ** 2) / (2 * 9.80665))).toBeCloseTo(1, 13);
  });

  it("refuses negative coefficients and a bore of nought", () => {
    expect(() => headLossFitting({ ...fitting, kInfinity: -0.1 }, 1e-5)).toThrow("fitting.kInfinity is -0.1");
    expect(() => headLossFitting({ ...fitting, bore: 0 }, 1e-5)).toThrow(RangeError);
  });
});

describe("headLossOfCoefficient", () => {
  // Technical Paper 410M, converging tee (seen): 4.026 in, K_run 0.325 loses 0.513 ft with 300 gpm in and 400 out;
  // K_branch −0.0421875 gains 0.0666 ft. Velocity head is that of the combined leg.
  it("agrees with a handbook's tee, gain included", () => {
    const velocity = velocityInBore(4.026 * INCH, (400 * 3.785411784e-3) / 60);
    expect(Math.abs(headLossOfCoefficient(0.325, velocity) / 0.3048 / 0.513 - 1)).toBeLessThan(0.005);
    expect(Math.abs(headLossOfCoefficient(-0.0421875, velocity) / 0.3048 / -0.0666 - 1)).toBeLessThan(0.005);
  });

  it("turns with the velocity", () => {
    expect(headLossOfCoefficient(2, -1)).toBe(-headLossOfCoefficient(2, 1));
    expect(() => headLossOfCoefficient(Number.NaN, 1)).toThrow(RangeError);
  });
});

describe("lossCoefficientFromKv and lossCoefficientFromCv", () => {
  // Technical Paper 410M, Example 7-2 (seen): K_v 500 m³/h in 154 mm is K 3.6.
  it("lossCoefficientFromKv gives a handbook's 3.6", () => {
    expect(Math.abs(lossCoefficientFromKv({ kv: 500, bore: 0.154 }) / 3.6 - 1)).toBeLessThan(0.005);
  });

  // K = 890 d⁴/C_v², d in inches (from memory).
  it("lossCoefficientFromCv gives the handbook's 890 d⁴/C_v² to its three figures", () => {
    const expected = (890 * 0.824 ** 4) / 6 ** 2;
    expect(Math.abs(lossCoefficientFromCv({ cv: 6, bore: 0.824 * INCH }) / expected - 1)).toBeLessThan(0.001);
  });

  // K_v = 0.865 C_v (from memory).
  it("one valve has the same K by either factor", () => {
    const ratio =
      lossCoefficientFromKv({ kv: 0.865 * 6, bore: 0.02 }) / lossCoefficientFromCv({ cv: 6, bore: 0.02 });
    expect(Math.abs(ratio - 1)).toBeLessThan(0.002);
    expect(() => lossCoefficientFromKv({ kv: 0, bore: 0.02 })).toThrow("valve.kv is 0");
    expect(() => lossCoefficientFromCv({ cv: 1, bore: -1 })).toThrow("valve.bore is -1");
  });
});

describe("lossCoefficientOfBoreRatio and lossCoefficientFromEquivalentLength", () => {
  it("lossCoefficientOfBoreRatio of a half is (3/8 + 9/16) 16 = 15, of one is none", () => {
    expect(lossCoefficientOfBoreRatio(0.5)).toBe(15);
    expect(lossCoefficientOfBoreRatio(1)).toBe(0);
    expect(() => lossCoefficientOfBoreRatio(0)).toThrow(RangeError);
    expect(() => lossCoefficientOfBoreRatio(1.01)).toThrow("from 0 to 1");
  });

  // Borda and Carnot: the velocity that is lost, squared, over 2 g; at half the bore the jet is four times as fast.
  it("lossCoefficientOfWidening of a half is (4 - 1) squared, of one is none", () => {
    expect(lossCoefficientOfWidening(0.5)).toBe(9);
    expect(lossCoefficientOfWidening(1)).toBe(0);
    expect(() => lossCoefficientOfWidening(1.01)).toThrow("from 0 to 1");
  });

  // Technical Paper 410M, Example 7-2 (seen): 37.0 m of 154 mm pipe at f 0.015 is K 3.6.
  it("lossCoefficientFromEquivalentLength gives a handbook's 3.6", () => {
    const k = lossCoefficientFromEquivalentLength({
      equivalentLength: 37,
      bore: 0.154,
      frictionFactor: 0.015,
    });
    expect(Math.abs(k / 3.6 - 1)).toBeLessThan(0.005);
    expect(() =>
      lossCoefficientFromEquivalentLength({ equivalentLength: -1, bore: 0.154, frictionFactor: 0.015 }),
    ).toThrow("fitting.equivalentLength is -1");
  });
});
