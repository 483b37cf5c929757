import type { Plan } from "@headfall/hydraulics";
import { drinkerGroupsOf, runEnds, sourceNames } from "@headfall/hydraulics";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allDrinkers } from "../../packages/hydraulics/src/tables/drinkers.js";
import { allVessels } from "../../packages/hydraulics/src/tables/vessels.js";
import { layAbove } from "../../packages/ui/src/kernels/above/lay-above.js";
import type { Selected } from "../../packages/ui/src/kernels/selected.js";
import { metresOf } from "../../packages/ui/src/kernels/typed-metres.js";
import { editPlan } from "../../packages/ui/src/store/edit-plan.js";
import type { PlanChange, RunEndChoice } from "../../packages/ui/src/store/plan-change.js";
import { diffPlans, type PlanDiff } from "../../packages/ui/src/store/plan-diff.js";
import { type Chooser, chooserOf } from "./typed.js";

/** Kinds of edits that change what the plan is made of, or where it lies. */
export const EDIT_KINDS = [
  "addSource",
  "drawRun",
  "addDrinkers",
  "moveJoint",
  "moveCorner",
  "addCorner",
  "deleteCorner",
  "moveDrinkers",
  "setHeight",
  "moveReading",
  "addReading",
  "deleteReading",
  "splitRun",
  "joinRuns",
  "mergeJoints",
  "landJoint",
  "duplicate",
  "delete",
  "rename",
  "bringIn",
] as const satisfies readonly PlanChange["kind"][];
export type EditKind = (typeof EDIT_KINDS)[number];

/** A random edit of a plan by number, of one kind or any; now and then of a part that is not there. */
export function randomEdit(plan: Plan, seed: number, kind?: EditKind): PlanChange {
  const choose = chooserOf(randomFrom(seed));
  return editOf(kind ?? choose.oneOf(EDIT_KINDS), plan, choose);
}

function editOf(kind: EditKind, plan: Plan, choose: Chooser): PlanChange {
  const run = runFor(kind, plan, choose);
  const length = metresOf(plan.runs[run]?.length);
  const corner = choose.whole(0, plan.runs[run]?.corners?.length ?? 0);
  const reading = choose.whole(0, (plan.runs[run]?.survey?.length ?? 1) - 1);
  switch (kind) {
    case "addSource":
      return { kind, vessel: choose.oneOf(allVessels).id, place: spot(choose) };
    case "drawRun":
      return drawnRun(plan, choose);
    case "addDrinkers":
      return { kind, run, drinkers: { kind: choose.oneOf(allDrinkers).id, ...row(choose) } };
    case "moveJoint":
      return { kind, joint: joint(plan, choose), place: spot(choose) };
    case "moveCorner":
      return { kind, run, corner, place: spot(choose) };
    case "addCorner":
      return { kind, run, before: corner, place: spot(choose) };
    case "deleteCorner":
      return { kind, run, corner };
    case "moveDrinkers":
      return { kind, run, group: choose.whole(0, 1), first: choose.uniform(-0.1, 1.1) * length };
    case "setHeight":
      return { kind, joint: joint(plan, choose), height: choose.uniform(-0.5, 2) };
    case "moveReading":
      return { kind, run, reading, fall: choose.uniform(-0.5, 0.5) };
    case "addReading":
      return { kind, run, along: choose.uniform(0, 1) * length, fall: choose.uniform(-0.5, 0.5) };
    case "deleteReading":
      return { kind, run, reading };
    case "splitRun":
      return { kind, run, along: choose.uniform(0, 1) * length };
    case "joinRuns":
      return { kind, joint: through(plan, choose) };
    case "mergeJoints":
      return { kind, joint: joint(plan, choose), into: joint(plan, choose) };
    case "landJoint":
      return { kind, joint: joint(plan, choose), run, along: choose.uniform(0, 1) * length };
    case "duplicate":
      return { kind, part: part(plan, choose) };
    case "delete":
      return { kind, part: part(plan, choose) };
    case "rename":
      return {
        kind,
        part: part(plan, choose),
        name: choose.oneOf(["west", "run 2", "point 1", "a <b>", "end 0"]),
      };
    case "bringIn":
      return { kind, diff: foundElsewhere(plan, choose), what: "a cure" };
  }
}

