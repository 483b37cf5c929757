import { findUnit, fromSi, toSi } from "./find-unit.js";
import type { QuantityKind, Unit } from "./unit-list.js";

/** Whose units a person wants to read. */
export type UnitSystem = "metric" | "us";

/** A unit to write in, for sizes below a limit in SI. */
interface Choice {
  readonly symbol: string;
  readonly below: number;
}

const choice = (symbol: string, below = Number.POSITIVE_INFINITY): Choice => ({ symbol, below });
const METRIC_LENGTH = [choice("mm", 0.1), choice("cm", 1), choice("m", 1000), choice("km")];
const US_LENGTH = [choice("in", 0.3048), choice("ft")];
const TIME = [choice("s", 120), choice("min", 7200), choice("h", 172_800), choice("day")];

/** Unit by size: what a keeper would say, in growing order. Common practice, no source. */
const CHOICES: Readonly<Record<QuantityKind, Readonly<Record<UnitSystem, readonly Choice[]>>>> = {
  length: { metric: METRIC_LENGTH, us: US_LENGTH },
  head: { metric: METRIC_LENGTH, us: US_LENGTH },
  volume: {
    metric: [choice("mL", 1e-3), choice("L", 10), choice("m³")],
    us: [choice("fl oz", 9.46e-4), choice("gal")],
  },
  flow: {
    metric: [choice("mL/min", 1e-3 / 60), choice("L/min")],
    us: [choice("fl oz/min", 6.3e-6), choice("gal/min")],
  },
  area: {
    metric: [choice("mm²", 1e-3), choice("cm²", 0.1), choice("m²")],
    us: [choice("in²", 0.0929), choice("ft²")],
  },
  temperature: { metric: [choice("°C")], us: [choice("°F")] },
  time: { metric: TIME, us: TIME },
  slope: { metric: [choice("%")], us: [choice("%")] },
  speed: { metric: [choice("m/s")], us: [choice("mph")] },
  sunshine: { metric: [choice("W/m²")], us: [choice("W/m²")] },
};

/** Smaller sizes are written as 0: they are rounding, not water. In SI; common practice, no source. */
const WRITTEN_AS_NOUGHT: Readonly<Record<QuantityKind, number>> = {
  length: 1e-7,
  head: 1e-7,
  volume: 1e-10,
  flow: 1e-12,
  area: 1e-10,
  temperature: 0,
  time: 1e-3,
  slope: 1e-7,
  speed: 1e-6,
  sunshine: 1e-6,
};

/** Feet and whole inches are written from one foot up to here [m]. */
const FEET_AND_INCHES_BELOW = 30.48;
const INCH = 0.0254;
const INCHES_PER_FOOT = 12;

/**
 * A quantity in words a keeper would use: unit by size, significant figures, never "-0".
 * Sizes too small to mean anything (a length under 1e-7 m) are written as 0.
 *
 *   US lengths from 1 ft to 100 ft are feet and whole inches (with more than 3 figures, inches with decimals)
 *
 * @param si       the value in SI (temperatures in °C, slopes as fall over length)
 * @param kind     what is measured
 * @param system   "metric" or "us"
 * @param figures  significant figures, 1 to 15; 3 unless given
 * @returns for instance "63 cm", "2 ft 1 in", "40 mL/min"; readQuantity reads it back
 * @valid any finite number
 * @throws RangeError when si is not finite or figures is not a whole number from 1 to 15
 * @source nist-sp-811, factors of UNITS; the choice of unit is common practice, no source
 * @example writeQuantity(0.63, "length", "us")   // 2 ft 1 in
 */
export function writeQuantity(si: number, kind: QuantityKind, system: UnitSystem, figures = 3): string {
  if (!Number.isFinite(si)) throw new RangeError(`writeQuantity: si is ${si}; it must be a finite number`);
  if (!Number.isInteger(figures) || figures < 1 || figures > 15) {
    throw new RangeError(`writeQuantity: figures is ${figures}; it must be a whole number from 1 to 15`);
  }
  const choices = CHOICES[kind][system];
  const size = Math.abs(si) < WRITTEN_AS_NOUGHT[kind] ? 0 : si;
  for (const { symbol, below } of choices) {
    const one = findUnit(kind, symbol) as Unit;
    const value = rounded(fromSi(size, one), figures);
    // Judged after rounding, so that 99.97 cm is written "1 m". The last choice has no limit.
    if (kind !== "temperature" && Math.abs(toSi(value, one)) >= below) continue;
    if (one.symbol === "ft" && Math.abs(si) < FEET_AND_INCHES_BELOW) return feetAndInches(si, figures);
    return `${shown(value)} ${one.symbol}`;
  }
  /* v8 ignore next -- every list ends in a choice without limit */
  throw new RangeError(`writeQuantity: no unit for ${kind}`);
}

/**
 * From one size to a greater one, both in the unit of the greater: "8 cm to 10 cm", never "80 mm to 10 cm".
 *
 * @param low      the less, in SI
 * @param high     the greater, in SI
 * @param kind     what is measured
 * @param system   "metric" or "us"
 * @param figures  significant figures of each, 1 to 15; 3 unless given
 * @returns two quantities with "to" between; US lengths each as they are written alone
 * @valid any finite numbers
 * @throws RangeError as writeQuantity does
 * @source common-practice, the choice of unit, from memory
 * @example writeRange(0.08, 0.1, "length", "metric")   // 8 cm to 10 cm
 */
export function writeRange(
  low: number,
  high: number,
  kind: QuantityKind,
  system: UnitSystem,
  figures = 3,
): string {
  const greater = writeQuantity(high, kind, system, figures);
  const less = writeQuantity(low, kind, system, figures);
  const one = findUnit(kind, greater.slice(greater.indexOf(" ") + 1));
  if (one === undefined || one.symbol === "ft" || low > high) return `${less} to ${greater}`;
  return `${shown(rounded(fromSi(low, one), figures))} ${one.symbol} to ${greater}`;
}

function feetAndInches(si: number, figures: number): string {
  const inches = Math.abs(si) / INCH;
  const whole = figures > 3 ? rounded(inches, figures) : Math.round(inches);
  const feet = Math.floor(whole / INCHES_PER_FOOT);
  // As many decimals as the whole had: the subtraction alone would show its rounding.
  const decimals = Math.max(0, figures - String(Math.floor(whole)).length);
  const rest = Number((whole - feet * INCHES_PER_FOOT).toFixed(decimals));
  const words = rest === 0 ? `${feet} ft` : `${feet} ft ${shown(rest)} in`;
  return si < 0 ? `-${words}` : words;
}

const rounded = (value: number, figures: number): number => Number(value.toPrecision(figures));

/** Digits without "-0". */
const shown = (value: number): string => (value === 0 ? "0" : String(value));
