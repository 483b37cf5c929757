import { nothing, svg } from "lit";
import { pathOf } from "../../kernels/path-of.js";
import type { Spot } from "../../kernels/profile-request.js";
import type { HandDrag } from "../../kernels/side/hand-drag.js";
import { bareHeight, dragText, heightText } from "../../kernels/side/handle-words.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import type { HandleKind } from "../../kernels/side/side-handle.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";

/**
 * Shapes of grips as they go on from their middle, told apart by outline: pipe, ground, vessel and drinkers. They are
 * drawn where they are: a group moved there would have to be put together anew with all others at every step of a drag.
 */
const GRIPS: Readonly<Record<HandleKind, string>> = {
  joint: "m0 -8l8 8l-8 8l-8 -8z",
  reading: "m0 -6l6 6l-6 6l-6 -6z",
  stand: "m-7 -5h14v10h-14z",
  water: "m-8 0a8 8 0 1 1 16 0a8 8 0 1 1 -16 0z",
  outlet: "m-6 0a6 6 0 1 1 12 0a6 6 0 1 1 -12 0z",
  ground: "m-8 5l8 -12l8 12z",
  drop: "m-6 -5h12l-6 12z",
};

/** Half a finger [px]. */
const FINGER = 32;

/** One handle: its grip, its 44 px target, and to a screen reader an upright slider. */
export function handleView({ handle, spot, grip }: PlacedHandle, isHeld: boolean, system: UnitSystem) {
  const { key, kind, name, height, low, high } = handle;
  const isApart = Math.abs(grip.y - spot.y) > 1;
  return svg`<g class="handle ${kind} ${isHeld ? "held" : ""}" data-key=${key} tabindex="0" role="slider"
      aria-orientation="vertical" aria-label=${name}
      aria-valuemin=${bareHeight(handle, low, system)} aria-valuemax=${bareHeight(handle, high, system)}
      aria-valuenow=${bareHeight(handle, height, system)} aria-valuetext=${heightText(handle, height, system)}>
    ${isApart ? svg`<path class="tie" d="M${spot.x} ${spot.y}V${grip.y}"></path>` : nothing}
    <circle class="hit" cx=${grip.x} cy=${grip.y} r="22"></circle>
    <circle class="ring" cx=${grip.x} cy=${grip.y} r="13"></circle>
    <path class="grip" d="${pathOf([grip])}${GRIPS[kind]}"></path>
  </g>`;
}

/** What is said beside a handle in the hand: its figure, its change, and whether it is level with a neighbour. */
export function dragView({ handle, grip }: PlacedHandle, drag: HandDrag, width: number, system: UnitSystem) {
  const text = `${dragText(handle, drag.height, drag.start, system)}${drag.isLevel ? ", level" : ""}`;
  const wide = text.length * 8.4 + 16;
  const { left, top } = besideHand(grip, wide, width);
  return svg`
    ${drag.isLevel ? svg`<path class="level-line" d="M${grip.x - 60} ${grip.y}H${grip.x + 60}"></path>` : nothing}
    <rect class="said" x=${left} y=${top} width=${wide} height="26" rx="6"></rect>
    <text class="figure" x=${left + wide / 2} y=${top + 18} text-anchor="middle">${text}</text>`;
}

/** Where words can be read past a finger: above it, or at the upper edge beside it. */
function besideHand({ x, y }: Spot, wide: number, width: number): { left: number; top: number } {
  if (y > 70) return { left: Math.max(2, Math.min(width - wide - 2, x - wide / 2)), top: y - 64 };
  const isRoomRight = x + FINGER + wide < width;
  return { left: isRoomRight ? x + FINGER : x - FINGER - wide, top: Math.max(2, y - 13) };
}
