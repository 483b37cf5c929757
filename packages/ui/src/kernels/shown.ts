import { writeFlow, writeHead, writeQuantity, writeVolume } from "@headfall/hydraulics";
import type { UnitSystem } from "./typed-quantity.js";

/** What stands where a line that could not be solved has no figure. */
const NO_FIGURE = "no figure";

const orNone = (value: number, write: (value: number) => string): string =>
  Number.isFinite(value) ? write(value) : NO_FIGURE;

/** A head or a loss as finely as a keeper can measure a height; how it was got has it in full. */
export const showHead = (head: number, system: UnitSystem): string =>
  orNone(head, (value) => writeMeasurable(value, system));

/** What a tape tells apart [m]. Common practice, no source. */
const TAPE = { metric: 0.001, us: 0.1 * 0.0254 } as const;
/** Sizes below are no water, but rounding. */
const NOUGHT = 1e-7;

function writeMeasurable(head: number, system: UnitSystem): string {
  const least = TAPE[system];
  if (Math.abs(head) < least && Math.abs(head) > NOUGHT) return `under ${writeHead(least, system)}`;
  const isFine = Math.abs(head) < 100 * least;
  return writeHead(isFine ? Math.round(head / least) * least : head, system);
}

export const showLength = (length: number, system: UnitSystem): string =>
  orNone(length, (value) => writeQuantity(value, "length", system));

/** Flows are shown without their direction. */
export const showFlow = (flow: number, system: UnitSystem): string =>
  orNone(flow, (value) => writeFlow(Math.abs(value), system));

export const showVolume = (volume: number, system: UnitSystem): string =>
  orNone(volume, (value) => writeVolume(value, system));
