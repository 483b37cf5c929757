import { expect, test } from "vitest";
import { readPairs } from "../../../packages/ui/src/fields/read-pairs.js";

const pairs = (text: string, system: "metric" | "us" = "metric") => {
  const read = readPairs(text, ["distance", "length"], system);
  return read.ok ? read.pairs.map(({ first, second }) => [first.typed, second.typed]) : read.problem;
};

test("readPairs reads one pair a line, with a comma, a semicolon or a tab between", () => {
  const expected = [
    ["2 m", "15 cm"],
    ["4 m", "-3 cm"],
  ];
  expect(pairs("2 m, 15 cm\n4 m, -3 cm")).toEqual(expected);
  expect(pairs("2 m; 15 cm\r\n4 m; -3 cm\r\n")).toEqual(expected);
  expect(pairs("2 m\t15 cm\n4 m\t-3 cm")).toEqual(expected);
});

test("readPairs takes bare numbers in the unit of their column", () => {
  expect(pairs("2\t15")).toEqual([["2 m", "15 cm"]]);
  expect(pairs("6\t5", "us")).toEqual([["6 ft", "5 in"]]);
});

test("readPairs lets a decimal comma be", () => {
  expect(pairs("2,5 m; 15 cm")).toEqual([["2,5 m", "15 cm"]]);
  expect(pairs("2,5\t7,5")).toEqual([["2.5 m", "7.5 cm"]]);
  expect(pairs("2,5 m, 15 cm")).toEqual([["2,5 m", "15 cm"]]);
});

test("readPairs passes over empty lines and a first line of headings", () => {
  expect(pairs("Distance\tDrop\n\n2 m\t15 cm\n")).toEqual([["2 m", "15 cm"]]);
});

test("readPairs names the line that it cannot read, and what is wrong with it", () => {
  expect(pairs("2 m, 15 cm\n3 m")).toBe('"3 m": one pair a line, with a comma or a tab between.');
  expect(pairs("2 m, deep")).toContain('"2 m, deep": Found "deep". A length is a number with its unit');
  expect(pairs(" \n")).toBe("Nothing is written here yet.");
  expect(pairs("1, 1\n".repeat(1001))).toBe("At most 1000 pairs.");
});
