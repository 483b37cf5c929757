import { snap, snapStep } from "../../kernels/above/snap.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import { nearestOnWay } from "../../kernels/above/ways.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type DraggingCorner, IDLE, next, stay, type Turn } from "./hand-state.js";
import { ghostOf, isThere } from "./snapping.js";

/** A corner nearer than this to the straight between its neighbours is let go as no corner [px]. */
const STRAIGHT = 5;

/** A corner of a run in the hand; pulled straight and let go, it is gone. */
export function draggingCorner(state: DraggingCorner, event: HandEvent, around: Surroundings): Turn {
  const { pointer, gesture, run, corner } = state;
  if (event.kind === "giveUp") return next(IDLE, { kind: "giveUp", gesture });
  if (event.kind === "down" || event.pointer !== pointer) return stay(state);
  if (event.kind === "move") return move(state, event.at, around);
  if (event.kind === "hold") return stay(state);
  if (!isStraight(state, around)) return stay(IDLE);
  return next(IDLE, { kind: "edit", change: { kind: "deleteCorner", run, corner }, gesture });
}

function move(state: DraggingCorner, at: Pixel, around: Surroundings): Turn {
  const { run, corner, offset, gesture } = state;
  const { layout, view, system } = around;
  const hand = toGround(view, at);
  const anchor = layout.runs[run]?.spots[corner];
  const snapped = snap({
    at: { x: hand.x - offset.x, y: hand.y - offset.y },
    reach: 0,
    step: snapStep(view.scale, system),
    ...(anchor && { anchor }),
  });
  const { place } = snapped;
  const change = { kind: "moveCorner", run, corner, place } as const;
  const after = { ...state, ghost: ghostOf(snapped, anchor, around) };
  const isSame = isThere(place, state.asked ?? layout.runs[run]?.spots[corner + 1]);
  return isSame ? stay(after) : next({ ...after, asked: place }, { kind: "edit", change, gesture });
}

function isStraight({ run, corner }: DraggingCorner, { layout, view }: Surroundings): boolean {
  const spots = layout.runs[run]?.spots ?? [];
  const [before, at, after] = spots.slice(corner, corner + 3);
  if (before === undefined || at === undefined || after === undefined) return false;
  return nearestOnWay([before, after], at).distance * view.scale < STRAIGHT;
}
