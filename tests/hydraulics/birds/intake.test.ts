import fc from "fast-check";
import { expect, test } from "vitest";
import { airAt, meanHeatFactor } from "../../../packages/hydraulics/src/birds/air.js";
import { dayCurve } from "../../../packages/hydraulics/src/birds/day-curve.js";
import { needOfFlow } from "../../../packages/hydraulics/src/birds/flow-need.js";
import { hangHeight } from "../../../packages/hydraulics/src/birds/hang-height.js";
import { HEAT_RULE, heatFactor, intakeOf } from "../../../packages/hydraulics/src/birds/intake.js";
import { hangPointsOf } from "../../../packages/hydraulics/src/tables/bird-heights.js";
import { allBirds, birdById } from "../../../packages/hydraulics/src/tables/birds.js";

const hens = birdById("hen")!;
const ML = 1e-6;

test("intakeOf goes straight between rows, by lay where rows differ by it", () => {
  expect(intakeOf(hens.size, 200, 0.9)).toBeCloseTo(270 * ML, 12);
  expect(intakeOf(hens.size, 200, 0.7)).toBeCloseTo(245 * ML, 12);
  expect(intakeOf(hens.size, 200, 1)).toBeCloseTo(270 * ML, 12);
  expect(intakeOf(hens.size, -1, 0.9)).toBe(0);
  expect(() => intakeOf([], 3, 0)).toThrow(RangeError);
});

test("every kind is sized on no less than is expected, at any age and lay", () => {
  for (const kind of allBirds) {
    for (let age = 0; age <= 200; age += 1) {
      for (const lay of [0, 0.3, 0.6, 0.9]) {
        const [size, expected] = [intakeOf(kind.size, age, lay), intakeOf(kind.expect, age, lay)];
        if (size < expected * (1 - 1e-9)) expect([kind.id, age, size, expected]).toEqual([]);
      }
    }
  }
});

test("growing birds never drink less as they grow", () => {
  for (const kind of allBirds) {
    for (const figure of ["size", "expect"] as const) {
      const drunk = kind[figure].map(({ intake }) => intake);
      expect([kind.id, [...drunk].sort((a, b) => a - b)]).toEqual([kind.id, drunk]);
    }
  }
});

// Kentucky manual, Table 12.1: hot (32 C) over normal (20 C), chickens 1.54 to 2.00; the rule is at the cautious end.
test("heatFactor doubles intake at 32 degC, is capped at 3, and saves nothing in the cold", () => {
  expect(heatFactor(32)).toBeCloseTo(1.999, 3);
  expect(heatFactor(60)).toBe(3);
  expect([heatFactor(21), heatFactor(-10)]).toEqual([1, 1]);
  // Extreme heat is said to quadruple it: a reserve that is only told.
  expect(HEAT_RULE).toMatchObject({ most: 3, emergency: 4 });
});

test("the air is lowest at dawn, highest at two thirds of the light, and never outside", () => {
  const air = { high: 31, low: 18, dawn: 6 * 3600, light: 15 * 3600 };
  expect(airAt(air, 6 * 3600)).toBeCloseTo(18, 12);
  expect(airAt(air, 16 * 3600)).toBeCloseTo(31, 12);
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 200_000 }), (time) => {
      const at = airAt(air, time);
      expect(at).toBeGreaterThanOrEqual(18 - 1e-9);
      expect(at).toBeLessThanOrEqual(31 + 1e-9);
    }),
  );
});

test("a day's mean factor lies between those of its ends, and a warmer night never lowers it", () => {
  const light = { dawn: 6 * 3600, light: 12 * 3600 };
  const curve = dayCurve({ shape: "evening", ...light });
  fc.assert(
    fc.property(fc.integer({ min: -10, max: 40 }), fc.integer({ min: 0, max: 20 }), (low, swing) => {
      const mean = meanHeatFactor({ high: low + swing, low, ...light }, curve);
      expect(mean).toBeGreaterThanOrEqual(heatFactor(low) - 1e-9);
      expect(mean).toBeLessThanOrEqual(heatFactor(low + swing) + 1e-9);
      const warmer = meanHeatFactor({ high: low + swing, low: low + Math.min(1, swing), ...light }, curve);
      expect(warmer).toBeGreaterThanOrEqual(mean - 1e-9);
    }),
  );
});

test("hangHeight goes straight between ages and knows only the devices it has rows of", () => {
  const heights = hangPointsOf("meat-chicken");
  expect(hangHeight(heights, "nipple", 10.5)?.height).toBeCloseTo(0.1625, 9);
  expect(hangHeight(heights, "nipple", 90)?.height).toBe(0.4);
  expect(hangHeight(heights, "trough", 10)).toBeUndefined();
});

test("needOfFlow rises with age up to its most, and refuses birds that have not hatched", () => {
  const { flowNeed } = birdById("hen")!;
  expect(needOfFlow(flowNeed, 0)).toBeCloseTo((20 * ML) / 60, 15);
  expect(needOfFlow(flowNeed, 200)).toBeCloseTo((50 * ML) / 60, 15);
  expect(() => needOfFlow(flowNeed, -1)).toThrow(RangeError);
});
