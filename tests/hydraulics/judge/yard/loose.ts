import { holdsOf } from "../../../../packages/hydraulics/src/model/waterer-sizes.js";
import type { LooseWaterer } from "../../../../packages/hydraulics/src/model/yard.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

/** One loose waterer of the tables, on level ground in the sun. */
export function loose(id: string, more: Partial<LooseWaterer> = {}): LooseWaterer {
  const kind = watererById(id);
  if (kind === undefined) throw new Error(`no waterer is called ${id}`);
  return {
    ...{ id, index: 0, kind, count: 1, slope: 0, hole: "uphill", holds: holdsOf(kind), hang: undefined },
    ...{ cord: 1, refillEvery: undefined, isShaded: false },
    ...more,
  };
}
