import fc from "fast-check";
import { expect, test } from "vitest";
import {
  dateOf,
  dayNumber,
  readClock,
  readDay,
  writeClock,
  writeDay,
} from "../../../packages/hydraulics/src/units/day.js";

/** The calendar of the language itself: other code than the library's. */
const isoOf = (days: number) => new Date(days * 86_400_000).toISOString().slice(0, 10);

test("writeDay and readDay agree with the language's own calendar from 1800 to 2200", () => {
  for (let days = -62_091; days <= 84_006; days += 1) {
    const iso = isoOf(days);
    if (writeDay(days) !== iso || readDay(iso) !== days)
      expect([writeDay(days), readDay(iso)]).toEqual([iso, days]);
  }
});

test.each([
  "2026-02-29",
  "2100-02-29",
  "2026-13-01",
  "2026-00-10",
  "2026-04-31",
  "26-01-01",
  "1799-12-31",
  "today",
])("readDay(%o) is no day", (typed) => {
  expect(readDay(typed)).toBeUndefined();
});

test("dateOf gives back what dayNumber was given", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1800, max: 2200 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
      (year, month, day) => {
        expect(dateOf(dayNumber(year, month, day))).toEqual({ year, month, day });
      },
    ),
  );
});

test("readClock reads hours and minutes, and nothing past midnight", () => {
  expect([readClock("06:30"), readClock("0:05"), readClock("24:00"), readClock("7:60")]).toEqual([
    23_400,
    300,
    undefined,
    undefined,
  ]);
  expect([writeClock(23_400), writeClock(86_399)]).toEqual(["06:30", "00:00"]);
});
