import fc from "fast-check";
import { expect, test } from "vitest";
import { layWeekChart } from "../../../../packages/ui/src/kernels/birds/week-chart.js";
import type { WeekDrinks } from "../../../../packages/ui/src/kernels/birds/week-drinks.js";

const LITRE = 1e-3;
const volumes = fc.double({ min: 0, max: 5, noNaN: true });

/** Weeks of up to five batches, with and without a hot spell. */
const drinks = fc.integer({ min: 1, max: 20 }).chain((weeks) => {
  const list = fc.array(volumes, { minLength: weeks, maxLength: weeks });
  const batch = fc.record({
    pen: fc.nat(3),
    batch: fc.nat(3),
    label: fc.string(),
    birds: fc.string(),
    size: list,
    expect: list,
  });
  return fc.record({
    size: list,
    expect: list,
    hot: fc.oneof(fc.constant([]), list),
    batches: fc.array(batch, { maxLength: 5 }),
  });
});

const lay = (of: WeekDrinks, width = 336) => layWeekChart({ drinks: of, width, height: 240, unit: LITRE });

test("layWeekChart keeps every point, mark and label within the drawing, and labels apart", () => {
  fc.assert(
    fc.property(drinks, fc.constantFrom(336, 680), (of, width) => {
      const { plot, series, ticks, height } = lay(of, width);
      for (const { points, labelY } of series) {
        expect(points.length).toBe(of.size.length);
        for (const { x, y } of points) {
          expect(x).toBeGreaterThanOrEqual(plot.left - 1e-6);
          expect(x).toBeLessThanOrEqual(plot.right + 1e-6);
          expect(y).toBeGreaterThanOrEqual(plot.top - 1e-6);
          expect(y).toBeLessThanOrEqual(plot.bottom + 1e-6);
        }
        expect(labelY).toBeGreaterThanOrEqual(0);
        expect(labelY).toBeLessThanOrEqual(height);
      }
      const labels = series.map(({ labelY }) => labelY).sort((a, b) => a - b);
      for (let i = 1; i < labels.length; i += 1)
        expect(labels[i]! - labels[i - 1]!).toBeGreaterThanOrEqual(14.99);
      expect(ticks.length).toBeLessThanOrEqual(6);
    }),
  );
});

test("a volume twice as large stands twice as high", () => {
  const { plot, series } = lay({ size: [0.01, 0.02], expect: [0.005, 0.01], hot: [], batches: [] });
  const heights = series[0]!.points.map(({ y }) => plot.bottom - y);
  expect(heights[1]! / heights[0]!).toBeCloseTo(2, 9);
  expect(series[1]!.points[1]!.y).toBeCloseTo(series[0]!.points[0]!.y, 9);
});

test("one batch alone has no line of its own; of many the three that drink most have", () => {
  const batch = (most: number, label = "") => ({
    pen: 0,
    batch: 0,
    label,
    birds: "",
    size: [most],
    expect: [most],
  });
  const looks = (...batches: ReturnType<typeof batch>[]) =>
    lay({ size: [1], expect: [1], hot: [], batches }).series.map(({ label }) => label);
  expect(looks(batch(1))).toEqual(["to size on", "to expect"]);
  const four = [
    batch(0.1, "hutch"),
    batch(0.4, "hen house by the wood"),
    batch(0.2, "ducks"),
    batch(0.3, "pen 2"),
  ];
  expect(looks(...four)).toEqual(["to size on", "to expect", "hen house by…", "pen 2", "ducks"]);
});
