import { snap, snapStep } from "../../kernels/above/snap.js";
import type { Ground } from "../../kernels/above/spot.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type DraggingJoint, IDLE, next, stay, type Turn } from "./hand-state.js";
import { ghostOf, isThere, SNAP_REACH } from "./snapping.js";

/** A source or joint in the hand; laid on another joint and let go, the two become one. */
export function draggingJoint(state: DraggingJoint, event: HandEvent, around: Surroundings): Turn {
  const { pointer, gesture, joint, onto } = state;
  if (event.kind === "giveUp") return next(IDLE, { kind: "giveUp", gesture });
  if (event.kind === "down" || event.pointer !== pointer) return stay(state);
  if (event.kind === "move") return move(state, event.at, around);
  if (event.kind === "hold") return stay(state);
  if (onto === undefined) return stay(IDLE);
  return next(IDLE, { kind: "edit", change: { kind: "mergeJoints", joint, into: onto }, gesture });
}

function move(state: DraggingJoint, at: Pixel, around: Surroundings): Turn {
  const { joint, offset, gesture } = state;
  const { layout, view, system } = around;
  const hand = toGround(view, at);
  const anchor = neighbourOf(joint, around);
  const snapped = snap({
    at: { x: hand.x - offset.x, y: hand.y - offset.y },
    layout: mergeable(joint, around),
    reach: SNAP_REACH / view.scale,
    step: snapStep(view.scale, system),
    held: joint,
    isOnRuns: false,
    ...(anchor && { anchor }),
  });
  const { onto: _, ...held } = state;
  const onto = snapped.to.kind === "joint" ? { onto: snapped.to.joint } : {};
  const after = { ...held, ...onto, ghost: ghostOf(snapped, anchor, { ...around, layout }) };
  if (isThere(snapped.place, layout.jointByName.get(joint))) return stay(after);
  return next(after, { kind: "edit", change: { kind: "moveJoint", joint, place: snapped.place }, gesture });
}

/** Two sources never become one, so they do not attract each other. */
function mergeable(joint: string, { layout }: Surroundings) {
  const isSource = (layout.jointByName.get(joint)?.source ?? -1) >= 0;
  return isSource ? { ...layout, joints: layout.joints.filter(({ source }) => source < 0) } : layout;
}

/** The other end, or nearest corner, of the run that leads to the joint, else of the first that leaves it. */
function neighbourOf(joint: string, { layout }: Surroundings): Ground | undefined {
  const coming = layout.runs.find(({ to }) => to === joint);
  if (coming !== undefined) return coming.spots[coming.spots.length - 2];
  return layout.runs.find(({ from }) => from === joint)?.spots[1];
}
