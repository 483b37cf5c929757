import { readQuantity } from "@headfall/hydraulics";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type FieldKind, TEXT_KINDS } from "../../../packages/ui/src/fields/text-kinds.js";
import { shownStandIn, shownText } from "../../../packages/ui/src/fields/typing-controller.js";

const typed = (kind: FieldKind, text: string, system: "metric" | "us" = "metric") => {
  const read = TEXT_KINDS[kind].read(text, system);
  return read.ok ? read.typed : read.problem;
};

test("TEXT_KINDS takes a bare number in the unit of its kind", () => {
  const bare = (kind: FieldKind) => [typed(kind, "7"), typed(kind, "7", "us")];
  expect(bare("length")).toEqual(["7 cm", "7 in"]);
  expect(bare("distance")).toEqual(["7 m", "7 ft"]);
  expect(bare("bore")).toEqual(["7 mm", "7 in"]);
  expect(bare("head")).toEqual(["7 cm", "7 in"]);
  expect(bare("area")).toEqual(["7 m2", "7 ft2"]);
  expect(bare("flow")).toEqual(["7 mL/min", "7 fl oz/min"]);
  expect(bare("volume")).toEqual(["7 L", "7 gal"]);
  expect(bare("temperature")).toEqual(["7 °C", "7 °F"]);
});

test("TEXT_KINDS keeps what was typed with its unit", () => {
  expect(typed("head", "2 psi")).toBe("2 psi");
  expect(typed("flow", "0.5 gpm")).toBe("0.5 gpm");
  expect(typed("temperature", "50 °F")).toBe("50 °F");
});

test("TEXT_KINDS reads drinkers at work as a count or a share, and nothing else", () => {
  expect(typed("atWork", "6")).toBe("6");
  expect(typed("atWork", "12,5%")).toBe("12.5 %");
  expect(typed("atWork", "50 percent")).toBe("50 %");
  expect(typed("atWork", "half")).toContain("neither a whole number nor a share");
});

test("TEXT_KINDS reads figures without a unit, with a decimal comma too", () => {
  expect(typed("number", "140")).toBe("140");
  expect(typed("number", "0,5")).toBe("0.5");
  expect(typed("number", "many")).toBe('"many" is not a number. Write for instance 140.');
});

test("shownText shows what was typed where it is in the user's units, else the value in them", () => {
  expect(shownText({ kind: "flow", typed: "40 mL/min" }, "metric")).toBe("40 mL/min");
  expect(shownText({ kind: "flow", typed: "40 mL/min" }, "us")).toBe("1.353 fl oz/min");
  expect(shownText({ kind: "temperature", typed: "50 degF" }, "metric")).toBe("10 °C");
  expect(shownText({ kind: "temperature", typed: "10 degC" }, "metric")).toBe("10 degC");
  expect(shownText({ kind: "bore", typed: "1/2 in" }, "metric")).toBe("12.7 mm");
  expect(shownText({ kind: "distance", typed: undefined }, "metric")).toBe("");
  expect(shownText({ kind: "atWork", typed: "50 %" }, "us")).toBe("50 %");
});

test("shownStandIn shows a quantity in the user's units, and words as they are", () => {
  expect(shownStandIn({ kind: "head", standIn: "2 cm" }, "us")).toBe("0.7874 in");
  expect(shownStandIn({ kind: "length", standIn: "spread evenly to the end" }, "us")).toBe(
    "spread evenly to the end",
  );
});

const QUANTITIES = [
  ["distance", "length", 100, 0.01],
  ["bore", "length", 0.2, 1e-4],
  ["head", "head", 10, 0.03],
  ["flow", "flow", 1e-4, 1e-7],
  ["volume", "volume", 2, 1e-3],
  ["temperature", "temperature", 50, 0.06],
] as const;

test("TEXT_KINDS writes what it reads back to within what a field shows", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...QUANTITIES),
      fc.constantFrom("metric" as const, "us" as const),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      ([kind, quantity, most, step], system, share) => {
        const value = share * most;
        const read = readQuantity(TEXT_KINDS[kind].write(value, system), quantity);
        expect(read.ok).toBe(true);
        if (read.ok) expect(Math.abs(read.quantity.si - value)).toBeLessThanOrEqual(step);
      },
    ),
  );
});

test("what stands in for a field and what is turned into other units has signs; what was typed stays as typed", () => {
  expect(shownStandIn({ kind: "temperature", standIn: "21 °C" }, "us")).toBe("69.8 °F");
  expect(shownStandIn({ kind: "sunshine", standIn: "900 W/m²" }, "metric")).toBe("900 W/m²");
  expect(shownText({ kind: "area", typed: "8 m2" }, "metric")).toBe("8 m2");
  expect(shownText({ kind: "area", typed: "8 m2" }, "us")).toBe("86.11 ft²");
});
