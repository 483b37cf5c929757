import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";

const plan: Plan = { headfall: 1, sources: [{ vessel: "bucket-20l" }], runs: [{ length: "3 m" }] };
const raise = (typed: string) =>
  ({ kind: "set", path: ["sources", 0, "stand"], value: typed, what: `stand ${typed}` }) as const;

test("PlanStore tells its listeners the new plan, the one before, and why", () => {
  const store = new PlanStore(plan);
  const told: unknown[][] = [];
  store.listen((...words) => told.push(words));
  store.edit(raise("1 m"), "metric");
  expect(told).toEqual([[store.plan, plan, "edit"]]);
  expect(store.plan.sources[0]!.stand).toBe("1 m");
});

test("PlanStore tells nobody when the same plan is put in place again", () => {
  const store = new PlanStore(plan);
  let calls = 0;
  store.listen(() => calls++);
  store.replace(plan, "nothing");
  expect(calls).toBe(0);
});

test("PlanStore stops telling a listener that has asked it to", () => {
  const store = new PlanStore(plan);
  let calls = 0;
  store.listen(() => calls++)();
  store.edit(raise("1 m"), "metric");
  expect(calls).toBe(0);
});
