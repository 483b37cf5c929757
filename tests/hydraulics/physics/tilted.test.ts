import { describe, expect, it } from "vitest";
import { evaporationInAir } from "../../../packages/hydraulics/src/physics/evaporation.js";
import { slopeThatOverflows, swingForgiven } from "../../../packages/hydraulics/src/physics/swung-bell.js";
import {
  type FountRing,
  lowestLip,
  shareOfRimWet,
  shimFor,
  slopeThatDrains,
  waterInTiltedRing,
} from "../../../packages/hydraulics/src/physics/tilted-fount.js";
import {
  waterInTiltedPan,
  waterInTiltedTaper,
  waterInTiltedTrough,
  waterOverSlopingFloor,
} from "../../../packages/hydraulics/src/physics/tilted-pan.js";
import { mostPushedOut } from "../../../packages/hydraulics/src/physics/trapped-air.js";
import { volumeExpelledByWarming } from "../../../packages/hydraulics/src/physics/vent.js";

const FOUNT: FountRing = {
  rim: 0.115,
  hole: 0.075,
  lipOverHole: 0.012,
  holes: 1,
  facing: Math.PI,
  hasSpouts: false,
};

describe("pans on a slope", () => {
  it("waterInTiltedTaper of upright walls is waterInTiltedPan, floor covered and half dry", () => {
    for (const slope of [0, 0.01, 0.1, 0.29, 0.31, 0.5, 1]) {
      const straight = waterInTiltedPan({ radius: 0.165, depth: 0.1, slope });
      const taper = waterInTiltedTaper({ floor: 0.165, rim: 0.165, depth: 0.1, slope });
      expect(taper / straight).toBeCloseTo(1, 9);
    }
  });

  it("waterOverSlopingFloor is half of a full disc's wedge where the surface meets the floor in the middle", () => {
    // ∫ x t over half a disc: (2/3) R³ t.
    const slope = 0.2;
    expect(waterOverSlopingFloor({ radius: 0.3, depth: 0, slope })).toBeCloseTo(
      (2 / 3) * 0.3 ** 3 * slope,
      12,
    );
    expect(waterOverSlopingFloor({ radius: 0.3, depth: -1, slope })).toBe(0);
  });

  it("waterInTiltedTrough is continuous where the upper end falls dry, and holds half of it there", () => {
    const trough = { length: 0.9, width: 0.15, depth: 0.09 };
    expect(waterInTiltedTrough({ ...trough, slope: 0.1 })).toBeCloseTo((0.9 * 0.15 * 0.09) / 2, 12);
    expect(waterInTiltedTrough({ ...trough, slope: 0.1 + 1e-9 })).toBeCloseTo((0.9 * 0.15 * 0.09) / 2, 9);
  });

  it("refuse sizes that are none", () => {
    expect(() => waterInTiltedPan({ radius: 0, depth: 0.1, slope: 0 })).toThrow(/pool.radius/);
    expect(() => waterInTiltedTaper({ floor: 0.1, rim: 0.2, depth: 0.1, slope: -1 })).toThrow(/pan.slope/);
    expect(() => waterInTiltedTrough({ length: 1, width: 1, depth: Number.NaN, slope: 0 })).toThrow(
      /trough.depth/,
    );
  });
});

describe("founts on a slope", () => {
  it("slopeThatDrains: the hole downhill stands most, uphill least; a hole in the middle is the same all ways", () => {
    const limit = (facing: number, hole = 0.075) => slopeThatDrains({ ...FOUNT, facing, hole });
    expect(limit(0)).toBeGreaterThan(limit(Math.PI / 2));
    expect(limit(Math.PI / 2)).toBeGreaterThan(limit(Math.PI));
    expect(limit(0, 0)).toBeCloseTo(limit(Math.PI, 0), 12);
  });

  it("slopeThatDrains of two holes is that of the higher: turning never helps past sideways", () => {
    const two = (facing: number) => slopeThatDrains({ ...FOUNT, holes: 2, facing });
    expect(two(0)).toBeCloseTo(two(Math.PI), 12);
    expect(two(Math.PI / 2)).toBeGreaterThan(two(0));
  });

  it("slopeThatDrains of one spout at its hole, downhill, is the slope over the little way between the two", () => {
    const spout = { ...FOUNT, rim: 0.185, hole: 0.15, lipOverHole: 0.02, hasSpouts: true, facing: 0 };
    expect(slopeThatDrains(spout)).toBeCloseTo(0.02 / 0.035, 12);
    expect(slopeThatDrains({ ...spout, facing: Math.PI })).toBe(Number.POSITIVE_INFINITY);
  });

  it("shareOfRimWet is whole when level, half where the surface meets the floor in the middle, none beyond", () => {
    const central = { ...FOUNT, hole: 0 };
    expect(shareOfRimWet(central, { pool: 0.018, slope: 0 })).toBe(1);
    expect(shareOfRimWet(central, { pool: 0.018, slope: 0.1, least: 0.018 })).toBeCloseTo(0.5, 12);
    expect(shareOfRimWet(central, { pool: 0.01, slope: 0.1, least: 0.03 })).toBe(0);
  });

  it("waterInTiltedRing of a level ring is its area times its depth", () => {
    const ring = waterInTiltedRing(FOUNT, { jar: 0.09, pool: 0.018, slope: 0 });
    expect(ring).toBeCloseTo(Math.PI * (0.115 ** 2 - 0.09 ** 2) * 0.018, 12);
  });

  it("shimFor: base times slope makes it level, and a plank so shimmed lies at what was left", () => {
    expect(shimFor({ base: 0.34, slope: 0.05 })).toBeCloseTo(0.017, 12);
    const [slope, leave, base] = [0.09, 0.03, 0.34];
    const shim = shimFor({ base, slope, leave });
    // The plank's lower end: shim above ground, the upper end on it.
    const run = base * Math.cos(Math.atan(leave));
    expect((slope * run - shim) / run).toBeCloseTo(leave, 12);
    expect(shimFor({ base, slope: 0.02, leave })).toBe(0);
  });
});

