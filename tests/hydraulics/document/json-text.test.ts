import { expect, test } from "vitest";
import { readJsonText } from "../../../packages/hydraulics/src/document/json-text.js";

test("readJsonText gives the value, and line and column of each part", () => {
  const reading = readJsonText('{"a": 1,\r\n  "b": [true,\n {"c": "x"}]}');
  if (!reading.ok) throw new Error("unreadable");
  expect(reading.read.value).toEqual({ a: 1, b: [true, { c: "x" }] });
  expect(reading.read.placeOf(["a"])).toEqual({ line: 1, column: 7 });
  expect(reading.read.placeOf(["b", 1, "c"])).toEqual({ line: 3, column: 8 });
});

test("readJsonText places what is not there at the part that lacks it", () => {
  const reading = readJsonText('{"a": 1,\n "b": [true]}');
  if (!reading.ok) throw new Error("unreadable");
  expect(reading.read.placeOf(["b", 7, "c"])).toEqual({ line: 2, column: 7 });
});

test.each(["", "   \n", "{", "[1, 2", '{"a"}', "\u0000", "nothing", '{"a": 01}', "'a'", '"\u0001"'])(
  "readJsonText(%j) is a problem with a line",
  (text) => {
    const reading = readJsonText(text);
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    expect(reading.problems.length).toBeGreaterThan(0);
    for (const problem of reading.problems) {
      expect(problem).toMatchObject({ code: "notJson", path: "the plan" });
      expect(problem.line).toBeGreaterThan(0);
    }
  },
);

test("readJsonText tells once of a text that is no JSON at all", () => {
  const reading = readJsonText("# Headfall\n\nSomebody keeps a few groups of birds at once.");
  expect(reading.ok ? [] : reading.problems.map(({ line }) => line)).toEqual([1]);
});

test("readJsonText tells at most twenty faults of one text", () => {
  const reading = readJsonText(`[${"? ".repeat(500)}]`);
  expect(reading.ok ? 0 : reading.problems.length).toBe(20);
});

test("readJsonText lets brackets inside words and comments go uncounted", () => {
  const deep = "[".repeat(100);
  expect(readJsonText(`["${deep}" /* ${deep} */]`).ok).toBe(true);
});
