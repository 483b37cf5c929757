import type { BirdKind } from "./bird-types.js";

export type { BirdKind, HangPoint, IntakePoint } from "./bird-types.js";

/** Every kind, by id. */
export const allBirds: readonly BirdKind[] = [];

/** The kind with this id, such as "hen". */
export function birdById(id: string): BirdKind | undefined {
  return allBirds.find((kind) => kind.id === id);
}
