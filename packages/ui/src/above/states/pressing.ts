import { fitDrinkers } from "../../kernels/above/fit-drinkers.js";
import type { Hit } from "../../kernels/above/hit.js";
import { type Pixel, toGround } from "../../kernels/above/viewport.js";
import { startTee } from "./begin-run.js";
import { draggingCorner } from "./dragging-corner.js";
import { draggingDrinkers } from "./dragging-drinkers.js";
import { draggingJoint } from "./dragging-joint.js";
import { type HandEvent, type Surroundings, TAP_REACH, type Wish } from "./hand.js";
import { type HandState, IDLE, next, type Pressing, stay, type Turn } from "./hand-state.js";
import { panning } from "./panning.js";
import { partOfHit } from "./part-of-hit.js";
import { startPinch } from "./pinching.js";

/** Two taps within this time and reach are a double tap [ms, px]. */
const DOUBLE_MS = 350;
const DOUBLE_REACH = 30;

/** A press that has not moved: let go it is a tap, moved it is a drag. */
export function pressing(state: Pressing, event: HandEvent, around: Surroundings): Turn {
  if (event.kind === "giveUp") return stay(IDLE);
  if (event.kind === "down") return stay(startPinch(state.pointer, state.start, event, around));
  if (event.pointer !== state.pointer) return stay(state);
  if (event.kind === "hold") return stay(held(state, around));
  if (event.kind === "up") return tap(state, event.at, event.time, around);
  if (distance(state.start, event.at) <= TAP_REACH) return stay(state);
  return drag(state, event, around);
}

/** Held still on a run, a press becomes the start of another run; elsewhere it goes on waiting. */
function held(state: Pressing, around: Surroundings): HandState {
  const { hit, pointer, start } = state;
  return around.tool === "hand" && hit?.kind === "run" ? startTee(pointer, start, hit, around) : state;
}

function tap({ tapped: hit, lastTap }: Pressing, at: Pixel, time: number, around: Surroundings): Turn {
  if (around.tool === "drinkers" && hit?.kind === "run") return next(IDLE, addDrinkers(hit, around));
  const choice: Wish = { kind: "choose", part: partOfHit(hit) };
  if (hit !== undefined) return next(IDLE, choice);
  const isDouble =
    lastTap !== undefined && time - lastTap.time < DOUBLE_MS && distance(lastTap.at, at) < DOUBLE_REACH;
  return isDouble ? next(IDLE, { kind: "fit" }) : next({ name: "idle", lastTap: { at, time } }, choice);
}

function addDrinkers({ run, along }: Extract<Hit, { kind: "run" }>, { layout, system }: Surroundings): Wish {
  const drinkers = fitDrinkers(layout.runs[run]!.length, along, system);
  return { kind: "edit", change: { kind: "addDrinkers", run, drinkers } };
}

/** The drag that a press becomes, which is told of this first move at once. */
function drag(state: Pressing, event: Extract<HandEvent, { kind: "move" }>, around: Surroundings): Turn {
  const { pointer, gesture, hit } = state;
  const start = toGround(around.view, state.start);
  const held = { pointer, gesture };
  const from = (place: { x: number; y: number }) => ({ x: start.x - place.x, y: start.y - place.y });
  switch (hit?.kind) {
    case "joint": {
      const { name } = hit.joint;
      return draggingJoint(
        { name: "dragging-joint", ...held, joint: name, offset: from(hit.joint) },
        event,
        around,
      );
    }
    case "corner": {
      const { run, corner, place } = hit;
      return draggingCorner(
        { name: "dragging-corner", ...held, run, corner, offset: from(place) },
        event,
        around,
      );
    }
    case "drinkers": {
      const { run, group, along, at } = hit.drinker;
      const first = around.drinkers.find((each) => each.run === run && each.group === group)?.along ?? along;
      const ahead = along - first;
      return draggingDrinkers(
        { name: "dragging-drinkers", ...held, run, group, ahead, offset: from(at) },
        event,
        around,
      );
    }
    case "run":
      if (isChosenRun(hit.run, around)) return bend(state, hit, event, around);
  }
  return panning({ name: "panning", pointer, from: state.start, view: around.view }, event, around);
}

const isChosenRun = (run: number, { selected }: Surroundings): boolean =>
  selected?.kind === "run" && selected.run === run;

/** The middle of a chosen run gets a corner where it is taken hold of. */
function bend(
  { pointer, gesture }: Pressing,
  { run, piece, place }: Extract<Hit, { kind: "run" }>,
  event: Extract<HandEvent, { kind: "move" }>,
  around: Surroundings,
): Turn {
  const corner: Wish = { kind: "edit", change: { kind: "addCorner", run, before: piece, place }, gesture };
  const state = {
    name: "dragging-corner",
    pointer,
    gesture,
    run,
    corner: piece,
    offset: { x: 0, y: 0 },
  } as const;
  const { state: after, wishes } = draggingCorner(state, event, around);
  return next(after, corner, ...wishes);
}

const distance = (one: Pixel, other: Pixel): number => Math.hypot(one.x - other.x, one.y - other.y);
