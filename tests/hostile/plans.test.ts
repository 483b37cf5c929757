import fc from "fast-check";
import { expect, test } from "vitest";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { type PlanData, plans } from "../arbitraries/plans.js";
import { cases } from "../runner/cases.js";
import { faultsOfCheck } from "./plan-faults.js";
import { renamed, verdictsByPlace } from "./plan-laws.js";

/** Cases of each property; more by hand: HEADFALL_CASES=20000 HEADFALL_SEED=17. */

test("checkPlan(any valid plan) solves every moment within its bars, in finite numbers, twice the same", () => {
  fc.assert(
    fc.property(plans(), (plan) => {
      expect(faultsOfCheck(plan)).toEqual([]);
    }),
    cases(60),
  );
}, 3_600_000);

/** Nearer to the line between two verdicts than this, rounding may decide [m]. */
const TOO_CLOSE = 1e-6;

test("checkPlan gives the same verdicts whatever runs and places are called and in whatever order they stand", () => {
  fc.assert(
    fc.property(plans(), fc.nat(), (plan, seed) => {
      const random = randomFrom(seed);
      const shuffle = (runs: PlanData[]) => {
        const key = new Map(runs.map((run) => [run, random.uniform()]));
        return [...runs].sort((a, b) => (key.get(a) ?? 0) - (key.get(b) ?? 0));
      };
      const here = verdictsByPlace(plan, (id) => id);
      const there = verdictsByPlace(renamed(plan, shuffle), (id) => id.replace("other ", ""));
      expect([...there.keys()].sort()).toEqual([...here.keys()].sort());
      for (const [place, verdict] of here) {
        if (Math.abs(verdict.margin) < TOO_CLOSE) continue;
        expect(`${place}: ${there.get(place)?.verdict}`).toBe(`${place}: ${verdict.verdict}`);
      }
    }),
    cases(60),
  );
}, 3_600_000);
