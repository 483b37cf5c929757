import { expect, test } from "vitest";
import { flockOfPlan, penPlan } from "./pens.js";

test("a bird's bout lasts its mouthful over what reaches it; no time is told where nothing flows", () => {
  const [pen] = flockOfPlan(penPlan()).pens;
  const [batch] = pen!.batches;
  expect(batch!.rate).toBeGreaterThan(0);
  expect(batch!.boutSeconds!).toBeCloseTo(batch!.boutVolume / batch!.rate, 9);
  expect(batch!.bouts).toBeCloseTo(batch!.intakeSize / batch!.boutVolume, 9);
  const plan = penPlan();
  const dry = flockOfPlan({ ...plan, runs: [{ ...plan.runs[0], tap: "shut" }, plan.runs[1]] }).pens[0]!;
  expect(dry).toMatchObject({ giving: 0, boutSeconds: undefined, saturates: true });
  expect(dry.batches[0]).toMatchObject({ rate: 0, boutSeconds: undefined });
  // Birds want as much as before.
  expect(dry.batches[0]!.intakeSize).toBe(batch!.intakeSize);
});

test("a pen's day is that of its batches, with what its drinkers spill", () => {
  const [pen] = flockOfPlan(
    penPlan({
      birds: [
        { kind: "hen", count: 10 },
        { kind: "hen", count: 14 },
      ],
    }),
  ).pens;
  const drunk = pen!.batches.reduce((sum, { count, intakeSize }) => sum + count * intakeSize, 0);
  // A twentieth at nipples.
  expect(pen!.intakeSize).toBeCloseTo(1.05 * drunk, 12);
  expect(drunk).toBeCloseTo(24 * 270e-6, 9);
});
