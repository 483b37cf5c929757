import { type Plan, type PlanRun, runEnds, sourceNames } from "@headfall/hydraulics";
import { layAbove } from "../../kernels/above/lay-above.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { AT_END, endReading, heightsOf } from "../plan-heights.js";
import { exactLength } from "../typed-length.js";
import { holdJoints, keepHeights, movedJoints } from "./keep-heights.js";
import { tidyRun, tidySource } from "./part-keys.js";
import { pinPlaces, placeJoint, saysPlaces } from "./pin-places.js";
import {
  GONE,
  jointNames,
  meetingRuns,
  refuse,
  withEnds,
  withoutPoints,
  withoutRuns,
  withRun,
} from "./plan-parts.js";
import { measureRuns } from "./run-length.js";
import { contradictionsIn } from "./settle-edit.js";

/**
 * Lays one joint upon another, so that their runs meet there, at the height of the second. A run between the two is
 * taken out. Falls that would then contradict the heights are no longer told; nothing else rises or sinks.
 */
export function mergeJoints(plan: Plan, joint: string, into: string, system: UnitSystem): Edited {
  const names = jointNames(plan);
  if (!names.has(joint) || !names.has(into)) return refuse(GONE);
  if (joint === into) return refuse("A joint cannot be laid upon itself.");
  const sources = new Set(sourceNames(plan));
  if (sources.has(joint) && sources.has(into)) return refuse("Two sources cannot stand in one place.");
  // A source keeps its name and its height, whichever of the two is in the hand.
  const [gone, kept] = sources.has(joint) ? [into, joint] : [joint, into];
  const touched = meetingRuns(plan).get(gone) ?? [];
  const drawn = withCourses(measured(plan, joint, into, system), touched, [gone, kept], system);
  const merged = renamedEnds(drawn, gone, kept);
  const before = heightsOf(plan);
  const joints = new Map(before.joints);
  joints.delete(gone);
  const still = { ...before, joints };
  const isKept = (each: Plan) =>
    movedJoints(still, heightsOf(each)).length === 0 && contradictionsIn(each).length === 0;
  const untold = () => keepHeights(still, renamedEnds(withoutFalls(drawn, touched), gone, kept).plan, system);
  const ends = touched.flatMap((index) => [runEnds(plan)[index]!.from, runEnds(plan)[index]!.to]);
  const held = () => holdJoints(untold(), [kept, ...ends], still, system);
  const settled = [() => merged.plan, untold].find((each) => isKept(each()))?.() ?? held();
  const taken = merged.taken === 0 ? "" : "; the run between them is gone";
  const source = sourceNames(settled).indexOf(kept);
  const selected =
    source < 0 ? ({ kind: "joint", joint: kept } as const) : { kind: "source" as const, source };
  return { ok: true, plan: settled, words: `${gone} laid upon ${kept}${taken}`, selected };
}

/** On a drawing that has places, the first joint is moved to the second and its runs measured anew. */
function measured(plan: Plan, joint: string, into: string, system: UnitSystem): Plan {
  if (!saysPlaces(plan)) return withEnds(plan);
  const layout = layAbove(plan);
  const [from, to] = [layout.jointByName.get(joint), layout.jointByName.get(into)];
  if (from === undefined || to === undefined) return withEnds(plan);
  const moved = placeJoint(pinPlaces(plan, system, layout), from, to, system);
  return withEnds(measureRuns(moved, meetingRuns(plan).get(joint) ?? [], layout, system).plan);
}

/**
 * The plan with what runs tell of their course counted from the joint they are to start at, so that their pipe stays
 * where it is.
 */
function withCourses(
  plan: Plan,
  runs: readonly number[],
  [gone, kept]: readonly [string, string],
  system: UnitSystem,
): Plan {
  const { joints } = heightsOf(plan);
  const source = sourceNames(plan).indexOf(kept);
  const height = joints.get(kept)?.height;
  const reference = source < 0 ? height : metresOf(plan.sources[source]!.ground);
  const was = joints.get(gone)?.height;
  if (reference === undefined || was === undefined) return plan;
  const counted = (typed: string) => exactLength(metresOf(typed) + reference - was, system);
  return runs.reduce((each, index) => {
    const run = each.runs[index]!;
    if (run.from !== gone || Math.abs(reference - was) < 1e-6) return each;
    const fall = run.fall === undefined ? undefined : counted(run.fall);
    const survey = run.survey?.flatMap((reading) =>
      metresOf(reading.along) < AT_END ? [] : [{ ...reading, fall: counted(reading.fall) }],
    );
    return withRun(each, index, tidyRun({ ...run, fall, survey: survey?.length === 0 ? undefined : survey }));
  }, plan);
}

/** The plan with one joint called by the name of another; runs between the two are taken out. */
function renamedEnds(
  plan: Plan,
  gone: string,
  kept: string,
): { readonly plan: Plan; readonly taken: number } {
  const name = (each: string) => (each === gone ? kept : each);
  const between = new Set(runEnds(plan).flatMap(({ from, to }, i) => (name(from) === name(to) ? [i] : [])));
  const runs = plan.runs.map((run) =>
    run.from === gone || run.to === gone
      ? tidyRun({ ...run, from: name(run.from!), to: name(run.to!) })
      : run,
  );
  const sources = plan.sources.map((source) =>
    source.feed?.from === gone ? tidySource({ ...source, feed: { ...source.feed, from: kept } }) : source,
  );
  const renamed = withoutPoints({ ...plan, sources, runs }, (id) => id === gone);
  return { plan: withoutRuns(renamed, between), taken: between.size };
}

/** The plan without what some runs tell of the height of their ends. */
function withoutFalls(plan: Plan, runs: readonly number[]): Plan {
  const touched = new Set(runs);
  return {
    ...plan,
    runs: plan.runs.map((run, i) => (touched.has(i) ? withoutFall(run) : run)),
  };
}

/** What is surveyed on the way stays told. */
function withoutFall(run: PlanRun): PlanRun {
  const end = endReading(run);
  const survey = run.survey?.filter((_, i) => i !== end);
  return tidyRun({ ...run, fall: undefined, survey: survey?.length === 0 ? undefined : survey });
}
