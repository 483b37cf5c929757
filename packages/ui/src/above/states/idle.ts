import { hit, reachOf } from "../../kernels/above/hit.js";
import { toGround } from "../../kernels/above/viewport.js";
import { startRun } from "./begin-run.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type Idle, next, type Pressing, stay, type Turn } from "./hand-state.js";

/** Waits for a press. */
export function idle(state: Idle, event: HandEvent, around: Surroundings): Turn {
  if (event.kind !== "down") return stay(state);
  const { pointer, type, at, gesture } = event;
  const found = hit({
    at: toGround(around.view, at),
    layout: around.layout,
    drinkers: around.drinkers,
    reach: reachOf(type) / around.view.scale,
    vesselReach: around.vesselReach,
  });
  if (around.tool === "run") return stay(startRun(pointer, at, found, around));
  const lastTap = state.lastTap && { lastTap: state.lastTap };
  const pressed: Pressing = { name: "pressing", pointer, type, start: at, gesture, hit: found, ...lastTap };
  return next(pressed);
}
