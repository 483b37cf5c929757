import { expect, it } from "vitest";
import { errorFunction } from "../../../packages/hydraulics/src/numerics/error-function.js";

// To sixteen digits, as any table of it has them (from memory).
it.each([
  [0, 0],
  [0.1, 0.1124629160182849],
  [0.5, 0.5204998778130465],
  [1, 0.8427007929497149],
  [2, 0.9953222650189527],
  [2.4, 0.999311486103355],
  [2.5, 0.999593047982555],
  [3, 0.9999779095030014],
  [4, 0.9999999845827421],
])("errorFunction(%f) is %f, and odd", (x, expected) => {
  expect(errorFunction(x)).toBeCloseTo(expected, 14);
  expect(errorFunction(-x)).toBeCloseTo(-expected, 14);
});

it("errorFunction of its series and of its fraction meet where one gives way to the other", () => {
  const [below, at] = [errorFunction(2.5 - 1e-9), errorFunction(2.5)];
  const slope = (2 / Math.sqrt(Math.PI)) * Math.exp(-6.25);
  expect(at - below - slope * 1e-9).toBeCloseTo(0, 14);
});

it("errorFunction is one where nothing can be told from it any more", () => {
  for (const x of [6, 27, 28, 1e3, Number.POSITIVE_INFINITY]) expect(errorFunction(x)).toBe(1);
});
