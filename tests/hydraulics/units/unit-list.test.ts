import { unit as mathUnit } from "mathjs";
import { describe, expect, it } from "vitest";
import { findUnit, fromSi, toSi } from "../../../packages/hydraulics/src/units/find-unit.js";
import {
  QUANTITY_KINDS,
  type QuantityKind,
  UNITS,
  type Unit,
} from "../../../packages/hydraulics/src/units/unit-list.js";

const named = (kind: QuantityKind, text: string): Unit => {
  const found = findUnit(kind, text);
  if (found === undefined) throw new Error(`no ${kind} unit is called ${text}`);
  return found;
};

/** Our symbol in mathjs's words, for every unit both know. */
const VOLUME_WORDS: Record<string, string> = {
  L: "litre",
  mL: "ml",
  m3: "m^3",
  dL: "dl",
  cL: "cl",
  gal: "gallon",
  qt: "quart",
  pt: "pint",
  cup: "cup",
  "fl oz": "fluidounce",
  ft3: "cuft",
  in3: "cuin",
};
const TIME_WORDS: Record<string, string> = { s: "s", min: "minute", h: "hour", day: "day" };
const OTHER_WORDS: [QuantityKind, string, string, string][] = [
  ...(["length", "head"] as const).flatMap((kind) =>
    [
      ["m", "m"],
      ["cm", "cm"],
      ["mm", "mm"],
      ["km", "km"],
      ["ft", "foot"],
      ["in", "inch"],
      ["yd", "yard"],
    ].map(([ours, theirs]): [QuantityKind, string, string, string] => [kind, ours!, theirs!, "m"]),
  ),
  ["area", "m2", "m^2", "m^2"],
  ["area", "cm2", "cm^2", "m^2"],
  ["area", "mm2", "mm^2", "m^2"],
  ["area", "ft2", "sqft", "m^2"],
  ["area", "in2", "sqin", "m^2"],
  ["area", "yd2", "sqyd", "m^2"],
  ["time", "s", "s", "s"],
  ["time", "min", "minute", "s"],
  ["time", "h", "hour", "s"],
  ["time", "day", "day", "s"],
  ["time", "week", "week", "s"],
];

describe("UNITS against an independent list of units (mathjs)", () => {
  it.each(OTHER_WORDS)("%s: %s is its %s", (kind, ours, theirs, si) => {
    const expected = mathUnit(1, theirs).toNumber(si);
    expect(Math.abs(toSi(1, named(kind, ours)) / expected - 1)).toBeLessThan(1e-15);
  });

  // mathjs keeps its US volumes to four to six digits only (1 cup = 0.0002366 m³), hence the tolerance.
  it.each(Object.entries(VOLUME_WORDS))("volume: %s is its %s", (ours, theirs) => {
    const expected = mathUnit(1, theirs).toNumber("m^3");
    const relative = ["ft3", "in3", "gal", "qt", "pt", "cup", "fl oz"].includes(ours) ? 2e-4 : 1e-15;
    expect(Math.abs(toSi(1, named("volume", ours)) / expected - 1)).toBeLessThan(relative);
  });

  it("flow: every volume over every time is the quotient of the two", () => {
    for (const [volume, volumeWord] of Object.entries(VOLUME_WORDS)) {
      for (const [time, timeWord] of Object.entries(TIME_WORDS)) {
        const expected = mathUnit(1, volumeWord).toNumber("m^3") / mathUnit(1, timeWord).toNumber("s");
        expect(Math.abs(toSi(1, named("flow", `${volume}/${time}`)) / expected - 1)).toBeLessThan(2e-4);
      }
    }
  });

  it("temperature: 68 °F, −40 °F and 300 K are its", () => {
    for (const [value, ours, theirs] of [
      [68, "°F", "degF"],
      [-40, "°F", "degF"],
      [300, "K", "K"],
      [12.5, "°C", "degC"],
    ] as const) {
      const expected = mathUnit(value, theirs).toNumber("degC");
      expect(Math.abs(toSi(value, named("temperature", ours)) - expected)).toBeLessThan(1e-10);
    }
  });

  it("head: a pressure is its pascals over 9806.65", () => {
    for (const [ours, theirs] of [
      ["psi", "psi"],
      ["kPa", "kPa"],
      ["Pa", "Pa"],
      ["bar", "bar"],
      ["mbar", "mbar"],
    ] as const) {
      const expected = mathUnit(1, theirs).toNumber("Pa") / 9806.65;
      // mathjs keeps psi to ten digits.
      expect(Math.abs(toSi(1, named("head", ours)) / expected - 1)).toBeLessThan(1e-9);
    }
  });
});

