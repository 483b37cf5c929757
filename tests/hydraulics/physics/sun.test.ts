import { describe, expect, it, test } from "vitest";
import { groundThroughDay, SOIL_DIFFUSIVITY } from "../../../packages/hydraulics/src/physics/ground.js";
import {
  sunAt,
  sunRiseOfPipe,
  sunRiseOfVessel,
  throughDay,
} from "../../../packages/hydraulics/src/physics/sun.js";

const DAY = 86_400;
const STEPS = 288;
const wave = (mean: number, swing: number) =>
  Array.from({ length: STEPS }, (_, k) => mean + swing * Math.cos((2 * Math.PI * k) / STEPS));

test("sunRiseOfPipe: dark pipe 21.5 K and white 7.2 K above the air at 900 W/m² (worked by hand)", () => {
  expect(sunRiseOfPipe({ absorptance: 0.9, film: 12 }, 900)).toBeCloseTo(21.49, 2);
  expect(sunRiseOfPipe({ absorptance: 0.3, film: 12 }, 900)).toBeCloseTo(7.16, 2);
});

test("sunAt is nothing at night, highest at noon, and 22 MJ/m² come of 14 hours and 690 W/m²", () => {
  const sun = { peak: 690, dawn: 5 * 3600, light: 14 * 3600 };
  expect(sunAt(sun, 4 * 3600)).toBe(0);
  expect(sunAt(sun, 12 * 3600)).toBe(690);
  const sum = Array.from({ length: 1440 }, (_, k) => 60 * sunAt(sun, 60 * k)).reduce((a, b) => a + b);
  expect(sum).toBeCloseTo((2 * 690 * 14 * 3600) / Math.PI, -4);
});

test("a sunny drum of 208 L gains 4.6 K in a day of 22 MJ/m², losses left out (worked by hand)", () => {
  const [film, wall, silhouette] = [12, 2.1, 0.521];
  const perWatt = sunRiseOfVessel({ absorptance: 0.7, film, silhouette, wall }, 1);
  expect((perWatt * film * wall * 22e6) / (208 * 4190)).toBeCloseTo(4.6, 1);
});

describe("throughDay", () => {
  it("of one temperature all day is that temperature", () => {
    for (const one of throughDay(new Array<number>(24).fill(17), 5000)) expect(one).toBeCloseTo(17, 10);
  });

  it.each([600, 10_000, 60_000, 500_000])(
    "meets the closed form of a wave: smaller, and late (τ = %d s)",
    (tau) => {
      const water = throughDay(wave(20, 10), tau);
      const turn = (2 * Math.PI * tau) / DAY;
      water.forEach((one, k) => {
        const angle = (2 * Math.PI * k) / STEPS;
        const expected = 20 + (10 / (1 + turn ** 2)) * (Math.cos(angle) + turn * Math.sin(angle));
        expect(Math.abs(one - expected)).toBeLessThan(0.002);
      });
    },
  );

  it.each([1e9, 1e12, 1e14, 1e16, 1e18, 1e25, 1e300])(
    "is the mean of the day all day where the water hardly follows at all (τ = %d s)",
    (tau) => {
      for (const one of throughDay([3, 9, 27, 40, 12, 5], tau)) expect(one).toBeCloseTo(16, 3);
    },
  );

  it("is what it tends to where it follows at once", () => {
    expect(throughDay([3, 9, 27, 40, 12, 5], 1e-300)).toEqual([3, 9, 27, 40, 12, 5]);
  });

  it("keeps between the lowest and the highest it tends to", () => {
    const towards = [3, 9, 27, 40, 12, 5];
    for (const tau of [1e-9, 10, 3000, 1e6, 1e15])
      for (const one of throughDay(towards, tau)) {
        expect(one).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(one).toBeLessThanOrEqual(40 + 1e-9);
      }
  });
});

describe("groundThroughDay", () => {
  it("damps the day's wave by e each 11.7 cm, and makes it later", () => {
    const reach = Math.sqrt((SOIL_DIFFUSIVITY * DAY) / Math.PI);
    expect(reach).toBeCloseTo(0.117, 3);
    const below = groundThroughDay(wave(20, 10), reach);
    expect(Math.max(...below)).toBeCloseTo(20 + 10 / Math.E, 2);
    const late = below.indexOf(Math.max(...below)) / STEPS;
    expect(late).toBeCloseTo(1 / (2 * Math.PI), 2);
  });

  it("is the surface at no depth, and the day's mean far down", () => {
    expect(groundThroughDay([1, 5, 9, 5], 0)).toEqual([1, 5, 9, 5]);
    for (const one of groundThroughDay(wave(20, 10), 2)) expect(one).toBeCloseTo(20, 4);
  });
});
