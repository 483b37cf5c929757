import { lengthOf } from "../../kernels/above/lay-above.js";
import { type Snapped, snap, snapStep } from "../../kernels/above/snap.js";
import type { Ground } from "../../kernels/above/spot.js";
import { straightenStroke } from "../../kernels/above/straighten-stroke.js";
import { type Pixel, toGround, toPixel } from "../../kernels/above/viewport.js";
import { distanceOf } from "../../kernels/above/ways.js";
import { showLength } from "../../kernels/shown.js";
import type { RunEndChoice } from "../../store/plan-change.js";
import { type HandEvent, type Surroundings, TAP_REACH } from "./hand.js";
import { type DrawingRun, IDLE, next, stay, type Turn } from "./hand-state.js";
import { partOfHit } from "./part-of-hit.js";
import { startPinch } from "./pinching.js";
import { SNAP_REACH, wordsOf } from "./snapping.js";

/** Wobble of a hand on a phone [px], and the least way between two places kept of the stroke. */
const WOBBLE = 11;
const LEAST_MOVE = 3;

/** A run under the hand; let go on a joint or a run it ends there, else where it is let go. */
export function drawingRun(state: DrawingRun, event: HandEvent, around: Surroundings): Turn {
  if (event.kind === "giveUp") return stay(IDLE);
  // A second finger means that the hand wanted to look closer.
  if (event.kind === "down") {
    const last = toPixel(around.view, state.stroke[state.stroke.length - 1]!);
    return stay(startPinch(state.pointer, last, event, around));
  }
  if (event.pointer !== state.pointer) return stay(state);
  if (event.kind === "move") return stay(lengthened(state, event.at, around));
  return event.kind === "up" ? letGo(state, event.at, around) : stay(state);
}

function lengthened(state: DrawingRun, at: Pixel, around: Surroundings): DrawingRun {
  const hand = toGround(around.view, at);
  const last = state.stroke[state.stroke.length - 1]!;
  const isNew = distanceOf(last, hand) * around.view.scale >= LEAST_MOVE;
  const stroke = isNew ? [...state.stroke, hand] : state.stroke;
  const { way, end } = wayOf(stroke, hand, around);
  const words = [showLength(lengthOf(way), around.system), ...wordsOf(end.to, around)].join(", ");
  const meets = end.to.kind === "joint" || end.to.kind === "run" ? { meets: end.place } : {};
  return { ...state, stroke, ghost: { way, at: end.place, words, ...meets } };
}

function letGo(state: DrawingRun, at: Pixel, around: Surroundings): Turn {
  const isTap =
    Math.hypot(at.x - state.start.x, at.y - state.start.y) <= TAP_REACH && state.stroke.length < 4;
  if (isTap) return next(IDLE, { kind: "choose", part: partOfHit(state.hit) });
  const { way, end } = wayOf(state.stroke, toGround(around.view, at), around);
  const to = endOf(end, way[way.length - 1]!);
  if (way.length < 2 || isSameEnd(state.from, to)) return stay(IDLE);
  const change = { kind: "drawRun", from: state.from, to, corners: way.slice(1, -1) } as const;
  return next(IDLE, { kind: "edit", change });
}

/** The stroke as straight pieces, and what its end was snapped to. */
function wayOf(stroke: readonly Ground[], hand: Ground, { layout, view, system }: Surroundings) {
  const step = snapStep(view.scale, system);
  const end: Snapped = snap({ at: hand, layout, reach: SNAP_REACH / view.scale, step });
  const isEndFixed = end.to.kind === "joint" || end.to.kind === "run";
  const way = straightenStroke({
    stroke: [...stroke, isEndFixed ? end.place : hand],
    tolerance: WOBBLE / view.scale,
    step,
    isEndFixed,
  });
  return { way, end: isEndFixed ? end : { ...end, place: way[way.length - 1]! } };
}

function endOf({ to }: Snapped, place: Ground): RunEndChoice {
  if (to.kind === "joint") return { kind: "joint", joint: to.joint };
  return to.kind === "run" ? { kind: "onRun", run: to.run, along: to.along } : { kind: "place", place };
}

/** A run from a joint back to the same joint is a slip of the hand. */
const isSameEnd = (from: RunEndChoice, to: RunEndChoice): boolean =>
  from.kind === "joint" && to.kind === "joint" && from.joint === to.joint;
