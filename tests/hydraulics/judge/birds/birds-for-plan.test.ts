import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { birdsForPlan } from "../../../../packages/hydraulics/src/judge/birds/birds-for-plan.js";
import { codesOf, flockOfPlan, penPlan } from "./pens.js";

const twoPens = {
  ...penPlan(),
  pens: [
    { id: "hens", birds: { kind: "hen", count: 24 }, drinkers: ["hen line"] },
    { id: "new pen", birds: { kind: "hen", count: 60 } },
  ],
};

test("birdsForPlan adds up for a week what its pens drink, spilled water counted", () => {
  const reading = checkDocument(twoPens);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = birdsForPlan(reading.plan, { day: "2026-07-04", weeks: 1 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { pens, weeks } = answer.birds;
  for (const figure of ["size", "expect", "low", "high"] as const) {
    const sum = pens.reduce((total, { now }) => total + now[figure], 0);
    expect(weeks[0]!.now[figure]).toBeCloseTo(sum, 12);
  }
  // 270 mL a hen in full lay at 21 degC, a twentieth spilled at nipples; no nipples, nothing spilled.
  expect(pens.map(({ now }) => now.size)).toEqual([
    expect.closeTo(24 * 270e-6 * 1.05, 12),
    expect.closeTo(60 * 270e-6, 12),
  ]);
});

test("a pen without drinkers is told so, and not that it has too few", () => {
  const codes = codesOf(flockOfPlan(twoPens));
  expect(codes).toContain("noDrinkers");
  expect(codes).not.toContain("tooFewDrinkers");
});

test("birds that come later ask for nothing yet, and the others wait no less than no time", () => {
  const birds = [
    { kind: "hen", count: 24 },
    { kind: "meat-chicken", count: 30, arrives: "2026-09-01" },
  ];
  const flock = flockOfPlan(penPlan({ birds }), "2026-07-04");
  expect(codesOf(flock)).toContain("notYetCome");
  expect(flock.pens[0]!.meanWait!).toBeGreaterThan(0);
});

test("birdsForPlan tells what in the plan's line contradicts itself", () => {
  const plan = penPlan();
  const reading = checkDocument({ ...plan, runs: [{ ...plan.runs[0], fall: "10 cm" }, plan.runs[1]] });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = birdsForPlan(reading.plan);
  expect(answer.ok ? [] : answer.problems.map(({ code }) => code)).toEqual(["heightsDisagree"]);
});
