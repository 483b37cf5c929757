import { describe, expect, it } from "vitest";
import {
  type LevelFall,
  type Outlet,
  timeToDrainLying,
  timeToDrainPrism,
  timeToDrainTapered,
  timeToDrainUpright,
} from "../../../packages/hydraulics/src/physics/draining.js";
import { flowThroughOrifice } from "../../../packages/hydraulics/src/physics/orifice.js";
import { surfaceAtLevel, type VesselShape } from "../../../packages/hydraulics/src/physics/vessel.js";

const round = (diameter: number, dischargeCoefficient: number): Outlet => ({
  area: (Math.PI / 4) * diameter ** 2,
  dischargeCoefficient,
});

/** dt = −A dh / Q by the midpoint rule in s = √h, which takes the root out of the integrand. */
function integrated(shape: VesselShape, outlet: Outlet, fall: LevelFall): number {
  const steps = 200_000;
  const from = Math.sqrt(fall.to);
  const width = (Math.sqrt(fall.from) - from) / steps;
  let time = 0;
  for (let i = 0; i < steps; i++) {
    const s = from + (i + 0.5) * width;
    time += (surfaceAtLevel(shape, s * s) * 2 * s * width) / flowThroughOrifice(outlet, s * s);
  }
  return time;
}

describe("timeToDrainUpright and timeToDrainPrism", () => {
  // An engineering exam page, problem 435 (seen), g = 32.2 ft/s²: 4 ft wide, 5 in² opening, 6 ft to 2 ft: 93.9 s.
  it("give an exam problem's 93.9 s", () => {
    const outlet = { area: 5 * 0.0254 ** 2, dischargeCoefficient: 1 };
    const time = timeToDrainUpright({ diameter: 4 * 0.3048 }, outlet, { from: 6 * 0.3048, to: 2 * 0.3048 });
    expect(Math.abs(time / 93.9 - 1)).toBeLessThan(0.01);
  });

  // Choudhary & Om Prakash, Fluid Mechanics, Examples 6.17 and 6.19 (from memory), g = 9.81 m/s².
  it("give a textbook's 750.8 s and 5384.7 s", () => {
    const tank = timeToDrainUpright({ diameter: 1.2 }, round(0.05, 0.6), { from: 3, to: 0 });
    expect(Math.abs(tank / 750.8 - 1)).toBeLessThan(0.001);
    const basin = timeToDrainPrism(
      { surface: 3.2 },
      { area: 1e-3, dischargeCoefficient: 0.6 },
      { from: 5, to: 0 },
    );
    expect(Math.abs(basin / 5384.7 - 1)).toBeLessThan(0.001);
  });

  it("to the bottom takes twice as long as at the first outflow: t = 2V/Q₀", () => {
    const outlet = round(0.0127, 0.61);
    const volume = (Math.PI / 4) * 0.5715 ** 2 * 0.8;
    const time = timeToDrainUpright({ diameter: 0.5715 }, outlet, { from: 0.8, to: 0 });
    expect(time).toBeCloseTo((2 * volume) / flowThroughOrifice(outlet, 0.8), 8);
  });
});

describe("timeToDrainLying and timeToDrainTapered", () => {
  it("timeToDrainLying is the integral of surface over flow", () => {
    const shape: VesselShape = { kind: "lying", diameter: 0.5715, length: 0.851 };
    for (const fall of [
      { from: 0.5715, to: 0 },
      { from: 0.5715 / 2, to: 0 },
      { from: 0.4, to: 0.1 },
    ]) {
      const outlet = round(0.0127, 0.61);
      const time = timeToDrainLying(shape, outlet, fall);
      expect(Math.abs(time / integrated(shape, outlet, fall) - 1)).toBeLessThan(1e-6);
    }
  });

  it("timeToDrainTapered is the integral of surface over flow, widening or narrowing", () => {
    for (const [bottomDiameter, topDiameter] of [
      [0.26, 0.3],
      [0.3, 0.26],
      [0.28, 0.28],
    ] as const) {
      const shape: VesselShape = { kind: "tapered", bottomDiameter, topDiameter, height: 0.36 };
      const outlet = round(0.01, 0.61);
      const fall = { from: 0.36, to: 0.02 };
      const time = timeToDrainTapered(shape, outlet, fall);
      expect(Math.abs(time / integrated(shape, outlet, fall) - 1)).toBeLessThan(1e-8);
    }
  });

  it("timeToDrainTapered with equal ends is the upright cylinder", () => {
    const outlet = round(0.01, 0.61);
    const fall = { from: 0.3, to: 0.05 };
    const straight = timeToDrainTapered(
      { bottomDiameter: 0.28, topDiameter: 0.28, height: 0.36 },
      outlet,
      fall,
    );
    expect(straight).toBeCloseTo(timeToDrainUpright({ diameter: 0.28 }, outlet, fall), 9);
  });
});

describe("every time to drain", () => {
  const outlet = round(0.01, 0.61);

  it("of a fall in two parts is the sum of the parts, and of no fall is 0", () => {
    const bucket = { bottomDiameter: 0.26, topDiameter: 0.3, height: 0.36 };
    const lying = { diameter: 0.57, length: 0.85 };
    for (const time of [
      (fall: LevelFall) => timeToDrainUpright({ diameter: 0.3 }, outlet, fall),
      (fall: LevelFall) => timeToDrainLying(lying, outlet, fall),
      (fall: LevelFall) => timeToDrainTapered(bucket, outlet, fall),
    ]) {
      const parts = time({ from: 0.3, to: 0.12 }) + time({ from: 0.12, to: 0 });
      expect(time({ from: 0.3, to: 0 })).toBeCloseTo(parts, 9);
      expect(time({ from: 0.2, to: 0.2 })).toBe(0);
    }
  });

  it("refuses a rise, a shut outlet and a level above the vessel", () => {
    expect(() => timeToDrainUpright({ diameter: 0.3 }, outlet, { from: 0.1, to: 0.2 })).toThrow(
      "timeToDrainUpright: fall.to is 0.2; it must not be above fall.from, 0.1",
    );
    expect(() => timeToDrainPrism({ surface: 1 }, { ...outlet, area: 0 }, { from: 1, to: 0 })).toThrow(
      "outlet.area is 0",
    );
    expect(() => timeToDrainLying({ diameter: 0.3, length: 1 }, outlet, { from: 0.4, to: 0 })).toThrow(
      "must not be above the vessel, 0.3",
    );
    expect(() =>
      timeToDrainTapered({ bottomDiameter: 0.3, topDiameter: 0.3, height: 0.3 }, outlet, {
        from: 0.4,
        to: 0,
      }),
    ).toThrow(RangeError);
  });
});
