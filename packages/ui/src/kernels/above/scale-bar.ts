import type { UnitSystem } from "../typed-quantity.js";
import { trimmed } from "../typed-quantity.js";
import { FOOT, INCH } from "../us-units.js";

export interface ScaleBar {
  /** On the ground [m]. */
  readonly length: number;
  /** On the drawing [px]. */
  readonly width: number;
  readonly words: string;
}

/** Lengths people pace and measure by; in feet, halves and quarters of a yardstick come as inches. */
const INCHES = [1, 3, 6];

/** The longest round length that is drawn no wider than `most` px. */
export function scaleBar(scale: number, system: UnitSystem, most: number): ScaleBar {
  const longest = most / scale;
  const length = system === "us" ? roundFeet(longest) : roundOf(longest);
  return { length, width: length * scale, words: wordsOf(length, system) };
}

/** Distance between the lines of the grid [m]: the shortest round length drawn at least `least` px wide. */
export function gridStep(scale: number, system: UnitSystem, least: number): number {
  const unit = system === "us" ? FOOT : 1;
  const shortest = least / scale / unit;
  // 1, 2, 5 and 10 times the power of ten just below: the last is never too short.
  const tens = 10 ** Math.floor(Math.log10(shortest));
  return unit * tens * [1, 2, 5, 10].find((times) => times * tens >= shortest * (1 - 1e-9))!;
}

/** 1, 2 or 5 times a power of ten, the largest that is not longer. */
function roundOf(longest: number): number {
  const tens = 10 ** Math.floor(Math.log10(longest * (1 + 1e-9)));
  return tens * [5, 2, 1].find((times) => times * tens <= longest * (1 + 1e-9))!;
}

function roundFeet(longest: number): number {
  if (longest >= FOOT) return FOOT * roundOf(longest / FOOT);
  const inches = INCHES.filter((each) => each * INCH <= longest);
  return INCH * (inches[inches.length - 1] ?? roundOf(longest / INCH));
}

function wordsOf(length: number, system: UnitSystem): string {
  if (system === "us")
    return length >= FOOT ? `${trimmed(length / FOOT, 2)} ft` : `${trimmed(length / INCH, 3)} in`;
  return length >= 1 ? `${trimmed(length, 2)} m` : `${trimmed(length * 100, 2)} cm`;
}
