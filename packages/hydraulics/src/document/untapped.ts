import { findFittingByName, readFittingText } from "./find-names.js";
import type { Plan, PlanRun } from "./plan-schema.js";
import { runEnds, sourceNames } from "./run-ends.js";

/** Fittings of the table that a hand can shut. */
const SHUT_BY_HAND = new Set([
  "angle-valve",
  "ball-valve",
  "ball-valve-reduced",
  "diaphragm-valve",
  "gate-valve",
  "globe-valve",
]);

/**
 * Which sources the plan cannot shut: by their place, whether any run leaves them with neither a tap at its start nor a
 * valve among its fittings. A run that is drawn towards a source has its tap at the other end.
 */
export function untappedSources(plan: Plan): readonly boolean[] {
  const ends = runEnds(plan);
  return sourceNames(plan).map((source) =>
    plan.runs.some((run, r) => {
      const { from, to } = ends[r];
      if (from !== source && to !== source) return false;
      return !(run.tap !== undefined && from === source) && !hasValve(run);
    }),
  );
}

/** A fitting of the user's own is taken by its name. */
function hasValve({ fittings = [] }: PlanRun): boolean {
  return fittings.some((fitting) => {
    if (typeof fitting !== "string")
      return /\b(tap|cock|stopcock)\b|ball valve|gate valve/i.test(fitting.name);
    const found = findFittingByName(readFittingText(fitting).name);
    return found !== undefined && SHUT_BY_HAND.has(found.id);
  });
}
