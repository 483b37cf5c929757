import { typedLength, type UnitSystem } from "../typed-quantity.js";
import { INCH } from "../us-units.js";
import { figureOf, type SideHandle } from "./side-handle.js";

/** Where a handle stands, as it is said: "10 cm above the ground", "level with the pipe", "45 cm". */
export function heightText(handle: SideHandle, height: number, system: UnitSystem): string {
  const above = height - handle.from;
  const size = typedLength(Math.abs(above), system);
  if (handle.fromWords === "") return size;
  if (Number.parseFloat(size) === 0) return `level with ${handle.fromWords}`;
  return `${size} ${above > 0 ? "above" : "below"} ${handle.fromWords}`;
}

/** The figure and its change while a handle is dragged: "62 cm, +4 cm". */
export function dragText(handle: SideHandle, height: number, start: number, system: UnitSystem): string {
  const figure = figureOf({ ...handle, height });
  const change = figure - figureOf({ ...handle, height: start });
  const sign = change > 0 ? "+" : "";
  return `${unsigned(typedLength(figure, system))}, ${sign}${unsigned(typedLength(change, system))}`;
}

/** A nought has no sign. */
const unsigned = (typed: string): string => (Number.parseFloat(typed) === 0 ? typed.replace("-", "") : typed);

/** Height over what it is counted from as a bare number, in cm or in; for a slider's value and ends. */
export function bareHeight(handle: SideHandle, height: number, system: UnitSystem): number {
  const above = height - handle.from;
  return system === "us" ? rounded(above / INCH, 4) : rounded(above * 100, 10);
}

function rounded(value: number, parts: number): number {
  const whole = Math.round(value * parts) / parts;
  return whole === 0 ? 0 : whole;
}
