import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checkPlan, readPlan, writePlan, writeProblem } from "../../packages/hydraulics/src/index.js";

const folder = new URL("../../docs/examples/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const textOf = (file: string) => readFileSync(new URL(file, folder), "utf8");

function checkedExample(file: string) {
  const reading = readPlan(textOf(file));
  if (!reading.ok) throw new Error(reading.problems.map(writeProblem).join("\n"));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(checking.problems.map(writeProblem).join("\n"));
  return checking.checked;
}

/** Each example with the verdicts its own note speaks of, by group of drinkers, and the reason that decides. */
const VERDICTS: Readonly<
  Record<string, Readonly<Record<string, readonly [verdict: string, reason: string]>>>
> = {
  "alder-bank-brooder.json": { "chick nipples": ["good", "flowsEnough"] },
  "alder-bank-eighty-five-chicks.json": {},
  "alder-bank-five-days-away.json": {
    "drum nipples": ["good", "flowsEnough"],
    "bucket nipples": ["good", "flowsEnough"],
  },
  "alder-bank-first-line.json": { "coop line": ["starves", "flowTooLow"] },
  "alder-bank-hen-house.json": { "hen line": ["good", "flowsEnough"] },
  "alder-bank-meat-birds.json": { "cord line": ["good", "flowsEnough"] },
  "alder-bank-rain-barrel.json": {
    "pullet cups": ["good", "flowsEnough"],
    "duck trough": ["starves", "flowTooLow"],
    "chick nipples": ["dry", "humpAboveWater"],
  },
  "alder-bank-rain-on-the-coop.json": { cups: ["good", "flowsEnough"] },
  "alder-bank-to-build.json": {
    "long line": ["good", "flowsEnough"],
    "side cups": ["good", "flowsEnough"],
  },
  "alder-bank-two-pens.json": {
    "low pen nipples": ["good", "flowsEnough"],
    "high pen cups": ["good", "flowsEnough"],
  },
  "alder-bank-yard.json": { "hen line": ["good", "flowsEnough"] },
};

test("every example has the verdicts written down here", () => {
  expect(files.sort()).toEqual(Object.keys(VERDICTS).sort());
});

test.each(files)("%s gives each of its groups the verdict its note speaks of", (file) => {
  const { drinkers, line } = checkedExample(file);
  const found: Record<string, [string, string]> = {};
  for (const { index, verdict, because } of drinkers) {
    const group = line.drinkers.groups[line.drinkers.group[index] as number]?.id ?? "";
    found[group] ??= [verdict, because.code];
    expect([group, verdict]).toEqual([group, found[group]?.[0]]);
  }
  expect(found).toEqual(VERDICTS[file]);
});

test.each(files)("%s says that its figures are invented, and is written back as it was typed", (file) => {
  const reading = readPlan(textOf(file));
  expect(reading.ok && reading.plan.note).toContain("every figure here is invented");
  expect(reading.ok && JSON.parse(writePlan(reading.plan))).toEqual(JSON.parse(textOf(file)));
});

test("without its regulator the low pen of the two pens drips, as its note says", () => {
  const reading = readPlan(textOf("alder-bank-two-pens.json"));
  if (!reading.ok) throw new Error("unreadable");
  const runs = reading.plan.runs.map(({ regulator: _, ...run }) => run);
  const checking = checkPlan({ ...reading.plan, runs }, { samples: 0 });
  if (!checking.ok) throw new Error("cannot be built");
  const { counts } = checking.checked;
  expect(counts.drips).toBe(20);
});

test("raised to 60 cm the rain barrel stands above the sill, and a bleed there gives the chicks water", () => {
  const reading = readPlan(textOf("alder-bank-rain-barrel.json"));
  if (!reading.ok) throw new Error("unreadable");
  const { plan } = reading;
  const raised = { ...plan, sources: plan.sources.map((source) => ({ ...source, stand: "60 cm" })) };
  const bled = {
    ...raised,
    runs: plan.runs.map((run) => ({
      ...run,
      ...(run.survey === undefined
        ? {}
        : { survey: run.survey.map((reading) => ({ ...reading, bleed: true })) }),
    })),
  };
  const reasons = [raised, bled].map((one) => {
    const checking = checkPlan(one, { samples: 0 });
    if (!checking.ok) throw new Error("cannot be built");
    return [checking.checked.counts.dry, checking.checked.drinkers.at(-1)?.because.code];
  });
  expect(reasons).toEqual([
    [4, "airLocked"],
    [0, "idleHeadTooHigh"],
  ]);
});
