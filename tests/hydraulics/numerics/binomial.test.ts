import { describe, expect, it } from "vitest";
import { chanceOfAtMost } from "../../../packages/hydraulics/src/numerics/binomial.js";

describe("chanceOfAtMost", () => {
  it("is a sum of Pascal's triangle for a fair coin", () => {
    const of = (successes: number) => chanceOfAtMost({ count: 4, successes, chance: 0.5 });
    expect([-1, 0, 1, 2, 3, 4, 5].map(of)).toEqual([0, 1 / 16, 5 / 16, 11 / 16, 15 / 16, 1, 1]);
  });

  it("is that of all failing, and of not all succeeding, in closed form", () => {
    expect(chanceOfAtMost({ count: 200, successes: 0, chance: 0.05 })).toBeCloseTo(0.95 ** 200, 15);
    expect(chanceOfAtMost({ count: 200, successes: 199, chance: 0.95 })).toBeCloseTo(1 - 0.95 ** 200, 12);
  });

  it("is certain of none, where nobody tries", () => {
    expect(chanceOfAtMost({ count: 0, successes: 0, chance: 0.3 })).toBe(1);
    expect(chanceOfAtMost({ count: 0, successes: -1, chance: 0.3 })).toBe(0);
  });

  it("comes near the normal law for many", () => {
    // Half a step within the mean, a thousandth of the width: 0.5 + 0.5 φ(0)/σ, and the skewness of order 1/σ.
    const sigma = Math.sqrt(1e5 * 0.25);
    expect(chanceOfAtMost({ count: 1e5, successes: 5e4, chance: 0.5 })).toBeCloseTo(
      0.5 + 0.5 / (sigma * Math.sqrt(2 * Math.PI)),
      6,
    );
  });

  it("refuses counts and chances that are none", () => {
    expect(() => chanceOfAtMost({ count: 1.5, successes: 1, chance: 0.5 })).toThrow("count is 1.5");
    expect(() => chanceOfAtMost({ count: -1, successes: 1, chance: 0.5 })).toThrow("count is -1");
    expect(() => chanceOfAtMost({ count: 2, successes: 1, chance: 0 })).toThrow("chance is 0");
    expect(() => chanceOfAtMost({ count: 2, successes: 1, chance: 1 })).toThrow("chance is 1");
  });
});
