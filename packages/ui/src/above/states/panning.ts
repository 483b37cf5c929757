import { panBy } from "../../kernels/above/viewport.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { IDLE, next, type Panning, stay, type Turn } from "./hand-state.js";
import { startPinch } from "./pinching.js";

/** The drawing moves with the hand. */
export function panning(state: Panning, event: HandEvent, around: Surroundings): Turn {
  if (event.kind === "giveUp") return next(IDLE, { kind: "view", view: state.view });
  if (event.kind === "down") return stay(startPinch(state.pointer, state.from, event, around));
  if (event.pointer !== state.pointer) return stay(state);
  if (event.kind !== "move") return stay(event.kind === "up" ? IDLE : state);
  const { at } = event;
  const view = panBy(around.view, at.x - state.from.x, at.y - state.from.y);
  return next({ ...state, from: at }, { kind: "view", view });
}
