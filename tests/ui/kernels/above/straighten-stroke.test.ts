import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Ground } from "../../../../packages/ui/src/kernels/above/spot.js";
import { straightenStroke } from "../../../../packages/ui/src/kernels/above/straighten-stroke.js";

const rules = { tolerance: 0.3, step: 0.1, isEndFixed: false };
/** Places every 10 cm from one to the next of the spots, with a wobble that is always the same. */
function drawn(spots: readonly Ground[], wobble = 0.12): Ground[] {
  return spots.slice(1).flatMap((to, i) => {
    const from = spots[i]!;
    const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 0.1);
    return Array.from({ length: count + 1 }, (_, k) => {
      const off = k === 0 || k === count ? 0 : wobble * Math.sin(k * 1.7);
      return {
        x: from.x + ((to.x - from.x) * k) / count + off,
        y: from.y + ((to.y - from.y) * k) / count - off,
      };
    });
  });
}
const rounded = (spots: readonly Ground[]) =>
  spots.map(({ x, y }) => [Number(x.toFixed(6)), Number(y.toFixed(6))]);

describe("straightenStroke", () => {
  test("makes one straight piece of a wobbly line", () => {
    expect(
      rounded(
        straightenStroke({
          ...rules,
          stroke: drawn([
            { x: 0, y: 0 },
            { x: 6.04, y: 0.2 },
          ]),
        }),
      ),
    ).toEqual([
      [0, 0],
      [6, 0],
    ]);
  });

  test("makes a square corner of a wobbly one", () => {
    const stroke = drawn([
      { x: 0, y: 0 },
      { x: 4.1, y: 0.1 },
      { x: 3.95, y: -3 },
    ]);
    expect(rounded(straightenStroke({ ...rules, stroke }))).toEqual([
      [0, 0],
      [4.1, 0],
      [4.1, -3.1],
    ]);
  });

  test("ends where a fixed end is, and starts where it started", () => {
    const stroke = drawn([
      { x: 1, y: 1 },
      { x: 5, y: 1.1 },
      { x: 7.77, y: 4.44 },
    ]);
    const straight = straightenStroke({ ...rules, stroke, isEndFixed: true });
    expect(straight[0]).toEqual({ x: 1, y: 1 });
    expect(straight[straight.length - 1]).toEqual({ x: 7.77, y: 4.44 });
  });

  test("keeps an upright piece upright after a piece that was made longer", () => {
    const stroke = drawn([
      { x: 0, y: 0 },
      { x: 4.4, y: 1.8 },
      { x: 4.4, y: 5 },
    ]);
    const [, corner, end] = straightenStroke({ ...rules, step: 0.5, stroke });
    expect(corner!.x).toBeGreaterThan(4.5);
    expect(end!.x).toBeCloseTo(corner!.x, 9);
  });

  test("sets the last corner so that the piece to a joint is straight, where it was drawn nearly so", () => {
    const stroke = drawn([
      { x: 0, y: 0 },
      { x: 5.8, y: 0.1 },
      { x: 6, y: 4 },
    ]);
    expect(rounded(straightenStroke({ ...rules, stroke, isEndFixed: true }))).toEqual([
      [0, 0],
      [6, 0],
      [6, 4],
    ]);
  });

  test("drops the little hook of a finger let go", () => {
    const stroke = [
      ...drawn([
        { x: 0, y: 0 },
        { x: 6, y: 0 },
      ]),
      { x: 5.9, y: 0.35 },
    ];
    expect(straightenStroke({ ...rules, stroke })).toHaveLength(2);
  });

  test("gives the start alone for a stroke that goes nowhere", () => {
    const nowhere = { x: 2, y: 2 };
    expect(straightenStroke({ ...rules, stroke: [nowhere, nowhere, nowhere] })).toEqual([nowhere]);
  });

  test("never has more pieces than the stroke, whole lengths, and keeps a fixed end, whatever is drawn", () => {
    const spot = fc.record({
      x: fc.double({ min: -10, max: 10, noNaN: true }),
      y: fc.double({ min: -10, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(spot, { minLength: 2, maxLength: 30 }), (stroke) => {
        const straight = straightenStroke({ ...rules, stroke, isEndFixed: true });
        expect(straight.length).toBeLessThanOrEqual(stroke.length);
        expect(straight[0]).toEqual(stroke[0]);
        if (straight.length > 1) expect(straight[straight.length - 1]).toEqual(stroke[stroke.length - 1]);
      }),
    );
  });
});
