import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { startSum, sumOf } from "../../../packages/hydraulics/src/numerics/sum.js";

describe("sumOf", () => {
  it("sumOf(1, 1e100, 1, −1e100) is 2 where plain addition gives 0", () => {
    expect(sumOf([1, 1e100, 1, -1e100])).toBe(2);
  });

  it("adds ten million tenths to a million exactly", () => {
    const sum = startSum();
    let plain = 0;
    for (let i = 0; i < 10_000_000; i++) {
      sum.add(0.1);
      plain += 0.1;
    }
    // 0.1 as a double is 0.1 + 5.55e-18; ten million of them round to 1000000.
    expect(sum.total()).toBe(1e6);
    expect(plain).not.toBe(1e6);
  });

  it("of none is 0 and of one is that one", () => {
    expect(sumOf([])).toBe(0);
    expect(sumOf([3.3])).toBe(3.3);
  });

  // Whole numbers add exactly as big integers: an independent sum.
  it("is the exact sum, rounded, for whole numbers of any size up to 2^53", () => {
    fc.assert(
      fc.property(fc.array(fc.maxSafeInteger(), { maxLength: 50 }), (terms) => {
        const exact = terms.reduce((total, term) => total + BigInt(term), 0n);
        expect(Math.abs(sumOf(terms) - Number(exact))).toBeLessThanOrEqual(
          Math.abs(Number(exact)) * Number.EPSILON,
        );
      }),
    );
  });

  it("gives infinity, not NaN, beyond the largest double", () => {
    expect(sumOf([1.7e308, 1.7e308])).toBe(Number.POSITIVE_INFINITY);
  });
});
