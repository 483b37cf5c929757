import { expect, test } from "vitest";
import {
  MOSQUITO_SCREEN,
  openShareOfScreen,
  screenedDiameter,
} from "../../../packages/hydraulics/src/physics/screen.js";

test("openShareOfScreen is the hole of one mesh over the whole of it", () => {
  const share = openShareOfScreen(MOSQUITO_SCREEN);
  const [wide, high] = [1 / 18 - 0.011, 1 / 16 - 0.011];
  expect(share).toBeCloseTo((wide * high) / ((1 / 18) * (1 / 16)), 12);
  expect(() => openShareOfScreen({ wires: 1000, wiresAcross: 1000, wire: 0.002 })).toThrow(RangeError);
});

test("screenedDiameter keeps the open area", () => {
  expect(screenedDiameter(0.01, 0.25)).toBeCloseTo(0.02, 12);
  expect(screenedDiameter(0.01, 1)).toBe(0.01);
  expect(() => screenedDiameter(0.01, 1.5)).toThrow(RangeError);
});
