import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { layoutOf, sourceNames } from "../../../packages/ui/src/parts/plan-context.js";

const planWith = (stand: string): Plan => ({
  headfall: 1,
  sources: [{ id: "barrel", vessel: "bucket-20l", stand }],
  runs: [{ length: "3 m" }],
});

test("layoutOf works a plan out once, however often and in whatever turns two plans are asked about", () => {
  const [one, other] = [planWith("1 m"), planWith("2 m")];
  const [first, second] = [layoutOf(one), layoutOf(other)];
  expect([layoutOf(one), layoutOf(other), layoutOf(one)]).toEqual([first, second, first]);
  expect(layoutOf(one)).toBe(first);
  expect(layoutOf(other)).toBe(second);
});

test("layoutOf lets go of what it found once two other plans were asked about, though undo keeps the plan", () => {
  const plans = ["1 m", "2 m", "3 m"].map(planWith);
  const [first] = plans.map(layoutOf);
  expect(layoutOf(plans[0]!)).not.toBe(first);
  expect(layoutOf(plans[0]!)).toEqual(first);
});

test("sourceNames answers each plan with its own names", () => {
  const plans = ["1 m", "2 m", "3 m"].map(planWith);
  const named = plans.map((plan, k) => ({ ...plan, sources: [{ ...plan.sources[0]!, id: `barrel ${k}` }] }));
  expect([...named, ...named].map(sourceNames)).toEqual([0, 1, 2, 0, 1, 2].map((k) => [`barrel ${k}`]));
});
