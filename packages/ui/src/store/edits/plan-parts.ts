import {
  drinkerGroupsOf,
  type Plan,
  type PlanDrinkerGroup,
  type PlanPlace,
  type PlanPoint,
  type PlanRun,
  type PlanSource,
  runEnds,
  runNames,
  sourceNames,
} from "@headfall/hydraulics";
import type { Ground } from "../../kernels/above/spot.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { isSameValue } from "../plan-values.js";
import { roundLength } from "../typed-length.js";
import { tidyPlan, tidyPoint, tidyRun, tidySource } from "./part-keys.js";

/** An edit that cannot be made, with its reason. */
export const refuse = (because: string): Edited & { readonly ok: false } => ({ ok: false, because });
export const GONE = "That part is no longer there.";

/** The plan with both ends of every run written down, so that runs can be taken out, put in or turned around. */
export function withEnds(plan: Plan): Plan {
  if (plan.runs.every(({ from, to }) => from !== undefined && to !== undefined)) return plan;
  const ends = runEnds(plan);
  return {
    ...plan,
    runs: plan.runs.map((run, index) =>
      run.from !== undefined && run.to !== undefined ? run : tidyRun({ ...run, ...ends[index]! }),
    ),
  };
}

/**
 * The plan without some of its runs. Runs after them keep the names they had by their number, and joints that only the
 * lost runs named but others start at are listed.
 */
export function withoutRuns(plan: Plan, gone: ReadonlySet<number>): Plan {
  if (gone.size === 0) return plan;
  const first = Math.min(...gone);
  const names = runNames(plan);
  const named = withEnds(plan).runs.map((run, index) =>
    run.id === undefined && index > first ? tidyRun({ ...run, id: names[index]! }) : run,
  );
  return withStartsListed({ ...plan, runs: named.filter((_, index) => !gone.has(index)) });
}

/** Where a run may start: a source, a listed point or the end of a run. */
function withStartsListed(plan: Plan): Plan {
  const points = (plan.points ?? []).map(({ id }) => id);
  const known = new Set([...sourceNames(plan), ...points, ...runEnds(plan).map(({ to }) => to)]);
  const lost = plan.runs.flatMap(({ from }) => (from === undefined || known.has(from) ? [] : [from]));
  return [...new Set(lost)].reduce((each, name) => withPoint(each, name, {}), plan);
}

/** The plan without one of its sources. Sources after it keep the names they had by their number. */
export function withoutSource(plan: Plan, gone: number): Plan {
  const names = sourceNames(plan);
  const named = plan.sources.map((source, index) =>
    source.id === undefined && index > gone ? tidySource({ ...source, id: names[index]! }) : source,
  );
  return { ...plan, sources: named.filter((_, index) => index !== gone) };
}

/** The plan with one run in the place of another; the same plan when it says the same. */
export function withRun(plan: Plan, index: number, run: PlanRun): Plan {
  if (isSameValue(plan.runs[index], run)) return plan;
  return { ...plan, runs: plan.runs.map((each, i) => (i === index ? run : each)) };
}

export function withSource(plan: Plan, index: number, source: PlanSource): Plan {
  if (isSameValue(plan.sources[index], source)) return plan;
  return { ...plan, sources: plan.sources.map((each, i) => (i === index ? source : each)) };
}

/** The plan with something said of a joint that is no source; a joint that only its runs name is listed for it. */
export function withPoint(plan: Plan, id: string, said: Partial<PlanPoint>): Plan {
  const points = plan.points ?? [];
  const index = points.findIndex((point) => point.id === id);
  const point = tidyPoint({ ...points[index], ...said, id });
  if (isSameValue(points[index], point)) return plan;
  const listed = index < 0 ? [...points, point] : points.map((each, i) => (i === index ? point : each));
  return tidyPlan({ ...plan, points: listed });
}

/** The plan without some of its listed points; an empty list goes too. */
export function withoutPoints(plan: Plan, gone: (id: string) => boolean): Plan {
  const left = plan.points?.filter(({ id }) => !gone(id));
  if (left === undefined || left.length === plan.points?.length) return plan;
  return tidyPlan({ ...plan, points: left.length === 0 ? undefined : left });
}

/** The run with other groups of drinkers; one group alone keeps the form it was written in. */
export function withGroups(run: PlanRun, groups: readonly PlanDrinkerGroup[]): PlanRun {
  if (groups.length === 0) return tidyRun({ ...run, drinkers: undefined });
  const isList = groups.length > 1 || Array.isArray(run.drinkers);
  return tidyRun({ ...run, drinkers: isList ? [...groups] : groups[0] });
}

export const groupsOf = (run: PlanRun | undefined): readonly PlanDrinkerGroup[] =>
  run === undefined ? [] : drinkerGroupsOf(run);

/** By joint, the runs that meet there, each once. */
export function meetingRuns(plan: Plan): Map<string, number[]> {
  const meeting = new Map<string, number[]>();
  runEnds(plan).forEach(({ from, to }, run) => {
    for (const name of from === to ? [from] : [from, to]) {
      const list = meeting.get(name);
      if (list === undefined) meeting.set(name, [run]);
      else list.push(run);
    }
  });
  return meeting;
}

/** Names of all joints: sources, listed points and ends of runs. */
export function jointNames(plan: Plan): Set<string> {
  const points = (plan.points ?? []).map(({ id }) => id);
  return new Set([...sourceNames(plan), ...points, ...runEnds(plan).flatMap(({ from, to }) => [from, to])]);
}

export const freePointName = (plan: Plan) =>
  freeName("point", (plan.points?.length ?? 0) + 1, jointNames(plan));
export const freeRunName = (plan: Plan) => freeName("run", plan.runs.length + 1, new Set(runNames(plan)));
export const freeSourceName = (plan: Plan) => freeName("source", plan.sources.length + 1, jointNames(plan));

/** A name with a number that nothing has yet. */
export function freeName(stem: string, from: number, taken: ReadonlySet<string>): string {
  let number = from;
  while (taken.has(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}

/** A place as it is written. */
export const typedPlace = ({ x, y }: Ground, system: UnitSystem): PlanPlace => ({
  x: roundLength(x, system),
  y: roundLength(y, system),
});
