import type { Plan } from "@headfall/hydraulics";
import { layAbove } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { pinPlaces, placeJoint } from "./pin-places.js";
import { GONE, meetingRuns, refuse } from "./plan-parts.js";
import { measureRuns } from "./run-length.js";

/** Moves a source or joint on the drawing; its runs that are drawn to scale are measured anew. */
export function moveJoint(plan: Plan, name: string, place: Ground, system: UnitSystem): Edited {
  const layout = layAbove(plan);
  const joint = layout.jointByName.get(name);
  if (joint === undefined) return refuse(GONE);
  const moved = placeJoint(pinPlaces(plan, system, layout), joint, place, system);
  const measured = measureRuns(moved, meetingRuns(plan).get(name) ?? [], layout, system);
  return {
    ok: true,
    plan: measured.plan,
    words: [`${name} moved`, ...measured.words].join("; "),
    selected: joint.source < 0 ? { kind: "joint", joint: name } : { kind: "source", source: joint.source },
  };
}
