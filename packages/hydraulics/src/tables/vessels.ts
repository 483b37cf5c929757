import type { VesselKind } from "./row-types.js";
import { vessels } from "./vessels.generated.js";

export type { VesselKind } from "./row-types.js";

/** Every kind, by id. */
export const allVessels: readonly VesselKind[] = vessels;

const byId = new Map(vessels.map((kind) => [kind.id, kind]));

/**
 * The kind with this id, such as "bucket-5gal".
 *
 * @example vesselById("drum-55gal-plastic").name   // "Plastic drum, 55 US gal"
 */
export function vesselById(id: string): VesselKind | undefined {
  return byId.get(id);
}
