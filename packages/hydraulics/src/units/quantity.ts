import { findUnit, toSi } from "./find-unit.js";
import {
  mendMissingUnit,
  mendNumber,
  mendUnit,
  quoted,
  refuseQuantity,
  refuseUntyped,
} from "./quantity-faults.js";
import { readNumber } from "./read-number.js";
import type { QuantityKind, Unit } from "./unit-list.js";

export type { QuantityKind } from "./unit-list.js";
export { type UnitSystem, writeQuantity, writeRange } from "./write-quantity.js";

/** A quantity as somebody typed it, and what it is in SI. */
export interface Quantity {
  /** The text, untouched. */
  readonly typed: string;
  /** Its value: m, m³, m³/s, m², s; head in m; temperature in °C; slope as fall over length; m/s; W/m². */
  readonly si: number;
  readonly kind: QuantityKind;
}

/** What reading a quantity gives: the quantity, or three parts of a message. */
export type QuantityRead =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly found: string; readonly allowed: string; readonly mend: string };

/** Longer texts are refused without being read. */
export const LONGEST_QUANTITY = 60;

/**
 * A quantity as people type it: "55 gal", "1 1/4 in", "2 ft 6 in", "40 mL/min", "1,5 m", "½"".
 *
 * Parts of one quantity ("2 ft 6 in") come in falling units of one family, each less than one of the unit before;
 * a sign stands in front and counts for all. gal, qt, pt, cup and fl oz are US; a pressure becomes head through
 * conventional water (9806.65 Pa a metre), whatever the line's temperature. Commas: see readNumber.
 *
 * @param typed  anything; only a text of up to 60 characters can be a quantity
 * @param kind   what it should measure
 * @returns the quantity, or found, allowed and mend, each a part of a message; it never throws
 * @valid any input
 * @source nist-sp-811, factors of UNITS
 * @example readQuantity("3/4 in", "length").quantity.si   // 0.01905
 */
export function readQuantity(typed: unknown, kind: QuantityKind): QuantityRead {
  if (typeof typed !== "string") return refuseUntyped(kind, typed);
  if (typed.length > LONGEST_QUANTITY) return refuseQuantity(kind, `a text of ${typed.length} characters`);
  const text = normalised(typed);
  const negative = /^-\s*/.exec(text);
  const body = text.slice(negative?.[0].length ?? /^\+\s*/.exec(text)?.[0].length ?? 0);
  const size = (kind === "slope" ? readRatio(body) : undefined) ?? readParts(body, kind, negative ? -1 : 1);
  if ("why" in size) return refuseQuantity(kind, quoted(typed), size.why);
  if (!Number.isFinite(size.si) || Math.abs(size.si) > 1e12) return refuseQuantity(kind, quoted(typed));
  if (kind === "temperature" && size.si < -273.15) {
    return refuseQuantity(
      kind,
      quoted(typed),
      "That is colder than cold can be: check the number and its unit.",
    );
  }
  const signed = negative && kind !== "temperature" ? -size.si : size.si;
  return { ok: true, quantity: { typed, si: signed === 0 ? 0 : signed, kind } };
}

/** The size read, without its sign (but temperatures with it), or a sentence that tells how to mend it. */
type Size = { readonly si: number } | { readonly why: string };

/** "1 in 100" and "1:100". */
function readRatio(text: string): Size | undefined {
  const top = readNumber(text);
  if (!top.ok) return undefined;
  const joint = /^ ?(?:in|:) ?/i.exec(text.slice(top.length));
  if (joint === null) return undefined;
  const rest = text.slice(top.length + joint[0].length);
  const bottom = readNumber(rest);
  if (!bottom.ok || bottom.length !== rest.length || bottom.value === 0) return undefined;
  return { si: top.value / bottom.value };
}

function readParts(text: string, kind: QuantityKind, sign: 1 | -1): Size {
  let rest = text;
  let si = 0;
  let before: Unit | undefined;
  do {
    const number = readNumber(rest);
    if (!number.ok) return { why: mendNumber(number.why, rest, kind) };
    const afterNumber = rest.slice(number.length);
    const name = unitText(afterNumber);
    if (name.trim() === "") return { why: mendMissingUnit(text, kind) };
    const one = findUnit(kind, tidied(name));
    if (one === undefined) return { why: mendUnit(tidied(name), kind) };
    if (one.isAngle && number.value >= 90) return { why: "A slope is less than 90 degrees." };
    if (before !== undefined) {
      const fault = faultOfPart(before, one, number.value);
      if (fault !== undefined) return { why: fault };
    }
    si += kind === "temperature" ? toSi(sign * number.value, one) : toSi(number.value, one);
    before = one;
    rest = afterNumber.slice(name.length).replace(/^(?:, |and )\s*/i, "");
  } while (rest !== "");
  return { si };
}

/** Why a part may not follow the one before, as a sentence; undefined when it may. */
function faultOfPart(before: Unit, one: Unit, value: number): string | undefined {
  if (before.family === undefined || before.family !== one.family) {
    return `${one.symbol} cannot follow ${before.symbol}: write it in one unit.`;
  }
  const perBefore = before.times * one.by;
  const perOne = one.times * before.by;
  if (perOne >= perBefore) return `Write the larger unit first: ${one.symbol} before ${before.symbol}.`;
  if (value * perOne < perBefore) return undefined;
  return `After ${before.symbol}, the ${one.symbol} must come to less than 1 ${before.symbol}.`;
}

/** Spaces, minus signs, quotes and fractions of print as those of a keyboard. */
function normalised(typed: string): string {
  return typed
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[\u00a0\u2007\u2009\u202f]/g, " ")
    .replace(/[\u2212\u2010\u2011\u2013]/g, "-")
    .replace(/\u2044/g, "/")
    .replace(/[′’]/g, "'")
    .replace(/[″”]/g, '"')
    .replace(/\^?[²³]|\^[23]/g, (power) => (/[²2]/.test(power) ? "2" : "3"))
    .replace(/ ?h[2₂]o\b/gi, " of water")
    .replace(/º/g, "°")
    .replace(/ +/g, " ")
    .trim();
}

const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/**
 * The unit's own text: up to the next number. A 2 or 3 straight after letters and before none is a power (m3);
 * "/100 ft" and "/10 ft" belong to slopes; a full stop may end an abbreviation.
 */
function unitText(text: string): string {
  const pattern =
    /^(?:[^\d.,+-]|(?<=[a-z])[23](?![\da-z.,])|(?<=\/ ?|per )10{1,2}(?= ?(?:ft|m)\b)|(?<=[a-z])\.(?!\d))+/i;
  const run = pattern.exec(text)?.[0] ?? "";
  const and = / and $/i.exec(run);
  return and ? run.slice(0, and.index + 1) : run;
}

const tidied = (name: string): string =>
  name
    .trim()
    .replace(/\./g, "")
    .replace(/ ?(?:\/|\bper (?!cent)|\ban? (?=[a-z])) ?/gi, "/")
    .replace(/ +/g, " ");
