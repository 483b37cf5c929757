import type { Plan } from "../document/plan-schema.js";
import type { Joints } from "./joints.js";
import type { TypedValues } from "./typed-values.js";

/**
 * The height falls along a run are counted from [m above datum]: that of its start, or for a run that starts at a
 * source the ground the source stands on. A slope is surveyed over the ground; a higher stand leaves it as it is.
 */
export function fallReference(joints: Joints, run: number, startHeight: number): number {
  const from = joints.runFrom[run];
  return joints.source[from] >= 0 ? (joints.ground[from] ?? 0) : startHeight;
}

/** A fall the plan gives for a whole run, from `fall` or from a survey that reaches its end; else undefined. */
export function statedFall(plan: Plan, run: number, values: TypedValues): number | undefined {
  const { fall, survey, length } = plan.runs[run];
  if (fall !== undefined) return values.si(fall, "length");
  const last = survey?.at(-1);
  if (last === undefined) return undefined;
  return Math.abs(values.si(last.along, "length") - values.si(length, "length")) < 1e-6
    ? values.si(last.fall, "length")
    : undefined;
}
