import { describe, expect, test } from "vitest";
import { pathOf, shapeFromMiddle } from "../../../packages/ui/src/kernels/path-of.js";
import { VERDICT_MARKS } from "../../../packages/ui/src/kernels/verdict-marks.js";

describe("shapeFromMiddle", () => {
  test("goes on from the middle, piece by piece", () => {
    expect(shapeFromMiddle("M-1 -1L1 -1L1 1ZM0 0L1 0", 5)).toBe("m-5 -5l10 0l0 10zm5 5l5 0");
  });

  test("enlarges the radii of an arc and leaves its turn and flags", () => {
    expect(shapeFromMiddle("M-0.9 0A0.9 0.9 0 1 1 0.9 0A0.9 0.9 0 1 1 -0.9 0Z", 10)).toBe(
      "m-9 0a9 9 0 1 1 18 0a9 9 0 1 1 -18 0z",
    );
  });

  test("ends the shape of every verdict where that ends", () => {
    for (const { path } of Object.values(VERDICT_MARKS)) {
      const moved = shapeFromMiddle(path, 100);
      expect(endOf(moved)).toEqual(endOf(path).map((place) => place * 100));
    }
  });
});

test("pathOf rounds to a hundredth of a pixel", () => {
  expect(
    pathOf([
      { x: 1.234, y: 2 },
      { x: 3, y: 4.567 },
    ]),
  ).toBe("M1.23 2L3 4.57");
});

/** Where a path has gone when it ends, of absolute pieces or of relative ones. */
function endOf(path: string): number[] {
  let at = [0, 0];
  let start = at;
  for (const [, kind, words] of path.matchAll(/([MLCAZmlcaz])([^MLCAZmlcaz]*)/g)) {
    const last = words!.trim().split(/\s+/).map(Number).slice(-2);
    if (/z/i.test(kind!)) at = start;
    else at = kind === kind!.toUpperCase() ? last : at.map((place, i) => place + last[i]!);
    if (/m/i.test(kind!)) start = at;
  }
  return at.map((place) => Math.round(place * 100) / 100);
}
