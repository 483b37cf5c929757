import { expect, test } from "vitest";
import type { RainRecord } from "../../../../packages/hydraulics/src/document/rain-record.js";
import { runsOf } from "../../../../packages/hydraulics/src/judge/rain/rain-runs.js";

/** Six days: nine millimetres on the fourth; the second and the fifth are not known. */
const recordFrom = (day: string) =>
  ({
    firstDay: Date.parse(day) / 86_400_000,
    rain: Float64Array.of(0, 0, 0, 0.009, 0, 0),
    missing: Uint8Array.of(0, 1, 0, 0, 1, 0),
  }) as unknown as RainRecord;
/** A vessel of ten litres of which four are drunk each day, and nine run in on the fourth. */
const DAYS = {
  inflow: Float64Array.of(0, 0, 0, 0.009, 0, 0),
  demand: new Float64Array(6).fill(0.004),
  usable: 0.01,
};

test("runsOf reckons a record both ways round, begun full and begun empty, as by hand", () => {
  const runs = runsOf(recordFrom("2025-06-01"), DAYS);
  expect(runs.map(({ convention, begins }) => `${convention} ${begins}`)).toEqual([
    "drawnFirst full",
    "drawnFirst empty",
    "rainFirst full",
    "rainFirst empty",
  ]);
  // Full and drawn first: 4, 4, 2, 0 (its rain comes later), 4, 4. Rain first: 4, 4, 2, 4, 4, 1.
  expect(runs.map(({ longestShort }) => longestShort)).toEqual([2, 4, 1, 3]);
  expect(runs.map(({ inTime }) => inTime)).toEqual([4, 2, 4, 2].map((days) => expect.closeTo(days / 6, 12)));
  expect(runs.map(({ inVolume }) => inVolume)).toEqual(
    [18, 8, 19, 9].map((litres) => expect.closeTo(litres / 24, 12)),
  );
});

test("runsOf tells days, days short, days not known and rain by season: winter begins in December", () => {
  const none = { days: 0, shortDays: 0, missing: 0, rain: 0 };
  const seasonsFrom = (day: string) => runsOf(recordFrom(day), DAYS)[0]!.seasons;
  const [before, after] = [
    { days: 2, shortDays: 0, missing: 1, rain: 0 },
    { days: 4, shortDays: 2, missing: 1, rain: 0.009 },
  ];
  expect(seasonsFrom("2024-11-29")).toEqual([after, none, none, before]);
  expect(seasonsFrom("2025-02-27")).toEqual([before, after, none, none]);
  expect(seasonsFrom("2025-05-30")).toEqual([none, before, after, none]);
  expect(seasonsFrom("2025-08-30")).toEqual([none, none, before, after]);
});

test("runsOf tells each year by itself", () => {
  expect(runsOf(recordFrom("2024-12-30"), DAYS)[0]!.years).toEqual([
    { year: 2024, days: 2, shortDays: 0, missing: 1, rain: 0 },
    { year: 2025, days: 4, shortDays: 2, missing: 1, rain: 0.009 },
  ]);
});

test("runsOf calls all there where nothing is wanted", () => {
  const [run] = runsOf(recordFrom("2025-06-01"), { ...DAYS, demand: new Float64Array(6) });
  expect([run!.inTime, run!.inVolume, run!.longestShort]).toEqual([1, 1, 0]);
});
