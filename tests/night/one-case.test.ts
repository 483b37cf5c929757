import { describe, expect, it } from "vitest";
import { madeReady } from "../arbitraries/long-enough.js";
import { nightPlan } from "../arbitraries/night-plans.js";
import { createCases } from "./one-case.js";

describe("a night", () => {
  const tryCase = createCases({ checkedOneIn: 7, askedOneIn: 1e9 });
  const numbers = Array.from({ length: 15 }, (_, k) => k + 1);

  it("finds no fault in its first plans, nor in one of a great many drinkers", () => {
    const found = [...numbers, 2000].map((number) => tryCase("plans", number));
    expect(found.filter((one) => one !== undefined)).toEqual([]);
  });

  it("finds no fault in its first documents", () => {
    const found = numbers.map((number) => tryCase("documents", number));
    expect(found.filter((one) => one !== undefined)).toEqual([]);
  });

  it("draws mostly small plans, and some of hundreds of drinkers", () => {
    const drinkers = (number: number): number => {
      const ready = madeReady(nightPlan(number));
      return ready.ok ? ready.line.drinkers.count : Number.NaN;
    };
    const counts = numbers.map(drinkers).sort((a, b) => a - b);
    expect(counts[7]).toBeLessThan(15);
    const large = [4000, 6000].map(drinkers);
    expect(large.reduce((sum, one) => sum + one, 0) / large.length).toBeGreaterThan(300);
  });
});
