import { expect, test } from "vitest";
import { dayCurve } from "../../../packages/hydraulics/src/birds/day-curve.js";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { boutOf, type DayBirds } from "../../../packages/hydraulics/src/simulate/day-birds.js";
import { BIRD_HABITS, type DayBatch } from "../../../packages/hydraulics/src/simulate/day-setting.js";

const curve = dayCurve({ shape: "even", dawn: 0, light: 86_400 });
const batch: DayBatch = {
  ...{ pen: 0, index: 0, count: 1, wanted: 240e-6, bouts: 40, fastest: 1e-6 },
  curve,
};
/** A time by which so much of the day's water is due. */
const [time, share] = [curve.edges[1]!, curve.drunk[1]!];

/** The bout of a bird that has drunk so much of its day's 240 mL by then. */
function boutAt(drunk: number, bouts = BIRD_HABITS.bouts): number {
  const birds = { wanted: Float64Array.of(240e-6), drunk: Float64Array.of(drunk) } as unknown as DayBirds;
  return boutOf(birds, 0, batch, time, { ...BIRD_HABITS, bouts }, randomFrom(1));
}

test("a bird drinks what it is behind and a bout ahead, no less than 0.3 and no more than 3 usual bouts", () => {
  const usual = 240e-6 / 40;
  const due = 240e-6 * share;
  expect(boutAt(due)).toBeCloseTo(usual, 12);
  expect(boutAt(due - usual)).toBeCloseTo(2 * usual, 12);
  expect(boutAt(due - 10 * usual)).toBeCloseTo(3 * usual, 12);
  expect(boutAt(due + 10 * usual)).toBeCloseTo(0.3 * usual, 12);
  expect(boutAt(0, "fixed")).toBe(usual);
});
