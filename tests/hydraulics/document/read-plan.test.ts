import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checkDocument, readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { writePlan } from "../../../packages/hydraulics/src/document/write-plan.js";
import { planWith, problemsOf } from "./problem-cases.js";

const SHORT = '{"headfall": 1, "sources": [{"vessel": "drum-55gal-plastic"}], "runs": [{"length": "3 m"}]}';

function planOf(text: string) {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

test("readPlan(one vessel and one run) is a plan: everything else has a default", () => {
  expect(planOf(SHORT)).toEqual({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic" }],
    runs: [{ length: "3 m" }],
  });
});

test("readPlan keeps every quantity as it was typed", () => {
  const typed = {
    water: "  68 °F",
    sources: [{ vessel: { shape: "upright", diameter: "2 ft 6 in", height: "0,85 m" }, stand: "1½ ft" }],
    runs: [{ length: "10'", drinkers: { kind: "cup-float", need: "0.05 gpm" } }],
  };
  expect(planOf(JSON.stringify(planWith(typed)))).toEqual(planWith(typed));
});

test("writePlan(readPlan(text)) keeps what was typed, and reads back as the same plan", () => {
  const text = readFileSync(
    new URL("../../../docs/examples/alder-bank-hen-house.json", import.meta.url),
    "utf8",
  );
  const written = writePlan(planOf(text));
  expect(JSON.parse(written)).toEqual(JSON.parse(text));
  expect(writePlan(planOf(written))).toBe(written);
  expect(written.endsWith("}\n")).toBe(true);
});

test("readPlan lets comments and trailing commas pass", () => {
  const text = `{
    // the hen house
    "headfall": 1, /* version */
    "sources": [{"vessel": "drum-55gal-plastic"},],
    "runs": [{"length": "3 m"}],
  }`;
  expect(planOf(text)).toEqual(planOf(SHORT));
});

test("readPlan passes over a byte order mark at the start of the text", () => {
  expect(planOf(`\ufeff${SHORT}`)).toEqual(planOf(SHORT));
});

test("readPlan gives all problems at once, in the order of the text", () => {
  const text = `{
    "headfall": 1,
    "water": "60 degC",
    "runs": [
      {"length": "3 furlongs", "fall": "1 m", "pipe": "garden spaghetti"},
      {"length": "2 m", "from": "nowhere", "flavour": "mint"}
    ],
    "sources": [{"vessel": "drum-55gal-plastic", "stand": 5}]
  }`;
  expect(problemsOf(text).map(({ path, code, line }) => [line, path, code])).toEqual([
    [3, "water", "outOfRange"],
    [5, "runs[0].length", "unreadableQuantity"],
    [5, "runs[0].pipe", "unknownName"],
    [6, "runs[1].from", "unknownPoint"],
    [6, "runs[1].flavour", "unknownKey"],
    [8, "sources[0].stand", "wrongType"],
  ]);
});

test("readPlan(text) places a problem in an own drinker whose name has quotes and signs", () => {
  const text = `{"headfall": 1, "sources": [{"vessel": "drum-55gal-plastic"}], "runs": [{"length": "3 m"}],
   "ownDrinkers": {
     "jar \\"cap\\" №1": {
       "readings": [{"head": "30 cm", "flow": "75 mL/min"}, {"head": "60 cm", "flow": "110 mL/min"}],
       "need": "50 mL/min",
       "holdsUpTo": "many m"
     }}}`;
  expect(problemsOf(text).map(({ path, line }) => [path, line])).toEqual([
    ['ownDrinkers["jar \\"cap\\" №1"].holdsUpTo', 6],
  ]);
});

test("checkDocument(data) leaves the document as it was", () => {
  const document = planWith({
    source: 1,
    runs: [{ length: "3 m", drinkers: { kind: "no such kind", count: 3 } }],
  });
  const before = structuredClone(document);
  expect(checkDocument(document).ok).toBe(false);
  expect(document).toEqual(before);
});

test.each([undefined, null, 7, "text", [], [{}], true])("checkDocument(%o) is no plan", (value) => {
  const reading = checkDocument(value);
  expect(reading.ok ? [] : reading.problems.map(({ code }) => code)).toEqual(["notAPlan"]);
});
