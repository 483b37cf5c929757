import type { WatererKind } from "./waterer-types.js";
import { waterers } from "./waterers.generated.js";

export type {
  FedBowl,
  NippleBucket,
  OpenPan,
  OpenTrough,
  VacuumFount,
  WatererKind,
} from "./waterer-types.js";

/** Every kind of loose waterer, by id. */
export const allWaterers: readonly WatererKind[] = waterers;

const byId = new Map(waterers.map((kind) => [kind.id, kind]));

/**
 * The kind with this id, such as "fount-1gal".
 *
 * @example watererById(allWaterers[0].id) === allWaterers[0]   // true
 */
export function watererById(id: string): WatererKind | undefined {
  return byId.get(id);
}
