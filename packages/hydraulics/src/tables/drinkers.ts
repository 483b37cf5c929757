import { drinkers } from "./drinkers.generated.js";
import type { DrinkerKind } from "./row-types.js";

export type { DrinkerKind } from "./row-types.js";

/** Every kind, by id. */
export const allDrinkers: readonly DrinkerKind[] = drinkers;

const byId = new Map(drinkers.map((kind) => [kind.id, kind]));

/**
 * The kind with this id, such as "nipple-bucket".
 *
 * @example drinkerById("nipple-side-action").name   // "Side-action nipple, low pressure"
 */
export function drinkerById(id: string): DrinkerKind | undefined {
  return byId.get(id);
}
