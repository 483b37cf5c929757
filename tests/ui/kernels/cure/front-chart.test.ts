import type { Cost, FrontPoint, Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { layFrontChart, nearestPoint, termOf } from "../../../../packages/ui/src/kernels/cure/front-chart.js";

const NOTHING: Cost = { money: 0, unpriced: 0, parts: 0, pipe: 0, runs: 0, stand: 0 };
const plan: Plan = { headfall: 1, sources: [], runs: [] };
const point = (cost: Partial<Cost>): FrontPoint => ({
  cost: { ...NOTHING, ...cost },
  margin: 0,
  stand: 0,
  changes: [],
  plan,
});

describe("termOf", () => {
  test("is what counts, where points differ in it", () => {
    expect(termOf([point({ money: 2 }), point({ money: 5, pipe: 9 })], "money")).toBe("money");
  });

  test("is the next figure in which they differ, where they are alike in that", () => {
    expect(termOf([point({ stand: 0.1 }), point({ stand: 0.2 })], "parts")).toBe("stand");
    expect(termOf([point({ parts: 1, pipe: 4 }), point({ parts: 1, pipe: 9 })], "parts")).toBe("pipe");
  });

  test("is never the stand where that is the other axis", () => {
    expect(termOf([point({ stand: 0.1 }), point({ stand: 0.2, pipe: 1 })], "stand", true)).toBe("pipe");
    expect(termOf([point({ stand: 0.1 })], "stand", true)).toBe("parts");
  });
});

describe("layFrontChart", () => {
  const rising = layFrontChart({
    points: [
      { x: 0.01, y: 2 },
      { x: 0.05, y: 10 },
      { x: 0.09, y: 11 },
    ],
    unitX: 0.01,
    unitY: 1,
    width: 330,
    height: 250,
  });

  test("keeps every point inside, dearer ones higher", () => {
    const { plot, points } = rising;
    for (const { x, y } of points) {
      expect(x).toBeGreaterThanOrEqual(plot.left);
      expect(x).toBeLessThanOrEqual(plot.right);
      expect(y).toBeGreaterThanOrEqual(plot.top);
      expect(y).toBeLessThanOrEqual(plot.bottom);
    }
    expect(points[0]!.y).toBeGreaterThan(points[1]!.y);
    expect(points[0]!.x).toBeLessThan(points[1]!.x);
  });

  test("between two points the dearer one is paid for: up first where it rises, along first where it falls", () => {
    expect(rising.path.replace(/[\d.\s]+/g, "")).toBe("MVHVH");
    const falling = layFrontChart({
      points: [
        { x: 0.3, y: 9 },
        { x: 0.6, y: 4 },
      ],
      unitX: 0.01,
      unitY: 1,
      width: 330,
      height: 250,
    });
    expect(falling.path.replace(/[\d.\s]+/g, "")).toBe("MHV");
  });

  test("a single point, or points that are all alike, lie on a chart with a span of one unit", () => {
    const { points, across, up } = layFrontChart({
      points: [{ x: 0.5, y: 0 }],
      unitX: 0.01,
      unitY: 1,
      width: 330,
      height: 250,
    });
    expect(points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
    expect(across.length).toBeGreaterThan(0);
    expect(up.length).toBeGreaterThan(1);
  });

  test("nearestPoint finds the point a finger means", () => {
    rising.points.forEach(({ x, y }, k) => {
      expect(nearestPoint(rising, x + 4, y - 6)).toBe(k);
    });
    expect(nearestPoint(rising, rising.plot.right + 10, 0)).toBe(2);
  });
});
