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
  const told = [...joinSources(plan, outletHeight, values), ...joinPoints(plan, values)];
  const place = new Map(told.map(({ id }, j) => [id, j]));
  const ends = runEnds(plan);
  for (const { to } of ends) {
    if (place.has(to)) continue;
    place.set(to, told.length);
    told.push({ id: to, height: undefined, ground: undefined, bleed: false, source: -1 });
  }
  return {
    id: told.map(({ id }) => id),
    height: told.map(({ height }) => height),
    ground: told.map(({ ground }) => ground),
    bleed: told.map(({ bleed }) => bleed),
    source: told.map(({ source }) => source),
    // A run may start where a later one ends, so starts are looked up once all ends are known.
    runFrom: ends.map(({ from }) => place.get(from) ?? 0),
    runTo: ends.map(({ to }) => place.get(to) ?? 0),
    runId: [...runNames(plan)],
  };
}

/** One joint, as in the columns of `Joints`. */
interface Joint {
  readonly id: string;
  readonly height: number | undefined;
  readonly ground: number | undefined;
  readonly bleed: boolean;
  readonly source: number;
}

function joinSources(plan: Plan, outletHeight: readonly number[], values: TypedValues): Joint[] {
  const names = sourceNames(plan);
  return plan.sources.map(({ ground }, i) => ({
    id: names[i],
    height: outletHeight[i],
    ground: ground === undefined ? 0 : values.si(ground, "length"),
    bleed: false,
    source: i,
  }));
}

/** A height of either ground or pipe states both: what is not said of them is 0. */
function joinPoints({ points = [] }: Plan, values: TypedValues): Joint[] {
  return points.map((point) => {
    const ground = point.ground === undefined ? undefined : values.si(point.ground, "length");
    const above = point.above === undefined ? undefined : values.si(point.above, "length");
    const isStated = ground !== undefined || above !== undefined;
    return {
      id: point.id,
      height: isStated ? (ground ?? 0) + (above ?? 0) : undefined,
      ground: isStated ? (ground ?? 0) : undefined,
      bleed: point.bleed ?? false,
      source: -1,
    };
  });
}
