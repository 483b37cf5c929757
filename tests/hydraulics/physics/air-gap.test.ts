import { expect, test } from "vitest";
import { airGapFor } from "../../../packages/hydraulics/src/physics/air-gap.js";

test("airGapFor is twice the bore, and never less than the rule's least", () => {
  expect(airGapFor(0.015, "us")).toBeCloseTo(0.03, 12);
  expect(airGapFor(0.005, "us")).toBe(0.0254);
  expect(airGapFor(0.005, "uk")).toBe(0.02);
  expect(() => airGapFor(0, "uk")).toThrow(RangeError);
});
