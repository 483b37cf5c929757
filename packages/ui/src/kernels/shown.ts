import { writeFlow, writeHead, writeQuantity, writeVolume } from "@headfall/hydraulics";
import { trimmed, type UnitSystem } from "./typed-quantity.js";
import { FOOT } from "./us-units.js";

/** What stands where a line that could not be solved has no figure. */
const NO_FIGURE = "no figure";

const orNone = (value: number, write: (value: number) => string): string =>
  Number.isFinite(value) ? write(value) : NO_FIGURE;

export const showHead = (head: number, system: UnitSystem): string =>
  orNone(head, (value) => writeHead(value, system));

/** Heads inside one formula are all in the same unit, so that one can follow the sum by eye: cm, or inches. */
export function showHeadInFormula(head: number, system: UnitSystem): string {
  if (!Number.isFinite(head)) return NO_FIGURE;
  return system === "us" ? `${trimmed((head / FOOT) * 12, 2)} in` : `${trimmed(head * 100, 1)} cm`;
}

export const showLength = (length: number, system: UnitSystem): string =>
  orNone(length, (value) => writeQuantity(value, "length", system));

/** Flows are shown without their direction. */
export const showFlow = (flow: number, system: UnitSystem): string =>
  orNone(flow, (value) => writeFlow(Math.abs(value), system));

export const showVolume = (volume: number, system: UnitSystem): string =>
  orNone(volume, (value) => writeVolume(value, system));
