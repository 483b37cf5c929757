import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { firstBirdsAfter } from "../../../../packages/ui/src/kernels/birds/first-birds.js";

type Birds = Extract<NonNullable<Plan["pens"]>[number]["birds"], readonly unknown[]>[number];

const planOf = (...batches: readonly Partial<Birds>[]): Plan => ({
  headfall: 1,
  sources: [],
  runs: [],
  pens: batches.map((told) => ({ birds: { kind: "pullet", count: 5, ...told } })),
});

test("firstBirdsAfter is the day the first batch comes: it arrives, or hatches where it does not say so", () => {
  const plan = planOf({ hatched: "2026-07-02" }, { age: "1 day", arrives: "2026-07-01" });
  expect(firstBirdsAfter(plan, "2026-06-30")).toBe("2026-07-01");
});

test("firstBirdsAfter counts birds that hatch elsewhere from the day they arrive", () => {
  expect(firstBirdsAfter(planOf({ hatched: "2026-07-02", arrives: "2026-07-03" }), "2026-06-30")).toBe(
    "2026-07-03",
  );
});

test("firstBirdsAfter is nothing where some are there already, and where nobody is to come", () => {
  expect(firstBirdsAfter(planOf({ hatched: "2026-07-02" }, {}), "2026-06-30")).toBeUndefined();
  expect(firstBirdsAfter(planOf({ hatched: "2026-07-02" }), "2026-07-02")).toBeUndefined();
  expect(firstBirdsAfter({ headfall: 1, sources: [], runs: [] }, "2026-07-02")).toBeUndefined();
});
