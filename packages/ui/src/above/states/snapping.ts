import type { Snapped, SnapTo } from "../../kernels/above/snap.js";
import type { Ground } from "../../kernels/above/spot.js";
import { distanceOf } from "../../kernels/above/ways.js";
import { showLength } from "../../kernels/shown.js";
import type { Ghost, Surroundings } from "./hand.js";

/** How near to a joint or run a held place must come to be drawn to it [px]. */
export const SNAP_REACH = 14;

/** What a snapped place is shown by: a guide from its anchor, what it meets, and the length in words. */
export function ghostOf({ place, to }: Snapped, anchor: Ground | undefined, around: Surroundings): Ghost {
  const length = anchor === undefined ? [] : [showLength(distanceOf(anchor, place), around.system)];
  const words = [...length, ...wordsOf(to, around)].join(", ");
  return {
    at: place,
    words,
    ...(to.kind === "joint" || to.kind === "run" ? { meets: place } : {}),
    ...(to.kind === "direction" && anchor !== undefined ? { guide: [anchor, place] as const } : {}),
  };
}

/** Whether a part need not be moved, being there already. */
export const isThere = (place: Ground, part: Ground | undefined): boolean =>
  part !== undefined && distanceOf(place, part) < 1e-6;

/** What was snapped to, in a word or two. */
export function wordsOf(to: SnapTo, { layout }: Surroundings): readonly string[] {
  switch (to.kind) {
    case "joint":
      return [`onto ${to.joint}`];
    case "run":
      return [`onto ${layout.runs[to.run]?.name ?? "the run"}`];
    case "direction":
      return [to.degrees % 90 === 0 ? "straight" : "45°"];
    default:
      return [];
  }
}
