import type { Plan } from "../document/plan-schema.js";
import { runEnds, runNames, sourceNames } from "../document/run-ends.js";
import type { TypedValues } from "./typed-values.js";

/** The places where runs begin and end, by name, with what the plan says of their heights. */
export interface Joints {
  readonly id: string[];
  /** Stated height of the pipe [m above datum]; undefined where it follows from the falls. */
  readonly height: (number | undefined)[];
  /** Stated height of the ground [m above datum]. */
  readonly ground: (number | undefined)[];
  readonly bleed: boolean[];
  /** Position in the plan's sources, or -1. */
  readonly source: number[];
  /** Ends of each run, as positions in these lists. */
  readonly runFrom: number[];
  readonly runTo: number[];
  readonly runId: string[];
}

/**
 * Gathers the joints of a plan: sources first, then points, then ends that runs make.
 *
 * @param outletHeight  height of each source's outlet [m above datum], in the order of the plan
 */
export function gatherJoints(plan: Plan, outletHeight: readonly number[], values: TypedValues): Joints {
  const joints: Joints = {
    id: [],
    height: [],
    ground: [],
    bleed: [],
    source: [],
    runFrom: [],
    runTo: [],
    runId: [...runNames(plan)],
  };
  const place = new Map<string, number>();
  const add = (
    id: string,
    height: number | undefined,
    ground: number | undefined,
    bleed: boolean,
    source: number,
  ) => {
    place.set(id, joints.id.length);
    joints.id.push(id);
    joints.height.push(height);
    joints.ground.push(ground);
    joints.bleed.push(bleed);
    joints.source.push(source);
  };
  const names = sourceNames(plan);
  plan.sources.forEach((source, i) => {
    const ground = source.ground === undefined ? 0 : values.si(source.ground, "length");
    add(names[i], outletHeight[i], ground, false, i);
  });
  for (const point of plan.points ?? []) {
    const ground = point.ground === undefined ? undefined : values.si(point.ground, "length");
    const above = point.above === undefined ? undefined : values.si(point.above, "length");
    const isStated = ground !== undefined || above !== undefined;
    add(
      point.id,
      isStated ? (ground ?? 0) + (above ?? 0) : undefined,
      isStated ? (ground ?? 0) : undefined,
      point.bleed ?? false,
      -1,
    );
  }
  for (const { to } of runEnds(plan)) {
    if (!place.has(to)) add(to, undefined, undefined, false, -1);
    joints.runTo.push(place.get(to) ?? 0);
  }
  // A run may start where a later one ends, so starts are looked up once all ends are known.
  for (const { from } of runEnds(plan)) joints.runFrom.push(place.get(from) ?? 0);
  return joints;
}
