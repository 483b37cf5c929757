import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import type { FlockReport } from "../../packages/hydraulics/src/judge/birds/flock-report.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { allBirds } from "../../packages/hydraulics/src/tables/birds.js";
import { type PlanData, randomPlan } from "../arbitraries/plans.js";
import { drinkerGroupsIn } from "./plan-groups.js";

const RUNS = { numRuns: 60 } as const;

const birds = fc.record({
  kind: fc.constantFrom(...allBirds.map(({ id }) => id)),
  count: fc.integer({ min: 1, max: 400 }),
  age: fc.integer({ min: 0, max: 400 }).map((days) => `${days} days`),
});
const weather = fc
  .record({ high: fc.integer({ min: -5, max: 45 }), light: fc.integer({ min: 4, max: 24 }) })
  .map(({ high, light }) => ({ high: `${high} degC`, light: `${light} h` }));
/** Any random plan, with one pen on all of its drinkers. */
const penned = fc
  .record({
    seed: fc.integer({ min: 0, max: 0x7fffffff }),
    batches: fc.array(birds, { minLength: 1, maxLength: 3 }),
    weather,
  })
  .map(({ seed, batches, weather: air }) => ({
    ...randomPlan(seed),
    weather: air,
    pens: [{ id: "hens", birds: batches }],
  }));

function checked(plan: PlanData) {
  const reading = checkDocument(plan);
  fc.pre(reading.ok);
  if (!reading.ok) throw new Error("no plan");
  const checking = checkPlan(reading.plan, { samples: 0 });
  fc.pre(checking.ok);
  if (!checking.ok) throw new Error("no line");
  return checking.checked;
}

const flockIn = (plan: PlanData): FlockReport => {
  const { flock } = checked(plan);
  if (flock === undefined) throw new Error("nothing is said of the birds");
  return flock;
};

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

describe("checkPlan of any plan with birds", () => {
  it("says of them only numbers that are, the same each time, and data that can be passed on", () => {
    fc.assert(
      fc.property(penned, (plan) => {
        const flock = flockIn(plan);
        expect(numbersIn(flock).filter((number) => !Number.isFinite(number))).toEqual([]);
        expect(structuredClone(flock)).toEqual(flock);
        expect(flockIn(plan)).toEqual(flock);
      }),
      RUNS,
    );
  });

  it("never has more at work than a group has drinkers, nor counts more than give, nor than there are birds", () => {
    fc.assert(
      fc.property(penned, (plan) => {
        const { line } = checked(plan);
        const { groups, pens } = flockIn(plan);
        groups.forEach(({ busiest, ordinary, index }) => {
          expect(busiest.count).toBeLessThanOrEqual(line.drinkers.groups[index]!.count);
          expect(ordinary.count).toBeLessThanOrEqual(line.drinkers.groups[index]!.count);
        });
        expect(pens[0]!.busiest).toBeLessThanOrEqual(Math.min(pens[0]!.giving, pens[0]!.birds));
      }),
      RUNS,
    );
  });

  it("judges as without birds where the plan states every number", () => {
    fc.assert(
      fc.property(penned, (plan) => {
        const stated = drinkerGroupsIn(plan, (group) => ({
          ...group,
          busiest: 1,
          ordinary: 1,
          need: "40 mL/min",
        }));
        const [withBirds, without] = [checked(stated), checked({ ...stated, pens: undefined })];
        expect(withBirds.drinkers).toEqual(without.drinkers);
        expect(withBirds.sources).toEqual(without.sources);
        expect(withBirds.filling).toEqual(without.filling);
      }),
      RUNS,
    );
  });
});
