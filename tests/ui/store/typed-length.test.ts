import fc from "fast-check";
import { expect, test } from "vitest";
import { metresOf } from "../../../packages/ui/src/kernels/typed-metres.js";
import { exactLength, roundLength } from "../../../packages/ui/src/store/typed-length.js";

const lengths = fc.double({ min: -300, max: 300, noNaN: true });
const systems = fc.constantFrom("metric", "us" as const);

test("roundLength writes what a tape would show: centimetres, metres from one on, feet and quarter inches", () => {
  expect([0.6244, 1.2349, 0.9996, -0.0001].map((length) => roundLength(length, "metric"))).toEqual([
    "62.4 cm",
    "1.23 m",
    "1 m",
    "0 cm",
  ]);
  expect([0.2413, 0.762, -0.001].map((length) => roundLength(length, "us"))).toEqual([
    "9.5 in",
    "2 ft 6 in",
    "0 in",
  ]);
});

test("roundLength is read back within half of what a tape shows", () => {
  fc.assert(
    fc.property(lengths, systems, (length, system) => {
      expect(Math.abs(metresOf(roundLength(length, system)) - length)).toBeLessThan(0.00501);
    }),
    { numRuns: 2000 },
  );
});

test("exactLength is read back as it was, shortly where that says it", () => {
  expect(exactLength(7.192, "metric")).toBe("7.192 m");
  expect(exactLength(0.30001, "metric")).toBe("30.001 cm");
  expect(exactLength(12.192, "us")).toBe("40 ft");
  expect(exactLength(5, "us")).toBe("5 m");
  fc.assert(
    fc.property(lengths, systems, (length, system) => {
      expect(Math.abs(metresOf(exactLength(length, system)) - length)).toBeLessThanOrEqual(5e-8);
    }),
    { numRuns: 2000 },
  );
});

test("metresOf of what is no length is 0", () => {
  expect([metresOf(undefined), metresOf("wide")]).toEqual([0, 0]);
});
