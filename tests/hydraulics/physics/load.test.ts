import { expect, test } from "vitest";
import {
  bearingPressure,
  centreOfMass,
  tiltThatTopples,
} from "../../../packages/hydraulics/src/physics/load.js";

test("bearingPressure is weight over area, and halves where the area doubles", () => {
  expect(bearingPressure({ mass: 100, area: 0.5 })).toBeCloseTo(1961.33, 6);
  expect(bearingPressure({ mass: 100, area: 1 })).toBeCloseTo(1961.33 / 2, 6);
  expect(() => bearingPressure({ mass: 1, area: 0 })).toThrow(
    new RangeError("bearingPressure: load.area is 0; it must be finite and above 0"),
  );
});

test("centreOfMass lies between the parts, nearer the heavier, and is 0 of nothing", () => {
  expect(
    centreOfMass([
      { mass: 10, height: 1 },
      { mass: 30, height: 2 },
    ]),
  ).toBe(1.75);
  expect(centreOfMass([])).toBe(0);
  expect(() => centreOfMass([{ mass: -1, height: 1 }])).toThrow(RangeError);
});

test("tiltThatTopples: a cube falls at 45 degrees, a lower one later", () => {
  expect(tiltThatTopples({ width: 1, height: 0.5 })).toBeCloseTo(Math.PI / 4, 12);
  expect(tiltThatTopples({ width: 1, height: 0.25 })).toBeGreaterThan(Math.PI / 4);
});
