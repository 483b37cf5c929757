import fc from "fast-check";
import { expect, test } from "vitest";
import {
  busiestHour,
  type DayShape,
  dayCurve,
  peakShare,
  shareBetween,
} from "../../../packages/hydraulics/src/birds/day-curve.js";

const HOUR = 3600;
const shapes: readonly DayShape[] = ["evening", "even", "morning-and-evening"];
const days = fc.record({
  shape: fc.constantFrom(...shapes),
  dawn: fc.integer({ min: 0, max: 86_399 }),
  light: fc.integer({ min: 4 * HOUR, max: 24 * HOUR }),
  temperature: fc.integer({ min: 0, max: 45 }),
});

test("every day's shares sum to 1, none is negative, and any day is like the next", () => {
  fc.assert(
    fc.property(days, fc.integer({ min: -200_000, max: 200_000 }), (day, from) => {
      const curve = dayCurve(day);
      expect(shareBetween(curve, from, from + 86_400)).toBeCloseTo(1, 10);
      expect(shareBetween(curve, from, from + 600)).toBeGreaterThanOrEqual(-1e-12);
      curve.drunk.slice(1).forEach((drunk, i) => {
        expect(drunk).toBeGreaterThanOrEqual(curve.drunk[i] - 1e-12);
      });
    }),
  );
});

test("the busiest hour is no less than any other hour, and is what the rule says", () => {
  fc.assert(
    fc.property(days, fc.integer({ min: 0, max: 86_400 }), (day, from) => {
      const curve = dayCurve(day);
      const { share } = busiestHour(curve);
      expect(share).toBeGreaterThanOrEqual(shareBetween(curve, from, from + HOUR) - 1e-9);
      expect(share).toBeGreaterThanOrEqual(peakShare(day.light, day.temperature) - 1e-9);
    }),
  );
});

// Leeson and Summers 2005, Fig. 4.8: hens with light from 06:30 to 18:30 double their rate in the last three hours,
// which makes 40 % of the day; the rule for the busiest hour (15 %) puts a little more into them.
test("hens drink about two fifths of their day in the last three hours of twelve of light", () => {
  const curve = dayCurve({ shape: "evening", dawn: 6.5 * HOUR, light: 12 * HOUR });
  const evening = shareBetween(curve, 15.5 * HOUR, 18.5 * HOUR);
  expect(evening).toBeGreaterThan(0.39);
  expect(evening).toBeLessThan(0.42);
});

// The Modern Farm, p. 82: about a quarter of the day in the last two hours of daylight.
test("hens drink about a quarter of their day in the last two hours of light", () => {
  const curve = dayCurve({ shape: "evening", dawn: 6 * HOUR, light: 12 * HOUR });
  const last = shareBetween(curve, 16 * HOUR, 18 * HOUR);
  expect(last).toBeGreaterThan(0.24);
  expect(last).toBeLessThan(0.3);
});

test("in the dark they drink a hundredth, and with lamps all night there is no dark", () => {
  const curve = dayCurve({ shape: "evening", dawn: 6 * HOUR, light: 12 * HOUR });
  expect(shareBetween(curve, 18 * HOUR, 30 * HOUR)).toBeCloseTo(0.01, 10);
  const lamps = dayCurve({ shape: "even", dawn: 0, light: 24 * HOUR });
  expect(shareBetween(lamps, 0, 24 * HOUR)).toBeCloseTo(1, 12);
});

test("peakShare is 15, 11 and 8 % with 12, 16 and 20 hours of light, and a fifth in heat", () => {
  expect(peakShare(12 * HOUR, 21)).toBeCloseTo(0.15, 12);
  expect(peakShare(16 * HOUR, 21)).toBeCloseTo(0.11, 12);
  expect(peakShare(20 * HOUR, 21)).toBeCloseTo(0.08, 12);
  expect(peakShare(12 * HOUR, 35)).toBeCloseTo(0.2, 12);
  expect(peakShare(8 * HOUR, 21)).toBeGreaterThan(0.15);
});

test("a day with less light than the rule is for is still a day: half is drunk in one quarter of its light", () => {
  const curve = dayCurve({ shape: "evening", dawn: 11 * HOUR, light: HOUR });
  expect(shareBetween(curve, 11.5 * HOUR, 11.75 * HOUR)).toBeCloseTo(0.5, 12);
  expect(curve.drunk).toEqual([...curve.drunk].sort((a, b) => a - b));
});
