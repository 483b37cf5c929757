import { expect, test } from "vitest";
import {
  type OpenBody,
  type SunnyAir,
  sunnyAir,
  throughOpenDay,
  warmFrom,
} from "../../../../packages/hydraulics/src/judge/weather/open-water.js";
import { depthDried, heatOfDrying } from "../../../../packages/hydraulics/src/physics/drying.js";

const HOUR = 3600;
/** Water of a cubic metre warms by a degree for so much [J/(m³ K)]. */
const HEAT = 4.19e6;
/** A day of steps of three minutes. */
const STEPS = 480;
const evenly = (air: number, sun: number, more: Partial<SunnyAir> = {}): SunnyAir => ({
  air: new Array<number>(STEPS).fill(air),
  sun: new Array<number>(STEPS).fill(sun),
  ...{ film: 10, dew: 20 },
  ...more,
});
const closed: OpenBody = { volume: 0.002, open: 0, flat: 0.03, wall: 0.11, silhouette: 0.04 };
const DARK = { absorptance: 0.9, shade: 0 };
const rises = (body: OpenBody, skin = DARK, weather = evenly(25, 400)) => {
  const { water } = throughOpenDay(body, skin, weather);
  return water.at(-1)! - 25;
};

test("closed water in even sun and air comes to where its wall loses what top and half of its side take in", () => {
  // 400 W/m² on a top of 0.03 and half of a side of 0.04 m², nine tenths of it taken, through 10 W/(m² K) of 0.11 m².
  const gained = 400 * 0.9 * (0.03 + 0.02);
  expect(rises(closed)).toBeCloseTo(gained / (10 * 0.11), 2);
  expect(rises(closed, { absorptance: 0.9, shade: 0.5 })).toBeCloseTo(gained / 2 / (10 * 0.11), 2);
  expect(rises(closed, { absorptance: 0.3, shade: 0 })).toBeCloseTo(gained / 3 / (10 * 0.11), 2);
  expect(rises({ ...closed, wall: 0.22 })).toBeCloseTo(gained / (10 * 0.22), 2);
});

test("open water keeps two fifths of the sun on it itself, its floor the rest by its colour, and dries", () => {
  const open: OpenBody = { volume: 0.002, open: 0.1, flat: 0, wall: 0.05, silhouette: 0 };
  const { water, dried } = throughOpenDay(open, { absorptance: 0.5, shade: 0 }, evenly(25, 300));
  const at = water.at(-1)!;
  const drying = heatOfDrying({ film: 10, dew: 20 }, at);
  const gained = 300 * 0.1 * (0.4 + 0.6 * 0.5);
  // What comes in goes out: through surface and wall, and with what dries.
  expect(10 * 0.15 * (at - 25) + drying * 0.1).toBeCloseTo(gained, 1);
  expect(dried / (depthDried(drying) * 0.1 * 24 * HOUR)).toBeCloseTo(1, 2);
});

test("the curve is told each quarter of an hour, as the day begins and ends alike", () => {
  const { water } = throughOpenDay(closed, DARK, evenly(25, 0));
  expect(water).toEqual(new Array(96).fill(25));
  const waves = { ...evenly(25, 0), air: Array.from({ length: STEPS }, (_, k) => (k < 240 ? 15 : 35)) };
  const slow = throughOpenDay({ ...closed, volume: 0.05 }, DARK, waves).water;
  // The coldest stands at noon, when the warm half begins, and the warmest at midnight.
  expect(slow.indexOf(Math.min(...slow))).toBe(48);
  expect(slow.indexOf(Math.max(...slow))).toBe(0);
});

test("warmFrom counts from when it was filled to when it is as warm as that: Newton's law", () => {
  const folding = (HEAT * closed.volume) / (10 * closed.wall);
  const filled = { from: 6 * HOUR, water: 15, to: 30 };
  // From 20 under the air to 5 under it: ln 4 foldings.
  const time = warmFrom(closed, DARK, evenly(35, 0), filled)!;
  expect(Math.abs(time - folding * Math.log(4))).toBeLessThan(360);
  expect(time % 180).toBe(0);
  expect(warmFrom(closed, DARK, evenly(30, 0), filled)).toBeUndefined();
  expect(warmFrom(closed, DARK, evenly(35, 0), { ...filled, from: 24 * HOUR - 900 })).toBeUndefined();
});

test("sunnyAir has the film of still air where told, else that of the day's wind, and dew at the night's lowest", () => {
  const day = { high: 33, low: 21, sun: 900, wind: 2, dawn: 6 * HOUR, light: 12 * HOUR } as never;
  const still = sunnyAir(day, 10);
  expect([still.film, sunnyAir(day, undefined).film, still.dew]).toEqual([10, 5.7 + 3.8 * 2, 21]);
  expect([still.air.length, still.sun.length]).toEqual([STEPS, STEPS]);
  expect(Math.max(...still.air)).toBeCloseTo(33, 1);
  // Noon of the light is in the middle between two steps.
  expect(still.sun.indexOf(Math.max(...still.sun))).toBe(STEPS / 2 - 1);
  expect(still.sun[119]).toBe(0);
  expect(still.sun[120]).toBeGreaterThan(0);
  expect(sunnyAir({ ...(day as object), low: -5 } as never, 10).dew).toBe(0);
});
