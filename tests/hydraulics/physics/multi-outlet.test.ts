import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  multiOutletFactor,
  multiOutletFactorExact,
  multiOutletFactorHalfSpacing,
} from "../../../packages/hydraulics/src/physics/multi-outlet.js";

describe("multiOutletFactor", () => {
  // Published tables after Christiansen 1942, m = 1.852 (from memory): three printed figures.
  it.each([
    [2, 0.639],
    [5, 0.457],
    [6, 0.438],
    [8, 0.416],
    [10, 0.402],
    [20, 0.376],
  ])("for %d outlets and m = 1.852 is the table's %d", (count, expected) => {
    expect(Math.abs(multiOutletFactor(count, 1.852) - expected)).toBeLessThan(0.0006);
  });

  it("is within 0.2 % of the exact sum from two outlets up at the exponents of turbulent flow", () => {
    for (const exponent of [1.75, 1.852, 2]) {
      for (let count = 2; count <= 200; count++) {
        const ratio = multiOutletFactor(count, exponent) / multiOutletFactorExact(count, exponent);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.002);
      }
    }
  });

  it("is 1 for one outlet and nears 1/(m + 1) for very many", () => {
    expect(multiOutletFactor(1, 1.852)).toBe(1);
    expect(multiOutletFactorExact(1, 1.852)).toBe(1);
    expect(multiOutletFactorHalfSpacing(1, 1.852)).toBe(1);
    expect(multiOutletFactor(1e6, 1.852)).toBeCloseTo(1 / 2.852, 5);
  });
});

describe("multiOutletFactorExact", () => {
  it("in laminar flow is (N + 1)/(2N)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (count) => {
        expect(multiOutletFactorExact(count, 1)).toBeCloseTo((count + 1) / (2 * count), 12);
      }),
    );
  });

  it("with m = 2 is (N + 1)(2N + 1)/(6N²)", () => {
    for (const count of [1, 2, 7, 60]) {
      expect(multiOutletFactorExact(count, 2)).toBeCloseTo(
        ((count + 1) * (2 * count + 1)) / (6 * count ** 2),
        12,
      );
    }
  });
});

describe("multiOutletFactorHalfSpacing", () => {
  // A published row (seen) that is m = 1.9: 1.000, 0.512, 0.434, 0.405. Its 0.380 for five is a slip: 0.390.
  it.each([
    [1, 1.0],
    [2, 0.512],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the row's own three figures
    [3, 0.434],
    [4, 0.405],
  ])("for %d outlets and m = 1.9 is the row's %d", (count, expected) => {
    expect(Math.abs(multiOutletFactorHalfSpacing(count, 1.9) - expected)).toBeLessThan(0.001);
  });

  it("for five is 0.390, not the misprinted 0.380", () => {
    expect(multiOutletFactorHalfSpacing(5, 1.9)).toBeCloseTo(0.39, 3);
  });

  it("is the exact sum over a first half spacing and N − 1 whole ones, but for Christiansen's rounding", () => {
    for (const count of [3, 10, 40]) {
      let sum = 0.5; // the half spacing carries all
      for (let k = 1; k < count; k++) sum += (k / count) ** 1.852;
      expect(multiOutletFactorHalfSpacing(count, 1.852)).toBeCloseTo(sum / (count - 0.5), 3);
    }
  });
});

describe("all three", () => {
  it("refuse a count that is not whole and an exponent of no loss law", () => {
    for (const factor of [multiOutletFactor, multiOutletFactorExact, multiOutletFactorHalfSpacing]) {
      expect(() => factor(0, 1.852)).toThrow(
        `${factor.name}: count is 0; it must be a whole number, 1 or more`,
      );
      expect(() => factor(2.5, 1.852)).toThrow(RangeError);
      expect(() => factor(5, 0.9)).toThrow("exponent is 0.9; it must be from 1 to 2");
    }
  });
});
