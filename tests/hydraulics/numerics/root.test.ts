import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRoot, type RootOutcome } from "../../../packages/hydraulics/src/numerics/root.js";

describe("findRoot", () => {
  it("findRoot(x² − 2) is √2 to the last bit but one", () => {
    const found = findRoot((x) => x * x - 2, 0, 2);
    expect(found.outcome).toBe("found");
    expect(Math.abs(found.root - Math.SQRT2)).toBeLessThanOrEqual(4 * Number.EPSILON);
    expect(found.evaluations).toBeLessThan(15);
  });

  // Chandrupatla's test functions are of this family: flat, many-fold, and steep roots.
  it.each<[string, (x: number) => number, number, number, number]>([
    ["a ninefold root", (x) => (x - 1) ** 9, -3, 4.5, 1],
    ["a cubic", (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ["cos x = x", (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ["a steep exponential", (x) => Math.exp(30 * x) - 1e6, -1, 2, (6 * Math.LN10) / 30],
    ["a square root's end", (x) => Math.sqrt(Math.max(x, 0)) - 1e-6, 0, 1, 1e-12],
    ["reversed ends", (x) => x - 0.25, 1, 0, 0.25],
  ])("finds %s", (_, residual, from, to, expected) => {
    const found = findRoot(residual, from, to);
    expect(found.outcome).toBe("found");
    expect(Math.abs(found.root - expected)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(expected)));
    expect(found.bracket[0]).toBeLessThanOrEqual(found.bracket[1]);
  });

  it("keeps a change of sign in its bracket for any rising cubic", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 1e-6, max: 100, noNaN: true }),
        (root, cubic, linear) => {
          const residual = (x: number) => cubic * (x - root) ** 3 + linear * (x - root);
          const found = findRoot(residual, root - 7, root + 11);
          expect(found.outcome).toBe("found");
          expect(found.residual).toBe(residual(found.root));
          expect(Math.abs(found.root - root)).toBeLessThan(1e-13);
          // Plain halving from 18 down to 2e-31 takes 109 calls; trials of interpolation near 0 cost a few more.
          expect(found.evaluations).toBeLessThanOrEqual(130);
        },
      ),
    );
  });

  it("stops at the tolerance asked for, sooner than at rounding", () => {
    const residual = (x: number) => Math.exp(x) - 5;
    const rough = findRoot(residual, 0, 4, { tolerance: 1e-2 });
    expect(Math.abs(rough.root - Math.log(5))).toBeLessThan(1e-2);
    expect(rough.evaluations).toBeLessThan(findRoot(residual, 0, 4).evaluations);
  });

  it("gives the better of the two ends it has come to, on whichever side of nought that is", () => {
    for (let k = 0; k < 40; k += 1) {
      const residual = (x: number) => (k % 2 === 0 ? 1 : -1) * (Math.exp(x) - 1.05 - k / 9);
      const { root, residual: left, bracket } = findRoot(residual, -1, 3, { tolerance: 0.05 });
      expect(left).toBe(residual(root));
      expect(Math.abs(left)).toBe(Math.min(...bracket.map((end) => Math.abs(residual(end)))));
    }
  });

  it("takes no more calls than recorded: one more is waited for wherever a root is sought", () => {
    const calls = [
      findRoot((x) => x * x - 2, 0, 2),
      findRoot((x) => Math.exp(x) - 5, 0, 4, { tolerance: 1e-6 }),
      findRoot((x) => x ** 3 - 2 * x - 5, 2, 3),
      findRoot((x) => Math.cos(x) - x, 0, 1, { tolerance: 1e-9 }),
      findRoot((x) => (x - 1) ** 9, -3, 4.5, { tolerance: 1e-3 }),
      findRoot((x) => Math.atan(x - 0.3), -5, 8),
      findRoot((x) => Math.sqrt(x) - 0.1, 0, 1),
      findRoot((x) => x * Math.exp(x), 3, -2),
      findRoot((x) => x ** 3, -0.001, 5),
    ];
    const recorded = [9, 9, 9, 8, 15, 11, 6, 13, 115];
    recorded.forEach((most, i) => void expect(calls[i]!.evaluations).toBeLessThanOrEqual(most));
  });

  it("gives up after 200 calls, unless told to go on, where a root is sought to the last bit next to nought", () => {
    const step = (x: number) => (x < 1e-310 ? -1 : 1);
    expect(findRoot(step, 0, 1, { tolerance: 0 })).toMatchObject({ outcome: "spent", evaluations: 200 });
    expect(findRoot(step, 0, 1, { tolerance: 0, evaluationsAllowed: 2000 }).outcome).toBe("found");
  });

  it("gives every outcome when its cause is there", () => {
    const provoked: Record<RootOutcome, RootOutcome> = {
      found: findRoot((x) => x, -1, 2).outcome,
      "no-bracket": findRoot((x) => x * x + 1, -1, 2).outcome,
      spent: findRoot((x) => x ** 9 - 0.1, -1, 2, { evaluationsAllowed: 4 }).outcome,
      "not-a-number": findRoot((x) => (x > -0.5 && x < 1.5 ? Number.NaN : x), -1, 2).outcome,
    };
    for (const [expected, outcome] of Object.entries(provoked)) expect(outcome).toBe(expected);
    expect(findRoot(() => Number.NaN, -1, 2).outcome).toBe("not-a-number");
  });

  it("accepts a root at either end and a jump through nought", () => {
    expect(findRoot((x) => x, 0, 1)).toMatchObject({ outcome: "found", root: 0, evaluations: 2 });
    expect(findRoot((x) => x - 1, 0, 1)).toMatchObject({ outcome: "found", root: 1 });
    const jump = findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1);
    expect(jump.outcome).toBe("found");
    expect(Math.abs(jump.root - 0.3)).toBeLessThan(1e-15);
  });

  it("copes with ends whose values are infinite", () => {
    const found = findRoot((x) => Math.log(x) + 3, 0, 1);
    expect(found.outcome).toBe("found");
    expect(found.root).toBeCloseTo(Math.exp(-3), 15);
  });

  it("refuses ends that are not finite and senseless options", () => {
    const line = (x: number) => x;
    expect(() => findRoot(line, Number.NEGATIVE_INFINITY, 1)).toThrow("both must be finite");
    expect(() => findRoot(line, -1, 1, { tolerance: -1 })).toThrow("tolerance is -1");
    expect(() => findRoot(line, -1, 1, { evaluationsAllowed: 2 })).toThrow("evaluationsAllowed is 2");
    expect(() => findRoot(line, -1, Number.NaN)).toThrow("both must be finite");
    expect(findRoot(line, -1, 2, { evaluationsAllowed: 3 }).evaluations).toBe(3);
    expect(findRoot(line, -1, 2, { tolerance: 0 }).outcome).toBe("found");
  });
});
