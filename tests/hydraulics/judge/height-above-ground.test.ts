import { expect, test } from "vitest";
import { heightAboveGround } from "../../../packages/hydraulics/src/judge/height-above-ground.js";

/** Drinkers at these heights, each over ground of its own. */
const lineOf = (height: readonly number[], ground: readonly number[]) =>
  ({
    drinkers: { height, point: height.map((_, d) => height.length - 1 - d) },
    points: { ground: [...ground].reverse() },
  }) as never;

test("heightAboveGround is the mean of each drinker's height over the ground below it", () => {
  const slope = lineOf([0.5, 0.7, 1.4], [0.3, 0.1, 1.3]);
  expect(heightAboveGround(slope, [0, 1])).toBeCloseTo((0.2 + 0.6) / 2, 12);
  expect(heightAboveGround(slope, [0, 1, 2])).toBeCloseTo((0.2 + 0.6 + 0.1) / 3, 12);
});

test("heightAboveGround does not tell of drinkers that lie on the ground, or of none", () => {
  expect(heightAboveGround(lineOf([0.02], [0]), [0])).toBeUndefined();
  expect(heightAboveGround(lineOf([0.021], [0]), [0])).toBe(0.021);
  expect(heightAboveGround(lineOf([0.4], [0]), [])).toBeUndefined();
});
