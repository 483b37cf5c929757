import { checkDocument, checkPlan, type Plan, runEnds, sourceNames } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editPlan } from "../../../packages/ui/src/store/edit-plan.js";
import { movedJoints } from "../../../packages/ui/src/store/edits/keep-heights.js";
import type { PlanChange } from "../../../packages/ui/src/store/plan-change.js";
import { applyDiff, diffPlans } from "../../../packages/ui/src/store/plan-diff.js";
import { heightsOf, toldFall } from "../../../packages/ui/src/store/plan-heights.js";
import { isSameValue } from "../../../packages/ui/src/store/plan-values.js";
import { EDIT_KINDS, type EditKind, randomEdit } from "../../arbitraries/plan-edits.js";
import { cases } from "../../runner/cases.js";
import { frozen, isSound, PLANS, planOf } from "./plan-cases.js";

const seeds = fc.integer({ min: 0, max: 0x7fffffff });
const systems = fc.constantFrom("metric", "us" as const);
/** A plan, a few edits of any kind to make it odd, and one of the kind in question. */
const histories = fc.record({
  plan: seeds,
  before: fc.array(seeds, { maxLength: 3 }),
  last: seeds,
  system: systems,
});
type History = typeof histories extends fc.Arbitrary<infer T> ? T : never;

/** What an edit must never leave behind, and so never has to be refused for: lost names, open rings, rows too long. */
const OWN_FAULT =
  /A source, a point, or the end|given once|In its ring|past the end|says? it falls|As its own fall/;

/** Each law is tried on the same histories, which are played once. */
const played = new Map<string, ReturnType<typeof play>>();

function edited(kind: EditKind, history: History) {
  const key = `${kind} ${JSON.stringify(history)}`;
  const made = played.get(key) ?? play(kind, history);
  played.set(key, made);
  return made;
}

/** What one edit came to: the plan, or why it was refused. */
function play(kind: EditKind, { plan, before, last, system }: History) {
  let start = planOf(plan);
  // Most plans have nothing that these could be tried on, unless it is made first.
  const wanted = kind === "joinRuns" ? "splitRun" : /Corner/.test(kind) ? "addCorner" : undefined;
  for (const [index, seed] of [...before, last].entries()) {
    if (index === before.length && wanted === undefined) break;
    const step = editPlan(
      start,
      randomEdit(start, seed, index === before.length ? wanted : undefined),
      system,
    );
    if (step.ok) start = frozen(step.plan);
  }
  const change = randomEdit(start, last, kind);
  return { start, change, made: editPlan(start, change, system) };
}

function eachOk(
  kind: EditKind,
  few: number,
  law: (start: Plan, after: Plan, change: PlanChange) => void,
): number {
  let ok = 0;
  fc.assert(
    fc.property(histories, (history) => {
      const { start, change, made } = edited(kind, history);
      if (!made.ok) {
        expect(made.because).not.toBe("");
        expect(made.because).not.toMatch(OWN_FAULT);
        return;
      }
      ok += 1;
      law(start, made.plan, change);
    }),
    cases(few),
  );
  return ok;
}

describe.each(EDIT_KINDS)("editPlan(%s)", (kind) => {
  test("gives a plan that can be read and, if the old one could be, solved; the old one it leaves as it was", () => {
    const ok = eachOk(kind, 60, (start, after) => {
      expect(checkDocument(after).ok).toBe(true);
      if (isSound(start)) expect(isSound(after)).toBe(true);
    });
    expect(ok).toBeGreaterThan(12);
  });

  test("shares every part it leaves alone, and what it did can be told as a change", () => {
    eachOk(kind, 60, (start, after) => {
      const parts = (plan: Plan) => [...plan.sources, ...(plan.points ?? []), ...plan.runs];
      for (const part of parts(after)) {
        const alike = parts(start).filter((each) => isSameValue(each, part));
        if (alike.length > 0) expect(alike.some((each) => each === part)).toBe(true);
      }
      expect(applyDiff(start, diffPlans(start, after))).toEqual(after);
    });
  });
});

/** Whether a run leaves a source of which no fall is told. */
function comesDown(plan: Plan): boolean {
  const names = sourceNames(plan);
  return runEnds(plan).some(({ from }, i) => names.includes(from) && toldFall(plan.runs[i]!) === undefined);
}

const STILL = EDIT_KINDS.filter((kind) => !/Height|Reading|rename|bringIn/.test(kind));

test.each(STILL)("editPlan(%s) lets no pipe rise or sink that stays in the plan", (kind) => {
  eachOk(kind, 35, (start, after, change) => {
    const before = heightsOf(start);
    const moved = new Set(movedJoints(before, heightsOf(after)));
    if (change.kind === "mergeJoints" || change.kind === "landJoint") moved.delete(change.joint);
    // A run that has become long enough to come down from its source does so: nobody said that it stays up.
    if (/Joint|Corner/.test(change.kind) && comesDown(start)) return;
    expect([...moved]).toEqual([]);
  });
});

test("editPlan gives plans whose four moments are solved by both laws, after ten edits in a row", () => {
  fc.assert(
    fc.property(
      fc.nat({ max: PLANS - 1 }),
      fc.array(seeds, { minLength: 10, maxLength: 10 }),
      systems,
      (seed, edits, system) => {
        let plan = planOf(seed);
        for (const each of edits) {
          const made = editPlan(plan, randomEdit(plan, each), system);
          if (made.ok) plan = frozen(made.plan);
        }
        const checking = checkPlan(plan, { samples: 0 });
        if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
        const { solutions } = checking.checked;
        for (const moment of Object.values(solutions))
          for (const solution of Object.values(moment)) expect(solution.outcome).toBe("solved");
      },
    ),
    cases(30),
  );
}, 60_000);
