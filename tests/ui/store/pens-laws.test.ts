import { buildFlock, buildLine, checkDocument, type Plan } from "@headfall/hydraulics";
import fc from "fast-check";
import { expect, test } from "vitest";
import { editPlan } from "../../../packages/ui/src/store/edit-plan.js";
import { randomEdit } from "../../arbitraries/plan-edits.js";
import { withRandomPens } from "../../arbitraries/plan-pens.js";
import { frozen, PLANS, planOf } from "./plan-cases.js";

const seeds = fc.integer({ min: 0, max: 0x7fffffff });

/** By drinker, the pen that reaches it; undefined where line or flock cannot be made. */
function reachOf(plan: Plan): (string | undefined)[] | undefined {
  const built = buildLine(plan);
  if (!built.ok) return undefined;
  const flock = buildFlock(plan, built.line, "2026-07-04");
  if (!flock.ok) return undefined;
  const { count } = built.line.drinkers;
  return Array.from(
    { length: count },
    (_, d) => flock.flock.pens.find((pen) => pen.drinkers.includes(d))?.id,
  );
}

test("editPlan leaves a plan whose pens can be read and, if they were before, told apart; after any edits in a row", () => {
  let [made, withPens] = [0, 0];
  fc.assert(
    fc.property(
      fc.nat({ max: PLANS - 1 }),
      seeds,
      fc.array(seeds, { minLength: 6, maxLength: 10 }),
      fc.constantFrom("metric", "us" as const),
      (number, pens, edits, system) => {
        let plan = frozen(withRandomPens(planOf(number), pens));
        let reach = reachOf(plan);
        for (const seed of edits) {
          const edited = editPlan(plan, randomEdit(plan, seed), system);
          if (!edited.ok) continue;
          made += 1;
          expect(checkDocument(edited.plan).ok).toBe(true);
          const after = reachOf(edited.plan);
          if (reach !== undefined) {
            withPens += Number(plan.pens !== undefined);
            expect(after).toBeDefined();
          }
          [plan, reach] = [frozen(edited.plan), after];
        }
      },
    ),
    { numRuns: 150 },
  );
  expect(made).toBeGreaterThan(400);
  expect(withPens).toBeGreaterThan(150);
}, 120_000);

test.each(["rename", "splitRun", "joinRuns", "addDrinkers", "duplicate", "moveDrinkers"] as const)(
  "editPlan(%s) takes no drinkers from the pen that had them",
  (kind) => {
    let compared = 0;
    fc.assert(
      fc.property(fc.nat({ max: PLANS - 1 }), seeds, seeds, seeds, (number, pens, first, last) => {
        let plan = frozen(withRandomPens(planOf(number), pens));
        // Nothing can be made one that has not been cut before.
        if (kind === "joinRuns") {
          const cut = editPlan(plan, randomEdit(plan, first, "splitRun"), "metric");
          if (cut.ok) plan = frozen(cut.plan);
        }
        const edited = editPlan(plan, randomEdit(plan, last, kind), "metric");
        const before = reachOf(plan);
        if (!edited.ok || before === undefined || plan.pens === undefined) return;
        const after = reachOf(edited.plan)!;
        const countOf = (reach: readonly (string | undefined)[], pen: string) =>
          reach.filter((each) => each === pen).length;
        for (const { id } of plan.pens) {
          const [was, is] = [countOf(before, id!), countOf(after, id!)];
          compared += 1;
          if (kind === "addDrinkers" || kind === "duplicate") expect(is).toBeGreaterThanOrEqual(was);
          else expect([id, is]).toEqual([id, was]);
        }
      }),
      { numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(20);
  },
  60_000,
);
