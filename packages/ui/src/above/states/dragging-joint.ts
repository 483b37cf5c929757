import { type SnapTo, snap, snapStep } from "../../kernels/above/snap.js";
import type { Ground } from "../../kernels/above/spot.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import type { PlanChange } from "../../store/plan-change.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type DraggingJoint, IDLE, next, stay, type Turn } from "./hand-state.js";
import { isLooseEnd } from "./loose-end.js";
import { ghostOf, isThere, SNAP_REACH } from "./snapping.js";

/** A source or joint in the hand; laid on another joint and let go, the two become one. A loose end makes a tee of a run. */
export function draggingJoint(state: DraggingJoint, event: HandEvent, around: Surroundings): Turn {
  const { pointer, gesture, joint, onto } = state;
  if (event.kind === "giveUp") return next(IDLE, { kind: "giveUp", gesture });
  if (event.kind === "down" || event.pointer !== pointer) return stay(state);
  if (event.kind === "move") return move(state, event.at, around);
  if (event.kind === "hold") return stay(state);
  if (onto === undefined) return stay(IDLE);
  return next(IDLE, { kind: "edit", change: landing(joint, onto), gesture });
}

function landing(joint: string, onto: NonNullable<DraggingJoint["onto"]>): PlanChange {
  return onto.kind === "joint"
    ? { kind: "mergeJoints", joint, into: onto.joint }
    : { kind: "landJoint", joint, run: onto.run, along: onto.along };
}

function move(state: DraggingJoint, at: Pixel, around: Surroundings): Turn {
  const { joint, offset, gesture } = state;
  const { layout, view, system } = around;
  const hand = toGround(view, at);
  const anchor = neighbourOf(joint, around);
  const inHand = layout.jointByName.get(joint);
  const snapped = snap({
    at: { x: hand.x - offset.x, y: hand.y - offset.y },
    layout: mergeable(joint, around),
    reach: SNAP_REACH / view.scale,
    step: snapStep(view.scale, system),
    held: joint,
    isOnRuns: inHand !== undefined && isLooseEnd(inHand, layout.runs),
    ...(anchor && { anchor }),
  });
  const { onto: _, ...held } = state;
  const onto = ontoOf(snapped.to);
  const after = { ...held, ...(onto && { onto }), ghost: ghostOf(snapped, anchor, { ...around, layout }) };
  const { place } = snapped;
  if (isThere(place, state.asked ?? inHand)) return stay(after);
  return next(
    { ...after, asked: place },
    { kind: "edit", change: { kind: "moveJoint", joint, place }, gesture },
  );
}

function ontoOf(to: SnapTo): DraggingJoint["onto"] {
  if (to.kind === "joint") return to;
  return to.kind === "run" ? { kind: "onRun", run: to.run, along: to.along } : undefined;
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
