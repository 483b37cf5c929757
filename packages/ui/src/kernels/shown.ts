import { writeFlow, writeHead, writeQuantity, writeVolume } from "@headfall/hydraulics";
import type { UnitSystem } from "./typed-quantity.js";

/** What stands where a line that could not be solved has no figure. */
const NO_FIGURE = "no figure";

const orNone = (value: number, write: (value: number) => string): string =>
  Number.isFinite(value) ? write(value) : NO_FIGURE;

export const showHead = (head: number, system: UnitSystem): string =>
  orNone(head, (value) => writeHead(value, system));

export const showLength = (length: number, system: UnitSystem): string =>
  orNone(length, (value) => writeQuantity(value, "length", system));

/** Flows are shown without their direction. */
export const showFlow = (flow: number, system: UnitSystem): string =>
  orNone(flow, (value) => writeFlow(Math.abs(value), system));

export const showVolume = (volume: number, system: UnitSystem): string =>
  orNone(volume, (value) => writeVolume(value, system));
