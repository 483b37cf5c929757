import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readQuantity } from "../../../packages/hydraulics/src/units/quantity.js";
import { QUANTITY_KINDS, type QuantityKind } from "../../../packages/hydraulics/src/units/unit-list.js";
import { type UnitSystem, writeQuantity } from "../../../packages/hydraulics/src/units/write-quantity.js";

describe("writeQuantity", () => {
  it.each<[number, QuantityKind, UnitSystem, string]>([
    [0.63, "length", "metric", "63 cm"],
    [0.63, "length", "us", "2 ft 1 in"],
    [-0.63, "head", "us", "-2 ft 1 in"],
    [0.0158, "length", "metric", "15.8 mm"],
    [0.0158, "length", "us", "0.622 in"],
    [0.9997, "length", "metric", "1 m"],
    [1234, "length", "metric", "1.23 km"],
    [0.30479, "length", "us", "1 ft"],
    [60, "length", "us", "197 ft"],
    [40e-6 / 60, "flow", "metric", "40 mL/min"],
    [40e-6 / 60, "flow", "us", "1.35 fl oz/min"],
    [2e-3 / 60, "flow", "metric", "2 L/min"],
    [6.30902e-5, "flow", "us", "1 gal/min"],
    [0.208198, "volume", "metric", "208 L"],
    [0.208198, "volume", "us", "55 gal"],
    [4e-5, "volume", "metric", "40 mL"],
    [12, "volume", "metric", "12 m³"],
    [2.5, "area", "metric", "2.5 m²"],
    [5e-5, "area", "metric", "50 mm²"],
    [0.0929, "area", "us", "1 ft²"],
    [20, "temperature", "metric", "20 °C"],
    [20, "temperature", "us", "68 °F"],
    [-40, "temperature", "us", "-40 °F"],
    [90, "time", "metric", "90 s"],
    [5400, "time", "us", "90 min"],
    [36000, "time", "metric", "10 h"],
    [345600, "time", "metric", "4 day"],
    [0.01, "slope", "metric", "1 %"],
    [3, "speed", "metric", "3 m/s"],
    [4.4704, "speed", "us", "10 mph"],
    [900, "sunshine", "us", "900 W/m²"],
  ])("writes %d as a %s in %s units as %j", (si, kind, system, expected) => {
    expect(writeQuantity(si, kind, system)).toBe(expected);
  });

  it.each<[string, string, QuantityKind]>([
    ["8 m²", "8 m2", "area"],
    ["48 ft²", "48 ft2", "area"],
    ["900 W/m²", "900 W/m2", "sunshine"],
    ["1.2 m³", "1.2 m3", "volume"],
    ["1.2 m³/h", "1.2 m3/h", "flow"],
    ["21 °C", "21 degC", "temperature"],
    ["70 °F", "70 deg F", "temperature"],
  ])("signs of print are read as what a keyboard has: %s and %s", (printed, keyed, kind) => {
    const [one, other] = [readQuantity(printed, kind), readQuantity(keyed, kind)];
    expect(one.ok && other.ok && one.quantity.si === other.quantity.si).toBe(true);
  });

  it("writes more figures when asked, also in the inches", () => {
    expect(writeQuantity(12.34567, "length", "us", 6)).toBe("40 ft 6.05 in");
    expect(writeQuantity(1 / 3, "length", "metric", 5)).toBe("33.333 cm");
  });

  it('never writes "-0", and writes what is only rounding as 0', () => {
    for (const kind of QUANTITY_KINDS.filter((one) => one !== "temperature")) {
      for (const si of [0, -0, -1e-15, 1e-15]) {
        for (const system of ["metric", "us"] as const) {
          expect(writeQuantity(si, kind, system)).toMatch(/^0 \S/);
        }
      }
    }
    expect(writeQuantity(-0, "temperature", "metric")).toBe("0 °C");
    expect(writeQuantity(-160 / 9, "temperature", "us")).toMatch(/^0 °F$/);
  });

  it("refuses what is not finite and senseless figures", () => {
    expect(() => writeQuantity(Number.NaN, "length", "metric")).toThrow("si is NaN");
    expect(() => writeQuantity(1, "length", "metric", 0)).toThrow("figures is 0");
    expect(() => writeQuantity(1, "length", "metric", 2.5)).toThrow("whole number from 1 to 15");
  });

  it("is read back by readQuantity to the figures it was written with", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...QUANTITY_KINDS),
        fc.constantFrom<UnitSystem>("metric", "us"),
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.boolean(),
        fc.integer({ min: 1, max: 15 }),
        (kind, system, decade, isNegative, figures) => {
          const si = (isNegative ? -1 : 1) * (kind === "temperature" ? 10 ** (decade / 5) : 10 ** decade);
          fc.pre(kind !== "time" || Math.abs(si) >= 1e-3); // shorter times are written as 0
          const read = readQuantity(writeQuantity(si, kind, system, figures), kind);
          if (!read.ok) throw new Error(`${read.found}. ${read.mend}`);
          const half = 0.5 * 10 ** (1 - figures);
          const inFeetAndInches =
            (kind === "length" || kind === "head") && system === "us" && figures <= 3 ? 0.0127 : 0;
          const offset = kind === "temperature" ? 18 : 0;
          const allowed = (half + 1e-14) * (Math.abs(si) + offset) + inFeetAndInches;
          expect(Math.abs(read.quantity.si - si)).toBeLessThanOrEqual(allowed * (1 + 1e-9));
        },
      ),
      { numRuns: 3000 },
    );
  });
});
