import type { PlanWaterer } from "../document/plan-schema.js";
import { waterInTiltedTaper, waterInTiltedTrough } from "../physics/tilted-pan.js";
import { capacityOfVessel } from "../physics/vessel.js";
import { vesselById } from "../tables/vessels.js";
import type { WatererKind } from "../tables/waterer-types.js";
import type { TypedValues } from "./typed-values.js";

/**
 * Share of a bucket or drum that is filled: to a hand under its brim.
 *
 * @source common-practice, a vessel is seldom brim full, from memory
 */
export const FILLED_TO = 0.95;

/** The kind with the plan's own sizes in place of the table's. */
export function withSizes(kind: WatererKind, sizes: PlanWaterer["sizes"], values: TypedValues): WatererKind {
  if (sizes === undefined) return kind;
  const metres = (typed: string | undefined, times = 1) =>
    typed === undefined ? undefined : values.si(typed, "length") * times;
  const typed = {
    rim: metres(sizes.rim, 0.5),
    hole: metres(sizes.hole),
    lipOverHole: metres(sizes.lip),
    base: metres(sizes.base),
    depth: metres(sizes.depth),
  };
  const known = Object.entries(typed).filter(([key, value]) => value !== undefined && key in kind);
  const floor =
    kind.works === "pan" && typed.rim !== undefined ? { floor: kind.floor * (typed.rim / kind.rim) } : {};
  return { ...kind, ...Object.fromEntries(known), ...floor };
}

/** Water one holds when filled standing level [m³]. */
export function holdsOf(kind: WatererKind): number {
  switch (kind.works) {
    case "vacuum":
      return kind.reservoir + ringOf(kind);
    case "nipples":
      return vesselHolds(kind.vessel);
    case "bell":
      return vesselHolds(kind.vessel) + ringOf(kind);
    case "pan":
      return waterInTiltedTaper({ floor: kind.floor, rim: kind.rim, depth: kind.depth, slope: 0 });
    case "trough":
      return waterInTiltedTrough({ length: kind.length, width: kind.width, depth: kind.depth, slope: 0 });
  }
}

/** Water in the level ring round a jar, or in a bowl [m³]. */
function ringOf({
  rim,
  jar,
  pool,
}: {
  readonly rim: number;
  readonly jar: number;
  readonly pool: number;
}): number {
  return Math.PI * (rim ** 2 - jar ** 2) * pool;
}

function vesselHolds(id: string): number {
  const vessel = vesselById(id);
  if (vessel === undefined) throw new TypeError(`holdsOf: no vessel has the id ${JSON.stringify(id)}`);
  return FILLED_TO * capacityOfVessel(vessel.shape);
}
