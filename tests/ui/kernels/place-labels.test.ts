import * as fc from "fast-check";
import { expect, test } from "vitest";
import { placeLabels } from "../../../packages/ui/src/kernels/place-labels.js";

test("placeLabels leaves labels that have room where they want to be", () => {
  const wanted = [
    { at: 20, size: 20, weight: 1 },
    { at: 80, size: 20, weight: 1 },
  ];
  expect(placeLabels(wanted, 0, 100, 4)).toEqual([20, 80]);
});

test("placeLabels pushes a label in from the edge", () => {
  expect(placeLabels([{ at: 0, size: 30, weight: 1 }], 0, 100, 4)).toEqual([15]);
  expect(placeLabels([{ at: 100, size: 30, weight: 1 }], 0, 100, 4)).toEqual([85]);
});

test("placeLabels leaves out the lightest when not all fit", () => {
  const wanted = [
    { at: 10, size: 40, weight: 1 },
    { at: 20, size: 40, weight: 3 },
    { at: 30, size: 40, weight: 2 },
  ];
  const placed = placeLabels(wanted, 0, 90, 4);
  expect(placed[0]).toBeUndefined();
  expect(placed[1]).toBeDefined();
  expect(placed[2]).toBeDefined();
});

test("placeLabels never lets two labels overlap nor one stick out, whatever is wanted", () => {
  const label = fc.record({
    at: fc.double({ min: -50, max: 350, noNaN: true }),
    size: fc.double({ min: 1, max: 120, noNaN: true }),
    weight: fc.integer({ min: 0, max: 5 }),
  });
  fc.assert(
    fc.property(fc.array(label, { maxLength: 12 }), (wanted) => {
      const placed = placeLabels(wanted, 0, 300, 6);
      const spans = wanted
        .flatMap(({ size }, i) =>
          placed[i] === undefined ? [] : [{ from: placed[i]! - size / 2, to: placed[i]! + size / 2 }],
        )
        .sort((a, b) => a.from - b.from);
      for (const [i, { from, to }] of spans.entries()) {
        expect(from).toBeGreaterThanOrEqual(-1e-9);
        expect(to).toBeLessThanOrEqual(300 + 1e-9);
        if (i > 0) expect(from - spans[i - 1]!.to).toBeGreaterThanOrEqual(6 - 1e-9);
      }
    }),
  );
});
