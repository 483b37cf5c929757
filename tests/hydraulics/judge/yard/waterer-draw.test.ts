import { describe, expect, it } from "vitest";
import {
  lastsOf,
  lostToAir,
  openAreaOf,
  spillOf,
  weeksOf,
} from "../../../../packages/hydraulics/src/judge/yard/waterer-draw.js";
import type { Flock } from "../../../../packages/hydraulics/src/model/flock.js";
import type { LooseWaterer } from "../../../../packages/hydraulics/src/model/yard.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";
import type { WatererKind } from "../../../../packages/hydraulics/src/tables/waterer-types.js";
import { watererById } from "../../../../packages/hydraulics/src/tables/waterers.js";

const waterer = (id: string, sizes: Record<string, unknown> = {}): LooseWaterer => ({
  ...{ id, index: 0, kind: { ...watererById(id)!, ...sizes } as WatererKind, count: 1, slope: 0 },
  ...{ hole: "downhill", holds: 0.01, hang: undefined, cord: 1, refillEvery: undefined, isShaded: false },
});

describe("openAreaOf", () => {
  it("is the ring of a fount or bell, the disc of a pan, the rectangle of a trough, and nothing at nipples", () => {
    const ring = Math.PI * (0.15 ** 2 - 0.1 ** 2);
    const sizes = { rim: 0.15, jar: 0.1 };
    expect(openAreaOf(waterer("fount-1gal", { ...sizes, lip: "ring" }))).toBeCloseTo(ring, 12);
    expect(openAreaOf(waterer("bell-bucket-5gal", sizes))).toBeCloseTo(ring, 12);
    expect(openAreaOf(waterer("fount-1gal", { ...sizes, lip: "spouts" }))).toBeCloseTo(ring / 10, 12);
    expect(openAreaOf(waterer("pan-40cm", { rim: 0.2 }))).toBeCloseTo(Math.PI * 0.04, 12);
    expect(openAreaOf(waterer("trough-90cm", { length: 0.9, width: 0.1 }))).toBeCloseTo(0.09, 12);
    expect(openAreaOf(waterer("nipple-bucket-5gal"))).toBe(0);
  });
});

describe("what the air takes", () => {
  it("goes with the open area, and is less in the shade", () => {
    const pan = waterer("pan-40cm", { rim: 0.2 });
    expect(lostToAir(waterer("pan-40cm", { rim: 0.4 }), 21) / lostToAir(pan, 21)).toBeCloseTo(4, 9);
    expect(lostToAir({ ...pan, isShaded: true }, 21)).toBeLessThan(lostToAir(pan, 21));
    // 0.1257 m² at 4.36 mm a day at 21 °C, a quarter more in the sun: FAO's way of reckoning.
    expect(lostToAir(pan, 21)).toBeCloseTo(0.12566 * 0.004357 * 1.25, 5);
  });
});

/** Ten hens in full lay at 21 °C: 270 mL each to size on. */
const hens = (ageDays = 400): Flock => ({
  day: 20_000,
  weather: { high: 21, low: 21, light: 43_200, dawn: 21_600, hotSpell: undefined },
  pens: [
    {
      ...{ id: "hens", index: 0, drinkers: [] },
      batches: [{ kind: birdById("hen")!, index: 0, count: 10, ageDays, lay: 0.9 }],
    },
  ],
});

describe("weeksOf", () => {
  const drawing = (more = {}) => ({
    ...{ flock: hens(), hotDay: { high: 32, low: 32, isTaken: true }, pen: 0, share: 0.5, gives: 0.008 },
    ...{ weeks: 3, ...more },
  });

  it("takes its share of what the pen drinks, what is spilled at its kind, and what the air takes", () => {
    const bucket = waterer("nipple-bucket-5gal");
    const pan = waterer("pan-40cm");
    const size = (one: LooseWaterer) => weeksOf(one, drawing())[0]!.draw.size;
    expect(size(bucket)).toBeCloseTo(0.5 * 10 * 270e-6 * (1 + spillOf(bucket)), 9);
    expect(size(pan)).toBeCloseTo(0.5 * 10 * 270e-6 * (1 + spillOf(pan)) + lostToAir(pan, 21), 9);
    // A fifth is spilled at what stands open, a twentieth at nipples.
    expect([spillOf(bucket), spillOf(pan)]).toEqual([0.05, 0.2]);
  });

  it("reckons the air's part at half in the least and twice in the most", () => {
    const pan = waterer("pan-40cm");
    const none = { ...hens(), pens: [{ ...hens().pens[0]!, batches: [] }] };
    const dry = lostToAir(pan, 21);
    expect(weeksOf(pan, drawing({ flock: none }))[0]!.draw).toEqual({
      size: dry,
      expect: dry,
      low: dry / 2,
      high: 2 * dry,
    });
  });

  it("has the plan's day and each week after it, and more on the hot day", () => {
    const weeks = weeksOf(waterer("pan-40cm"), drawing());
    expect(weeks.map(({ week, day }) => [week, day])).toEqual([
      [0, 20_000],
      [1, 20_007],
      [2, 20_014],
      [3, 20_021],
    ]);
    for (const { draw, hotDraw } of weeks) expect(hotDraw.size).toBeGreaterThan(draw.size);
  });

  it("is filled as often as what is drawn over what it gives; never, where it gives nothing", () => {
    const [first] = weeksOf(waterer("pan-40cm"), drawing());
    expect(first!.refills).toBeCloseTo(first!.draw.size / 0.008, 12);
    expect(first!.hotRefills).toBeCloseTo(first!.hotDraw.size / 0.008, 12);
    const [never] = weeksOf(waterer("pan-40cm"), drawing({ gives: 0 }));
    expect([never!.refills, never!.hotRefills]).toEqual([undefined, undefined]);
  });

  it("lasts a day over its refills", () => {
    expect(lastsOf({ gives: 0.008 }, 0.002)).toBe(4 * 86_400);
    expect(lastsOf({ gives: 0.008 }, 0)).toBeUndefined();
  });
});
