import { expect, it } from "vitest";
import { valueBetween } from "../../../packages/hydraulics/src/numerics/value-between.js";

it.each([
  ["below all", 0, 10],
  ["at the first", 1, 10],
  ["a quarter of the way", 1.5, 15],
  ["at one between", 3, 30],
  ["on a fall", 3.5, 22.5],
  ["at the last", 4, 15],
  ["beyond all", 9, 15],
])("valueBetween is on straight lines between rows, level beyond them: %s", (_, at, expected) => {
  expect(valueBetween([1, 3, 4], [10, 30, 15], at)).toBe(expected);
});
