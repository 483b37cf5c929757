import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  binomialQuantile,
  erlangB,
  erlangC,
  meanWait,
} from "../../../packages/hydraulics/src/birds/queue.js";

/** Loads at which the loss is 1 %, by places: printed in teletraffic tables everywhere (from memory). */
const LOADS_AT_ONE_PERCENT = [
  [1, 0.0101],
  [2, 0.153],
  [5, 1.36],
  [10, 4.46],
  [20, 12.03],
  [50, 37.9],
  [100, 84.06],
] as const;

describe("erlangB", () => {
  test.each(LOADS_AT_ONE_PERCENT)(
    "erlangB(%i places) is 1 %% at the load of the printed tables",
    (places, load) => {
      expect(Math.abs(erlangB(places, load) - 0.01)).toBeLessThan(0.0002);
    },
  );

  test("erlangB is the sum formula it was published as, a different sum from the recursion", () => {
    const bySum = (places: number, load: number) => {
      let term = 1;
      let sum = 1;
      for (let k = 1; k <= places; k += 1) {
        term *= load / k;
        sum += term;
      }
      return term / sum;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (places, load) => {
          expect(erlangB(places, load)).toBeCloseTo(bySum(places, load), 12);
        },
      ),
    );
  });

  test("erlangB falls with each place more and rises with the load", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 80 }),
        fc.double({ min: 0.01, max: 80, noNaN: true }),
        (places, load) => {
          expect(erlangB(places + 1, load)).toBeLessThanOrEqual(erlangB(places, load));
          expect(erlangB(places, load * 1.1)).toBeGreaterThanOrEqual(erlangB(places, load));
        },
      ),
    );
  });

  test("erlangB refuses what is no count, in one line", () => {
    expect(() => erlangB(1.5, 1)).toThrow(RangeError);
    expect(() => erlangB(2, -1)).toThrow(RangeError);
    expect(() => erlangB(-1, 1)).toThrow("erlangB: count is -1; it must be finite and not below 0");
  });
});

describe("erlangC and meanWait", () => {
  test("one place is the plain queue: chance A, wait A s / (1 - A)", () => {
    for (const load of [0.1, 0.5, 0.9]) {
      expect(erlangC(1, load)).toBeCloseTo(load, 12);
      expect(meanWait({ places: 1, load, meanSeconds: 10 })).toBeCloseTo((10 * load) / (1 - load), 9);
    }
  });

  // Gross and Harris, Fundamentals of Queueing Theory, M/M/c with c = 3 and A = 2: C = 4/9 (from memory).
  test("three places and a load of two wait with the chance 4/9", () => {
    expect(erlangC(3, 2)).toBeCloseTo(4 / 9, 12);
  });

  test("from as much load as places on all wait, without end", () => {
    expect(erlangC(3, 3)).toBe(1);
    expect(meanWait({ places: 3, load: 4, meanSeconds: 10 })).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("binomialQuantile", () => {
  test("binomialQuantile is the number whose cumulated chance first reaches the share, summed from zero", () => {
    const byDefinition = (count: number, chance: number, within: number) => {
      let weight = (1 - chance) ** count;
      let sum = weight;
      let k = 0;
      while (sum < within && k < count) {
        weight *= ((count - k) * chance) / ((k + 1) * (1 - chance));
        sum += weight;
        k += 1;
      }
      return k;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        fc.double({ min: 0.01, max: 0.995, noNaN: true }),
        (count, chance, within) => {
          expect(
            Math.abs(binomialQuantile({ count, chance, within }) - byDefinition(count, chance, within)),
          ).toBeLessThanOrEqual(0);
        },
      ),
    );
  });

  test("binomialQuantile does not underflow with many birds", () => {
    const within = binomialQuantile({ count: 100_000, chance: 0.5, within: 0.99 });
    expect(within).toBeGreaterThan(50_000 + 2.3 * 158.1);
    expect(within).toBeLessThan(50_000 + 2.4 * 158.1);
  });

  test("binomialQuantile of no share at all is nobody; chances and shares that are none are refused", () => {
    expect(binomialQuantile({ count: 10, chance: 0.3, within: 0 })).toBe(0);
    expect(binomialQuantile({ count: 10, chance: 0.3, within: 1 })).toBe(10);
    expect(() => binomialQuantile({ count: 10, chance: 1.1, within: 0.5 })).toThrow(
      /^binomialQuantile: chance is 1.1/,
    );
    expect(() => binomialQuantile({ count: 10, chance: 0.5, within: -0.1 })).toThrow(
      /^binomialQuantile: within is -0.1/,
    );
  });

  test("nobody, everybody", () => {
    expect([
      binomialQuantile({ count: 10, chance: 0, within: 0.99 }),
      binomialQuantile({ count: 10, chance: 1, within: 0.5 }),
      binomialQuantile({ count: 0, chance: 0.3, within: 0.9 }),
    ]).toEqual([0, 10, 0]);
  });
});
