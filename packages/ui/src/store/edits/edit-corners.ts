import { type Plan, type PlanPlace, runNames } from "@headfall/hydraulics";
import { layAbove } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { tidyRun } from "./part-keys.js";
import { pinPlaces } from "./pin-places.js";
import { GONE, refuse, typedPlace, withRun } from "./plan-parts.js";
import { measureRuns } from "./run-length.js";

/** Moves one corner of a run. */
export function moveCorner(
  plan: Plan,
  run: number,
  corner: number,
  place: Ground,
  system: UnitSystem,
): Edited {
  const corners = plan.runs[run]?.corners ?? [];
  if (corners[corner] === undefined) return refuse(GONE);
  const moved = corners.map((each, index) => (index === corner ? typedPlace(place, system) : each));
  return withCorners(plan, run, moved, "corner moved", system);
}

/** Puts a corner into a run before one that is there, or last. */
export function addCorner(
  plan: Plan,
  run: number,
  before: number,
  place: Ground,
  system: UnitSystem,
): Edited {
  if (plan.runs[run] === undefined) return refuse(GONE);
  const corners = plan.runs[run].corners ?? [];
  const at = Math.max(0, Math.min(corners.length, before));
  const more = [...corners.slice(0, at), typedPlace(place, system), ...corners.slice(at)];
  return withCorners(plan, run, more, "corner added", system);
}

export function deleteCorner(plan: Plan, run: number, corner: number, system: UnitSystem): Edited {
  const corners = plan.runs[run]?.corners ?? [];
  if (corners[corner] === undefined) return refuse(GONE);
  const left = corners.filter((_, index) => index !== corner);
  return withCorners(plan, run, left, "corner taken out", system);
}

function withCorners(
  plan: Plan,
  index: number,
  corners: PlanPlace[],
  words: string,
  system: UnitSystem,
): Edited {
  const layout = layAbove(plan);
  const pinned = pinPlaces(plan, system, layout);
  const run = tidyRun({ ...pinned.runs[index]!, corners: corners.length === 0 ? undefined : corners });
  const measured = measureRuns(withRun(pinned, index, run), [index], layout, system);
  return {
    ok: true,
    plan: measured.plan,
    words: [`${runNames(plan)[index]}: ${words}`, ...measured.words].join("; "),
    selected: { kind: "run", run: index },
  };
}
