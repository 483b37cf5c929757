import type { Plan } from "@headfall/hydraulics";
import type { Ground } from "../../kernels/above/spot.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { pinPlaces } from "./pin-places.js";
import { freeSourceName, typedPlace } from "./plan-parts.js";

/** Puts one more vessel on the drawing. What is there already keeps its place. */
export function addSource(
  plan: Plan,
  vessel: Plan["sources"][number]["vessel"],
  place: Ground,
  system: UnitSystem,
): Edited {
  const pinned = pinPlaces(plan, system);
  const id = freeSourceName(plan);
  const sources = [...pinned.sources, { id, vessel, place: typedPlace(place, system) }];
  return {
    ok: true,
    plan: { ...pinned, sources },
    words: `${id} added`,
    selected: { kind: "source", source: sources.length - 1 },
  };
}
