import { type Plan, runEnds, runNames, sourceNames } from "@headfall/hydraulics";
import { endReading, type HeightOrigin, heightsOf, type PlanHeights } from "./plan-heights.js";
import { type Path, valueIn } from "./plan-values.js";

/** The key of the plan that decides a height, what is typed there, and what it is in words. */
export interface HeightKey {
  readonly path: Path;
  /** Undefined while the plan leaves it out and the pipe lies level by default. */
  readonly typed: string | undefined;
  readonly what: string;
}

/**
 * The key that decides how high the pipe lies at a joint: the stand of a source, the height of a point, or the fall
 * (or last reading) of the run that brings its height there.
 */
export function heightKeyOf(plan: Plan, joint: string, heights: PlanHeights = heightsOf(plan)): HeightKey {
  const path = pathOf(plan, joint, heights.joints.get(joint)?.by);
  const typed = path.reduce(valueIn, plan as unknown);
  return { path, typed: typeof typed === "string" ? typed : undefined, what: wordsOf(plan, joint, path) };
}

function pathOf(plan: Plan, joint: string, by: HeightOrigin | undefined): Path {
  if (by?.kind === "source") return ["sources", by.source, "stand"];
  if (by?.kind === "point") return ["points", by.point, "above"];
  const run = by?.run ?? runEnds(plan).findIndex(({ to }) => to === joint);
  if (run < 0) return ["points", (plan.points ?? []).findIndex(({ id }) => id === joint), "above"];
  const isSurveyed = plan.runs[run]!.fall === undefined && endReading(plan.runs[run]!) >= 0;
  return isSurveyed ? ["runs", run, "survey", endReading(plan.runs[run]!), "fall"] : ["runs", run, "fall"];
}

function wordsOf(plan: Plan, joint: string, [list, index]: Path): string {
  if (list === "sources") return `stand of ${sourceNames(plan)[index as number]}`;
  if (list === "points") return `height of the pipe at ${joint}`;
  return `fall of ${runNames(plan)[index as number]}`;
}
