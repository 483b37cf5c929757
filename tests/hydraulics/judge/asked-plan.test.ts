import { expect, test } from "vitest";
import { MORNING } from "../../../packages/hydraulics/src/judge/asked-plan.js";
import { asked } from "../../laws/asked-plans.js";
import { penPlan } from "./birds/pens.js";

const HOUR = 3600;
const refillOf = (refill: unknown) => {
  const plan = penPlan();
  return asked({ ...plan, sources: [{ ...plan.sources[0], refill }] }).refills[0]!;
};
const firstOf = (refill: unknown) => {
  const found = refillOf(refill);
  return found.kind === "byHand" ? found.first / HOUR : undefined;
};

test("askPlan begins at seven with everything full; the next round by hand comes one interval later, or that evening", () => {
  expect(MORNING / HOUR).toBe(7);
  expect(firstOf({ every: "1 day" })).toBe(31);
  expect(firstOf({ every: "1 day", at: "05:00" })).toBe(29);
  expect(firstOf({ every: "1 day", at: "18:00" })).toBe(18);
  expect(firstOf({ every: "2 days", at: "18:00" })).toBe(42);
  expect(firstOf({ every: "12 h", at: "18:00" })).toBe(18);
  expect(firstOf({ every: "12 h" })).toBe(19);
});

test("askPlan makes no round at the very time it begins: the vessels are full", () => {
  expect(firstOf({ every: "1 h", at: "06:00" })).toBe(8);
});

test("askPlan takes a hose to run, and nobody to fill where nobody is told to", () => {
  expect(refillOf({ hose: "3 L/min" })).toEqual({ kind: "hose", flow: expect.closeTo(5e-5, 15) });
  expect(refillOf("none")).toEqual({ kind: "none" });
  expect(refillOf(undefined)).toEqual({ kind: "none" });
});
