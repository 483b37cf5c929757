import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";

const plan: Plan = { headfall: 1, sources: [{ vessel: "bucket-20l" }], runs: [{ length: "3 m" }] };

test("PlanStore tells its listeners the new plan, the one before, and the edit", () => {
  const store = new PlanStore(plan);
  const told: unknown[][] = [];
  store.listen((...told_) => told.push(told_));
  const change = { kind: "setStand", source: 0, typed: "1 m" } as const;
  store.apply(change);
  expect(told).toEqual([[store.plan, plan, change]]);
  expect(store.plan.sources[0]!.stand).toBe("1 m");
});

test("PlanStore tells nobody when the same plan is put in place again", () => {
  const store = new PlanStore(plan);
  let calls = 0;
  store.listen(() => calls++);
  store.replace(plan);
  expect(calls).toBe(0);
});

test("PlanStore stops telling a listener that has asked it to", () => {
  const store = new PlanStore(plan);
  let calls = 0;
  store.listen(() => calls++)();
  store.apply({ kind: "setStand", source: 0, typed: "1 m" });
  expect(calls).toBe(0);
});
