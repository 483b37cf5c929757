import { type Pixel, toGround, viewThrough } from "../../kernels/above/viewport.js";
import type { HandEvent, Surroundings } from "./hand.js";
import { type Finger, IDLE, next, type Pinching, stay, type Turn } from "./hand-state.js";

/** A second finger comes down beside the first: from now on each holds the ground under it. */
export function startPinch(
  pointer: number,
  at: Pixel,
  second: { readonly pointer: number; readonly at: Pixel },
  { view }: Surroundings,
): Pinching {
  const finger = (held: { readonly pointer: number; readonly at: Pixel }): Finger => ({
    pointer: held.pointer,
    at: held.at,
    ground: toGround(view, held.at),
  });
  return { name: "pinching", fingers: [finger({ pointer, at }), finger(second)] };
}

/** Two fingers enlarge and move the drawing; when one is lifted, the other goes on moving it. */
export function pinching(state: Pinching, event: HandEvent, around: Surroundings): Turn {
  if (event.kind === "giveUp") return stay(IDLE);
  if (event.kind === "down") return stay(state);
  const [one, other] = state.fingers;
  if (event.pointer !== one.pointer && event.pointer !== other.pointer) return stay(state);
  if (event.kind === "hold") return stay(state);
  if (event.kind === "up") {
    const left = event.pointer === one.pointer ? other : one;
    return stay({ name: "panning", pointer: left.pointer, from: left.at, view: around.view });
  }
  const moved = (finger: Finger): Finger =>
    finger.pointer === event.pointer ? { ...finger, at: event.at } : finger;
  const fingers = [moved(one), moved(other)] as const;
  const view = viewThrough([fingers[0].ground, fingers[1].ground], [fingers[0].at, fingers[1].at]);
  return next({ name: "pinching", fingers }, { kind: "view", view });
}
