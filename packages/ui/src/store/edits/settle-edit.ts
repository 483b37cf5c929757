import {
  buildFlock,
  buildLine,
  checkDocument,
  drinkerGroupsOf,
  LIMITS,
  type Plan,
  type PlanRun,
  type Problem,
  writeProblem,
} from "@headfall/hydraulics";
import { namePath } from "../../kernels/name-path.js";
import type { Edited } from "../plan-change.js";
import { diffPlans } from "../plan-diff.js";

/** What is known of plans that were looked at before; a plan never changes, so that stays true. */
const soundness = new WeakMap<Plan, readonly Problem[]>();
const soundnessOfPens = new WeakMap<Plan, readonly Problem[]>();
const bareRuns = new WeakMap<PlanRun, PlanRun>();

/** What in a plan contradicts itself: heights, connections, levels. Nothing when it can be solved. */
export function contradictionsIn(plan: Plan): readonly Problem[] {
  const known = soundness.get(plan);
  if (known !== undefined) return known;
  const building = buildLine(hasTooMany(plan) ? plan : { ...plan, runs: plan.runs.map(bareRun) });
  const problems = building.ok ? [] : building.problems;
  soundness.set(plan, problems);
  return problems;
}

/** What of its birds a plan contradicts: two pens at one drinker, or pens that leave open which drinkers they reach. */
function contradictionsInPens(plan: Plan): readonly Problem[] {
  const known = soundnessOfPens.get(plan);
  if (known !== undefined) return known;
  const problems = problemsOfPens(plan);
  soundnessOfPens.set(plan, problems);
  return problems;
}

function problemsOfPens(plan: Plan): readonly Problem[] {
  if (plan.pens === undefined || hasTooMany(plan)) return [];
  const building = buildLine(plan);
  if (!building.ok) return [];
  // How old birds are is no matter here, but they need a day to be of an age.
  const flock = buildFlock(plan, building.line, plan.day ?? SOME_DAY);
  return flock.ok ? [] : flock.problems;
}
const SOME_DAY = "2000-01-01";

/** Whether an edit may have changed which drinkers a pen reaches. */
const touchesPens = (before: Plan, after: Plan): boolean =>
  after.pens !== undefined &&
  (after.pens !== before.pens ||
    after.runs.length !== before.runs.length ||
    after.runs.some(
      ({ id, drinkers }, r) => id !== before.runs[r]!.id || drinkers !== before.runs[r]!.drinkers,
    ));

/** A run without what hangs on it, which contradicts nothing and would take most of the time in every frame of a drag. */
function bareRun(run: PlanRun): PlanRun {
  const known = bareRuns.get(run);
  if (known !== undefined) return known;
  const { drinkers, fittings, ...bare } = run;
  bareRuns.set(run, bare);
  return bare;
}

function hasTooMany(plan: Plan): boolean {
  const groups = plan.runs.flatMap((run) => drinkerGroupsOf(run));
  return groups.reduce((sum, { count = 1 }) => sum + count, 0) > LIMITS.drinkers;
}

/**
 * Lets an edit stand only if it leaves a plan that can be read, and solved if the plan before it could. One that
 * changes nothing gives back the plan before it.
 */
export function settleEdit(before: Plan, edited: Edited): Edited {
  if (!edited.ok || edited.plan === before) return edited;
  if (diffPlans(before, edited.plan).length === 0) return { ...edited, plan: before };
  const reading = checkDocument(edited.plan);
  if (!reading.ok) return refusedFor(reading.problems, edited.plan);
  if (contradictionsIn(before).length > 0) return edited;
  const problems = contradictionsIn(edited.plan);
  if (problems.length > 0) return refusedFor(problems, edited.plan);
  if (!touchesPens(before, edited.plan) || contradictionsInPens(before).length > 0) return edited;
  const ofPens = contradictionsInPens(edited.plan);
  return ofPens.length === 0 ? edited : refusedFor(ofPens, edited.plan);
}

/** The problems of a plan as a reason, told of its parts by their names. */
function refusedFor(problems: readonly Problem[], plan: Plan): Edited {
  const named = problems.map((problem) => writeProblem({ ...problem, path: namePath(problem.path, plan) }));
  return { ok: false, because: named.join(" ") };
}
