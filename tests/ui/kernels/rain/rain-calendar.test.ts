import { dayNumber, readDay } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import {
  dayAtSpot,
  layRainCalendar,
  squareOf,
} from "../../../../packages/ui/src/kernels/rain/rain-calendar.js";
import { monthsOf, yearsOf } from "../../../../packages/ui/src/kernels/rain/rain-years.js";

const FIRST = readDay("2011-12-30")!;
const COUNT = readDay("2013-03-02")! - FIRST;

/** Days with a half-full vessel, and one of each other kind. */
function days() {
  const at = (date: string) => readDay(date)! - FIRST;
  const of = () => new Uint8Array(COUNT);
  const [short, missing] = [of(), of()];
  const stored = new Float64Array(COUNT).fill(0.05);
  const over = new Float64Array(COUNT);
  short[at("2012-02-29")] = 1;
  stored[at("2012-02-29")] = 0;
  missing[at("2012-12-31")] = 1;
  over[at("2012-07-04")] = 0.01;
  stored[at("2012-07-04")] = 0.1;
  return { firstDay: FIRST, usable: 0.1, stored, over, short, missing };
}

const squares = (path: string) => path.split("M").length - 1;

describe("yearsOf(record)", () => {
  const years = yearsOf(FIRST, COUNT);

  test("goes from year to year without a gap, a leap year with 366 days", () => {
    expect(years.map(({ year, from, to }) => [year, to - from])).toEqual([
      [2011, 2],
      [2012, 366],
      [2013, 60],
    ]);
    expect(years[0]!.from).toBe(0);
    expect(years.every(({ from }, k) => k === 0 || from === years[k - 1]!.to)).toBe(true);
    expect(years.at(-1)!.to).toBe(COUNT);
  });

  test("its months have their days, and those of the record's ends the days there are", () => {
    expect(monthsOf(FIRST, years[1]!).map(({ from, to }) => to - from)).toEqual([
      31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
    ]);
    expect(monthsOf(FIRST, years[2]!).map(({ month, from, to }) => [month, to - from])).toEqual([
      [1, 31],
      [2, 28],
      [3, 1],
    ]);
  });

  test("is empty without days", () => {
    expect(yearsOf(FIRST, 0)).toEqual([]);
  });
});

describe("layRainCalendar(year)", () => {
  const [, leap] = yearsOf(FIRST, COUNT);
  const laid = layRainCalendar(days(), leap!);

  test("has a square for each day and a mark of each kind where it belongs", () => {
    expect(squares(laid.squares)).toBe(366);
    expect(squares(laid.surface)).toBe(365);
    // A cross is two strokes.
    expect(squares(laid.short)).toBe(2);
    expect(squares(laid.missing)).toBe(1);
    expect(squares(laid.over)).toBe(1);
  });

  test("fills a square as high as the vessel is full", () => {
    const { x, y, side } = squareOf(dayNumber(2012, 7, 4));
    expect(laid.water).toContain(`M${x} ${y}h${side}v${side}`);
    const half = squareOf(dayNumber(2012, 7, 5));
    expect(laid.water).toContain(`M${half.x} ${half.y + side / 2}h${side}v${side / 2}`);
  });

  test("stays within its frame", () => {
    const ends = [dayNumber(2012, 1, 1), dayNumber(2012, 12, 31)].map(squareOf);
    for (const { x, y, side } of ends) {
      expect(x).toBeGreaterThan(0);
      expect(x + side).toBeLessThanOrEqual(laid.width);
      expect(y + side).toBeLessThanOrEqual(laid.height);
    }
  });

  test("every square is found again at its middle, and nothing beside them", () => {
    for (let t = leap!.from; t < leap!.to; t += 1) {
      const { x, y, side } = squareOf(FIRST + t);
      expect(dayAtSpot({ firstDay: FIRST }, leap!, { x: x + side / 2, y: y + side / 2 })).toBe(t);
    }
    expect(dayAtSpot({ firstDay: FIRST }, leap!, { x: 2, y: 40 })).toBeUndefined();
    const gone = squareOf(dayNumber(2012, 3, 31));
    expect(dayAtSpot({ firstDay: FIRST }, leap!, { x: gone.x + 2, y: gone.y - 8 })).toBeUndefined();
  });
});
