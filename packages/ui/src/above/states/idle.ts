import { hitsBeneath, reachOf } from "../../kernels/above/hit.js";
import { toGround } from "../../kernels/above/viewport.js";
import { startRun } from "./begin-run.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type Idle, next, type Pressing, stay, type Turn } from "./hand-state.js";
import { heldOf, tappedOf } from "./part-of-hit.js";

/** Waits for a press. */
export function idle(state: Idle, event: HandEvent, around: Surroundings): Turn {
  if (event.kind !== "down") return stay(state);
  const { pointer, type, at, gesture } = event;
  const beneath = hitsBeneath({
    at: toGround(around.view, at),
    layout: around.layout,
    drinkers: around.drinkers,
    reach: reachOf(type) / around.view.scale,
    vesselReach: around.vesselReach,
  });
  if (around.tool === "run") return stay(startRun(pointer, at, beneath[0], around));
  const lastTap = state.lastTap && { lastTap: state.lastTap };
  const held = heldOf(beneath, around.selected);
  const tapped = tappedOf(beneath, around.selected);
  const pressed: Pressing = {
    name: "pressing",
    pointer,
    type,
    start: at,
    gesture,
    hit: held,
    tapped,
    ...lastTap,
  };
  return next(pressed);
}
