import { FOOT, INCH } from "./us-units.js";

/** The two ways of writing measures. */
export type UnitSystem = "metric" | "us";

/** A length as a person would type it, in the units of the system: "62 cm", "1.2 m", "9.5 in", "2 ft 6 in". */
export function typedLength(length: number, system: UnitSystem): string {
  return system === "us" ? typedFeetAndInches(length) : typedCentimetres(length);
}

function typedCentimetres(length: number): string {
  return `${trimmed(length * 100, 1)} cm`;
}

function typedFeetAndInches(length: number): string {
  const sign = length < 0 ? "-" : "";
  // Whole quarter inches: what a folding rule shows.
  const quarters = Math.round((Math.abs(length) / INCH) * 4);
  const feet = Math.floor(quarters / 48);
  const inches = (quarters % 48) / 4;
  if (feet === 0) return `${sign}${inches} in`;
  return inches === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inches} in`;
}

/** Step of a slider for lengths [m]: one centimetre or half an inch. */
export function lengthStep(system: UnitSystem): number {
  return system === "us" ? INCH / 2 : 0.01;
}

/** Unit taken for a bare number typed into a field for lengths. */
export function bareLengthUnit(system: UnitSystem): string {
  return system === "us" ? "in" : "cm";
}

/** Length of the unit on a drawing's axes [m], and its sign. */
export function axisUnit(system: UnitSystem): { readonly length: number; readonly sign: string } {
  return system === "us" ? { length: FOOT, sign: "ft" } : { length: 1, sign: "m" };
}

/** A distance along a run: metres even when short, since a field for distances takes a bare number for metres. */
export function typedDistance(length: number, system: UnitSystem): string {
  return system === "us" ? typedFeetAndInches(length) : `${trimmed(length, 2)} m`;
}

/** A bore or the like: millimetres, or inches to the thousandth. */
export function typedSmall(length: number, system: UnitSystem): string {
  return system === "us" ? `${trimmed(length / INCH, 3)} in` : `${trimmed(length * 1000, 1)} mm`;
}

const US_UNITS =
  /\d\s*(?:"|'|(?:(?:in|ft|yd)[23]?|psi|gpm|gph|gal|qt|pt|cups?|(?:fl )?oz)\b|inch|foot|feet|yard|gallon|quart|pint|(?:°|deg) ?F)/i;
const METRIC_UNITS =
  /\d\s*(?:(?:(?:mm|cm|dm|m|km)[23]?|m[lL]|[cd]?L|l|k?Pa|m?bar)(?![\w])|met(?:re|er)|lit(?:re|er)|mH2O|cmH2O|(?:°|deg) ?C|K\b)/;

/** Which system a text was typed in; a text without a unit of either belongs to both. */
export function systemOf(typed: string): UnitSystem | undefined {
  if (US_UNITS.test(typed)) return "us";
  return METRIC_UNITS.test(typed) ? "metric" : undefined;
}

/** At most so many decimals, without zeros at the end. */
export function trimmed(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
