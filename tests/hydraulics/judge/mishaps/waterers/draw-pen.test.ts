import { describe, expect, it } from "vitest";
import {
  birdHoursOf,
  drawPen,
  type LoosePool,
  type PenDrawing,
} from "../../../../../packages/hydraulics/src/judge/mishaps/waterers/draw-pen.js";

const HOUR = 3600;
const DAY = 24 * HOUR;
const LITRE = 1e-3;

/** Four litres a day, all of it drunk evenly from 6 to 18 o'clock; followed from 6 o'clock on. */
const drawing = (days: number, more: Partial<PenDrawing> = {}): PenDrawing => ({
  drawOn: () => ({
    daily: 4 * LITRE,
    edges: [0, 6 * HOUR, 18 * HOUR, DAY],
    rates: [0, (4 * LITRE) / (12 * HOUR), 0],
  }),
  ...{ linePlaces: 0, from: 6 * HOUR, lasts: days * DAY, ...more },
});
/** Ten litres at which four birds find room; a fifth more is taken from it than is drunk. */
const pool = (more: Partial<LoosePool> = {}): LoosePool => ({
  ...{ full: 10 * LITRE, start: 10 * LITRE, places: 4, taken: 1.2, dry: 0, refill: undefined },
  ...more,
});

describe("drawPen", () => {
  it("empties ten litres by 4.8 a day an hour into the third light, and birds find nothing from then on", () => {
    const { without, drunk, air, poured, left, until } = drawPen([pool()], drawing(5));
    // 9.6 L in two days; 0.4 L at 0.4 L an hour.
    const empty = 2 * DAY + HOUR;
    expect(without).toEqual([{ from: expect.closeTo(empty, 6), to: 5 * DAY }]);
    expect(until).toBeCloseTo(empty, 6);
    expect([drunk, air, poured, left]).toEqual([expect.closeTo(10 * LITRE, 12), 0, 0, 0]);
  });

  it("lasts two and a half times as long where birds go on at six places of the line, and none goes without", () => {
    const { without, until } = drawPen([pool()], drawing(30, { linePlaces: 6 }));
    // 4 of 10 places: 1.92 L a day. Five lights take 9.6 L; 0.4 L at 0.16 L an hour are 2.5 h.
    expect(until).toBeCloseTo(5 * DAY + 2.5 * HOUR, 4);
    expect(without).toEqual([]);
  });

  it("shares out by places among what holds water, and the rest goes to what is left", () => {
    const small = pool({ full: 0.9 * LITRE, start: 0.9 * LITRE, places: 1, taken: 1 });
    const large = pool({ places: 3, taken: 1 });
    const { drunk, left, without, until } = drawPen([small, large], drawing(30));
    // A quarter of 4 L a day each light: the small one is empty after 10.8 h of the first, the large one then gives all.
    // 2.7 L are gone from it by then; 7.3 L more last 1.2 h of that light at a third of a litre an hour, a light and 6.9 L
    // less 4 L of the next.
    expect(until).toBeCloseTo(2 * DAY + ((10.9 - 8) / 4) * 12 * HOUR, 4);
    expect([drunk, left]).toEqual([expect.closeTo(10.9 * LITRE, 12), 0]);
    expect(without[0]!.from).toBeCloseTo(until, 6);
  });

  it("is filled up at each round, by what is gone since the last; it lasts as long as it is followed", () => {
    const refill = { first: DAY, every: DAY };
    const { poured, drunk, left, without, until } = drawPen([pool({ refill })], drawing(3));
    expect(poured).toBeCloseTo(3 * 4.8 * LITRE, 12);
    expect(drunk).toBeCloseTo(3 * 4.8 * LITRE, 12);
    expect(left).toBeCloseTo(10 * LITRE, 12);
    expect(without).toEqual([]);
    expect(until).toBeCloseTo(3 * DAY, 6);
  });

  it("is without from when it is empty until somebody fills it, one stretch each, midnight or not", () => {
    // 3.6 L are gone after nine hours of light; rounds come at 6 o'clock, after one day and then every two.
    const refill = { first: DAY, every: 2 * DAY };
    const { without, poured } = drawPen(
      [pool({ full: 3.6 * LITRE, start: 3.6 * LITRE, refill })],
      drawing(4),
    );
    expect(without).toEqual([
      { from: expect.closeTo(9 * HOUR, 4), to: expect.closeTo(DAY, 4) },
      { from: expect.closeTo(DAY + 9 * HOUR, 4), to: expect.closeTo(3 * DAY, 4) },
      { from: expect.closeTo(3 * DAY + 9 * HOUR, 4), to: expect.closeTo(4 * DAY, 4) },
    ]);
    expect(poured).toBeCloseTo(2 * 3.6 * LITRE, 12);
  });

  it("loses to the air by day and night, as long as it holds water; nobody drinks where nobody finds room", () => {
    const dry = (1 * LITRE) / DAY;
    const alone = drawPen([pool({ places: 0, dry })], drawing(30));
    expect(alone.air).toBeCloseTo(10 * LITRE, 12);
    expect(alone.drunk).toBe(0);
    expect(alone.until).toBeCloseTo(10 * DAY, 4);
    // All of that time birds find nothing.
    expect(alone.without).toEqual([{ from: 0, to: 30 * DAY }]);
    const { air, drunk, left } = drawPen([pool({ dry })], drawing(1));
    expect([air, drunk, left]).toEqual([
      expect.closeTo(1 * LITRE, 12),
      expect.closeTo(4.8 * LITRE, 12),
      expect.closeTo(4.2 * LITRE, 12),
    ]);
  });

  it("begins with what is in it after a mishap, and asks each day for what is drunk on it", () => {
    const days: number[] = [];
    const { until } = drawPen([pool({ start: 6 * LITRE })], {
      ...drawing(30),
      drawOn: (day) => {
        days.push(day);
        return drawing(1).drawOn(day);
      },
    });
    // 4.8 L the first light, 1.2 L at 0.4 L an hour.
    expect(until).toBeCloseTo(DAY + 3 * HOUR, 4);
    expect([...new Set(days)]).toEqual([0, 1]);
  });

  it("is nothing of a pen without loose waterers", () => {
    expect(drawPen([], drawing(2, { linePlaces: 3 }))).toMatchObject({ without: [], until: 0, left: 0 });
  });
});

