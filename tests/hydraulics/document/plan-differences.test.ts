import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Plan, planDifferences, readPlan } from "../../../packages/hydraulics/src/index.js";

function example(name: string): Plan {
  const reading = readPlan(readFileSync(`docs/examples/${name}.json`, "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

const HEN_HOUSE = example("alder-bank-hen-house");

test("planDifferences(a plan and itself) finds none", () => {
  expect(planDifferences(HEN_HOUSE, structuredClone(HEN_HOUSE))).toEqual([]);
});

test("planDifferences tells where two plans differ, what stands there, and in which part", () => {
  const [barrel] = HEN_HOUSE.sources;
  const other = { ...HEN_HOUSE, sources: [{ ...barrel!, stand: "60 cm" }] } as Plan;
  expect(planDifferences(HEN_HOUSE, other)).toEqual([
    { path: "sources[0].stand", part: "barrel", first: "45 cm", other: "60 cm" },
  ]);
  expect(planDifferences(other, HEN_HOUSE)).toMatchObject([{ first: "60 cm", other: "45 cm" }]);
});

test("planDifferences holds parts against those of the same id, in whatever order they stand", () => {
  const turned = { ...HEN_HOUSE, runs: [...HEN_HOUSE.runs].reverse() };
  expect(planDifferences(HEN_HOUSE, turned)).toEqual([]);
});

test("planDifferences tells a part that only one plan has whole, at its place there", () => {
  const shorter = { ...HEN_HOUSE, runs: HEN_HOUSE.runs.slice(0, -1) };
  const last = HEN_HOUSE.runs.length - 1;
  expect(planDifferences(HEN_HOUSE, shorter)).toEqual([
    { path: `runs[${last}]`, part: "hen line", first: HEN_HOUSE.runs[last], other: undefined },
  ]);
  expect(planDifferences(shorter, HEN_HOUSE)).toEqual([
    { path: `runs[${last}]`, part: "hen line", first: undefined, other: HEN_HOUSE.runs[last] },
  ]);
});
