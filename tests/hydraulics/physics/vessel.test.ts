import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  capacityOfVessel,
  heightOfVessel,
  levelAtVolume,
  surfaceAtLevel,
  type VesselShape,
  volumeAtLevel,
  wettedAreaAtLevel,
} from "../../../packages/hydraulics/src/physics/vessel.js";

const DRUM = { diameter: 22.5 * 0.0254, height: 33.5 * 0.0254 };
const upright: VesselShape = { kind: "upright", ...DRUM };
const lying: VesselShape = { kind: "lying", diameter: DRUM.diameter, length: DRUM.height };
const tapered: VesselShape = { kind: "tapered", bottomDiameter: 0.26, topDiameter: 0.3, height: 0.36 };
const box: VesselShape = { kind: "box", length: 0.5, width: 0.4, height: 0.3 };
/** A cone of half-angle 45° cut in rows: V = π h³/3. */
const coneLevels = [0, 0.1, 0.2, 0.3, 0.4, 0.5];
const table: VesselShape = {
  kind: "table",
  levels: coneLevels,
  volumes: coneLevels.map((h) => (Math.PI * h ** 3) / 3),
};
const named: [string, VesselShape][] = [
  ["upright", upright],
  ["lying", lying],
  ["tapered", tapered],
  ["narrowing", { kind: "tapered", bottomDiameter: 0.3, topDiameter: 0.26, height: 0.36 }],
  ["box", box],
  ["table", table],
];

const size = fc.double({ min: 0.02, max: 5, noNaN: true });
const anyShape: fc.Arbitrary<VesselShape> = fc.oneof(
  fc.record({ kind: fc.constant("upright" as const), diameter: size, height: size }),
  fc.record({ kind: fc.constant("lying" as const), diameter: size, length: size }),
  fc.record({ kind: fc.constant("tapered" as const), bottomDiameter: size, topDiameter: size, height: size }),
  fc.record({ kind: fc.constant("box" as const), length: size, width: size, height: size }),
  fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 8 }).map((steps) => {
    const levels = [0];
    const volumes = [0];
    for (const [rise, more] of steps) {
      levels.push(levels[levels.length - 1]! + rise);
      volumes.push(volumes[volumes.length - 1]! + more);
    }
    return { kind: "table" as const, levels, volumes };
  }),
);

describe("volumeAtLevel", () => {
  // Inside 22.5 x 33.5 in (seen, a drum seller's drawing): 57.7 US gallons to the brim.
  it("volumeAtLevel(drum) to the brim is 57.7 US gallons, upright or lying", () => {
    const gallons = capacityOfVessel(upright) / 3.785411784e-3;
    expect(Math.abs(gallons - 57.7)).toBeLessThan(0.05);
    expect(capacityOfVessel(lying)).toBeCloseTo(capacityOfVessel(upright), 14);
  });

  it("volumeAtLevel(lying cylinder) at mid-height is half, and at a quarter of it the textbook's segment", () => {
    expect(volumeAtLevel(lying, DRUM.diameter / 2)).toBeCloseTo(capacityOfVessel(lying) / 2, 14);
    const radius = DRUM.diameter / 2;
    const h = DRUM.diameter / 4;
    const segment =
      radius ** 2 * Math.acos((radius - h) / radius) - (radius - h) * Math.sqrt(2 * radius * h - h * h);
    expect(volumeAtLevel(lying, h)).toBeCloseTo(DRUM.height * segment, 14);
  });

  it("volumeAtLevel(lying cylinder) keeps its digits in a film: V → (4/3) L h √(2 R h)", () => {
    const h = 1e-9;
    const film = (4 / 3) * DRUM.height * h * Math.sqrt(DRUM.diameter * h);
    expect(Math.abs(volumeAtLevel(lying, h) / film - 1)).toBeLessThan(1e-8);
  });

  it("volumeAtLevel(tapered) with equal ends is the upright cylinder", () => {
    const straight: VesselShape = { kind: "tapered", bottomDiameter: 0.3, topDiameter: 0.3, height: 0.4 };
    const same: VesselShape = { kind: "upright", diameter: 0.3, height: 0.4 };
    expect(volumeAtLevel(straight, 0.17)).toBeCloseTo(volumeAtLevel(same, 0.17), 15);
  });

  it("volumeAtLevel(table) passes through its rows and is near the true cone between them", () => {
    for (const h of coneLevels) expect(volumeAtLevel(table, h)).toBeCloseTo((Math.PI * h ** 3) / 3, 14);
    const exact = (Math.PI * 0.35 ** 3) / 3;
    expect(Math.abs(volumeAtLevel(table, 0.35) / exact - 1)).toBeLessThan(0.01);
  });

  it.each(named)(
    "volumeAtLevel(%s) holds nothing below the bottom and no more than its capacity above the brim",
    (_, shape) => {
      expect(volumeAtLevel(shape, -1)).toBe(0);
      expect(volumeAtLevel(shape, 0)).toBe(0);
      expect(volumeAtLevel(shape, 99)).toBe(capacityOfVessel(shape));
      expect(heightOfVessel(shape)).toBeGreaterThan(0);
    },
  );
});

