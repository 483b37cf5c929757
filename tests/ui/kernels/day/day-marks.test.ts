import { type Checked, checkPlan, type DayResult } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { type DayMoment, indexDay, momentAt } from "../../../../packages/ui/src/kernels/day/day-index.js";
import { layDayMarks, surfaceY } from "../../../../packages/ui/src/kernels/day/day-marks.js";
import { drawnWays } from "../../../../packages/ui/src/kernels/day/drawn-ways.js";
import { levelAt, shortBatches } from "../../../../packages/ui/src/kernels/day/short-birds.js";
import { layProfile } from "../../../../packages/ui/src/kernels/profile-layout.js";
import { crowdedDay, crowdedPlan } from "./crowded-day.js";

function checkedOf(): Checked {
  const checking = checkPlan(crowdedPlan(), { samples: 0, day: "2026-07-04" });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked;
}
const checked = checkedOf();
const day = crowdedDay();
const index = indexDay(day);
const layout = (width: number) =>
  layProfile({
    checked,
    path: drawnWays(checked.line)[0]!.path,
    moment: "ordinary",
    drinker: -1,
    width,
    height: 296,
    tickUnit: 1,
  });
const busiest = momentAt(index, day.pens[0]!.mostAt);

describe("layDayMarks", () => {
  test("every bird that drinks is on the drawing, above a drinker and inside the picture, on a phone too", () => {
    for (const width of [336, 1240]) {
      const drawn = layout(width);
      const { atWork, elsewhere } = layDayMarks(drawn, index, busiest);
      expect(atWork.reduce((sum, { birds }) => sum + birds, 0)).toBe(day.pens[0]!.mostAtOnce);
      expect(elsewhere).toEqual({ drinking: 0, waiting: 0 });
      for (const { x, y, drinkerY } of atWork) {
        expect(y).toBeLessThan(drinkerY);
        expect(y).toBeGreaterThan(drawn.plot.top);
        expect(Math.abs(x - width / 2)).toBeLessThan(width / 2);
      }
    }
  });

  test("those that wait stand over the middle of their pen's drinkers, with their number", () => {
    const drawn = layout(336);
    const crowd: DayMoment = { ...busiest, waiting: Int32Array.of(5) };
    const xs = drawn.drinkers.map(({ x }) => x);
    expect(layDayMarks(drawn, index, crowd).waiting).toEqual([
      { pen: 0, birds: 5, x: (Math.min(...xs) + Math.max(...xs)) / 2, y: drawn.plot.top + 8 },
    ]);
  });

  test("what the drawing does not show is counted as elsewhere", () => {
    const drawn = layout(336);
    const without = { ...drawn, drinkers: [], rail: { ...drawn.rail, marks: [] } };
    const { atWork, elsewhere } = layDayMarks(without, index, { ...busiest, waiting: Int32Array.of(2) });
    expect(atWork).toEqual([]);
    expect(elsewhere).toEqual({ drinking: day.pens[0]!.mostAtOnce, waiting: 2 });
  });
});

test("surfaceY puts a full source at its full level and an empty one at its bottom", () => {
  const drawn = layout(336);
  const full = checked.line.sources[0]!.levels.full;
  expect(surfaceY(drawn, full, full)).toBeCloseTo(drawn.vessel.full, 9);
  expect(surfaceY(drawn, 0, full)).toBeCloseTo(drawn.vessel.bottom, 9);
});

test("drawnWays shows every drinker on some way", () => {
  const shown = new Set(drawnWays(checked.line).flatMap(({ path }) => path.drinkers));
  expect(shown.size).toBe(checked.line.drinkers.count);
});

describe("shortBatches", () => {
  test("counts those below four fifths of what they wanted, and what they miss, the worst batch first", () => {
    const bird = (batch: number, drunk: number): DayResult["birds"][number] => ({
      ...{ pen: 0, batch, wanted: 0.2, drunk, bouts: 1, gaveUp: 0, foundDry: 0, waited: 0, longestWait: 0 },
    });
    const birds = [bird(0, 0.2), bird(0, 0.15), bird(1, 0.05), bird(1, 0.1), bird(2, 0.17)];
    const found = shortBatches({ ...day, birds });
    expect(found.map(({ batch, birds: all, short }) => [batch, all, short])).toEqual([
      [1, 2, 2],
      [0, 2, 1],
    ]);
    expect(found[0]!.missing).toBeCloseTo(0.25, 12);
    expect(found[0]!.least).toBeCloseTo(0.25, 12);
  });

  test("agrees with the day's own count", () => {
    const short = shortBatches(day).reduce((sum, one) => sum + one.short, 0);
    expect(short).toBe(day.pens.reduce((sum, pen) => sum + pen.short, 0));
  });
});

test("levelAt gives the level noted last", () => {
  const levels = { time: Float64Array.of(0, 300, 600), level: [Float64Array.of(0.4, 0.3, 0.2)] };
  expect([0, 299, 300, 9000].map((time) => levelAt({ levels }, 0, time))).toEqual([0.4, 0.4, 0.3, 0.2]);
  expect(levelAt({ levels }, 7, 0)).toBe(0);
});
