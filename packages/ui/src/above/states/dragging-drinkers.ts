import { placeAlong } from "../../kernels/above/place-drinkers.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import { nearestOnWay } from "../../kernels/above/ways.js";
import { showLength } from "../../kernels/shown.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type DraggingDrinkers, IDLE, next, stay, type Turn } from "./hand-state.js";

/** Distances along a run are whole multiples of these [m]: 5 cm, 2 in. */
const STEP = { metric: 0.05, us: 0.0508 } as const;

/** A group of drinkers in the hand, slid along its run. */
export function draggingDrinkers(state: DraggingDrinkers, event: HandEvent, around: Surroundings): Turn {
  const { pointer, gesture } = state;
  if (event.kind === "giveUp") return next(IDLE, { kind: "giveUp", gesture });
  if (event.kind === "down" || event.pointer !== pointer) return stay(state);
  if (event.kind === "up") return stay(IDLE);
  return event.kind === "move" ? move(state, event.at, around) : stay(state);
}

function move(state: DraggingDrinkers, at: Pixel, around: Surroundings): Turn {
  const { run: index, group, offset, ahead, gesture } = state;
  const run = around.layout.runs[index];
  if (run === undefined) return stay(IDLE);
  const hand = toGround(around.view, at);
  const { share } = nearestOnWay(run.spots, { x: hand.x - offset.x, y: hand.y - offset.y });
  const first = within(share * run.length - ahead, run.length - spanOf(state, around), around);
  const ghost = {
    at: placeAlong(run, first),
    words: `first at ${showLength(first, around.system)}`,
  };
  const change = { kind: "moveDrinkers", run: index, group, first } as const;
  const drawn = around.drinkers.find((each) => each.run === index && each.group === group)?.along;
  const now = state.asked ?? drawn;
  const isSame = now !== undefined && Math.abs(now - first) < 1e-6;
  const after = { ...state, ghost };
  return isSame ? stay(after) : next({ ...after, asked: first }, { kind: "edit", change, gesture });
}

/** A whole number of steps, the last drinker still on the run. */
function within(first: number, most: number, { system }: Surroundings): number {
  const step = STEP[system];
  return Math.max(0, Math.min(Math.round(first / step) * step, most));
}

/** From the first drinker of the group to the last [m]. */
function spanOf({ run, group }: DraggingDrinkers, { drinkers }: Surroundings): number {
  const own = drinkers.filter((each) => each.run === run && each.group === group);
  return own.length === 0 ? 0 : own[own.length - 1]!.along - own[0]!.along;
}