describe("levelAtVolume", () => {
  it("undoes volumeAtLevel for any vessel", () => {
    fc.assert(
      fc.property(anyShape, fc.double({ min: 0, max: 1, noNaN: true }), (shape, share) => {
        const volume = share * capacityOfVessel(shape);
        const back = volumeAtLevel(shape, levelAtVolume(shape, volume));
        expect(Math.abs(back - volume)).toBeLessThanOrEqual(2e-14 * capacityOfVessel(shape));
      }),
      { numRuns: 500 },
    );
  });

  it.each(named)("levelAtVolume(%s) is 0 for less than nothing and the height for too much", (_, shape) => {
    expect(levelAtVolume(shape, -1)).toBe(0);
    expect(levelAtVolume(shape, 0)).toBe(0);
    expect(levelAtVolume(shape, 1e9)).toBe(heightOfVessel(shape));
  });
});

describe("surfaceAtLevel", () => {
  it.each(named)("surfaceAtLevel(%s) is the slope of volumeAtLevel", (_, shape) => {
    for (const share of [0.13, 0.37, 0.5, 0.77, 0.93]) {
      const h = share * heightOfVessel(shape);
      const step = 1e-6;
      const slope = (volumeAtLevel(shape, h + step) - volumeAtLevel(shape, h - step)) / (2 * step);
      expect(Math.abs(surfaceAtLevel(shape, h) / slope - 1)).toBeLessThan(1e-6);
    }
  });
});

describe("wettedAreaAtLevel", () => {
  it("wettedAreaAtLevel at the brim is the whole inside but the lid", () => {
    const { diameter, height } = DRUM;
    const disc = (Math.PI / 4) * diameter ** 2;
    expect(wettedAreaAtLevel(upright, height)).toBeCloseTo(disc + Math.PI * diameter * height, 14);
    expect(wettedAreaAtLevel(lying, diameter)).toBeCloseTo(2 * disc + Math.PI * diameter * height, 14);
    expect(wettedAreaAtLevel(box, 0.3)).toBeCloseTo(0.2 + 1.8 * 0.3, 14);
    expect(wettedAreaAtLevel(tapered, 0.36)).toBeCloseTo(
      Math.PI * 0.13 ** 2 + Math.PI * 0.28 * Math.sqrt(0.36 ** 2 + 0.02 ** 2),
      14,
    );
  });

  it("wettedAreaAtLevel(lying) half full is half of the full", () => {
    expect(wettedAreaAtLevel(lying, DRUM.diameter / 2)).toBeCloseTo(
      wettedAreaAtLevel(lying, DRUM.diameter) / 2,
      14,
    );
  });

  it("wettedAreaAtLevel(table) of an upright cylinder's rows is that of the cylinder", () => {
    const rows = [0, 0.2, 0.5, DRUM.height];
    const measured: VesselShape = {
      kind: "table",
      levels: rows,
      volumes: rows.map((h) => volumeAtLevel(upright, h)),
    };
    expect(wettedAreaAtLevel(measured, 0.4)).toBeCloseTo(wettedAreaAtLevel(upright, 0.4), 12);
  });

  it.each(named)("wettedAreaAtLevel(%s) is 0 when empty and grows with the level", (_, shape) => {
    let before = 0;
    expect(wettedAreaAtLevel(shape, 0)).toBe(0);
    for (let i = 1; i <= 20; i++) {
      const area = wettedAreaAtLevel(shape, (heightOfVessel(shape) * i) / 20);
      expect(area).toBeGreaterThan(before);
      before = area;
    }
  });
});

