import * as fc from "fast-check";
import { expect, test } from "vitest";
import { mostThatFit, usualRow } from "../../../packages/ui/src/kernels/put-along.js";

test("usualRow offers ten at the usual spacing, fewer on a short run, and one on a very short one", () => {
  expect(usualRow(6, 0.3)).toEqual({ count: 10, every: 0.3 });
  expect(usualRow(1, 0.3)).toEqual({ count: 3, every: 0.3 });
  expect(usualRow(0.9, 0.3)).toEqual({ count: 3, every: 0.3 });
  expect(usualRow(0.2, 0.3)).toEqual({ count: 1, every: 0.2 });
});

test("usualRow always fits its run", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (length) => {
      const { count, every } = usualRow(length, 0.3);
      expect(mostThatFit(length, count, every)).toBeUndefined();
    }),
  );
});

test("mostThatFit tells how many would, where not all do", () => {
  expect(mostThatFit(4, 20, 0.3)).toBe(13);
  expect(mostThatFit(4, 13, 0.3)).toBeUndefined();
  expect(mostThatFit(0.2, 1, 0.3)).toBe(0);
});
