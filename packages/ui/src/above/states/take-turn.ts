import { draggingCorner } from "./dragging-corner.js";
import { draggingDrinkers } from "./dragging-drinkers.js";
import { draggingJoint } from "./dragging-joint.js";
import { drawingRun } from "./drawing-run.js";
import type { HandEvent, Surroundings } from "./hand.js";
import type { HandState, Turn } from "./hand-state.js";
import { idle } from "./idle.js";
import { panning } from "./panning.js";
import { pinching } from "./pinching.js";
import { pressing } from "./pressing.js";

/** What the hand does next, and what it asks for. */
export function takeTurn(state: HandState, event: HandEvent, around: Surroundings): Turn {
  switch (state.name) {
    case "idle":
      return idle(state, event, around);
    case "pressing":
      return pressing(state, event, around);
    case "dragging-joint":
      return draggingJoint(state, event, around);
    case "dragging-corner":
      return draggingCorner(state, event, around);
    case "dragging-drinkers":
      return draggingDrinkers(state, event, around);
    case "drawing-run":
      return drawingRun(state, event, around);
    case "panning":
      return panning(state, event, around);
    case "pinching":
      return pinching(state, event, around);
  }
}
