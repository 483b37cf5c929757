import {
  type Checked,
  checkPlan,
  drinkerGroupsOf,
  FRICTION_LAWS,
  type MomentName,
  type Plan,
} from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { metresOf } from "../../../../packages/ui/src/kernels/typed-metres.js";
import { placesOf } from "../../../../packages/ui/src/store/drinker-places.js";
import { editPlan } from "../../../../packages/ui/src/store/edit-plan.js";
import { withPoint, withRun } from "../../../../packages/ui/src/store/edits/plan-parts.js";
import { courseOf } from "../../../../packages/ui/src/store/edits/run-course.js";
import { turnRun } from "../../../../packages/ui/src/store/edits/turn-run.js";
import { cases } from "../../../runner/cases.js";
import { frozen, PLANS, planOf } from "../plan-cases.js";

/** Lengths are written in so many decimals that heads may be off by this [m]. */
const SAME_HEAD = 1e-6;
/** Drinkers hang as high as before within this [m]. */
const SAME_HEIGHT = 5e-6;
/** Flows may be off by this [m3/s], and by a hundred-thousandth of themselves. */
const SAME_FLOW = 1e-11;

type System = "metric" | "us";
const cuts = fc.record({
  plan: fc.nat({ max: PLANS - 1 }),
  run: fc.nat(),
  share: fc.double({ min: 0.001, max: 0.999, noNaN: true }),
  system: fc.constantFrom("metric", "us" as System),
});
type Cut = typeof cuts extends fc.Arbitrary<infer T> ? T : never;

