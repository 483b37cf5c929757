import type { Citation } from "./citation.js";
import { roofs } from "./roofs.generated.js";
import type { RoofKind } from "./row-types.js";

export type { RoofKind } from "./row-types.js";

/** Every kind, by id. */
export const allRoofs: readonly RoofKind[] = roofs.map(
  ([id, name, runoff, runoffLow, runoffHigh, wetting, source, where, seen]) => ({
    id,
    name,
    runoff,
    runoffLow,
    runoffHigh,
    wetting,
    also: [],
    citation: { source, where, seen: seen as Citation["seen"] },
  }),
);

/**
 * The kind with this id, such as "metal".
 *
 * @example roofById("metal").runoff   // 0.92
 */
export function roofById(id: string): RoofKind | undefined {
  return allRoofs.find((kind) => kind.id === id);
}