describe("air shut in a fount", () => {
  it("mostPushedOut is the greatest over how full it is: what the air gains, or what is left", () => {
    const warming = { from: 15, to: 35 };
    const { most, air } = mostPushedOut(0.0189, warming);
    const pushed = (airVolume: number) =>
      Math.min(volumeExpelledByWarming({ airVolume, fromC: 15, toC: 35 }), 0.0189 - airVolume);
    const tried = Array.from({ length: 400 }, (_, k) => pushed((0.0189 * k) / 400));
    expect(Math.max(...tried)).toBeLessThanOrEqual(most + 1e-15);
    expect(pushed(air)).toBeCloseTo(most, 12);
  });

  it("mostPushedOut is nothing as it cools", () => {
    expect(mostPushedOut(0.01, { from: 30, to: 10 }).most).toBe(0);
  });
});

describe("bells and open water", () => {
  it("swingForgiven: held aside so far, the bell's water stands at its lip", () => {
    const bell = { rim: 0.18, lipOverLevel: 0.02 };
    const aside = swingForgiven(bell, 1.2);
    expect(Math.tan(Math.asin(aside / 1.2))).toBeCloseTo(slopeThatOverflows(bell), 12);
  });

  it("evaporationInAir: more in heat, more in the sun", () => {
    expect(evaporationInAir(30, true)).toBeGreaterThan(evaporationInAir(15, true));
    expect(evaporationInAir(30, false)).toBeGreaterThan(evaporationInAir(30, true));
  });
});

describe("a fount with spouts, or with its hole to one side", () => {
  const spouts = { rim: 0.5, hole: 0, lipOverHole: 0.012, holes: 4, facing: 0, hasSpouts: true };

  it("wets those spouts whose lips lie no higher than the water: four, then three, then one", () => {
    // Depths at the lips: pool + rim cos(direction) slope.
    expect(shareOfRimWet(spouts, { pool: 0.25, slope: 0.5 })).toBe(1);
    expect(shareOfRimWet(spouts, { pool: 0.2, slope: 0.5 })).toBe(0.75);
    expect(shareOfRimWet(spouts, { pool: 0.2, slope: 0.5, least: 0.1 })).toBe(0.75);
    expect(shareOfRimWet(spouts, { pool: 0.2, slope: 0.5, least: 0.3 })).toBe(0.25);
    expect(shareOfRimWet({ ...spouts, hole: 0.4 }, { pool: 0.06, slope: 0.5 })).toBe(1);
  });

  it("of three spouts wets the one downhill, not the two uphill of it", () => {
    // Depths 0.1 + 0.25, and twice 0.1 - 0.125.
    expect(shareOfRimWet({ ...spouts, holes: 3 }, { pool: 0.1, slope: 0.5 })).toBeCloseTo(1 / 3, 12);
  });

  it("runs dry over its lowest spout, which may not look straight downhill", () => {
    const turned = { ...spouts, rim: 0.1, holes: 3, facing: 0.4 };
    expect(lowestLip(turned)).toBeCloseTo(0.1 * Math.cos(0.4), 12);
    expect(slopeThatDrains(turned)).toBeCloseTo(0.012 / (0.1 * Math.cos(0.4)), 12);
  });

  it("with its hole downhill leaves a ring dry where the floor rises above the water", () => {
    const ring = { rim: 0.1, hole: 0.05, lipOverHole: 0.012, holes: 1, facing: 0, hasSpouts: false };
    // At the middle 1 cm under the floor; at the rim straight downhill 3 cm over it.
    expect(shareOfRimWet(ring, { pool: 0.01, slope: 0.4 })).toBeCloseTo(Math.acos(0.25) / Math.PI, 12);
    expect(shareOfRimWet(ring, { pool: 0.03, slope: 0.4 })).toBeCloseTo(Math.acos(-0.25) / Math.PI, 12);
    expect(shareOfRimWet({ ...ring, hole: 0.09 }, { pool: 0.01, slope: 2 })).toBeCloseTo(
      Math.acos(0.85) / Math.PI,
      12,
    );
  });

  it("holds in its ring what stands under the hole's level, and more by what is above it", () => {
    const ring = { rim: 0.1, hole: 0.05, lipOverHole: 0.012, holes: 1, facing: 0, hasSpouts: false };
    // The floor is covered: a wedge holds its area times the depth at its middle.
    const area = Math.PI * (0.1 ** 2 - 0.05 ** 2);
    expect(waterInTiltedRing(ring, { jar: 0.05, pool: 0.02, slope: 0.1 })).toBeCloseTo(area * 0.015, 12);
    expect(waterInTiltedRing(ring, { jar: 0.05, pool: 0.02, slope: 0.1, above: 0.005 })).toBeCloseTo(
      area * 0.02,
      12,
    );
    expect(waterInTiltedRing(ring, { jar: 0, pool: 0.02, slope: 0.1 })).toBeCloseTo(
      Math.PI * 0.1 ** 2 * 0.015,
      12,
    );
  });
});
