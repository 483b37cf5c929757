import * as fc from "fast-check";
import { expect, test } from "vitest";
import { gridStep, scaleBar } from "../../../../packages/ui/src/kernels/above/scale-bar.js";

test("scaleBar takes the longest round length that has room", () => {
  expect(scaleBar(20, "metric", 110)).toEqual({ length: 5, width: 100, words: "5 m" });
  expect(scaleBar(400, "metric", 110)).toMatchObject({ words: "20 cm", width: 80 });
  expect(scaleBar(20, "us", 110).words).toBe("10 ft");
  expect(scaleBar(600, "us", 110).words).toBe("6 in");
});

test("scaleBar is never wider than it may be, nor less than a third of that", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 2000, noNaN: true }),
      fc.constantFrom("metric", "us"),
      (scale, system) => {
        const { width, length } = scaleBar(scale, system as "metric" | "us", 110);
        expect(width).toBeCloseTo(length * scale, 9);
        expect(width).toBeLessThanOrEqual(110 + 1e-6);
        expect(width).toBeGreaterThan(110 / 3);
      },
    ),
  );
});

test("gridStep is the shortest round length that keeps its lines apart", () => {
  expect(gridStep(20, "metric", 26)).toBe(2);
  expect(gridStep(26, "metric", 26)).toBe(1);
  expect(gridStep(20, "us", 26)).toBeCloseTo(5 * 0.3048, 12);
});
