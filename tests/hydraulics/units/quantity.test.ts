import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  LONGEST_QUANTITY,
  type QuantityRead,
  readQuantity,
} from "../../../packages/hydraulics/src/units/quantity.js";
import { QUANTITY_KINDS, type QuantityKind } from "../../../packages/hydraulics/src/units/unit-list.js";

function si(typed: string, kind: QuantityKind): number {
  const read = readQuantity(typed, kind);
  if (!read.ok) throw new Error(`${read.found}. ${read.allowed} ${read.mend}`);
  expect(read.quantity.typed).toBe(typed);
  expect(read.quantity.kind).toBe(kind);
  return read.quantity.si;
}

function refusal(typed: unknown, kind: QuantityKind): QuantityRead & { ok: false } {
  const read = readQuantity(typed, kind);
  if (read.ok) throw new Error(`${String(typed)} was read as ${read.quantity.si}`);
  return read;
}

const FOOT = 0.3048;
const INCH = 0.0254;
const GALLON = 231 * INCH ** 3;

describe("readQuantity", () => {
  it.each<[string, QuantityKind, number]>([
    ["55 gal", "volume", 55 * GALLON],
    ["3/4 in", "length", 0.75 * INCH],
    ["1 1/4 in", "length", 1.25 * INCH],
    ["1-1/4 in", "length", 1.25 * INCH],
    ['1/2"', "length", 0.5 * INCH],
    ["½ in", "length", 0.5 * INCH],
    ["1½″", "length", 1.5 * INCH],
    ["2¼ in", "length", 2.25 * INCH],
    ["¾ in", "length", 0.75 * INCH],
    ["2 ft 6 in", "length", 2.5 * FOOT],
    ["2' 6\"", "length", 2.5 * FOOT],
    ["2'6 1/2\"", "length", 2.5 * FOOT + 0.5 * INCH],
    ["2 ft. 6 in.", "length", 2.5 * FOOT],
    ["2 ft, 6 in", "length", 2.5 * FOOT],
    ["2 feet and 6 inches", "length", 2.5 * FOOT],
    ["1 m 20 cm", "length", 1.2],
    ["60cm", "length", 0.6],
    ["60 CM", "length", 0.6],
    [" 60  cm ", "length", 0.6],
    ["60\u00a0cm", "length", 0.6],
    ["-30 cm", "length", -0.3],
    ["\u221230 cm", "length", -0.3],
    ["\u201330 cm", "length", -0.3],
    ["- 2 ft 6 in", "length", -2.5 * FOOT],
    ["+30 cm", "length", 0.3],
    [".5 m", "length", 0.5],
    ["1e3 mm", "length", 1],
    ["40 mL/min", "flow", 40e-6 / 60],
    ["40 ml / min", "flow", 40e-6 / 60],
    ["0.5 gpm", "flow", (0.5 * GALLON) / 60],
    ["2 gallons per minute", "flow", (2 * GALLON) / 60],
    ["3 litres a day", "flow", 3e-3 / 86400],
    ["3 m³/h", "flow", 3 / 3600],
    ["3 m^3/h", "flow", 3 / 3600],
    ["2 imp gal/h", "flow", (2 * 4.54609e-3) / 3600],
    ["3 m3", "volume", 3],
    ["1 gal 2 qt", "volume", 1.5 * GALLON],
    ["12 sq ft", "area", 12 * FOOT * FOOT],
    ["68 F", "temperature", 20],
    ["20 °C", "temperature", 20],
    ["20 degC", "temperature", 20],
    ["-40 °F", "temperature", -40],
    ["-5 C", "temperature", -5],
    ["293.15 K", "temperature", 20],
    ["2 h 30 min", "time", 9000],
    ["3 days", "time", 259200],
    ["2 %", "slope", 0.02],
    ["2%", "slope", 0.02],
    ["1 in 100", "slope", 0.01],
    ["1:50", "slope", 0.02],
    ["-1 in 100", "slope", -0.01],
    ["1/4 in per ft", "slope", 1 / 48],
    ["10 mm/m", "slope", 0.01],
    ["6 in/100 ft", "slope", 0.005],
    ["45 deg", "slope", 1],
    ["3 m/s", "speed", 3],
    ["36 km/h", "speed", 10],
    ["10 mph", "speed", 4.4704],
    ["900 W/m²", "sunshine", 900],
    ["0.9 kW/m2", "sunshine", 900],
    ["2 ft", "head", 2 * FOOT],
    ["12 inH2O", "head", 12 * INCH],
    ["30 cm H₂O", "head", 0.3],
    ["1 psi", "head", (0.45359237 * 9.80665) / INCH ** 2 / 9806.65],
    ["5 kPa", "head", 5000 / 9806.65],
    ["20 mbar", "head", 2000 / 9806.65],
  ])("reads %j as a %s of %d", (typed, kind, expected) => {
    expect(Math.abs(si(typed, kind) - expected)).toBeLessThanOrEqual(
      4e-15 * Math.max(Math.abs(expected), 1e-9),
    );
  });

  it.each<[string, number]>([
    ["1,5 L", 1.5],
    ["1,50 L", 1.5],
    ["1,2345 L", 1.2345],
    ["0,125 L", 0.125],
    ["1,000 L", 1000],
    ["25,000 L", 25000],
    ["1,250,500 L", 1250500],
    ["1,250.5 L", 1250.5],
    ["1.250,5 L", 1250.5],
    ["1.250 L", 1.25],
    ["1 000 L", 1000],
    ["1 250,5 L", 1250.5],
    ["12\u202f500 L", 12500],
  ])("by the rule of commas reads %j as %d litres", (typed, litres) => {
    expect(si(typed, "volume") * 1000).toBeCloseTo(litres, 9);
  });

  it("refuses a comma that can be read in two ways, and says how to write each", () => {
    expect(refusal("1,250 L", "volume")).toEqual({
      ok: false,
      found: '"1,250 L"',
      allowed: "A volume is a number with its unit: L, mL, m³, gal, qt, pt, cup, fl oz, ft³ or imp gal.",
      mend: "The comma can be read in two ways: write 1250 or 1.250.",
    });
  });

  it("refuses a bare number and offers it back with likely units", () => {
    expect(refusal("3.6", "length").mend).toBe('Add the unit, for instance "3.6 m" or "3.6 ft".');
    expect(refusal("68", "temperature").mend).toBe('Add the unit, for instance "68 °C" or "68 °F".');
    expect(refusal("0", "head").mend).toBe('Add the unit, for instance "0 cm" or "0 in".');
    expect(refusal(3.6, "length").found).toBe("the number 3.6");
    expect(refusal(3.6, "length").mend).toContain("A number alone has no unit.");
  });

  it("refuses a unit it does not know in the four-part manner", () => {
    expect(refusal("12 furlongs", "length")).toEqual({
      ok: false,
      found: '"12 furlongs"',
      allowed: "A length is a number with its unit: m, cm, mm, km, ft, in or yd.",
      mend: 'Write for instance "3.6 m" or "2 ft 6 in".',
    });
  });

  it.each<[unknown, QuantityKind, string]>([
    ["500 ML", "volume", "Write mL for millilitres"],
    ["2 ft 14 in", "length", "must come to less than 1 ft"],
    ["6 in 2 ft", "length", "Write the larger unit first: ft before in."],
    ["2 ft 2 ft", "length", "Write the larger unit first"],
    ["2 ft 3 cm", "length", "cm cannot follow ft"],
    ["3 psi 2 kPa", "head", "kPa cannot follow psi"],
    ["1e400 m", "length", "No length here is that large"],
    ["1e16 m", "length", "No length here is that large"],
    ["1e-99 m", "length", "or that small"],
    ["9999999999999999 m", "length", "No length here is that large"],
    ["-300 C", "temperature", "colder than cold can be"],
    ["90 deg", "slope", "less than 90 degrees"],
  ])("refuses %j as a %s and says: %s", (typed, kind, mend) => {
    expect(refusal(typed, kind).mend).toContain(mend);
  });

  it.each<[unknown]>([
    [""],
    [" "],
    ["-"],
    ["--2 ft"],
    ["2 -ft"],
    ["ft"],
    ["NaN"],
    ["NaN m"],
    ["Infinity m"],
    ["-Infinity"],
    ["1/0 in"],
    ["1//2 in"],
    ["1.2.3 m"],
    ["1,2,3 m"],
    ["5 m 3"],
    ["2 m and"],
    ["about 2 m"],
    ["2 m!"],
    ["0x10 m"],
    ["١٢ m"],
    ["2 __proto__"],
    ["2 m\u0000"],
  ])("refuses %j as a length", (typed) => {
    expect(refusal(typed, "length").allowed).toBe(
      "A length is a number with its unit: m, cm, mm, km, ft, in or yd.",
    );
  });

  it("names what is no text at all", () => {
    const found = [undefined, null, Number.NaN, true, [], {}, 1n, Symbol("x")].map(
      (typed) => refusal(typed, "flow").found,
    );
    expect(found).toEqual([
      "nothing",
      "null",
      "the number NaN",
      "a boolean",
      "a list",
      "a group of fields",
      "a bigint",
      "a symbol",
    ]);
  });

  it("refuses a text over 60 characters unread, without repeating it", () => {
    const long = `${"1".repeat(LONGEST_QUANTITY)}m`;
    expect(refusal(long, "length").found).toBe("a text of 61 characters");
    expect(refusal("x".repeat(5e7), "length").found).toBe("a text of 50000000 characters");
  });

  it("makes signs visible that would hide or turn the writing around it", () => {
    expect(refusal("2\u202e m\n", "length").found).toBe('"2\\u202e m\\n"');
    expect(refusal("\u200b2 m", "length").found).toBe('"\\u200b2 m"');
  });

  it("never throws and never gives a value that is not finite, whatever it is handed", () => {
    const mess = fc.oneof(
      fc.string({ maxLength: 70 }),
      fc.string({ unit: fc.constantFrom(..."0123456789.,/-' \"eEftincmLgal%°½:"), maxLength: 24 }),
      fc.anything(),
    );
    fc.assert(
      fc.property(mess, fc.constantFrom(...QUANTITY_KINDS), (typed, kind) => {
        const read = readQuantity(typed, kind);
        if (read.ok) {
          expect(Number.isFinite(read.quantity.si)).toBe(true);
          expect(Object.is(read.quantity.si, -0)).toBe(false);
        } else {
          expect(read.found.length).toBeLessThan(400);
          expect(read.mend).toMatch(/\.$/);
        }
      }),
      { numRuns: 5000 },
    );
  });
});
