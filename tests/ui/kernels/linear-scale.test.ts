import * as fc from "fast-check";
import { expect, test } from "vitest";
import { linearScale, ticksOf } from "../../../packages/ui/src/kernels/linear-scale.js";

test("linearScale puts the ends of its domain on the ends of its range, and the middle in the middle", () => {
  const scale = linearScale([-1, 3], [100, 20]);
  expect([scale(-1), scale(1), scale(3)]).toEqual([100, 60, 20]);
});

test("ticksOf gives round values, at their places", () => {
  const ticks = ticksOf(linearScale([-0.5, 1.5], [200, 0]), 1, 5);
  expect(ticks.map(({ value }) => value)).toEqual([-0.5, 0, 0.5, 1, 1.5]);
  expect(ticks.map(({ at }) => at)).toEqual([200, 150, 100, 50, 0]);
});

test("ticksOf counts in feet where the unit is a foot", () => {
  const ticks = ticksOf(linearScale([0, 3.048], [0, 100]), 0.3048, 5);
  expect(ticks.map(({ value }) => value)).toEqual([0, 2, 4, 6, 8, 10]);
});

test("ticksOf never gives more than one mark above what was asked, nor one outside its domain", () => {
  const end = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(
      end,
      fc.double({ min: 0.01, max: 1e4, noNaN: true }),
      fc.integer({ min: 2, max: 10 }),
      (low, span, most) => {
        const ticks = ticksOf(linearScale([low, low + span], [0, 100]), 1, most);
        expect(ticks.length).toBeLessThanOrEqual(most + 1);
        for (const { at } of ticks) {
          expect(at).toBeGreaterThan(-1e-3);
          expect(at).toBeLessThan(100 + 1e-3);
        }
      },
    ),
  );
});
