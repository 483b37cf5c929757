import { expect, test } from "vitest";
import { PLAN_VERSION } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { UPGRADE_STEPS, upgradePlan } from "../../../packages/hydraulics/src/document/upgrade-plan.js";

const DRAFT = {
  headfall: 0,
  temperature: "12 degC",
  source: { vessel: "drum-55gal-plastic" },
  runs: [{ length: "3 m" }],
};

test("upgradePlan(version 0) makes a plan of this version and says what it changed", () => {
  expect(upgradePlan(DRAFT)).toEqual({
    ok: true,
    document: {
      headfall: PLAN_VERSION,
      water: "12 degC",
      sources: [{ vessel: "drum-55gal-plastic" }],
      runs: [{ length: "3 m" }],
    },
    steps: UPGRADE_STEPS.map((step) => step.what),
  });
});

test("upgradePlan leaves the document it was given as it was", () => {
  const before = structuredClone(DRAFT);
  upgradePlan(DRAFT);
  expect(DRAFT).toEqual(before);
});

test("upgradePlan(this version) changes nothing", () => {
  const document = { headfall: PLAN_VERSION, runs: [] };
  expect(upgradePlan(document)).toEqual({ ok: true, document, steps: [] });
});

test("there is one step from each older version to the next", () => {
  expect(UPGRADE_STEPS.map((step) => step.from)).toEqual(Array.from({ length: PLAN_VERSION }, (_, v) => v));
});

test("readPlan(version 0) reads the draft", () => {
  const reading = readPlan(JSON.stringify(DRAFT));
  expect(reading.ok && reading.plan.water).toBe("12 degC");
});

test("readPlan(a newer version) is refused kindly, by its version alone", () => {
  const reading = readPlan('{"headfall": 2, "ponds": []}');
  expect(reading.ok ? [] : reading.problems.map(({ code, allowed }) => [code, allowed])).toEqual([
    ["versionNewer", "This program reads versions up to 1. The file is unharmed."],
  ]);
});

test.each([-1, 0.5, "1", null, undefined, Number.NaN])("upgradePlan(version %o) is unknown", (headfall) => {
  expect(upgradePlan({ headfall })).toMatchObject({ ok: false, problem: { code: "versionUnknown" } });
});
