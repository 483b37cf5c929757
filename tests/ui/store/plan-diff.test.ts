import type { Plan } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyDiff, diffPlans, reverseDiff } from "../../../packages/ui/src/store/plan-diff.js";
import { withValue } from "../../../packages/ui/src/store/plan-values.js";
import { PLANS, planOf } from "./plan-cases.js";

const plan: Plan = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "bucket-20l", stand: "60 cm" }],
  runs: [{ id: "feed", length: "12 m" }, { length: "3 m" }],
};
const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const seeds = fc.nat({ max: PLANS - 1 });

describe("diffPlans", () => {
  test("tells one typed key by its path, with what stood there and what stands there now", () => {
    const after = { ...plan, sources: [{ ...plan.sources[0]!, stand: "2 ft" }] };
    expect(diffPlans(plan, after)).toEqual([
      { path: ["sources", 0, "stand"], before: "60 cm", after: "2 ft" },
    ]);
  });

  test("tells a key that came and a key that went by undefined", () => {
    const after = { ...plan, name: "coop", runs: [{ length: "12 m" }, plan.runs[1]!] };
    expect(diffPlans(plan, after)).toEqual([
      { path: ["runs", 0, "id"], before: "feed", after: undefined },
      { path: ["name"], before: undefined, after: "coop" },
    ]);
  });

  test("tells a longer list whole, at the path of the list", () => {
    const after = { ...plan, runs: [...plan.runs, { length: "1 m" }] };
    expect(diffPlans(plan, after)).toEqual([{ path: ["runs"], before: plan.runs, after: after.runs }]);
  });

  test("finds nothing between a plan and a copy of it, nor for another order of keys", () => {
    expect(diffPlans(plan, copyOf(plan))).toEqual([]);
    const { headfall, ...others } = plan;
    expect(diffPlans(plan, { ...others, headfall })).toEqual([]);
  });

  test("does not look into what two plans share", () => {
    const unreadable = new Proxy([{ length: "1 m" }], {
      get: () => {
        throw new Error("was read");
      },
    });
    const before = { ...plan, runs: unreadable };
    expect(diffPlans(before, { ...before, name: "coop" })).toHaveLength(1);
  });
});

describe("applyDiff", () => {
  test("of what changed between any two plans makes the second of the first, and back again", () => {
    fc.assert(
      fc.property(seeds, seeds, (one, other) => {
        const [before, after] = [planOf(one), planOf(other)];
        const diff = diffPlans(before, after);
        expect(applyDiff(before, diff)).toEqual(after);
        expect(applyDiff(after, reverseDiff(diff))).toEqual(before);
      }),
      { numRuns: 500 },
    );
  });

  test("brings two edits of different places together in either order", () => {
    fc.assert(
      fc.property(seeds, fc.nat(), fc.nat(), (seed, i, j) => {
        const start = planOf(seed);
        const here = withValue(start, ["runs", i % start.runs.length, "note"], "here") as Plan;
        const there = withValue(start, ["sources", j % start.sources.length, "stand"], "9 m") as Plan;
        const both = applyDiff(here, diffPlans(start, there));
        expect(both).toEqual(applyDiff(there, diffPlans(start, here)));
        expect(diffPlans(start, both!)).toHaveLength(2);
      }),
      { numRuns: 300 },
    );
  });

  test("is undefined when another value stands where the change expects its own", () => {
    const raise = (stand: string) => withValue(plan, ["sources", 0, "stand"], stand) as Plan;
    expect(applyDiff(raise("1 m"), diffPlans(plan, raise("2 m")))).toBeUndefined();
  });

  test("is undefined when the part that was changed is no longer there", () => {
    const noted = withValue(plan, ["runs", 1, "note"], "by the fence") as Plan;
    const shorter = { ...plan, runs: plan.runs.slice(0, 1) };
    expect(applyDiff(shorter, diffPlans(plan, noted))).toBeUndefined();
  });

  test("leaves the plan it is given as it was, and shares what it does not touch", () => {
    const before = JSON.stringify(plan);
    const after = applyDiff(plan, [{ path: ["runs", 1, "note"], before: undefined, after: "by the fence" }]);
    expect(JSON.stringify(plan)).toBe(before);
    expect(after!.sources).toBe(plan.sources);
    expect(after!.runs[0]).toBe(plan.runs[0]);
  });

  test("keeps a drinker whose name is that of a built-in key", () => {
    const named = JSON.parse('{"__proto__": {"readings": []}}') as Plan["ownDrinkers"];
    const after = { ...plan, ownDrinkers: named } as Plan;
    const applied = applyDiff(plan, diffPlans(plan, after));
    expect(Object.keys(applied!.ownDrinkers!)).toEqual(["__proto__"]);
    const emptied = applyDiff({ ...plan, ownDrinkers: {} }, diffPlans({ ...plan, ownDrinkers: {} }, after));
    expect(Object.keys(emptied!.ownDrinkers!)).toEqual(["__proto__"]);
  });
});