/** What another edit would change, as it comes back from a worker; now and then of a plan that is no longer so. */
function foundElsewhere(plan: Plan, choose: Chooser): PlanDiff {
  const asked = choose.chance(0.9) ? plan : { ...plan, runs: plan.runs.slice(1) };
  const found = editPlan(asked, editOf(choose.oneOf(FOUND), asked, choose), "metric");
  return structuredClone(found.ok ? diffPlans(asked, found.plan) : []);
}
const FOUND = ["addDrinkers", "drawRun", "splitRun", "setHeight", "moveDrinkers"] as const;

/** A run that has what the edit is about, where there is one; now and then a number that no run has. */
function runFor(kind: EditKind, plan: Plan, choose: Chooser): number {
  const has = ({ corners, survey, drinkers }: Plan["runs"][number]) =>
    /Corner/.test(kind) ? corners : /Reading/.test(kind) ? survey : /Drinkers/.test(kind) ? drinkers : true;
  const able = plan.runs.flatMap((run, i) => (has(run) === undefined ? [] : [i]));
  if (able.length > 0 && choose.chance(0.8)) return choose.oneOf(able);
  return choose.whole(0, plan.runs.length);
}

/** A joint that just two runs meet at, where there is one. */
function through(plan: Plan, choose: Chooser): string {
  const ends = runEnds(plan).flatMap(({ from, to }) => [from, to]);
  const twice = [...new Set(ends)].filter((name) => ends.filter((each) => each === name).length === 2);
  return twice.length > 0 ? choose.oneOf(twice) : joint(plan, choose);
}

function drawnRun(plan: Plan, choose: Chooser): PlanChange {
  return {
    kind: "drawRun",
    from: runEnd(plan, choose),
    to: runEnd(plan, choose),
    corners: Array.from({ length: choose.whole(0, 2) }, () => spot(choose)),
    ...(choose.chance(0.3) ? { length: choose.uniform(0.2, 30) } : {}),
    ...(choose.chance(0.5) ? { pipe: "pvc-sch40-3/4" } : {}),
  };
}

function runEnd(plan: Plan, choose: Chooser): RunEndChoice {
  const run = choose.whole(0, Math.max(0, plan.runs.length - 1));
  const along = choose.uniform(0, 1) * metresOf(plan.runs[run]?.length);
  return choose.oneOf<() => RunEndChoice>([
    () => ({ kind: "joint", joint: joint(plan, choose) }),
    () => ({ kind: "onRun", run, along }),
    () => ({ kind: "place", place: spot(choose) }),
  ])();
}

function row(choose: Chooser) {
  return {
    ...(choose.chance(0.8) ? { count: choose.whole(1, 20) } : {}),
    ...(choose.chance(0.5) ? { every: choose.length(choose.uniform(0.05, 0.5)) } : {}),
    ...(choose.chance(0.3) ? { first: choose.length(choose.uniform(0, 1)) } : {}),
  };
}

function part(plan: Plan, choose: Chooser): Selected {
  const run = choose.whole(0, Math.max(0, plan.runs.length - 1));
  const groups = plan.runs[run] === undefined ? 0 : drinkerGroupsOf(plan.runs[run]).length;
  return choose.oneOf<() => Selected>([
    () => ({ kind: "source", source: choose.whole(0, plan.sources.length - 1) }),
    () => ({ kind: "run", run }),
    () => ({ kind: "joint", joint: joint(plan, choose) }),
    () => ({
      kind: "drinkers",
      run,
      group: choose.whole(0, groups),
      ...(choose.chance(0.3) ? { number: 0 } : {}),
    }),
  ])();
}

function joint(plan: Plan, choose: Chooser): string {
  const ends = runEnds(plan).flatMap(({ from, to }) => [from, to]);
  return choose.oneOf([...new Set([...sourceNames(plan), ...ends, ...layAbove(plan).jointByName.keys()])]);
}

const spot = (choose: Chooser) => ({ x: choose.uniform(-20, 40), y: choose.uniform(-20, 20) });
