import { expect, test } from "vitest";
import { reachOf } from "../../../../packages/hydraulics/src/judge/yard/waterer-reach.js";
import { staysIn, tiltOf, waterLeft } from "../../../../packages/hydraulics/src/judge/yard/waterer-tilt.js";
import { servedByWaterer } from "../../../../packages/hydraulics/src/judge/year/waterer-serves.js";
import type { Pen, Weather } from "../../../../packages/hydraulics/src/model/flock.js";
import { intakeOfPen } from "../../../../packages/hydraulics/src/model/flock-intake.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import { loose } from "../yard/loose.js";

const WEATHER: Weather = { high: 30, low: 20, light: 50_400, dawn: 21_600, hotSpell: undefined };
const penOf = (count: number, kind = "hen"): Pen => ({
  ...{ id: "pen", index: 0, drinkers: [] },
  batches: [{ kind: birdById(kind)!, index: 0, count, ageDays: 300, lay: 0.9 }],
});
const served = (id: string, count: number, atOnce = 0, more = {}) =>
  servedByWaterer(loose(id, more), { pen: penOf(count), weather: WEATHER, region: "EU", atOnce });

test("one waterer is at most half of what two in reach of each bird ask, and all of it for a single bird", () => {
  expect(served("bell-bucket-5gal", 2)).toEqual({ because: "inReach", share: 0.5 });
  expect(served("bell-bucket-5gal", 1)).toEqual({ because: "inReach", share: 1 });
  expect(served("bell-bucket-5gal", 0)).toBeUndefined();
});

test("what rules leave it is its edge over what they ask: 1 cm a hen in the EU, 40 cm across", () => {
  const many = served("pan-40cm", 1000)!;
  const pan = loose("pan-40cm");
  const { covers } = reachOf(pan, tiltOf(pan), penOf(1000), "EU");
  expect(covers).toBeCloseTo((100 * Math.PI * 0.4) / 1000, 6);
  expect(many.share).toBeLessThanOrEqual(covers!);
});

test("what a crowd leaves it is the birds that find room over those that come at once", () => {
  const bell = loose("bell-bucket-5gal");
  const { atOnce } = reachOf(bell, tiltOf(bell), penOf(12), "EU");
  expect(served("bell-bucket-5gal", 12, 10 * atOnce)).toEqual({ because: "crowd", share: 0.1 });
});

test("what water leaves it is two fillings a day over what is drunk", () => {
  const dish = loose("dish-20cm");
  const gives = staysIn(dish, tiltOf(dish)) - waterLeft(dish, tiltOf(dish));
  const drunk = intakeOfPen(penOf(30), WEATHER).size;
  const found = served("dish-20cm", 30)!;
  expect(found.because).toBe("water");
  expect(found.share).toBeCloseTo((2 * gives) / drunk, 12);
});

test("one that drains on its slope serves nobody", () => {
  expect(served("fount-1gal", 6, 0, { slope: 0.5 })).toBeUndefined();
  expect(served("fount-1gal", 6, 0, { slope: 0 })).toBeDefined();
});
