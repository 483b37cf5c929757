import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  flowHazenWilliams,
  HAZEN_WILLIAMS_RANGE,
  headLossHazenWilliams,
  isHazenWilliamsInRange,
} from "../../../packages/hydraulics/src/physics/hazen-williams.js";

const INCH = 0.0254;
const GALLON_PER_MINUTE = 3.785411784e-3 / 60;
const METRES_OF_WATER_PER_PSI = 6894.757293168 / 9806.65;
const per100 = (boreIn: number, coefficient: number) => ({ length: 100, bore: boreIn * INCH, coefficient });

describe("headLossHazenWilliams", () => {
  // Illinois Administrative Code 77, Part 906, Appendix A, Exhibit I (seen): PVC, C = 150, ft per 100 ft.
  // Tolerance: the table's two or three digits, and its own constant (0.7 to 1.3 % above 10.67).
  it.each([
    [1, 1.049, 0.07, 0.13],
    [5, 1.049, 1.52, 0.04],
    [10, 1.049, 5.5, 0.04],
    [5, 1.38, 0.39, 0.04],
    [10, 1.38, 1.46, 0.04],
    [10, 1.61, 0.7, 0.04],
    [20, 2.067, 0.74, 0.04],
  ])("agrees with a state's friction table at %d gpm in %d in", (gallons, boreIn, expected, relative) => {
    const loss = headLossHazenWilliams(per100(boreIn, 150), gallons * GALLON_PER_MINUTE);
    expect(Math.abs(loss / expected - 1)).toBeLessThan(relative);
  });

  // The US form 0.2083 (100/C)^1.852 q^1.852 / d^4.8655 ft per 100 ft (seen): an independent constant.
  it("stays 0.7 to 1.3 % below the US form in 1/2 to 2 in Schedule 40 at 1 to 10 gpm", () => {
    for (const boreIn of [0.622, 0.824, 1.049, 1.61, 2.067]) {
      for (const gallons of [1, 3, 10]) {
        const us = (0.2083 * (100 / 150) ** 1.852 * gallons ** 1.852) / boreIn ** 4.8655;
        const ratio = us / headLossHazenWilliams(per100(boreIn, 150), gallons * GALLON_PER_MINUTE);
        expect(ratio).toBeGreaterThan(1.0065);
        expect(ratio).toBeLessThan(1.0135);
      }
    }
  });

  // Problem 3.1 of a solved problem set prints 6.69 m; its own inputs give 8.01 m (a slip, kept as a warning).
  it("gives 8.01 m, not the misprinted 6.69 m, for 800 m of 0.4 m pipe at 0.25 m³/s and C = 120", () => {
    expect(headLossHazenWilliams({ length: 800, bore: 0.4, coefficient: 120 }, 0.25)).toBeCloseTo(8.01, 1);
  });

  it("is odd in flow, nought at rest and proportional to length", () => {
    const run = { length: 30, bore: 0.0158, coefficient: 150 };
    expect(headLossHazenWilliams(run, -3e-5)).toBe(-headLossHazenWilliams(run, 3e-5));
    expect(headLossHazenWilliams(run, 0)).toBe(0);
    const twice = headLossHazenWilliams({ ...run, length: 60 }, 3e-5);
    expect(twice / headLossHazenWilliams(run, 3e-5)).toBeCloseTo(2, 14);
    expect(headLossHazenWilliams({ ...run, length: 0 }, 3e-5)).toBe(0);
  });

  it("refuses a bore of nought, a negative length and a flow that is no number", () => {
    const run = { length: 30, bore: 0.0158, coefficient: 150 };
    expect(() => headLossHazenWilliams({ ...run, bore: 0 }, 1e-5)).toThrow(
      "headLossHazenWilliams: run.bore is 0; it must be finite and above 0",
    );
    expect(() => headLossHazenWilliams({ ...run, length: -1 }, 1e-5)).toThrow("not below 0");
    expect(() => headLossHazenWilliams({ ...run, coefficient: Number.NaN }, 1e-5)).toThrow(RangeError);
    expect(() => headLossHazenWilliams(run, Number.NaN)).toThrow("flow is NaN");
  });
});

describe("flowHazenWilliams", () => {
  // Iowa State University Extension, Horticulture & Home Pest News, 28 June 1996, p. 111 (seen): gallons per
  // minute through 100 ft of hose at 40 psi; C = 140 is our reading. Tolerance: the table's whole gallons.
  it.each([
    [0.5, 6],
    [0.625, 11],
    [0.75, 18],
  ])("gives an extension table's discharge of a garden hose of %d in: %d gpm", (boreIn, gallons) => {
    const run = { length: 100 * 0.3048, bore: boreIn * INCH, coefficient: 140 };
    const flow = flowHazenWilliams(run, 40 * METRES_OF_WATER_PER_PSI) / GALLON_PER_MINUTE;
    expect(Math.abs(flow / gallons - 1)).toBeLessThan(0.13);
  });

  it("undoes headLossHazenWilliams, either way round", () => {
    const flows = fc.double({ min: -1e-2, max: 1e-2, noNaN: true }).filter((flow) => Math.abs(flow) > 1e-12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 0.004, max: 0.1, noNaN: true }),
        fc.double({ min: 60, max: 150, noNaN: true }),
        flows,
        (length, bore, coefficient, flow) => {
          const run = { length, bore, coefficient };
          const back = flowHazenWilliams(run, headLossHazenWilliams(run, flow));
          expect(Math.abs(back / flow - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it("refuses a run of no length, where any flow would do", () => {
    expect(() => flowHazenWilliams({ length: 0, bore: 0.0158, coefficient: 150 }, 1)).toThrow(RangeError);
  });
});

describe("isHazenWilliamsInRange", () => {
  const inside = { bore: 0.1, velocity: 1, reynolds: 1e5, temperatureC: 15 };

  it("accepts a town main at 15 °C, flowing either way", () => {
    expect(isHazenWilliamsInRange(inside)).toBe(true);
    expect(isHazenWilliamsInRange({ ...inside, velocity: -1, reynolds: -1e5 })).toBe(true);
  });

  it("refuses each limit alone: small bore, fast or slow water, cold, hot, and no number", () => {
    const { bore, reynolds, velocity, temperatureC } = HAZEN_WILLIAMS_RANGE;
    for (const change of [
      { bore: bore.least * 0.99 },
      { bore: bore.greatest * 1.01 },
      { reynolds: reynolds.least * 0.99 },
      { reynolds: reynolds.greatest * 1.01 },
      { velocity: velocity.greatest * 1.01 },
      { temperatureC: temperatureC.least - 0.1 },
      { temperatureC: temperatureC.greatest + 0.1 },
      { bore: Number.NaN },
    ]) {
      expect(isHazenWilliamsInRange({ ...inside, ...change })).toBe(false);
    }
  });
});