describe("UNITS against printed factors", () => {
  // NIST SP 811 (2008), Appendix B.8 (from memory).
  it.each<[QuantityKind, string, number]>([
    ["volume", "gal", 3.785412e-3],
    ["flow", "gpm", 6.30902e-5],
    ["volume", "imp gal", 4.54609e-3],
    ["volume", "ft3", 2.831685e-2],
    ["volume", "in3", 1.638706e-5],
    ["volume", "fl oz", 2.957353e-5],
    ["area", "ft2", 9.290304e-2],
    ["flow", "cfm", 4.719474e-4],
    ["speed", "mph", 0.44704],
    ["speed", "kn", 0.5144444],
  ])("%s: 1 %s is %d in SI, to seven figures", (kind, name, expected) => {
    expect(Number(toSi(1, named(kind, name)).toPrecision(7))).toBe(expected);
  });

  it("head: 1 psi is 6894.757 Pa, and 1 ft of conventional water 0.4335275 psi (SP 811, from memory)", () => {
    expect(Number((toSi(1, named("head", "psi")) * 9806.65).toPrecision(7))).toBe(6894.757);
    expect(Number(fromSi(0.3048, named("head", "psi")).toPrecision(7))).toBe(0.4335275);
    expect(toSi(1, named("head", "ftH2O"))).toBe(0.3048);
  });

  it("volume: 55 US gallons are 208.198 L (by definition) and 1 m³ is 264.172 US gallons (Hydraulic Institute data, seen)", () => {
    expect(Number((1000 * toSi(55, named("volume", "gal"))).toPrecision(6))).toBe(208.198);
    expect(Number(fromSi(1, named("volume", "gal")).toPrecision(6))).toBe(264.172);
  });
});

describe("UNITS as a list", () => {
  it("has no spelling twice in a kind, all lower case, and a definition for each unit", () => {
    for (const kind of QUANTITY_KINDS) {
      const spellings = UNITS[kind].flatMap((one) => one.spellings);
      expect(new Set(spellings).size).toBe(spellings.length);
      for (const one of UNITS[kind]) {
        expect(one.spellings).toContain(one.symbol.toLowerCase());
        expect(one.definition.length).toBeGreaterThan(4);
        for (const spelling of one.spellings) expect(spelling).toBe(spelling.toLowerCase());
      }
    }
  });

  it("fromSi undoes toSi for every unit", () => {
    for (const kind of QUANTITY_KINDS) {
      for (const one of UNITS[kind]) {
        for (const value of [0, 1, 12.34, 60]) {
          expect(Math.abs(fromSi(toSi(value, one), one) - value)).toBeLessThan(1e-12);
        }
      }
    }
  });

  it("slope: 45 degrees and 100 % are 1, 1/8 in a foot about 1.04 %", () => {
    expect(toSi(45, named("slope", "°"))).toBeCloseTo(1, 15);
    expect(toSi(100, named("slope", "%"))).toBe(1);
    expect(toSi(0.125, named("slope", "in/ft"))).toBeCloseTo(0.0104167, 7);
  });

  it("findUnit knows no unit of another kind, no megalitre and no word of the language's own", () => {
    expect(findUnit("length", "gal")).toBeUndefined();
    expect(findUnit("volume", "ML")).toBeUndefined();
    expect(findUnit("flow", "ML/min")).toBeUndefined();
    expect(findUnit("flow", "L/min/m")).toBeUndefined();
    expect(findUnit("flow", "/")).toBeUndefined();
    expect(findUnit("length", "__proto__")).toBeUndefined();
    expect(findUnit("length", "constructor")).toBeUndefined();
  });
});
