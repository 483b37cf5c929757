import { readQuantity } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { shownStandIn, shownText } from "../../../packages/ui/src/fields/typing-controller.js";
import { unitSigns } from "../../../packages/ui/src/kernels/unit-signs.js";

test.each([
  ["8 m2", "8 m²", "area"],
  ["48 ft2", "48 ft²", "area"],
  ["900 W/m2", "900 W/m²", "sunshine"],
  ["1.2 m3", "1.2 m³", "volume"],
  ["21 degC", "21 °C", "temperature"],
  ["70 deg F", "70 °F", "temperature"],
] as const)("unitSigns(%s) is %s, and reads as the same", (keyed, printed, kind) => {
  expect(unitSigns(keyed)).toBe(printed);
  const [one, other] = [readQuantity(keyed, kind), readQuantity(printed, kind)];
  expect(one.ok && other.ok && one.quantity.si === other.quantity.si).toBe(true);
});

test.each(["pen m2", "2 m", "10 cm22", "m25 pipe", "vm2"])(
  "unitSigns(%s) leaves other words alone",
  (text) => {
    expect(unitSigns(text).replace("m²", "m2")).toBe(text);
  },
);

test("what stands in for a field and what is turned into other units has signs; what was typed stays as typed", () => {
  expect(shownStandIn({ kind: "temperature", standIn: "21 degC" }, "metric")).toBe("21 °C");
  expect(shownStandIn({ kind: "sunshine", standIn: "900 W/m2" }, "metric")).toBe("900 W/m²");
  expect(shownText({ kind: "area", typed: "8 m2" }, "metric")).toBe("8 m2");
  expect(shownText({ kind: "area", typed: "8 m2" }, "us")).toBe("86.11 ft²");
});
