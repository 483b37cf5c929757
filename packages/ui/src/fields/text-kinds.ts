import { type QuantityKind, writeQuantity } from "@headfall/hydraulics";
import { systemOf, trimmed, typedDistance, typedSmall, type UnitSystem } from "../kernels/typed-quantity.js";
import { FIELD_KINDS, type SliderKind } from "./field-kinds.js";
import { readCount, readWithUnit } from "./read-typed.js";
import type { KindRules, TypedReading } from "./typed-reading.js";

/**
 * The kinds of quantity a text field can hold. Lengths come in three sizes, by what a bare number is taken for:
 * distances along a run (m, ft), heights and spacings (cm, in), and bores (mm, in).
 */
export type FieldKind =
  | SliderKind
  | "distance"
  | "bore"
  | "head"
  | "area"
  | "flow"
  | "temperature"
  | "speed"
  | "sunshine"
  | "volume"
  | "slope"
  | "age"
  | "hours"
  | "days"
  | "share"
  | "atWork"
  | "number"
  | "name"
  | "note";

/** Rules of a kind that is a quantity with units. */
function quantityRules(
  kind: QuantityKind,
  units: Readonly<Record<UnitSystem, string>>,
  write: (value: number, system: UnitSystem) => string = (value, system) =>
    writeQuantity(value, kind, system, 4),
): KindRules {
  const bareUnit = (system: UnitSystem) => units[system];
  return {
    write,
    bareUnit,
    shown: (typed, value, system) => (systemOf(typed) === system ? typed : write(value, system)),
    read: (text, system) => readWithUnit(text, kind, bareUnit(system)),
  };
}

/** Rules of a kind that has no units. */
const plainRules = (read: (text: string) => TypedReading): KindRules => ({
  read,
  write: String,
  shown: (typed) => typed,
});

export const TEXT_KINDS: Readonly<Record<FieldKind, KindRules>> = {
  ...FIELD_KINDS,
  distance: quantityRules("length", { metric: "m", us: "ft" }, typedDistance),
  bore: quantityRules("length", { metric: "mm", us: "in" }, typedSmall),
  head: quantityRules("head", { metric: "cm", us: "in" }),
  area: quantityRules("area", { metric: "m2", us: "ft2" }),
  flow: quantityRules("flow", { metric: "mL/min", us: "fl oz/min" }),
  volume: quantityRules("volume", { metric: "L", us: "gal" }),
  slope: quantityRules("slope", { metric: "%", us: "%" }),
  temperature: quantityRules("temperature", { metric: "°C", us: "°F" }, writtenTemperature),
  speed: quantityRules("speed", { metric: "m/s", us: "mph" }),
  sunshine: quantityRules("sunshine", { metric: "W/m2", us: "W/m2" }),
  age: timeRules("weeks"),
  hours: timeRules("h"),
  days: timeRules("days"),
  share: plainRules(readShare),
  atWork: plainRules(readAtWork),
  number: plainRules(readFigure),
  name: plainRules((text) => ({ ok: true, typed: text, value: 0 })),
  note: plainRules((text) => ({ ok: true, typed: text, value: 0 })),
};

/** Times have the same units everywhere, and stay as they were typed. */
function timeRules(bareUnit: string): KindRules {
  return {
    write: (value) => writeQuantity(value, "time", "metric", 3),
    bareUnit: () => bareUnit,
    shown: (typed) => typed,
    read: (text) => readWithUnit(text, "time", bareUnit),
  };
}

/** A share in percent, with or without its sign. */
function readShare(text: string): TypedReading {
  const share = /^(\d{1,3}(?:[.,]\d+)?)\s*(?:%|per ?cent|percent)?$/i.exec(text);
  const figure = share === null ? Number.NaN : Number(share[1]!.replace(",", "."));
  if (figure <= 100) return { ok: true, typed: `${trimmed(figure, 3)} %`, value: figure / 100 };
  return { ok: false, problem: `"${text}" is not a share. Write for instance 80 %.` };
}

/** A whole number of drinkers, or a share of them. */
function readAtWork(text: string): TypedReading {
  const share = /^(\d{1,3}(?:[.,]\d+)?)\s*(?:%|per ?cent|percent)$/i.exec(text);
  if (share !== null) {
    const figure = share[1]!.replace(",", ".");
    return { ok: true, typed: `${figure} %`, value: Number(figure) / 100 };
  }
  const read = readCount(text);
  if (read.ok) return read;
  return {
    ok: false,
    problem: `"${text}" is neither a whole number nor a share. Write for instance 6, or 50 %.`,
  };
}

function readFigure(text: string): TypedReading {
  const value = Number(text.replace(",", "."));
  if (text !== "" && Number.isFinite(value)) return { ok: true, typed: trimmed(value, 6), value };
  return { ok: false, problem: `"${text}" is not a number. Write for instance 140.` };
}

function writtenTemperature(value: number, system: UnitSystem): string {
  return system === "us" ? `${trimmed(value * 1.8 + 32, 1)} °F` : `${trimmed(value, 1)} °C`;
}
