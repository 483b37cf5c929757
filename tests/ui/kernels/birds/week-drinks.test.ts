import { readFileSync } from "node:fs";
import { judgeWeeks, readPlan, type WeekReport } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { weekDrinksOf } from "../../../../packages/ui/src/kernels/birds/week-drinks.js";

const reading = readPlan(readFileSync("docs/examples/alder-bank-meat-birds.json", "utf8"));
if (!reading.ok) throw new Error("the example cannot be read");
const pen = reading.plan.pens![0]!;
const mixed = {
  ...reading.plan,
  pens: [
    {
      ...pen,
      birds: [
        pen.birds as object,
        { kind: "hen", count: 12 },
        { kind: "hen", count: 5, hatched: "2026-08-01" },
      ],
    },
  ],
} as typeof reading.plan;

test("weekDrinksOf shares what a pen takes out among its batches, so that they add up to all in each week", () => {
  const judging = judgeWeeks(mixed, { weeks: 8 });
  if (!judging.ok) throw new Error(JSON.stringify(judging.problems));
  const { size, expect: expected, hot, batches } = weekDrinksOf(judging.weeks, judging.hotWeeks);
  expect([size.length, hot.length, batches.length]).toEqual([9, 9, 3]);
  size.forEach((all, week) => {
    expect(batches.reduce((sum, batch) => sum + batch.size[week]!, 0)).toBeCloseTo(all, 12);
    expect(batches.reduce((sum, batch) => sum + batch.expect[week]!, 0)).toBeCloseTo(expected[week]!, 12);
  });
});

test("birds that have not hatched yet drink nothing until the week they have", () => {
  const judging = judgeWeeks(mixed, { weeks: 8 });
  if (!judging.ok) throw new Error(JSON.stringify(judging.problems));
  const late = weekDrinksOf(judging.weeks, []).batches[2]!;
  // 2026-07-04 and four weeks: the day they hatch.
  expect(late.size.slice(0, 4)).toEqual([0, 0, 0, 0]);
  expect(late.size[4]).toBeGreaterThan(0);
});

/** One week in which each pen drinks a litre, its batches alike. */
function weekOf(...pens: { pen: string; counts: number[]; intake?: number }[]): WeekReport {
  const reports = pens.map(({ pen, counts, intake = 1e-3 }) => ({
    pen,
    intakeSize: intake,
    intakeExpect: intake,
    batches: counts.map((count) => ({ count, kindName: "Laying hen", intakeSize: 1e-4, intakeExpect: 1e-4 })),
  }));
  return { intakeSize: 0, intakeExpect: 0, pens: reports } as unknown as WeekReport;
}

test("batches are named by their pen, numbered where it has several; those that drink elsewhere have no line", () => {
  const labels = (...pens: Parameters<typeof weekOf>) =>
    weekDrinksOf([weekOf(...pens)], []).batches.map(({ label, birds }) => `${label}: ${birds}`);
  const away = { pen: "far", counts: [4], intake: 0 };
  expect(labels({ pen: "coop", counts: [12, 5] }, away)).toEqual([
    "birds 1: 12 × Laying hen",
    "birds 2: 5 × Laying hen",
  ]);
  expect(labels(away, { pen: "coop", counts: [12, 5] }, { pen: "hutch", counts: [7] })).toEqual([
    "coop 1: 12 × Laying hen",
    "coop 2: 5 × Laying hen",
    "hutch: 7 × Laying hen",
  ]);
});

test("without weeks there is nothing to draw", () => {
  expect(weekDrinksOf([], [])).toEqual({ size: [], expect: [], hot: [], batches: [] });
});
