import { writeQuantity } from "@headfall/hydraulics";
import { trimmed, type UnitSystem } from "./typed-quantity.js";

/** What stands where a line that could not be solved has no figure. */
const NO_FIGURE = "no figure";
const FOOT = 0.3048;

export function showHead(head: number, system: UnitSystem): string {
  return Number.isFinite(head) ? writeQuantity(head, "head", system) : NO_FIGURE;
}

/** Heads inside one formula are all in the same unit, so that one can follow the sum by eye: cm, or inches. */
export function showHeadInFormula(head: number, system: UnitSystem): string {
  if (!Number.isFinite(head)) return NO_FIGURE;
  return system === "us" ? `${trimmed((head / FOOT) * 12, 2)} in` : `${trimmed(head * 100, 1)} cm`;
}

export function showLength(length: number, system: UnitSystem): string {
  return Number.isFinite(length) ? writeQuantity(length, "length", system) : NO_FIGURE;
}

/** Flows are shown without their direction. */
export function showFlow(flow: number, system: UnitSystem): string {
  return Number.isFinite(flow) ? writeQuantity(Math.abs(flow), "flow", system) : NO_FIGURE;
}

export function showVolume(volume: number, system: UnitSystem): string {
  return Number.isFinite(volume) ? writeQuantity(volume, "volume", system) : NO_FIGURE;
}
