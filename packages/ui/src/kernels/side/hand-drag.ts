import type { UnitSystem } from "../typed-quantity.js";
import type { SideHandle } from "./side-handle.js";
import { clamp, type SnappedHeight, snapHeight } from "./snap-height.js";

/** A handle in the hand: where it began, where the hand is, and where the handle has been put. */
export interface HandDrag extends SnappedHeight {
  readonly key: string;
  /** All edits of the drag carry this text, so that they are one step to undo. */
  readonly gesture: string;
  /** Height at the beginning [m above datum]. */
  readonly start: number;
  /** Height the hand itself means, before snapping [m above datum]. */
  readonly raw: number;
  /** Neighbours as they stood at the beginning [m above datum]. */
  readonly neighbours: readonly number[];
}

/** Takes a handle in hand; nothing has moved yet. */
export function takeInHand(handle: SideHandle, neighbours: readonly number[], gesture: string): HandDrag {
  const { key, height } = handle;
  return { key, gesture, start: height, raw: height, height, isLevel: false, neighbours };
}

/**
 * The drag after the hand has moved by so many pixels. They count by the scale the drawing has now: when that has
 * gone on by a step, the handle keeps following the hand as finely as it looks.
 */
export function moveHand(
  drag: HandDrag,
  handle: SideHandle,
  down: number,
  perMetreUp: number,
  system: UnitSystem,
): HandDrag {
  const raw = drag.raw - down / perMetreUp;
  return { ...drag, raw, ...snapHeight(handle, raw, drag.neighbours, perMetreUp, system) };
}

/** The drag after a key has put the handle at a height. */
export function putHand(drag: HandDrag, handle: SideHandle, wanted: number, system: UnitSystem): HandDrag {
  const height = clamp(handle, wanted, system);
  const isLevel = drag.neighbours.some((level) => Math.abs(level - height) < 5e-4);
  return { ...drag, raw: height, height, isLevel };
}
