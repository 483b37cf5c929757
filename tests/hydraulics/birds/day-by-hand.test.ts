import { describe, expect, it, test } from "vitest";
import { airAt, meanHeatFactor } from "../../../packages/hydraulics/src/birds/air.js";
import {
  busiestHour,
  type DayShape,
  dayCurve,
  drunkUpTo,
  peakShare,
  shareBetween,
} from "../../../packages/hydraulics/src/birds/day-curve.js";
import { heatFactor } from "../../../packages/hydraulics/src/birds/intake.js";

const HOUR = 3600;

/** Shares of the hours of a day that begins at six, twelve of them light; the dark has a hundredth. */
const EVEN_DARK = new Array<number>(6).fill(0.01 / 12);

describe("dayCurve of twelve hours of light from six, hour by hour", () => {
  it.each<[DayShape, readonly number[]]>([
    // The last three hours twice as fast as the nine before, but for the busiest, the last but one: 0.84 in 9 + 4 parts.
    ["evening", [...new Array(9).fill(0.84 / 13), (2 * 0.84) / 13, 0.15, (2 * 0.84) / 13]],
    // Two thirds of the busiest in the first hour: 0.74 is left for ten.
    ["morning-and-evening", [0.1, ...new Array(9).fill(0.074), 0.15, 0.074]],
    // Half of the busiest hour on either side of two o'clock: 0.84 is left for eleven.
    [
      "even",
      [
        ...new Array(7).fill(0.84 / 11),
        ...new Array(2).fill(0.42 / 11 + 0.075),
        ...new Array(3).fill(0.84 / 11),
      ],
    ],
  ])("%s", (shape, light) => {
    const curve = dayCurve({ shape, dawn: 6 * HOUR, light: 12 * HOUR });
    const hours = [...EVEN_DARK, ...light, ...EVEN_DARK];
    expect(hours.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    hours.forEach((share, hour) => {
      expect([hour, shareBetween(curve, hour * HOUR, (hour + 1) * HOUR).toFixed(10)]).toEqual([
        hour,
        share.toFixed(10),
      ]);
    });
  });

  it("is the same past midnight, where the light lasts into the next day", () => {
    const curve = dayCurve({ shape: "evening", dawn: 20 * HOUR, light: 12 * HOUR });
    expect(shareBetween(curve, 6 * HOUR, 7 * HOUR)).toBeCloseTo(0.15, 12);
    expect(shareBetween(curve, 8 * HOUR, 20 * HOUR)).toBeCloseTo(0.01, 12);
    expect(busiestHour(curve).from).toBe(6 * HOUR);
    expect(busiestHour(curve).share).toBeCloseTo(0.15, 12);
  });

  it("has four hours of light in four pieces of an hour, of which the third is the busiest", () => {
    const curve = dayCurve({ shape: "even", dawn: 8 * HOUR, light: 4 * HOUR });
    // Two thirds of four hours is 10:40: from 10:10 to 11:10 nearly half of the day.
    expect(shareBetween(curve, 8 * HOUR + 7800, 8 * HOUR + 11400)).toBeCloseTo(0.45, 12);
    expect(shareBetween(curve, 8 * HOUR, 9 * HOUR)).toBeCloseTo((1 - 0.01 - 0.45) / 3, 12);
    const twice = dayCurve({ shape: "morning-and-evening", dawn: 8 * HOUR, light: 4 * HOUR });
    expect(shareBetween(twice, 8 * HOUR, 9 * HOUR)).toBeCloseTo((1 - 0.01 - 0.45) / 2, 12);
    const evening = dayCurve({ shape: "evening", dawn: 8 * HOUR, light: 4 * HOUR });
    // The evening is a quarter of so short a light: two hours at one, the last at two.
    expect(shareBetween(evening, 11 * HOUR, 12 * HOUR)).toBeCloseTo((2 * 0.54) / 4, 12);
  });

  it("drinks evenly through a day of lamps but for its busiest hour", () => {
    const curve = dayCurve({ shape: "even", dawn: 0, light: 24 * HOUR });
    expect(shareBetween(curve, 15.5 * HOUR, 16.5 * HOUR)).toBeCloseTo(0.065, 12);
    expect(shareBetween(curve, 2 * HOUR, 3 * HOUR)).toBeCloseTo(0.935 / 23, 12);
  });
});

test("drunkUpTo counts whole days, and goes back before the first", () => {
  const curve = dayCurve({ shape: "even", dawn: 6 * HOUR, light: 12 * HOUR });
  const quarter = drunkUpTo(curve, 6 * HOUR);
  expect(quarter).toBeCloseTo(0.005, 12);
  expect(drunkUpTo(curve, 54 * HOUR)).toBeCloseTo(2 + quarter, 12);
  expect(drunkUpTo(curve, -18 * HOUR)).toBeCloseTo(quarter - 1, 12);
});

test.each([
  [4, 21, 0.45],
  [8, 21, 0.225],
  [12, 25, 0.15],
  [12, 28.5, 0.175],
  [12, 32, 0.2],
  [12, 45, 0.2],
  [4, 28.5, 0.5],
  [14, 21, 0.13],
  [24, 21, 0.065],
  [24, 32, (0.065 * 4) / 3],
])("peakShare of %f hours of light at %f degC is %f", (hours, temperature, share) => {
  expect(peakShare(hours * HOUR, temperature)).toBeCloseTo(share, 12);
});

test("airAt rises by half a sine for two thirds of the light, and falls by half a sine for the rest of the day", () => {
  const air = { high: 31, low: 18, dawn: 6 * HOUR, light: 15 * HOUR };
  expect(airAt(air, 11 * HOUR)).toBeCloseTo(24.5, 12);
  expect(airAt(air, 8.5 * HOUR)).toBeCloseTo(18 + 6.5 * (1 - Math.SQRT1_2), 12);
  // Fourteen hours from the warmest to the next dawn.
  expect(airAt(air, 23 * HOUR)).toBeCloseTo(24.5, 12);
  expect(airAt(air, 19.5 * HOUR)).toBeCloseTo(18 + 6.5 * (1 + Math.SQRT1_2), 12);
  expect(airAt(air, 4 * HOUR)).toBeCloseTo(airAt(air, 28 * HOUR), 12);
  expect(airAt(air, -20 * HOUR)).toBeCloseTo(airAt(air, 4 * HOUR), 12);
});

test("meanHeatFactor weighs the factor of each quarter of an hour by what is drunk in it", () => {
  const light = { dawn: 5 * HOUR, light: 14 * HOUR };
  const curve = dayCurve({ shape: "evening", ...light });
  const air = { high: 36, low: 19, ...light };
  const quarter = HOUR / 4;
  const mean = Array.from(
    { length: 96 },
    (_, i) =>
      shareBetween(curve, i * quarter, (i + 1) * quarter) * heatFactor(airAt(air, (i + 0.5) * quarter)),
  ).reduce((sum, one) => sum + one, 0);
  expect(meanHeatFactor(air, curve)).toBeCloseTo(mean, 12);
  // Near what an even finer cut comes to.
  const fine = Array.from(
    { length: 1440 },
    (_, i) => shareBetween(curve, 60 * i, 60 * (i + 1)) * heatFactor(airAt(air, 60 * (i + 0.5))),
  ).reduce((sum, one) => sum + one, 0);
  expect(meanHeatFactor(air, curve)).toBeCloseTo(fine, 3);
  expect(meanHeatFactor({ ...air, low: 36 }, curve)).toBe(heatFactor(36));
});