describe("birdHoursOf", () => {
  const weather = { high: 20, low: 10, dawn: 6 * HOUR, light: 12 * HOUR, hotSpell: undefined };
  const hours = (from: number, to: number, until = 10 * DAY) =>
    birdHoursOf({ without: [{ from, to }] }, { birds: 10, from: 6 * HOUR, until, weather });

  it("is birds times the hours of light among those without", () => {
    expect(hours(0, DAY)).toBeCloseTo(10 * 12, 9);
    // From 16 o'clock to 8 the next day: two hours and two.
    expect(hours(10 * HOUR, 26 * HOUR)).toBeCloseTo(10 * 4, 9);
    // From 20 o'clock to 4: dark.
    expect(hours(14 * HOUR, 22 * HOUR)).toBe(0);
    expect(hours(2 * HOUR, 3 * HOUR)).toBeCloseTo(10, 9);
  });

  it("counts up to when it is asked for, and all stretches together", () => {
    expect(hours(0, 5 * DAY, 3 * HOUR)).toBeCloseTo(30, 9);
    expect(hours(4 * HOUR, 5 * DAY, 3 * HOUR)).toBe(0);
    const without = [
      { from: 0, to: HOUR },
      { from: DAY, to: DAY + 2 * HOUR },
    ];
    expect(birdHoursOf({ without }, { birds: 3, from: 6 * HOUR, until: 10 * DAY, weather })).toBeCloseTo(
      9,
      9,
    );
  });

  it("knows that light may begin before midnight", () => {
    const early = { ...weather, dawn: 20 * HOUR };
    // Light from 20 to 8 o'clock: of 6 to 10 o'clock two hours.
    expect(
      birdHoursOf(
        { without: [{ from: 0, to: 4 * HOUR }] },
        { birds: 1, from: 6 * HOUR, until: DAY, weather: early },
      ),
    ).toBeCloseTo(2, 9);
  });
});
