import { expect, test } from "vitest";
import { planWith, problemsOf } from "./problem-cases.js";

const told = (document: unknown) =>
  problemsOf(document).map(({ path, code, allowed }) => ({ path, code, allowed }));
const vessel = (value: unknown) => planWith({ sources: [{ vessel: value }] });
const drinkers = (value: unknown) => planWith({ runs: [{ length: "3 m", drinkers: value }] });

test("a vessel with a shape is told what that shape lacks, not what the other shapes want", () => {
  expect(told(vessel({ shape: "upright", diameter: "60 cm" }))).toEqual([
    { path: "sources[0].vessel.height", code: "missing", allowed: "Here stands text in quotes." },
  ]);
});

test("a vessel with an unknown shape is told the shapes there are", () => {
  expect(told(vessel({ shape: "round", diameter: "60 cm" }))).toEqual([
    {
      path: "sources[0].vessel.shape",
      code: "notAChoice",
      allowed: 'Allowed: "upright", "lying", "tapered", "box", "table".',
    },
  ]);
});

test("a vessel without a shape is told the shapes there are", () => {
  expect(told(vessel({ diameter: "60 cm" })).map(({ path, code }) => [path, code])).toEqual([
    ["sources[0].vessel.shape", "notAChoice"],
  ]);
});

test("a vessel that is neither words nor a shape is told both ways", () => {
  expect(told(vessel(55))).toEqual([
    {
      path: "sources[0].vessel",
      code: "wrongType",
      allowed: "Here stands text in quotes, or an object in curly brackets.",
    },
  ]);
});

test("one group of drinkers with a slip is told the slip", () => {
  expect(told(drinkers({ kind: "cup-float", cuont: 3 })).map(({ path, code }) => [path, code])).toEqual([
    ["runs[0].drinkers.cuont", "unknownKey"],
  ]);
});

test("a list of groups with a slip is told the slip and where", () => {
  const groups = [{ kind: "cup-float" }, { kind: "cup-float", every: "1 acre" }];
  expect(told(drinkers(groups)).map(({ path, code }) => [path, code])).toEqual([
    ["runs[0].drinkers[1].every", "unreadableQuantity"],
  ]);
});

test("a share that is no share is told how to write one", () => {
  expect(told(drinkers({ kind: "cup-float", busiest: "half" }))[0]).toMatchObject({
    path: "runs[0].drinkers.busiest",
    code: "notAChoice",
    allowed: 'A whole number, or a share up to "100 %".',
  });
});

test("a number beyond every float is told as what it is, with no unit offered for it", () => {
  const text = JSON.stringify(planWith({ runs: [{ length: 123 }] })).replace("123", "1e400");
  expect(problemsOf(text)).toMatchObject([
    { path: "runs[0].length", found: "Infinity", mend: "Mend it or leave the key out." },
  ]);
});

test.each([
  ["", "missing"],
  ["x".repeat(81), "tooLong"],
  ["jar\u0007cap", "unprintable"],
])("an own drinker called %j is told: %s", (name, code) => {
  const own = {
    readings: [
      { head: "30 cm", flow: "75 mL/min" },
      { head: "60 cm", flow: "106 mL/min" },
    ],
    holdsUpTo: "1 m",
    need: "50 mL/min",
  };
  expect(problemsOf(planWith({ ownDrinkers: { [name]: own } })).map((problem) => problem.code)).toEqual([
    code,
  ]);
});
