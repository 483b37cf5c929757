import { type Plan, runEnds } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";
import { randomEdit } from "../../arbitraries/plan-edits.js";
import { PLACED } from "../fixtures/placed-plan.js";
import { frozen, PLANS, planOf } from "./plan-cases.js";

const plan: Plan = frozen({ headfall: 1, sources: [{ vessel: "bucket-20l" }], runs: [{ length: "3 m" }] });
const raise = (typed: string) =>
  ({ kind: "set", path: ["sources", 0, "stand"], value: typed, what: `stand ${typed}` }) as const;

describe("PlanStore", () => {
  test("tells its listeners the new plan, the one before, and why", () => {
    const store = new PlanStore(plan);
    const told: unknown[][] = [];
    store.listen((...words) => told.push(words));
    store.edit(raise("1 m"), "metric");
    expect(told).toEqual([[store.plan, plan, "edit"]]);
    expect(store.plan.sources[0]!.stand).toBe("1 m");
  });

  test("tells nobody when the same plan is put in place again, nor when an edit changes nothing", () => {
    const store = new PlanStore(plan);
    let calls = 0;
    store.listen(() => calls++);
    store.replace(plan, "nothing");
    store.edit({ kind: "set", path: ["runs", 0, "length"], value: "3 m", what: "length" }, "metric");
    expect([calls, store.canUndo]).toEqual([0, undefined]);
  });

  test("stops telling a listener that has asked it to", () => {
    const store = new PlanStore(plan);
    let calls = 0;
    store.listen(() => calls++)();
    store.edit(raise("1 m"), "metric");
    expect(calls).toBe(0);
  });

  test("leaves the plan as it is when an edit is refused", () => {
    const store = new PlanStore(plan);
    expect(store.edit(raise("a lot"), "metric").ok).toBe(false);
    expect(store.plan).toBe(plan);
  });

  test("takes back and brings again any row of edits, each to the very plan it was", () => {
    const cases = fc.record({
      seed: fc.nat({ max: PLANS - 1 }),
      edits: fc.array(fc.nat(), { minLength: 1, maxLength: 12 }),
    });
    fc.assert(
      fc.property(cases, ({ seed, edits }) => {
        const store = new PlanStore(planOf(seed));
        const seen = [store.plan];
        for (const each of edits) {
          const before = store.plan;
          store.edit(randomEdit(store.plan, each), "metric");
          if (store.plan !== before) seen.push(store.plan);
        }
        const last = seen.length - 1;
        for (let i = last - 1; i >= 0; i--) {
          store.undo();
          expect(store.plan).toBe(seen[i]);
        }
        expect(store.undo()).toBeUndefined();
        for (let i = 1; i <= last; i++) {
          store.redo();
          expect(store.plan).toBe(seen[i]);
        }
        expect(store.redo()).toBeUndefined();
      }),
      { numRuns: 150 },
    );
  }, 60_000);

  test("makes one step of a drag of fifty edits, and none of one that comes back to where it began", () => {
    const store = new PlanStore(plan);
    for (let cm = 1; cm <= 50; cm++) store.edit(raise(`${cm} cm`), "metric", "drag 1");
    expect(store.canUndo!.words).toBe("stand 50 cm");
    store.undo();
    expect(store.plan).toBe(plan);
    store.redo();
    store.edit(raise("60 cm"), "metric", "drag 2");
    store.edit(raise("50 cm"), "metric", "drag 2");
    expect(store.canUndo!.gesture).toBe("drag 1");
  });

  test("gives back on the way what gave way on the way there: drinkers pushed together by a drag", () => {
    const drawn: Plan = frozen({
      headfall: 1,
      sources: [{ id: "barrel", vessel: "bucket-20l" }],
      points: [{ id: "end", place: { x: "10 m", y: "0 m" } }],
      runs: [
        {
          from: "barrel",
          to: "end",
          length: "10 m",
          survey: [{ along: "9 m", fall: "-5 cm" }],
          drinkers: { kind: "nipple-bucket", count: 10, every: "90 cm" },
        },
      ],
    });
    const store = new PlanStore(drawn);
    const drag = (x: number, gesture: string) =>
      store.edit({ kind: "moveJoint", joint: "end", place: { x, y: 0 } }, "metric", gesture);
    expect(drag(3, "drag 1")).toMatchObject({
      words: "end moved; run 1: 1 reading beyond its end dropped; run 1: drinkers closer together",
    });
    expect(store.plan.runs[0]).toMatchObject({ length: "3 m", drinkers: { every: "30 cm" } });
    drag(12, "drag 1");
    expect(store.plan.runs[0]).toEqual({ ...drawn.runs[0], length: "12 m" });
    drag(3, "drag 2");
    drag(10, "drag 3");
    expect(store.plan.runs[0]).toMatchObject({ length: "10 m", drinkers: { every: "30 cm" } });
  });

  test("gives a drag up as if it had never begun, and begins the next edit of it anew", () => {
    const store = new PlanStore(plan);
    store.edit(raise("1 m"), "metric");
    const before = store.plan;
    store.edit(raise("2 m"), "metric", "drag 1");
    store.giveUp("drag 1");
    expect(store.plan).toBe(before);
    expect(store.canUndo!.words).toBe("stand 1 m");
  });

  test("keeps an edit from another tab that comes in the middle of a drag", () => {
    const store = new PlanStore(plan);
    store.edit(raise("1 m"), "metric", "drag 1");
    store.replace({ ...store.plan, name: "coop" }, "named elsewhere", "elsewhere");
    store.edit(raise("2 m"), "metric", "drag 1");
    expect(store.plan).toMatchObject({ name: "coop", sources: [{ stand: "2 m" }] });
  });
});

test("PlanStore takes back in one step a drag that ended in a tee, and both runs meet where it was let go", () => {
  const store = new PlanStore(PLACED);
  const place = { x: 6, y: 0 };
  store.edit({ kind: "moveJoint", joint: "pen", place }, "metric", "drag 1");
  const landed = store.edit({ kind: "landJoint", joint: "pen", run: 0, along: 6 }, "metric", "drag 1");
  expect(landed).toMatchObject({ ok: true, words: "pen laid upon feed" });
  const tee = runEnds(store.plan)[1]!.to;
  expect(store.plan.points?.find(({ id }) => id === tee)?.place).toEqual({ x: "6 m", y: "0 cm" });
  expect(runEnds(store.plan).filter(({ from, to }) => from === tee || to === tee)).toHaveLength(3);
  expect(store.undo()).toBeDefined();
  expect(store.plan).toBe(PLACED);
});
