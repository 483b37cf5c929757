import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildMonotoneCurve } from "../../../packages/hydraulics/src/numerics/monotone-curve.js";

const risingRows = fc
  .array(
    fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 0.01, max: 10, noNaN: true })),
    {
      minLength: 1,
      maxLength: 12,
    },
  )
  .map((steps) => {
    const x = [0];
    const y = [0];
    for (const [dx, dy] of steps) {
      x.push(x[x.length - 1]! + dx);
      y.push(y[y.length - 1]! + dy);
    }
    return { x, y };
  });

describe("buildMonotoneCurve", () => {
  it("passes through its points and never falls between them", () => {
    fc.assert(
      fc.property(risingRows, ({ x, y }) => {
        const curve = buildMonotoneCurve(x, y);
        for (const [i, place] of x.entries()) expect(curve.at(place)).toBeCloseTo(y[i]!, 10);
        const end = x[x.length - 1]!;
        expect([curve.at(0), curve.at(end)]).toEqual([0, y[y.length - 1]!]);
        let before = 0;
        for (let i = 0; i <= 500; i++) {
          const value = curve.at((end * i) / 500);
          expect(value).toBeGreaterThanOrEqual(before - 1e-12 * y[y.length - 1]!);
          expect(curve.slopeAt((end * i) / 500)).toBeGreaterThanOrEqual(-1e-12);
          before = value;
        }
      }),
    );
  });

  it("is the straight line where the points lie on one", () => {
    const curve = buildMonotoneCurve([0, 1, 3, 4], [0, 2, 6, 8]);
    for (const place of [0, 0.3, 1.7, 3.9]) {
      expect(curve.at(place)).toBeCloseTo(2 * place, 14);
      expect(curve.slopeAt(place)).toBeCloseTo(2, 13);
    }
  });

  it("slopeAt is the derivative of at", () => {
    const curve = buildMonotoneCurve([0, 1, 2, 4, 5], [0, 0.2, 2, 2.5, 6]);
    for (const place of [0.2, 0.9, 1.5, 3.3, 4.7]) {
      const step = 1e-6;
      const difference = (curve.at(place + step) - curve.at(place - step)) / (2 * step);
      expect(curve.slopeAt(place)).toBeCloseTo(difference, 7);
    }
  });

  // Fritsch and Butland's mean by hand: widths 1 and 2, slopes 1 and 2, so w 5 and 4: 9 / (5/1 + 4/2); other way 4 and 5.
  it("leans at a place between as the weighted harmonic mean of its neighbours says", () => {
    expect(buildMonotoneCurve([0, 1, 3], [0, 1, 5]).slopeAt(1)).toBeCloseTo(9 / 7, 14);
    expect(buildMonotoneCurve([0, 2, 3], [0, 2, 4]).slopeAt(2)).toBeCloseTo(9 / (4 + 5 / 2), 14);
  });

  it("is held at its ends beyond them", () => {
    const curve = buildMonotoneCurve([0, 1, 2], [1, 2, 4]);
    expect(curve.at(-5)).toBe(1);
    expect(curve.at(9)).toBe(4);
    expect(curve.slopeAt(-5)).toBe(curve.slopeAt(0));
    expect(curve.slopeAt(9)).toBe(curve.slopeAt(2));
  });

  it("ends with the slope of the parabola through the three nearest points, kept between none and thrice the secant", () => {
    // ((2 h1 + h2) d1 - h1 d2) / (h1 + h2): 0.05 at the one end, 0.25 at the other.
    const { slopeAt } = buildMonotoneCurve([0, 1, 2], [0, 0.1, 0.3]);
    expect(slopeAt(0)).toBeCloseTo(0.05, 14);
    expect(slopeAt(2)).toBeCloseTo(0.25, 14);
    expect(buildMonotoneCurve([0, 1, 2], [0, 0.1, 0.9]).slopeAt(0)).toBe(0);
    expect(buildMonotoneCurve([0, 1, 1.01], [0, 1, 1.000001]).slopeAt(0)).toBeLessThanOrEqual(3);
  });

  it("refuses lists of other lengths and rows that do not rise", () => {
    expect(() => buildMonotoneCurve([0, 1], [0])).toThrow("2 places and 1 values");
    expect(() => buildMonotoneCurve([0], [0])).toThrow(RangeError);
    expect(() => buildMonotoneCurve([0, 1, 1], [0, 1, 2])).toThrow("row 2 does not rise above row 1");
    expect(() => buildMonotoneCurve([0, 1, 2], [0, 1, 0.5])).toThrow("row 2");
    expect(() => buildMonotoneCurve([0, Number.NaN], [0, 1])).toThrow(RangeError);
    expect(() => buildMonotoneCurve([0, 1], [-1e308, 1e308])).toThrow(RangeError);
    expect(() => buildMonotoneCurve([-1e308, 1e308], [0, 1])).toThrow(RangeError);
  });
});
