import { expect, test } from "vitest";
import { cutTo } from "../../../../packages/ui/src/kernels/cut-to.js";

const line = [
  { x: 0, y: 0 },
  { x: 10, y: 10 },
  { x: 20, y: 0 },
];

test("cutTo leaves a line alone that lies between the edges", () => {
  expect(cutTo(line, [0, 20])).toEqual(line);
});

test("cutTo cuts pieces at both edges, also a piece that goes past both", () => {
  expect(cutTo(line, [5, 12])).toEqual([
    { x: 5, y: 5 },
    { x: 10, y: 10 },
    { x: 12, y: 8 },
  ]);
  expect(cutTo(line, [2, 4])).toEqual([
    { x: 2, y: 2 },
    { x: 4, y: 4 },
  ]);
});

test("cutTo gives nothing of a line that lies elsewhere", () => {
  expect(cutTo(line, [30, 40])).toEqual([]);
});
