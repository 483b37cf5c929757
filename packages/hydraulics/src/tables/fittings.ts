import { fittings } from "./fittings.generated.js";
import type { FittingKind } from "./row-types.js";

export type { FittingKind } from "./row-types.js";

/** Every kind, by id. */
export const allFittings: readonly FittingKind[] = fittings;

const byId = new Map(fittings.map((kind) => [kind.id, kind]));

/** The kind with this id, such as "elbow-90". */
export function fittingById(id: string): FittingKind | undefined {
  return byId.get(id);
}
