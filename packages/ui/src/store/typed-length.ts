import { metresOf } from "../kernels/typed-metres.js";
import { trimmed, typedLength, type UnitSystem } from "../kernels/typed-quantity.js";
import { INCH } from "../kernels/us-units.js";

/** Lengths that read as alike as this are one length [m]. */
const SAME = 5e-8;

/** A length as a hand gives it, from a metre on in metres: "62 cm", "12.35 m", "2 ft 6 in". */
export function roundLength(length: number, system: UnitSystem): string {
  const isLong = system === "metric" && Math.abs(length) >= 0.9995;
  const typed = isLong ? `${trimmed(length, 2)} m` : typedLength(length, system);
  return typed.replace(/^-0 /, "0 ");
}

/** A height or fall as a hand gives it; to the millimetre, as a level is read. */
export function roundHeight(height: number, system: UnitSystem): string {
  const isLong = system === "metric" && Math.abs(height) >= 0.9995;
  return isLong ? `${trimmed(height, 3)} m` : roundLength(height, system);
}

/**
 * A length that must come out of the text as it went in, because others depend on it: written shortly where that is
 * true to it, in the units of the system first, else with as many decimals as it takes.
 */
export function exactLength(length: number, system: UnitSystem, tolerance = SAME): string {
  const other = system === "us" ? "metric" : "us";
  const short = [roundLength(length, system), fine(length, system, 2), fine(length, system, 3)];
  const foreign = [roundLength(length, other)];
  const long = [4, 5, 6, 7, 8, 9, 10, 11, 12].map((decimals) => fine(length, system, decimals));
  const candidates = [...short, ...foreign, ...long];
  return (
    candidates.find((typed) => Math.abs(metresOf(typed) - length) <= tolerance) ??
    candidates[candidates.length - 1]!
  );
}

function fine(length: number, system: UnitSystem, decimals: number): string {
  if (system === "metric" && Math.abs(length) < 1) return `${trimmed(length * 100, decimals - 2)} cm`;
  if (system === "metric") return `${trimmed(length, decimals)} m`;
  const inches = Number((Math.abs(length) / INCH).toFixed(decimals));
  const feet = Math.floor(inches / 12);
  const rest = trimmed(inches - 12 * feet, decimals);
  const sign = length < 0 && inches > 0 ? "-" : "";
  if (feet === 0) return `${sign}${rest} in`;
  return Number(rest) === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${rest} in`;
}
