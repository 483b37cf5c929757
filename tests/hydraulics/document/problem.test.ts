import { expect, test } from "vitest";
import {
  type Problem,
  sortProblems,
  writeFound,
  writePath,
} from "../../../packages/hydraulics/src/document/problem.js";

test.each([
  [[], "the plan"],
  [["runs", 3, "length"], "runs[3].length"],
  [["ownDrinkers", "jar cap", "need"], 'ownDrinkers["jar cap"].need'],
  [["ownDrinkers", "12"], 'ownDrinkers["12"]'],
  [['<b>"x"</b>'], '["<b>\\"x\\"</b>"]'],
] as const)("writePath(%o) is %s", (steps, path) => {
  expect(writePath(steps)).toBe(path);
});

test.each([
  [undefined, "nothing"],
  [null, "null"],
  ["3 m", '"3 m"'],
  ["x".repeat(80), `"${"x".repeat(57)}..."`],
  [[1, 2], "a list of 2"],
  [{ a: 1 }, "an object"],
  [4.5, "4.5"],
  [false, "false"],
])("writeFound(%o) is %s", (value, words) => {
  expect(writeFound(value)).toBe(words);
});

const at = (path: string, line?: number, column?: number): Problem => ({
  code: "missing",
  path,
  found: "",
  allowed: "",
  mend: "",
  ...(line === undefined ? {} : { line }),
  ...(column === undefined ? {} : { column }),
});

test("sortProblems goes by line and column, however long the line", () => {
  const sorted = sortProblems([at("c", 2, 1), at("b", 1, 5_000_000), at("a", 1, 9)]);
  expect(sorted.map(({ path }) => path)).toEqual(["a", "b", "c"]);
});

test("sortProblems without lines goes by path, runs[2] before runs[10]", () => {
  const sorted = sortProblems([at("runs[10].fall"), at("runs[2].fall"), at("name")]);
  expect(sorted.map(({ path }) => path)).toEqual(["name", "runs[2].fall", "runs[10].fall"]);
});

test("sortProblems leaves the list it was given as it was", () => {
  const list = [at("b"), at("a")];
  sortProblems(list);
  expect(list.map(({ path }) => path)).toEqual(["b", "a"]);
});
