import { type UnitSystem, writeQuantity, writeRange } from "../../units/quantity.js";

/**
 * A slope as people measure it: per cent, and the angle: "5 % (2.9°)".
 *
 * @example writeSlope(0.05)   // "5 % (2.9°)"
 */
export function writeSlope(slope: number): string {
  if (slope === 0) return "level";
  const angle = (Math.atan(slope) * 180) / Math.PI;
  return `${Number((slope * 100).toPrecision(2))} % (${angle < 10 ? angle.toFixed(1) : Math.round(angle)}°)`;
}

/**
 * A height to mark or a shim to cut: to the millimetre below a decimetre.
 *
 * @example writeMark(0.123, "metric")   // "12 cm"
 */
export function writeMark(metres: number, system: UnitSystem): string {
  return writeQuantity(metres, "length", system, 2);
}

/** Between which marks: "4.5 cm to 6.6 cm" and never in two units. */
export function writeMarks(low: number, high: number, system: UnitSystem): string {
  return writeRange(low, high, "length", system, 2);
}

/**
 * Refills a day, or how many days one lasts.
 *
 * @example writeRefills(1.4)   // "1.4 a day"
 */
export function writeRefills(refills: number | undefined): string {
  if (refills === undefined) return "gives nothing";
  if (refills <= 0) return "none";
  if (refills >= 0.95) return `${refills < 9.5 ? refills.toFixed(1) : Math.round(refills)} a day`;
  const days = 1 / refills;
  return days > 60
    ? "less than every 60 days"
    : `every ${days < 9.5 ? days.toFixed(1) : Math.round(days)} days`;
}

/** Which way a hole is turned, as an instruction. */
export const HOLE_WORDS = {
  uphill: "its hole uphill",
  sideways: "its hole sideways",
  downhill: "its hole downhill",
} as const;
