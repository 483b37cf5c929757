import { describe, expect, it } from "vitest";
import {
  frostRefills,
  refillsInFrost,
  thawOf,
} from "../../../../packages/hydraulics/src/judge/weather/frost-refills.js";
import type { LooseWaterer } from "../../../../packages/hydraulics/src/model/yard.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

const HOUR = 3600;
/** Heat that a cubic metre of ice takes up as it melts [J/m³]. */
const MELTING = 917 * 334_000;

/** Eight litres in a pan of 0.2 m² that loses heat through 10 W/(m² K): e-folding in 8 x 4.19e3 / 2 = 16,760 s. */
const pan = { volume: 0.008, wall: 0.2, film: 10 };
const FOLDING = (4.19e6 * 0.008) / (10 * 0.2);
/** Stefan: 3 mm of ice through a film of 10 W/(m² K) and the ice itself of 2.2 W/(m K), in air at -10 °C: 2.57 h. */
const TO_3_MM = (MELTING / 10) * (0.003 / 10 + 0.003 ** 2 / (2 * 2.2));
/** Minutes are stepped over: three of them are no more than rounding. */
const ROUNDING = 3 * 60;

/** Fills needed after the first, in light from time 0 until so long. */
const refills = (water: number, until: number, air: (time: number) => number = () => -10) =>
  refillsInFrost({ ...pan, water }, air, { from: 0, to: until });

describe("refillsInFrost", () => {
  it("is the first when water at 10 °C has cooled by Newton's law and grown 3 mm of ice by Stefan's", () => {
    // From 20 degrees over the air to 10 over it: ln 2 foldings.
    const first = FOLDING * Math.LN2 + TO_3_MM;
    expect(first / HOUR).toBeCloseTo(5.797, 2);
    expect(refills(10, first - ROUNDING)).toBe(0);
    expect(refills(10, first + ROUNDING)).toBe(1);
    expect(refills(10, 2 * first - ROUNDING)).toBe(1);
    expect(refills(10, 2 * first + ROUNDING)).toBe(2);
  });

  it("counts from dawn, whenever that is", () => {
    const light = (from: number, to: number) => ({ from, to });
    const open = { ...pan, water: 10 };
    expect(refillsInFrost(open, () => -10, light(7 * HOUR, 17 * HOUR))).toBe(refills(10, 10 * HOUR));
  });

  it("is later where a thaw melts the ice and warms the water, by just what that takes to cool again", () => {
    // A millimetre of ice, an hour less or more; air at 10 °C melts 100 W/m² of it, and warms the rest of the time.
    const toOneMm = (MELTING / 10) * (0.001 / 10 + 0.001 ** 2 / (2 * 2.2));
    const melting = (MELTING * 0.001) / 100;
    const warming = 4 * HOUR;
    const warmed = 10 * (1 - Math.exp(-warming / FOLDING));
    expect(warmed).toBeCloseTo(5.76, 2);
    const cooling = FOLDING * Math.log((warmed + 10) / 10);
    const coldAgain = toOneMm + melting + warming;
    const air = (time: number) => (time > toOneMm && time < coldAgain ? 10 : -10);
    const first = coldAgain + cooling + TO_3_MM;
    expect(refills(0, first - ROUNDING, air)).toBe(0);
    expect(refills(0, first + ROUNDING, air)).toBe(1);
  });

  it("melts ice in air above freezing alone: at 0 °C it stays as thick as it is", () => {
    const still = (between: number) => (time: number) => (time > 2 * HOUR && time < 5 * HOUR ? between : -10);
    // Two hours of the 2.57 for 3 mm; at 0 °C for three hours nothing changes.
    expect(refills(0, TO_3_MM + 3 * HOUR - ROUNDING, still(0))).toBe(0);
    expect(refills(0, TO_3_MM + 3 * HOUR + ROUNDING, still(0))).toBe(1);
    expect(refills(0, TO_3_MM + 3 * HOUR + ROUNDING, still(5))).toBe(0);
  });
});

const waterer = (id: string): LooseWaterer => ({
  ...{ id, index: 0, kind: watererById(id)!, count: 2, slope: 0, hole: "downhill", holds: 0.01 },
  ...{ hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
});
const night = { low: -12, high: -12, hours: 12 * HOUR, wind: 0 };
const airOf = (air: number) => ({ high: air, low: air, dawn: 7 * HOUR, light: 10 * HOUR });

describe("frostRefills", () => {
  const inFrost = (id: string, air: number) =>
    frostRefills(waterer(id), "pens[0].waterers[0]", { night, water: 10 }, airOf(air));

  it("is told for a day at 0, -2, -5, -10, -15 and -20 °C, never fewer in the colder", () => {
    const { byAir } = inFrost("rubber-pan-8qt", -10)!;
    expect(byAir.map(({ air }) => air)).toEqual([0, -2, -5, -10, -15, -20]);
    const counts = byAir.map((one) => one.refills);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(counts[0]).toBe(0);
    expect(counts.at(-1)).toBeGreaterThan(counts[1]!);
  });

  it("of a day as cold as one of those is what is told for that", () => {
    for (const air of [-2, -10, -20]) {
      const { thatDay, byAir, count } = inFrost("fount-1gal", air)!;
      expect([air, thatDay]).toEqual([air, byAir.find((one) => one.air === air)!.refills]);
      expect(count).toBe(2);
    }
  });

  it("is hopeless from one each hour of light on", () => {
    const day = (air: number) => inFrost("fount-1gal", air)!;
    for (const air of [-2, -10, -20, -40, -60, -80])
      expect([air, day(air).isHopeless]).toEqual([air, day(air).thatDay >= 10]);
    expect(day(-2).isHopeless).toBe(false);
    expect(day(-80).isHopeless).toBe(true);
  });

  it("is nothing where a beak meets pins", () => {
    expect(inFrost("nipple-bucket-5gal", -10)).toBeUndefined();
  });
});

describe("thawOf", () => {
  it("of air at 6 °C all day melts 10 W/(m² K) times 6 K times ten hours of light", () => {
    const { from, to, melts } = thawOf(airOf(6));
    expect([from, to]).toEqual([7 * HOUR, 17 * HOUR]);
    expect(melts).toBeCloseTo((10 * 6 * 10 * HOUR) / MELTING, 12);
  });

  it("of air from -6 °C at dawn to 6 °C at two thirds of the light is above freezing from half of that on", () => {
    const { from, to } = thawOf({ high: 6, low: -6, dawn: 7 * HOUR, light: 9 * HOUR });
    // Half a sine up takes 6 h, and is halfway after three.
    expect(Math.abs(from! - 10 * HOUR)).toBeLessThanOrEqual(60);
    expect(to).toBe(16 * HOUR);
  });

  it("is none at 0 °C", () => {
    expect(thawOf(airOf(0))).toEqual({ from: undefined, to: undefined, melts: 0 });
  });
});