describe("any vessel function", () => {
  it("refuses a dimension of nought, a level that is no number and a table that does not rise from 0", () => {
    expect(() => volumeAtLevel({ ...upright, diameter: 0 } as VesselShape, 0.1)).toThrow(
      "volumeAtLevel: diameter is 0; it must be finite and above 0",
    );
    expect(() => surfaceAtLevel(box, Number.NaN)).toThrow("surfaceAtLevel: level is NaN");
    expect(() => levelAtVolume(box, Number.NaN)).toThrow("levelAtVolume: volume is NaN");
    expect(() => heightOfVessel({ kind: "table", levels: [0, 1], volumes: [0] })).toThrow("as many levels");
    expect(() => heightOfVessel({ kind: "table", levels: [0.1, 1], volumes: [0, 1] })).toThrow("both from 0");
    expect(() => heightOfVessel({ kind: "table", levels: [0, 1, 1], volumes: [0, 1, 2] })).toThrow("row 2");
    expect(() => heightOfVessel({ kind: "table", levels: [0, Number.NaN], volumes: [0, 1] })).toThrow(
      RangeError,
    );
  });
});

describe("a lying cylinder nearly empty", () => {
  /** Simpson's rule of d² ∫ sin²(2t) dt up to asin √(h/d): the section under the water, summed in strips. */
  function sectionInStrips(diameter: number, level: number): number {
    const [end, strips] = [Math.asin(Math.sqrt(level / diameter)), 400];
    let sum = 0;
    for (let k = 0; k <= strips; k++) {
      const weight = k === 0 || k === strips ? 1 : k % 2 === 1 ? 4 : 2;
      sum += weight * Math.sin((2 * k * end) / strips) ** 2;
    }
    return (diameter ** 2 * sum * end) / strips / 3;
  }

  it.each([1e-6, 1e-4, 1e-3, 1e-2, 0.015, 0.1])(
    "holds at %d of its diameter what strips of it sum to",
    (share) => {
      const shape: VesselShape = { kind: "lying", diameter: 0.57, length: 0.85 };
      const level = share * 0.57;
      expect(volumeAtLevel(shape, level) / (0.85 * sectionInStrips(0.57, level))).toBeCloseTo(1, 9);
    },
  );
});

describe("a vessel given as a table", () => {
  const bowl: VesselShape = { kind: "table", levels: [0, 0.1, 0.3], volumes: [0, 0.01, 0.05] };

  it("is wet on its floor alone when it is nearly empty, and no more than that beyond its top", () => {
    expect(wettedAreaAtLevel(bowl, 1e-9)).toBeCloseTo(surfaceAtLevel(bowl, 0), 6);
    expect(wettedAreaAtLevel(bowl, 0.4)).toBe(wettedAreaAtLevel(bowl, 0.3));
  });

  it.each([
    { levels: [0, 0.1], volumes: [0.01, 0.02] },
    { levels: [0, 0.1], volumes: [0, 0.01, 0.02] },
    { levels: [0], volumes: [0] },
    { levels: [0, 0.1, 0.2], volumes: [0, 0.01, 0.01] },
    { levels: [0, 0.1, 0.2], volumes: [0, 0.02, 0.01] },
    { levels: [0, Number.POSITIVE_INFINITY], volumes: [0, 0.01] },
  ])("is refused by the function asked: $levels, $volumes", (rows) => {
    const shape: VesselShape = { kind: "table", ...rows };
    expect(() => capacityOfVessel(shape)).toThrow(/^capacityOfVessel: /);
    expect(() => levelAtVolume(shape, 0.005)).toThrow(/^levelAtVolume: /);
  });
});
