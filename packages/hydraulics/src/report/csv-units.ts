import { findUnit, fromSi } from "../units/find-unit.js";
import type { QuantityKind, Unit } from "../units/unit-list.js";
import type { UnitSystem } from "../units/write-quantity.js";
import { POUND } from "./words.js";

/** Units of a table of numbers: SI throughout, or those a keeper reads. */
export type CsvUnits = "si" | UnitSystem;

/** What a column of numbers measures; the flow of one drinker is small, that of a run or source large. */
export type CsvMeasure =
  | "length"
  | "bore"
  | "head"
  | "smallFlow"
  | "largeFlow"
  | "volume"
  | "mass"
  | "velocity";

/** One unit for all rows of a column, so that the numbers can be summed and drawn. */
const SYMBOLS: Readonly<Record<CsvMeasure, Readonly<Record<CsvUnits, string>>>> = {
  length: { si: "m", metric: "m", us: "ft" },
  bore: { si: "m", metric: "mm", us: "in" },
  head: { si: "m", metric: "cm", us: "in" },
  smallFlow: { si: "m3/s", metric: "mL/min", us: "fl oz/min" },
  largeFlow: { si: "m3/s", metric: "L/min", us: "gal/min" },
  volume: { si: "m3", metric: "L", us: "gal" },
  mass: { si: "kg", metric: "kg", us: "lb" },
  velocity: { si: "m/s", metric: "m/s", us: "ft/s" },
};

const KIND: Readonly<Partial<Record<CsvMeasure, QuantityKind>>> = {
  length: "length",
  bore: "length",
  head: "length",
  smallFlow: "flow",
  largeFlow: "flow",
  volume: "volume",
};

/** The title of a column with its unit: "margin [cm]". */
export const titled = (title: string, measure: CsvMeasure, units: CsvUnits): string =>
  `${title} [${SYMBOLS[measure][units]}]`;

/** A value in SI as a number of the column's unit; nothing stays nothing. */
export function inUnits(value: number | undefined, measure: CsvMeasure, units: CsvUnits): number | undefined {
  if (value === undefined || units === "si") return value;
  if (measure === "mass") return units === "us" ? value / POUND : value;
  if (measure === "velocity") return units === "us" ? fromSi(value, findUnit("length", "ft") as Unit) : value;
  const unit = findUnit(KIND[measure] as QuantityKind, SYMBOLS[measure][units]);
  return fromSi(value, unit as Unit);
}

/** Whose units the sentences beside the numbers are written in. */
export const systemOfUnits = (units: CsvUnits): UnitSystem => (units === "us" ? "us" : "metric");
