/** What is said of a text that is no quantity: what was found, what is allowed, how to mend it. */
import type { QuantityKind } from "./unit-list.js";

const EXAMPLES: Readonly<Record<QuantityKind, readonly [string, string]>> = {
  length: ["3.6 m", "2 ft 6 in"],
  head: ["60 cm", "2 ft"],
  volume: ["200 L", "55 gal"],
  flow: ["40 mL/min", "0.5 gpm"],
  area: ["2.5 m²", "30 sq ft"],
  temperature: ["20 °C", "68 °F"],
  time: ["90 min", "2 h 30 min"],
  slope: ["1 %", "1 in 100"],
  speed: ["3 m/s", "7 mph"],
  sunshine: ["900 W/m²", "0.9 kW/m²"],
};

/** What somebody who left the unit out may have meant. */
const LIKELY_UNITS: Readonly<Record<QuantityKind, readonly [metric: string, us: string]>> = {
  length: ["m", "ft"],
  head: ["cm", "in"],
  volume: ["L", "gal"],
  flow: ["mL/min", "gpm"],
  area: ["m²", "sq ft"],
  temperature: ["°C", "°F"],
  time: ["min", "h"],
  slope: ["%", "mm/m"],
  speed: ["m/s", "mph"],
  sunshine: ["W/m²", "kW/m²"],
};

const UNITS_NAMED: Readonly<Record<QuantityKind, string>> = {
  length: "m, cm, mm, km, ft, in or yd",
  head: "a length (m, cm, mm, ft, in) or a pressure (psi, kPa, bar, mbar)",
  volume: "L, mL, m³, gal, qt, pt, cup, fl oz, ft³ or imp gal",
  flow: "L/min, mL/min, L/h, L/s, gpm, gph, or another volume per time",
  area: "m², cm², mm², ft² or in² (or m2, cm2 ...)",
  temperature: "°C, °F (or degC, degF) or K",
  time: "s, min, h, day or week",
  slope: `%, mm/m, cm/m, in/ft, degrees, or "1 in 100"`,
  speed: "m/s, km/h, mph or kn",
  sunshine: "W/m² or kW/m² (or W/m2)",
};

const listed = (kind: QuantityKind): string =>
  `${kind === "sunshine" ? "Sunshine" : `${kind === "area" ? "An" : "A"} ${kind}`} is a number with its unit: ${UNITS_NAMED[kind]}.`;

const forInstance = (kind: QuantityKind): string =>
  `Write for instance "${EXAMPLES[kind][0]}" or "${EXAMPLES[kind][1]}".`;

/** How to mend a number that cannot be read. */
export function mendNumber(
  why: "none" | "ambiguous-comma" | "too-large",
  text: string,
  kind: QuantityKind,
): string {
  if (why === "none") return forInstance(kind);
  if (why === "too-large") return `No ${kind} here is that large or that small. ${forInstance(kind)}`;
  const [whole, part] = (/^(\d+),(\d+)/.exec(text) ?? ["", "1", "250"]).slice(1);
  return `The comma can be read in two ways: write ${whole}${part} or ${whole}.${part}.`;
}

/** How to mend a number that no unit follows. */
export function mendMissingUnit(text: string, kind: QuantityKind): string {
  if (!/^[\d.]+$/.test(text)) return forInstance(kind);
  const [metric, us] = LIKELY_UNITS[kind];
  return `Add the unit, for instance "${text} ${metric}" or "${text} ${us}".`;
}

/** How to mend a unit that is none of its kind. */
export function mendUnit(name: string, kind: QuantityKind): string {
  if (/^M[lL]/.test(name)) return "Write mL for millilitres, or m³ for thousands of litres.";
  return forInstance(kind);
}

/** The refusal of what is no text at all. */
export function refuseUntyped(kind: QuantityKind, value: unknown) {
  const isNumber = typeof value === "number" && Number.isFinite(value);
  const more = isNumber ? " A number alone has no unit." : "";
  return refuseQuantity(kind, named(value), `${forInstance(kind)}${more}`);
}

/** The refusal, with what is allowed of its kind. */
export function refuseQuantity(kind: QuantityKind, found: string, mend = forInstance(kind)) {
  return { ok: false as const, found, allowed: listed(kind), mend };
}

/** A text in quotes, with signs that hide or turn writing around made visible. */
export function quoted(typed: string): string {
  const visible = JSON.stringify(typed);
  return visible.replace(
    /[\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

function named(typed: unknown): string {
  if (typed === undefined) return "nothing";
  if (typed === null) return "null";
  if (Array.isArray(typed)) return "a list";
  if (typeof typed === "number") return `the number ${typed}`;
  return typeof typed === "object" ? "a group of fields" : `a ${typeof typed}`;
}
