import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { panWindow, showAlong, zoomWindow } from "../../../../packages/ui/src/kernels/side/along-window.js";

describe("zoomWindow", () => {
  test("keeps what is looked at where it is on the drawing", () => {
    const [from, to] = zoomWindow(undefined, 40, 4, 10)!;
    expect(to - from).toBeCloseTo(10, 12);
    expect((10 - from) / (to - from)).toBeCloseTo(10 / 40, 12);
  });

  test("stays on the path, at least half a metre long, and is undefined when it is all of it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 5000, noNaN: true }),
        fc.array(
          fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        ),
        (length, steps) => {
          let window = zoomWindow(undefined, length, 1, 0);
          expect(window).toBeUndefined();
          for (const [factor, share] of steps) {
            window = zoomWindow(window, length, factor, share * length);
            const [from, to] = window ?? [0, length];
            expect(from).toBeGreaterThanOrEqual(0);
            expect(to).toBeLessThanOrEqual(length + 1e-9);
            expect(to - from).toBeGreaterThanOrEqual(Math.min(0.5, length) - 1e-9);
          }
        },
      ),
    );
  });
});

describe("panWindow", () => {
  test("moves along and stops at the ends", () => {
    expect(panWindow([2, 6], 10, 1)).toEqual([3, 7]);
    expect(panWindow([2, 6], 10, 100)).toEqual([6, 10]);
    expect(panWindow([2, 6], 10, -100)).toEqual([0, 4]);
    expect(panWindow(undefined, 10, 1)).toBeUndefined();
  });
});

describe("showAlong", () => {
  test("moves only when the place is not on the drawing", () => {
    expect(showAlong([2, 6], 10, 5)).toEqual([2, 6]);
    expect(showAlong([2, 6], 10, 8)).toEqual([6, 10]);
    expect(showAlong(undefined, 10, 8)).toBeUndefined();
  });
});
