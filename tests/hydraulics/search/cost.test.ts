import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addCosts, compareBy, costOfPipe, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";

describe("costOfPipe", () => {
  it("buys what is not on hand: 6 and 5 m with 4 m there are 7 m at 2 a metre", () => {
    expect(costOfPipe({ pipe: "pvc-sch40-1/2", price: 2, onHand: 4 }, [6, 5])).toEqual({
      money: 14,
      unpriced: 0,
      parts: 2,
      pipe: 7,
      runs: 2,
      stand: 0,
    });
  });

  it("buys nothing where enough lies there, and counts what has no price as such", () => {
    expect(costOfPipe({ pipe: "a", price: undefined, onHand: 12 }, [6, 5])).toEqual({ ...NO_COST, runs: 2 });
    expect(costOfPipe({ pipe: "a", price: undefined, onHand: 0 }, [6])).toMatchObject({
      parts: 1,
      unpriced: 1,
    });
  });

  it("never costs less for many runs than the runs one by one", () => {
    const lengths = fc.array(fc.double({ min: 0.1, max: 50, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(lengths, fc.double({ min: 0, max: 80, noNaN: true }), (each, onHand) => {
        const size = { pipe: "a", price: 3, onHand };
        const alone = each.map((length) => costOfPipe(size, [length])).reduce(addCosts);
        const together = costOfPipe(size, each);
        for (const key of ["money", "parts", "pipe", "runs"] as const)
          expect(together[key]).toBeGreaterThanOrEqual(alone[key] - 1e-9);
      }),
    );
  });
});

describe("compareBy", () => {
  const raised = { ...NO_COST, stand: 0.2 };
  const piped = { ...NO_COST, money: 5, parts: 1, pipe: 3, runs: 1 };

  it("puts centimetres, parts or money first, as asked", () => {
    expect(compareBy("stand")(raised, piped)).toBeGreaterThan(0);
    expect(compareBy("parts")(raised, piped)).toBeLessThan(0);
    expect(compareBy("money")(raised, piped)).toBeLessThan(0);
  });

  it("puts what has no price after all that has one", () => {
    expect(compareBy("money")({ ...NO_COST, unpriced: 1 }, { ...NO_COST, money: 1000 })).toBeGreaterThan(0);
  });

  it("takes differences of rounding for none", () => {
    expect(compareBy("money")({ ...NO_COST, money: 0.1 + 0.2 }, { ...NO_COST, money: 0.3 })).toBe(0);
  });
});
