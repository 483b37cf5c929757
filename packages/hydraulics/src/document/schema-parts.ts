import * as z from "zod/mini";
import { readClock, readDay } from "../units/day.js";
import { type QuantityKind, readQuantity } from "../units/quantity.js";
import { COLOURS } from "./colours.js";
import { DEFAULTS, type DefaultName } from "./defaults.js";
import { LIMITS } from "./limits.js";
import { readShare } from "./read-share.js";

/** Building blocks of the plan's schema: typed quantities, described fields, ceilings. */

/** What a typed quantity may be. */
export interface Range {
  readonly min: number;
  readonly max: number;
  /** The range as a person would say it. */
  readonly words: string;
}

/** What a check of our own leaves for the problem writer (see read-issues.ts). */
export interface CustomFault {
  readonly fault: "unreadable" | "range" | "unprintable";
  readonly found: string;
  readonly allowed: string;
  readonly mend: string;
}

/** A quantity as typed: text that must read as `kind` and lie in `range`. */
export function quantity(kind: QuantityKind, range: Range, description: string, fallback?: Fallback) {
  const text = z.string().check(
    z.check<string>((payload) => {
      const fault = faultIn(payload.value, kind, range);
      if (fault !== undefined)
        payload.issues.push({ code: "custom", input: payload.value, params: { ...fault } });
    }),
  );
  return describe(text, `${description} A ${kind}, ${range.words}.`, fallback);
}

const ARTICLE: { readonly [kind in QuantityKind]?: string } = { area: "an ", sunshine: "" };

function faultIn(typed: string, kind: QuantityKind, range: Range): CustomFault | undefined {
  const read = readQuantity(typed, kind);
  if (!read.ok) return { fault: "unreadable", found: read.found, allowed: read.allowed, mend: read.mend };
  if (read.quantity.si >= range.min && read.quantity.si <= range.max) return undefined;
  return {
    fault: "range",
    found: JSON.stringify(typed),
    allowed: `Here ${ARTICLE[kind] ?? "a "}${kind} is ${range.words}.`,
    mend: "Check the unit and the figure.",
  };
}

/** What stands in where a key is left out: a default as it would be typed, or a rule in words. */
export type Fallback = DefaultName | { readonly rule: string };

/** Gives a part of the schema its description, and what stands in for it. */
export function describe<T extends z.core.$ZodType>(schema: T, description: string, fallback?: Fallback): T {
  const value = typeof fallback === "string" ? DEFAULTS[fallback] : undefined;
  const rule = typeof fallback === "object" ? fallback.rule : undefined;
  const instead = value === undefined ? rule : `${value.typed} (${value.because})`;
  z.globalRegistry.add(schema, {
    description: instead === undefined ? description : `${description} If left out: ${instead}.`,
    ...(value === undefined ? {} : { default: value.typed }),
  });
  return schema;
}

/** Only texts and lists are measured: an object may well have a key called length. */
const when = ({ value }: { readonly value: unknown }) => typeof value === "string" || Array.isArray(value);
/** At least this many characters or entries. */
export const atLeast = (minimum: number) =>
  new z.core.$ZodCheckMinLength({ check: "min_length", minimum, when });
/** At most this many characters or entries. */
export const atMost = (maximum: number) =>
  new z.core.$ZodCheckMaxLength({ check: "max_length", maximum, when });

/**
 * Signs that draw nothing but move what is drawn: control characters (a terminal obeys them), marks that turn the
 * direction of what follows, and halves of a character.
 */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069]/u;
const UNPRINTABLE_IN_NOTE = /[\p{Cs}\u202a-\u202e\u2066-\u2069]|(?![\n\r\t])\p{Cc}/u;

const printable = (pattern: RegExp, allowed: string) =>
  z.check<string>((payload) => {
    const sign = pattern.exec(payload.value)?.[0];
    if (sign === undefined) return;
    const found = `the sign U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`;
    const fault: CustomFault = {
      fault: "unprintable",
      found,
      allowed,
      mend: "Take it out, or type it again.",
    };
    payload.issues.push({ code: "custom", input: payload.value, params: { ...fault } });
  });
const PRINTABLE_NAME = printable(UNPRINTABLE, "A name is one line of signs that can be printed.");
const PRINTABLE_NOTE = printable(UNPRINTABLE_IN_NOTE, "A note is lines of signs that can be printed.");

/** A name of one line. */
export const text = (most: number, description: string) =>
  describe(z.string().check(atLeast(1), atMost(most), PRINTABLE_NAME), description);
/** Text of several lines. */
export const longText = (most: number, description: string) =>
  describe(z.string().check(atLeast(1), atMost(most), PRINTABLE_NOTE), description);
export const count = (least: number, most: number, description: string) =>
  describe(z.int().check(z.minimum(least), z.maximum(most)), description);
export const optional = z.optional;

export const HEIGHT: Range = { min: -200, max: 200, words: "from -200 m to 200 m" };
export const DEPTH: Range = { min: 0, max: 20, words: "from 0 to 20 m" };
export const name = (description: string) => text(LIMITS.name, description);

/** How far a measured height or level may be off. */
export const doubt = (ofWhat: string, instead: string) =>
  optional(
    quantity(
      "length",
      { min: 0, max: 5, words: "from 0 to 5 m" },
      `How far ${ofWhat} may be off, two standard deviations.`,
      { rule: `the plan's own \`doubts.${instead}\`` },
    ),
  );

const readable = (read: (typed: string) => unknown, allowed: string, mend: string) =>
  z.string().check(
    z.check<string>((payload) => {
      if (read(payload.value) !== undefined) return;
      const found = JSON.stringify(payload.value.slice(0, 40));
      const fault: CustomFault = { fault: "unreadable", found, allowed, mend };
      payload.issues.push({ code: "custom", input: payload.value, params: { ...fault } });
    }),
  );
/** A share as typed: "80 %". */
export const share = (description: string, fallback?: Fallback) =>
  describe(
    readable(readShare, "A share is from 0 to 100 %.", 'Write for instance "80 %".'),
    `${description} A share such as \`80 %\`.`,
    fallback,
  );
/** What the sun falls on. */
export const colour = (description: string, rule: string) =>
  optional(describe(z.enum(COLOURS), description, { rule }));
export const shade = optional(share("How much of the sun is kept off it.", { rule: "none: in the open" }));

const ACROSS: Range = { min: -10000, max: 10000, words: "from -10 km to 10 km" };
/** A place on the ground seen from above. Drawings use it; no figure is reckoned from it. */
export const place = (description: string) =>
  describe(
    z.strictObject({
      x: quantity("length", ACROSS, "To the right on the drawing."),
      y: quantity("length", ACROSS, "Up on the drawing."),
    }),
    description,
  );

/** A day as typed: "2026-07-04". */
export const date = (description: string, fallback?: Fallback) =>
  describe(
    readable(readDay, "A day is year, month and day, from 1800 to 2200.", 'Write for instance "2026-07-04".'),
    `${description} Year, month, day: \`2026-07-04\`.`,
    fallback,
  );
/** A time of day as typed: "06:30". */
export const clock = (description: string, fallback?: Fallback) =>
  describe(
    readable(
      readClock,
      "A time of day is hours and minutes, from 00:00 to 23:59.",
      'Write for instance "06:30".',
    ),
    `${description} Hours and minutes: \`06:30\`.`,
    fallback,
  );
