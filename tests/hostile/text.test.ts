import { expect, test } from "vitest";
import { LIMITS } from "../../packages/hydraulics/src/document/limits.js";
import { checkDocument, readPlan } from "../../packages/hydraulics/src/document/read-plan.js";

const codes = (text: string) => {
  const reading = readPlan(text);
  return reading.ok ? [] : reading.problems.map(({ code }) => code);
};
const plan = (more: string) =>
  `{"headfall": 1, "sources": [{"vessel": "drum-55gal-plastic"}], "runs": [{"length": "3 m"}]${more}}`;

test("readPlan(50 MB of text) refuses it by its length alone", () => {
  expect(codes(plan(`, "note": "${"x".repeat(50_000_000)}"`))).toEqual(["tooLarge"]);
  expect(codes("[".repeat(50_000_000))).toEqual(["tooLarge"]);
});

test("readPlan(100,000 brackets deep) stops at the deepest a plan may go", () => {
  for (const [open, close] of [
    ["[", "]"],
    ['{"a":', "}"],
  ] as const) {
    expect(codes(`${open.repeat(100_000)}1${close.repeat(100_000)}`)).toEqual(["tooDeep"]);
    expect(codes(open.repeat(100_000))).toEqual(["tooDeep"]);
  }
});

test("readPlan(the longest text of nothing but faults) tells a few of them", () => {
  expect(codes("?".repeat(LIMITS.textLength)).length).toBeLessThanOrEqual(20);
  expect(codes(`{${'"a":1,'.repeat(100_000)}"b":2}`).every((code) => code === "keyTwice")).toBe(true);
});

test("readPlan(an object of wrong keys only) places each without looking through all the others", () => {
  const wrong = Array.from({ length: 40_000 }, (_, i) => `"k${i}": 1`).join(",");
  expect(codes(plan(`,${wrong}`)).length).toBe(40_000);
});

test("readPlan(keys of prototypes) tells them as unknown and changes no prototype", () => {
  const evil = `, "__proto__": {"polluted": 1}, "constructor": {"prototype": {"polluted": 1}}, "prototype": 1, "toString": 2`;
  expect(codes(plan(evil))).toEqual(["unknownKey"]);
  const others = evil.replace('"__proto__": {"polluted": 1}, ', "");
  expect(codes(plan(others))).toEqual(["unknownKey", "unknownKey", "unknownKey"]);
  expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
});

test("checkDocument(data with its own __proto__) tells it and changes no prototype", () => {
  for (const text of [
    plan(`, "__proto__": {"polluted": 1}`),
    plan(`, "ownDrinkers": {"__proto__": {"polluted": 1}}`),
    `{"headfall": 1, "__proto__": {"sources": [{"vessel": "drum-55gal-plastic"}], "runs": [{"length": "3 m"}]}}`,
  ]) {
    const reading = checkDocument(JSON.parse(text));
    expect(reading.ok).toBe(false);
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  }
});

test.each([
  ["nothing", "", ["notJson"]],
  ["a byte order mark alone", "\ufeff", ["notJson"]],
  ["a byte order mark too many", `\ufeff\ufeff${plan("")}`, ["notJson"]],
  ["NUL bytes", "\u0000".repeat(3), undefined],
  ["text in two bytes a letter read as one", [...plan("")].join("\u0000"), undefined],
  ["a list", "[]", ["notAPlan"]],
  ["a lone surrogate in a name", plan(`, "name": "\\ud800"`), ["unprintable"]],
  ["NUL in a name", plan(`, "name": "hen\\u0000house"`), ["unprintable"]],
  ["a turn of direction in a name", plan(`, "name": "abc\\u202egpj"`), ["unprintable"]],
  ["numbers beyond every float", plan(`, "water": 1e400`), ["wrongType"]],
  ["NaN as a word", plan(`, "water": NaN`), undefined],
  ["NaN as text", plan(`, "water": "NaN"`), ["unreadableQuantity"]],
  ["infinity as text", plan(`, "water": "Infinity degC"`), ["unreadableQuantity"]],
  ["a temperature of another world", plan(`, "water": "400 degC"`), ["outOfRange"]],
  ["a unit of another trade", plan(`, "water": "12 parsec"`), ["unreadableQuantity"]],
  ["a number with too many figures", plan(`, "water": "${"9".repeat(59)}C"`), ["unreadableQuantity"]],
  ["a number in other digits", plan(`, "water": "١٢ degC"`), ["unreadableQuantity"]],
])("readPlan(%s) tells a problem", (_, text, expected) => {
  const told = codes(text);
  if (expected === undefined) expect(new Set(told)).toEqual(new Set(["notJson"]));
  else expect(told).toEqual(expected);
});

test("readPlan(lists where objects belong, and the other way) tells each by its place", () => {
  const text = `{"headfall": 1, "sources": {"0": {"vessel": "drum-55gal-plastic"}}, "runs": [[], ["length", "3 m"]], "points": {}, "ownDrinkers": [], "shelf": [null], "doubts": []}`;
  const reading = readPlan(text);
  expect(reading.ok ? [] : reading.problems.map(({ path, code }) => `${path}: ${code}`)).toEqual([
    "sources: wrongType",
    "runs[0]: wrongType",
    "runs[1]: wrongType",
    "points: wrongType",
    "ownDrinkers: wrongType",
    "shelf[0]: wrongType",
    "doubts: wrongType",
  ]);
});

test("readPlan works no longer than its text: as many runs as may be are read in one pass", () => {
  const runs = Array.from({ length: LIMITS.runs + 1 }, () => ({ length: "1 cm" }));
  const text = JSON.stringify({ headfall: 1, sources: [{ vessel: "drum-55gal-plastic" }], runs });
  expect(codes(text)).toEqual(["tooMany"]);
});

test("readPlan(objects with a length that is no number) tells a wrong type, and never compares it", () => {
  const odd = `{"length": {"toString": "no"}}`;
  const text = `{"headfall": 1, "name": ${odd}, "sources": ${odd}, "runs": [{"length": ${odd}, "fittings": ${odd}}]}`;
  expect(codes(text)).toEqual(["wrongType", "wrongType", "wrongType", "wrongType"]);
});
