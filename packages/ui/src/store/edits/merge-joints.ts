import { type Plan, type PlanRun, runEnds, sourceNames } from "@headfall/hydraulics";
import { layAbove } from "../../kernels/above/lay-above.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { endReading, heightsOf } from "../plan-heights.js";
import { keepHeights, movedJoints } from "./keep-heights.js";
import { tidyRun, tidySource } from "./part-keys.js";
import { pinPlaces, placeJoint, saysPlaces } from "./pin-places.js";
import { GONE, jointNames, meetingRuns, refuse, withEnds, withoutPoints, withoutRuns } from "./plan-parts.js";
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
  const drawn = measured(plan, joint, into, system);
  const touched = meetingRuns(plan).get(gone) ?? [];
  const merged = renamedEnds(drawn, gone, kept);
  const before = heightsOf(plan);
  const joints = new Map(before.joints);
  joints.delete(gone);
  const isKept =
    movedJoints({ ...before, joints }, heightsOf(merged.plan)).length === 0 &&
    contradictionsIn(merged.plan).length === 0;
  const settled = isKept
    ? merged.plan
    : keepHeights(
        { ...before, joints },
        renamedEnds(withoutFalls(drawn, touched, gone), gone, kept).plan,
        system,
      );
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
function withoutFalls(plan: Plan, runs: readonly number[], gone: string): Plan {
  const touched = new Set(runs);
  return {
    ...plan,
    runs: plan.runs.map((run, i) => (touched.has(i) ? withoutFall(run, run.from === gone) : run)),
  };
}

/** A survey counted from a start that has moved tells nothing any more; one that only ended there loses its end. */
function withoutFall(run: PlanRun, hasMovedStart: boolean): PlanRun {
  const end = endReading(run);
  const survey = hasMovedStart ? undefined : run.survey?.filter((_, i) => i !== end);
  return tidyRun({ ...run, fall: undefined, survey: survey?.length === 0 ? undefined : survey });
}
