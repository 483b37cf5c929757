import { frostMaterials } from "./frost-materials.generated.js";
import type { FrostMaterial } from "./weather-types.js";

export type { FrostMaterial } from "./weather-types.js";

/** Every material, by id. */
export const allFrostMaterials: readonly FrostMaterial[] = frostMaterials;

const byId = new Map(frostMaterials.map((material) => [material.id, material]));

/** The material with this id, such as "pvc". */
export function frostMaterialById(id: string): FrostMaterial | undefined {
  return byId.get(id);
}

/** The material of a pipe, by the pipe table's word for it. */
export function frostMaterialOfPipe(material: string): FrostMaterial | undefined {
  return frostMaterials.find(({ pipes }) => pipes.includes(material));
}