function checkedOf(plan: Plan): Checked {
  const checking = checkPlan(plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked;
}

/** A plan with one of its runs cut, or undefined where it cannot be. */
function cut({ plan: seed, run, share, system }: Cut) {
  const plan = planOf(seed);
  const index = run % plan.runs.length;
  const along = metresOf(plan.runs[index]!.length) * share;
  const made = editPlan(plan, { kind: "splitRun", run: index, along }, system);
  return made.ok ? { plan, index, after: frozen(made.plan), selected: made.selected } : undefined;
}

/** Drinkers of the old plan, in order, as they are numbered in the one whose run was cut. */
function sameDrinkers(plan: Plan, index: number, after: Plan): number[] {
  const { line } = checkedOf(after);
  const byRun = after.runs.map((_, r) => numbersOf(line.drinkers.run, r));
  const at = metresOf(after.runs[index]!.length);
  const length = metresOf(plan.runs[index]!.length);
  return plan.runs.flatMap((run, r) => {
    if (r !== index) return byRun[r]!;
    return drinkerGroupsOf(run).flatMap((group) => {
      const here = placesOf(group, length).filter((place) => place <= at + 1e-6).length;
      const there = (group.count ?? 1) - here;
      return [...byRun[index]!.splice(0, here), ...byRun.at(-1)!.splice(0, there)];
    });
  });
}

const numbersOf = (runs: ArrayLike<number>, run: number) =>
  Array.from(runs).flatMap((each, d) => (each === run ? [d] : []));

/** Heads and flows as they were solved, at the same drinkers of two plans. */
function expectSame(
  one: Checked,
  other: Checked,
  numbers: readonly number[],
  moments: readonly MomentName[],
): void {
  expect(numbers).toHaveLength(one.drinkers.length);
  for (const moment of moments) {
    for (const law of FRICTION_LAWS) {
      const [was, is] = [one.solutions[moment][law], other.solutions[moment][law]];
      // One comparison of all: an expectation for each drinker takes longer than solving.
      const others = numbers.flatMap((number, d) => {
        const [head, headNow] = [
          was.head[one.line.drinkers.point[d]!]!,
          is.head[other.line.drinkers.point[number]!]!,
        ];
        const [flow, flowNow] = [was.drinkerFlow[d]!, is.drinkerFlow[number]!];
        const [height, heightNow] = [one.line.drinkers.height[d]!, other.line.drinkers.height[number]!];
        const isSame =
          Math.abs(height - heightNow) < SAME_HEIGHT &&
          Math.abs(head - headNow) < SAME_HEAD &&
          Math.abs(flow - flowNow) < SAME_FLOW + 1e-5 * flow;
        return isSame
          ? []
          : [{ id: one.line.drinkers.id[d], head, headNow, flow, flowNow, height, heightNow }];
      });
      expect(others, `${moment} ${law}`).toEqual([]);
    }
  }
}

/** The drinkers of a line as those of another are numbered, by run, kind and place. */
function drinkersAlike(one: Checked, other: Checked): number[] {
  const left = new Set(other.drinkers.map((_, d) => d));
  return one.drinkers.map((_, d) => {
    const same = [...left].find((number) => isAlike(one, d, other, number));
    if (same === undefined) throw new Error(`${one.line.drinkers.id[d]} is gone`);
    left.delete(same);
    return same;
  });
}

function isAlike(one: Checked, d: number, other: Checked, number: number): boolean {
  const [a, b] = [one.line.drinkers, other.line.drinkers];
  const [group, same] = [a.groups[a.group[d]!]!, b.groups[b.group[number]!]!];
  const isNear = Math.abs(a.along[d]! - b.along[number]!) < 1e-5;
  const isKin = group.kindId === same.kindId && group.need === same.need && group.run === same.run;
  return isNear && isKin && Math.abs(a.height[d]! - b.height[number]!) < 1e-5;
}

const isLone = (plan: Plan, index: number) => drinkerGroupsOf(plan.runs[index]!).length < 2;

const TOLD: readonly MomentName[] = ["fullIdle", "fullBusiest", "lowestBusiest"];

describe("editPlan(splitRun)", () => {
  test("changes no head and no flow at any drinker, and in an ordinary hour as many drink as before", () => {
    let tried = 0;
    fc.assert(
      fc.property(cuts, (wanted) => {
        const made = cut(wanted);
        if (made === undefined) return;
        tried += 1;
        const { plan, index, after } = made;
        const [before, now] = [checkedOf(plan), checkedOf(after)];
        expectSame(before, now, sameDrinkers(plan, index, after), TOLD);
        const working = (checked: Checked) =>
          checked.line.drinkers.groups.reduce((sum, group) => sum + group.ordinary, 0);
        // Birds that share what groups leave open may share it otherwise among more groups.
        if (plan.pens === undefined) expect(working(now)).toBe(working(before));
      }),
      cases(80),
    );
    expect(tried).toBeGreaterThan(40);
  }, 60_000);
});

describe("editPlan(joinRuns)", () => {
  test("after a cut gives the run back: same length, drinkers and verdicts, at the ordinary hour too", () => {
    let tried = 0;
    fc.assert(
      fc.property(cuts, (wanted) => {
        const made = cut(wanted);
        if (made?.selected?.kind !== "joint") return;
        const { plan, index, after } = made;
        const joined = editPlan(after, { kind: "joinRuns", joint: made.selected.joint }, wanted.system);
        if (!joined.ok) throw new Error(joined.because);
        tried += 1;
        const run = joined.plan.runs[index]!;
        expect(metresOf(run.length)).toBeCloseTo(metresOf(plan.runs[index]!.length), 6);
        expect(joined.plan.runs).toHaveLength(plan.runs.length);
        const [before, now] = [checkedOf(plan), checkedOf(joined.plan)];
        expect(now.counts).toEqual(before.counts);
        // Two groups of a kind in one place are told apart by nothing, so that only lone ones are compared.
        if (before.line.drinkers.groups.length === now.line.drinkers.groups.length && isLone(plan, index))
          expectSame(before, now, drinkersAlike(before, now), [...TOLD, "ordinary"]);
      }),
      cases(80),
    );
    expect(tried).toBeGreaterThan(40);
  }, 60_000);

  test("after a cut whose second part was told the other way round gives the same heads and flows", () => {
    let tried = 0;
    fc.assert(
      fc.property(cuts, (wanted) => {
        const made = cut(wanted);
        if (made?.selected?.kind !== "joint") return;
        const { plan, index, after } = made;
        const turned = withLastTurned(after, wanted.system);
        const joined = editPlan(turned, { kind: "joinRuns", joint: made.selected.joint }, wanted.system);
        if (!joined.ok) throw new Error(joined.because);
        tried += 1;
        const [before, there, now] = [plan, turned, joined.plan].map(checkedOf) as [
          Checked,
          Checked,
          Checked,
        ];
        expect(there.counts).toEqual(before.counts);
        expect(now.counts).toEqual(before.counts);
        if (isLone(plan, index)) expectSame(before, now, drinkersAlike(before, now), TOLD);
      }),
      cases(60),
    );
    expect(tried).toBeGreaterThan(30);
  }, 60_000);
});

/** The plan with its last run told from its other end. */
function withLastTurned(plan: Plan, system: System): Plan {
  const index = plan.runs.length - 1;
  const run = plan.runs[index]!;
  const { reference, knots } = courseOf(plan, index);
  const turned = turnRun(run, reference - knots.at(-1)!.height, true, system);
  const isSource = plan.sources.some(({ id }) => id === run.to);
  return withRun(isSource ? plan : withPoint(plan, run.to!, {}), index, turned);
}
