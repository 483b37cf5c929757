import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  birdsForPlan,
  checkPlan,
  compareSizes,
  judgeWeeks,
  measureAgain,
  readPlan,
  writeCheckDocument,
  writeMeasureDocument,
} from "../../packages/hydraulics/src/index.js";
import { writeBirdsDocument } from "../../packages/hydraulics/src/report/birds/birds-document.js";
import { writeWeeksDocument } from "../../packages/hydraulics/src/report/birds/weeks-document.js";
import { writeSizesDocument } from "../../packages/hydraulics/src/report/cure/sizes-document.js";
import { penPlan, weeksOf } from "../hydraulics/judge/birds/pens.js";
import { checkOf } from "../hydraulics/judge/yard/yard.js";
import { BIRD_FINDING_CASES } from "../hydraulics/report/birds/bird-cases.js";
import { CAUTION_CASES, FINDING_CASES, REASON_CASES } from "../hydraulics/report/sentence-cases.js";
import { keysIn, namesInCode } from "./documents.js";

const docs = new URL("../../docs/", import.meta.url);
const page = readFileSync(new URL("reference/check-result.md", docs), "utf8");
const documented = namesInCode(page);
const examples = new URL("examples/", docs);

function planOf(file: string) {
  const reading = readPlan(readFileSync(new URL(file, examples), "utf8"));
  if (!reading.ok) throw new Error(`${file} is no plan`);
  return reading.plan;
}

const undocumented = (value: unknown) => [...new Set(keysIn(value))].filter((key) => !documented.has(key));

const files = readdirSync(examples).filter((name) => name.endsWith(".json"));
const withPens = files.filter((file) => planOf(file).pens !== undefined);

test("some examples have birds", () => {
  expect(withPens.length).toBeGreaterThan(2);
});

test.each(files)("every key of the results of %s is in check-result.md", (file) => {
  const plan = planOf(file);
  const checking = checkPlan(plan, { samples: 10 });
  if (!checking.ok) throw new Error(`${file} cannot be checked`);
  expect(undocumented(JSON.parse(JSON.stringify(writeCheckDocument(checking.checked, "metric"))))).toEqual(
    [],
  );
  // A yard without a line has no pipe to compare.
  if (plan.runs.length === 0) return;
  const comparing = compareSizes(plan, { run: plan.runs[0]?.id ?? "run 1" });
  if (!comparing.ok) throw new Error(`${file}: sizes cannot be compared`);
  expect(undocumented(JSON.parse(JSON.stringify(writeSizesDocument(comparing.comparison))))).toEqual([]);
});

test.each([
  ["one measurement or two", "18 in"],
  ["none", "2 ft"],
])("every key of what to measure again, where %s would do, is in check-result.md", (_, stand) => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ vessel: "55 gallon drum", stand, level: { full: "30 in", lowest: "3 in" } }],
      runs: [
        {
          length: "60 ft",
          fall: "-1 ft",
          drinkers: { kind: "nipple-side-action", count: 3, first: "50 ft" },
        },
      ],
    }),
  );
  if (!reading.ok) throw new Error("no plan");
  const answer = measureAgain(reading.plan, { samples: 100 });
  if (!answer.ok) throw new Error("no check");
  expect(answer.measuring.close.length).toBeGreaterThan(0);
  const document = writeMeasureDocument(answer.checked, answer.measuring, "us");
  expect(document).toMatchObject({ format: "headfall measure", version: 1 });
  expect(undocumented(JSON.parse(JSON.stringify(document)))).toEqual([]);
});

test("every key of what a check and the coming weeks say of birds is in check-result.md", () => {
  const plan = penPlan({
    birds: { kind: "pullet", count: 24, age: "1 week" },
    run: { hung: true },
    more: { day: "2026-07-04", weather: { high: "25 degC", hotSpell: { high: "35 degC" } } },
  });
  const check = writeCheckDocument(checkOf(plan), "metric");
  const weeks = writeWeeksDocument(
    { headfall: 1, sources: [], runs: [] },
    weeksOf(plan, { weeks: 2 }),
    "metric",
  );
  expect(undocumented(JSON.parse(JSON.stringify(check)))).toEqual([]);
  expect(undocumented(JSON.parse(JSON.stringify(weeks)))).toEqual([]);
});

test.each(withPens)(
  "every key of what the birds of %s drink and need, and of their weeks, is there too",
  (file) => {
    const asked = { day: "2026-07-04", weeks: 2 };
    const answer = birdsForPlan(planOf(file), asked);
    const weeks = judgeWeeks(planOf(file), asked);
    if (!answer.ok || !weeks.ok) throw new Error(`${file} cannot be asked about`);
    const birds = writeBirdsDocument(file, answer.birds, "metric");
    // The entries of tables are as the tables have them.
    const without = (key: string, value: unknown) =>
      ["rule", "sizeFrom", "expectFrom", "spilledFrom"].includes(key) ? null : value;
    expect(undocumented(JSON.parse(JSON.stringify(birds, without)))).toEqual([]);
    const judged = writeWeeksDocument(planOf(file), weeks, "metric");
    expect(undocumented(JSON.parse(JSON.stringify(judged)))).toEqual([]);
  },
);

test("every reason, finding and caution, and each of their figures, is in check-result.md", () => {
  const cases = [REASON_CASES, FINDING_CASES, CAUTION_CASES, BIRD_FINDING_CASES].flatMap((list) =>
    Object.values(list).map(([item]) => item),
  );
  const codes = cases.map(({ code }) => code).filter((code) => !documented.has(code));
  expect(codes).toEqual([]);
  expect(undocumented(cases).filter((key) => key !== "pointIndex")).toEqual([]);
});
