import { DEFAULTS } from "../../document/defaults.js";
import type { Plan } from "../../document/plan-schema.js";
import { runEnds } from "../../document/run-ends.js";
import type { Line } from "../../model/line.js";
import { readQuantity } from "../../units/quantity.js";

/** How far the measurements of a plan may be off: two standard deviations each. */
export interface Doubts {
  /** By point of the line: of its height [m]; 0 where that was not measured. */
  readonly heights: Float64Array;
  /** By source: of its water levels [m]. */
  readonly levels: Float64Array;
}

/** Distances closer than this are one place [m]. */
const SAME_PLACE = 1e-6;

/** The doubts a plan states for each of its places and vessels, else for all of them. */
export function doubtsOf(plan: Plan, line: Line): Doubts {
  const all = metres(plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed);
  const level = metres(plan.doubts?.level ?? DEFAULTS.levelDoubt.typed);
  const ofJoints = doubtsOfJoints(plan, line);
  const ofSurvey = doubtsOfSurvey(plan, line);
  const { id, measured } = line.points;
  return {
    heights: Float64Array.from(measured, (isMeasured, p) =>
      isMeasured === 0 ? 0 : (ofSurvey.get(p) ?? ofJoints.get(id[p]) ?? all),
    ),
    levels: Float64Array.from(line.sources, ({ index }) => {
      const typed = plan.sources[index].level?.doubt;
      return typed === undefined ? level : metres(typed);
    }),
  };
}

/** By name of a source, point or end; where two are told of one place, the smaller: the better measurement. */
function doubtsOfJoints(plan: Plan, line: Line): ReadonlyMap<string, number> {
  const told = new Map<string, number>();
  const tell = (joint: string, typed: string | undefined) => {
    if (typed === undefined) return;
    told.set(joint, Math.min(metres(typed), told.get(joint) ?? Number.POSITIVE_INFINITY));
  };
  for (const { id, index } of line.sources) tell(id, plan.sources[index].doubt);
  for (const point of plan.points ?? []) tell(point.id, point.doubt);
  runEnds(plan).forEach(({ to }, r) => {
    tell(to, plan.runs[r].doubt);
  });
  return told;
}

/** By point of the line, for those that a survey along a run names. */
function doubtsOfSurvey(plan: Plan, line: Line): ReadonlyMap<number, number> {
  const told = new Map<number, number>();
  for (const { index, along, points } of line.runs)
    for (const reading of plan.runs[index].survey ?? []) {
      if (reading.doubt === undefined) continue;
      const at = along.findIndex((distance) => Math.abs(distance - metres(reading.along)) <= SAME_PLACE);
      if (at > 0 && at < points.length - 1) told.set(points[at], metres(reading.doubt));
    }
  return told;
}

function metres(typed: string): number {
  const read = readQuantity(typed, "length");
  return read.ok ? read.quantity.si : 0;
}
