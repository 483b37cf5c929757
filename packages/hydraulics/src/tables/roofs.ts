import { roofs } from "./roofs.generated.js";
import type { RoofKind } from "./row-types.js";

export type { RoofKind } from "./row-types.js";

/** Every kind, by id. */
export const allRoofs: readonly RoofKind[] = roofs;

/** The kind with this id, such as "metal". */
export function roofById(id: string): RoofKind | undefined {
  return roofs.find((kind) => kind.id === id);
}
