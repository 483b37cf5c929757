import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  fitView,
  LEAST_SCALE,
  MOST_SCALE,
  panBy,
  toGround,
  toPixel,
  viewThrough,
  zoomAbout,
} from "../../../../packages/ui/src/kernels/above/viewport.js";

const pixels = fc.record({
  x: fc.double({ min: -500, max: 1500, noNaN: true }),
  y: fc.double({ min: -500, max: 1500, noNaN: true }),
});
const grounds = fc.record({
  x: fc.double({ min: -300, max: 300, noNaN: true }),
  y: fc.double({ min: -300, max: 300, noNaN: true }),
});
const views = fc.record({
  scale: fc.double({ min: 0.1, max: 1000, noNaN: true }),
  left: fc.double({ min: -2000, max: 2000, noNaN: true }),
  top: fc.double({ min: -2000, max: 2000, noNaN: true }),
});
const FRAME = { width: 360, height: 400, margin: { left: 40, right: 40, top: 50, bottom: 70 } };

test("toPixel puts up on the ground up on the drawing, and toGround is its inverse", () => {
  const view = { scale: 20, left: 100, top: 200 };
  expect(toPixel(view, { x: 3, y: 2 })).toEqual({ x: 160, y: 160 });
  fc.assert(
    fc.property(views, pixels, (any, at) => {
      const back = toPixel(any, toGround(any, at));
      expect(back.x).toBeCloseTo(at.x, 6);
      expect(back.y).toBeCloseTo(at.y, 6);
    }),
  );
});

describe("zoomAbout", () => {
  test("keeps what lies under the pointer under it, whatever the factor", () => {
    fc.assert(
      fc.property(views, pixels, fc.double({ min: 0.01, max: 100, noNaN: true }), (view, at, factor) => {
        const ground = toGround(view, at);
        const after = toPixel(zoomAbout(view, at, factor), ground);
        expect(Math.hypot(after.x - at.x, after.y - at.y)).toBeLessThan(1e-6 * Math.max(1, factor) * 1e3);
      }),
    );
  });

  test("twice in and twice out again is where it began", () => {
    const view = { scale: 40, left: 10, top: 20 };
    const at = { x: 77, y: 33 };
    const back = zoomAbout(zoomAbout(view, at, 2), at, 0.5);
    expect(back.left).toBeCloseTo(10, 9);
    expect(back.top).toBeCloseTo(20, 9);
  });

  test("stops at its limits", () => {
    const view = { scale: 40, left: 0, top: 0 };
    expect(zoomAbout(view, { x: 0, y: 0 }, 1e9).scale).toBe(MOST_SCALE);
    expect(zoomAbout(view, { x: 0, y: 0 }, 1e-9).scale).toBe(LEAST_SCALE);
  });
});

describe("fitView", () => {
  test("shows all spots inside the margins, whatever they are", () => {
    fc.assert(
      fc.property(fc.array(grounds, { minLength: 1, maxLength: 12 }), (spots) => {
        const view = fitView(spots, FRAME);
        for (const spot of spots) {
          const { x, y } = toPixel(view, spot);
          expect(x).toBeGreaterThanOrEqual(40 - 1e-6);
          expect(x).toBeLessThanOrEqual(320 + 1e-6);
          expect(y).toBeGreaterThanOrEqual(50 - 1e-6);
          expect(y).toBeLessThanOrEqual(330 + 1e-6);
        }
      }),
    );
  });

  test("comes as near as the tighter side lets it", () => {
    expect(
      fitView(
        [
          { x: 0, y: 0 },
          { x: 28, y: 1 },
        ],
        FRAME,
      ).scale,
    ).toBeCloseTo(10, 9);
    expect(
      fitView(
        [
          { x: 0, y: 0 },
          { x: 1, y: 28 },
        ],
        FRAME,
      ).scale,
    ).toBeCloseTo(10, 9);
  });

  test("shows some ground around a source that stands alone, in the middle", () => {
    const view = fitView([{ x: 5, y: 5 }], FRAME);
    expect(toPixel(view, { x: 5, y: 5 })).toEqual({ x: 180, y: 190 });
    expect(280 / view.scale).toBeGreaterThanOrEqual(6);
  });
});

test("panBy moves every place by the same", () => {
  const view = { scale: 40, left: 0, top: 0 };
  const [before, after] = [view, panBy(view, 12, -7)].map((each) => toPixel(each, { x: 2, y: 3 }));
  expect([after!.x - before!.x, after!.y - before!.y]).toEqual([12, -7]);
});

describe("viewThrough", () => {
  test("puts the middle of two fingers on the middle of the ground they hold", () => {
    fc.assert(
      fc.property(grounds, grounds, pixels, pixels, (a, b, p, q) => {
        const view = viewThrough([a, b], [p, q]);
        const middle = toPixel(view, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
        expect(middle.x).toBeCloseTo((p.x + q.x) / 2, 5);
        expect(middle.y).toBeCloseTo((p.y + q.y) / 2, 5);
      }),
    );
  });

  test("puts each finger on its own ground when they only move apart", () => {
    const view = viewThrough(
      [
        { x: 0, y: 0 },
        { x: 10, y: 0 },
      ],
      [
        { x: 50, y: 80 },
        { x: 250, y: 80 },
      ],
    );
    expect(view.scale).toBe(20);
    expect(toPixel(view, { x: 0, y: 0 })).toEqual({ x: 50, y: 80 });
    expect(toPixel(view, { x: 10, y: 0 })).toEqual({ x: 250, y: 80 });
  });
});
