import { readQuantity } from "@headfall/hydraulics";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { systemOf, typedLength } from "../../../packages/ui/src/kernels/typed-quantity.js";

test("typedLength writes centimetres, or feet and inches", () => {
  expect(typedLength(0.62, "metric")).toBe("62 cm");
  expect(typedLength(0.625, "metric")).toBe("62.5 cm");
  expect(typedLength(0.762, "us")).toBe("2 ft 6 in");
  expect(typedLength(0.6096, "us")).toBe("2 ft");
  expect(typedLength(0.24765, "us")).toBe("9.75 in");
  expect(typedLength(-0.0254, "us")).toBe("-1 in");
});

test("typedLength is read back by readQuantity, to half a millimetre or an eighth of an inch", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.constantFrom("metric", "us"),
      (length, system) => {
        const read = readQuantity(typedLength(length, system as "metric" | "us"), "length");
        expect(read.ok).toBe(true);
        const step = system === "us" ? 0.0254 / 8 : 0.0005;
        if (read.ok) expect(Math.abs(read.quantity.si - length)).toBeLessThanOrEqual(step + 1e-9);
      },
    ),
  );
});

test("systemOf tells in which units a length was typed", () => {
  expect(systemOf("2 ft 6 in")).toBe("us");
  expect(systemOf('30"')).toBe("us");
  expect(systemOf("60 cm")).toBe("metric");
  expect(systemOf("60")).toBeUndefined();
});

test("systemOf tells the units of flows, volumes, pressures and temperatures too", () => {
  for (const typed of ["40 mL/min", "200 L", "2 L/h", "15 kPa", "10 degC", "12 °C", "100 mbar", "2 m3"])
    expect(systemOf(typed), typed).toBe("metric");
  for (const typed of ["0.5 gpm", "55 gal", "2 psi", "50 °F", "50 degF", "3 fl oz/min", "2 qt", "1/2 in"])
    expect(systemOf(typed), typed).toBe("us");
});
