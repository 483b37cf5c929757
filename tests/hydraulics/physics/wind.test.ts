import { expect, test } from "vitest";
import { windPressure, windThatTips } from "../../../packages/hydraulics/src/physics/wind.js";

const DRUM = { mass: 10, width: 0.585, area: 0.585 * 0.89, height: 0.445, drag: 0.8 };

test("windThatTips: at that wind the moment of the wind is that of the weight", () => {
  const speed = windThatTips(DRUM);
  expect(speed).toBeCloseTo(15.9, 1);
  const overturning = windPressure(speed) * DRUM.drag * DRUM.area * DRUM.height;
  expect(overturning).toBeCloseTo((10 * 9.80665 * 0.585) / 2, 9);
});

test("windThatTips goes with the root of the mass", () => {
  expect(windThatTips({ ...DRUM, mass: 40 })).toBeCloseTo(2 * windThatTips(DRUM), 9);
});

test("windPressure grows with the square, and refuses a wind that is none", () => {
  expect(windPressure(20)).toBeCloseTo(4 * windPressure(10), 9);
  expect(() => windPressure(Number.NaN)).toThrow(RangeError);
});
