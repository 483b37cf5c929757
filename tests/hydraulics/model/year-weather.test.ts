import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import type { Flock } from "../../../packages/hydraulics/src/model/flock.js";
import { buildYearWeather } from "../../../packages/hydraulics/src/model/year-weather.js";
import { dayNumber } from "../../../packages/hydraulics/src/units/day.js";

/** The year of a plan whose months are given; its one weather is that of the flock. */
function yearOf(months?: object[]) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic" }],
    runs: [{ length: "3 m" }],
    weather: { high: "20 C", ...(months === undefined ? {} : { months }) },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const weather = { high: 20, low: 12, hotSpell: { high: 34, low: 22 } };
  return buildYearWeather(reading.plan, { weather } as unknown as Flock);
}

const middleOf = (month: number) => dayNumber(2025, month, 15);

test("buildYearWeather goes straight from the middle of a month to that of the next, over the turn of the year too", () => {
  const year = yearOf([
    { month: "january", high: "2 C", low: "-4 C" },
    { month: "july", high: "26 C", low: "14 C" },
  ]);
  expect(year.on(middleOf(1))).toEqual({ high: 2, low: -4 });
  expect(year.on(middleOf(7))).toEqual({ high: 26, low: 14 });
  const days = middleOf(7) - middleOf(1);
  expect(year.on(middleOf(1) + days / 2).high).toBeCloseTo(14, 12);
  expect(year.on(middleOf(7) + 92).high).toBeCloseTo(26 - (24 * 92) / (365 - days), 12);
});

test("buildYearWeather has hottest days where months name them, as much cooler by night as those months are", () => {
  const year = yearOf([
    { month: "january", high: "2 C", low: "-4 C" },
    { month: "july", high: "26 C", low: "14 C", hot: "36 C" },
  ]);
  expect(year.hotOn(middleOf(7))).toEqual({ high: 36, low: 24 });
  expect(year.hotOn(middleOf(1))).toBeUndefined();
});

test("buildYearWeather has the plan's hot spell in the three warmest months, where none names its own", () => {
  const highs = { january: 2, april: 13, june: 24, july: 26, august: 25, october: 12 };
  const year = yearOf(Object.entries(highs).map(([month, high]) => ({ month, high: `${high} C` })));
  const hot = [1, 4, 6, 7, 8, 10].filter((month) => year.hotOn(middleOf(month)) !== undefined);
  expect(hot).toEqual([6, 7, 8]);
  expect(year.hotOn(middleOf(7))).toEqual({ high: 34, low: 22 });
  expect(yearOf().hotOn(middleOf(1))).toEqual({ high: 34, low: 22 });
});

test("buildYearWeather on the first of January lies between December before it and January after it", () => {
  const year = yearOf([
    { month: "january", high: "2 C", low: "-4 C" },
    { month: "december", high: "6 C", low: "0 C" },
  ]);
  // From the middle of December to that of January are 31 days; the first of January is the seventeenth of them.
  expect(year.on(dayNumber(2025, 1, 1)).high).toBeCloseTo(6 - (4 * 17) / 31, 9);
});
