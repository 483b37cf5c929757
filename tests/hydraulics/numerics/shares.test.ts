import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chanceAbove,
  expectedInformation,
  logOfSum,
  sharesOfLogs,
} from "../../../packages/hydraulics/src/numerics/shares.js";

const weights = fc.array(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 8 });

describe("sharesOfLogs", () => {
  it("gives each weight over their sum, whatever factor all of them carry", () => {
    fc.assert(
      fc.property(weights, fc.double({ min: -2000, max: 2000, noNaN: true }), (w, shift) => {
        const sum = w.reduce((a, b) => a + b, 0);
        const shares = sharesOfLogs(w.map((one) => Math.log(one) + shift));
        for (const [i, share] of shares.entries()) expect(share).toBeCloseTo(w[i]! / sum, 9);
      }),
    );
  });

  it("gives nothing to a weight of nought, and nothing at all where there is no other", () => {
    expect(sharesOfLogs([Number.NEGATIVE_INFINITY, 0])).toEqual([0, 1]);
    expect(sharesOfLogs([Number.NEGATIVE_INFINITY])).toEqual([0]);
  });
});

describe("logOfSum", () => {
  it("is the logarithm of the sum, also where its parts would underflow", () => {
    expect(logOfSum([Math.log(2), Math.log(3)])).toBeCloseTo(Math.log(5), 12);
    expect(logOfSum([-2000, -2000])).toBeCloseTo(-2000 + Math.log(2), 9);
    expect(logOfSum([])).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe("expectedInformation", () => {
  // Capacity of a binary symmetric channel, 1 - H(e), by hand: e = 0.11 gives 0.5001 bit (Shannon 1948, from memory).
  it("of two states and an answer that errs in 11 of 100 is half a bit", () => {
    const information = expectedInformation(
      [0.5, 0.5],
      [
        [0.89, 0.11],
        [0.11, 0.89],
      ],
    );
    expect(information).toBeCloseTo(0.5, 3);
  });

  it("expectedInformation of no state at all is nothing", () => {
    expect(expectedInformation([], [])).toBe(0);
  });

  it("is nought where every state answers alike, a bit where the answer tells, never below nought nor above log2 of the answers", () => {
    const row = fc
      .tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.double({ min: 0.001, max: 1, noNaN: true }))
      .map(([a, b]) => [a / (a + b), b / (a + b)]);
    fc.assert(
      fc.property(row, row, row, (shares, one, other) => {
        expect(expectedInformation(shares, [one, one])).toBeCloseTo(0, 12);
        const information = expectedInformation(shares, [one, other]);
        expect(information).toBeGreaterThanOrEqual(0);
        expect(information).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
    expect(
      expectedInformation(
        [0.5, 0.5],
        [
          [1, 0],
          [0, 1],
        ],
      ),
    ).toBe(1);
  });
});

it("chanceAbove rises from nought through a half to one", () => {
  expect([chanceAbove(-800), chanceAbove(0), chanceAbove(800)]).toEqual([0, 0.5, 1]);
});
