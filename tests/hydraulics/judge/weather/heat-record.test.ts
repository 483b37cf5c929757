import { expect, test } from "vitest";
import {
  type AirRecord,
  checkDocument,
  heatOfPlan,
  heatOfRecord,
  readAirRecord,
  writeHeatRecordAnswer,
} from "../../../../packages/hydraulics/src/index.js";
import { dayNumber } from "../../../../packages/hydraulics/src/units/day.js";

const reading = checkDocument({
  headfall: 1,
  weather: { high: "28 degC", low: "17 degC" },
  sources: [{ id: "drum", vessel: "drum-55gal-plastic", stand: "1 m", shade: "100 %" }],
  runs: [{ id: "hen line", length: "6 m", drinkers: { id: "pins", kind: "nipple-side-action", count: 4 } }],
  pens: [
    { birds: { kind: "hen", count: 4 }, waterers: [{ id: "pan", kind: "rubber-pan-3gal", shade: true }] },
  ],
});
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { plan } = reading;

/** A year of 18 °C with hotter days put in, days of the year from 0. */
function yearOf(year: number, hot: Readonly<Record<number, number>>): AirRecord {
  const firstDay = dayNumber(year, 1, 1);
  const high = new Float64Array(dayNumber(year + 1, 1, 1) - firstDay).fill(18);
  for (const [day, air] of Object.entries(hot)) high[Number(day)] = air;
  return { name: "", firstDay, high, low: new Float64Array(high.length).fill(Number.NaN), known: 0 };
}

function told(air: AirRecord) {
  const answer = heatOfRecord(plan, air);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.record;
}

test("hot days are counted by year, with first, last, hottest and the longest run", () => {
  const record = told(
    yearOf(2015, { 150: 26, 180: 31, 181: 30, 182: 29.9, 200: 36, 201: Number.NaN, 202: 33 }),
  );
  expect(record.known).toBe(364);
  expect(record.hotAYear).toBeCloseTo(4 / (364 / 365.25), 9);
  expect(record.hottest).toEqual({ day: dayNumber(2015, 1, 201), high: 36 });
  expect(record.seasons).toEqual([
    {
      year: 2015,
      known: 364,
      summer: 6,
      hot: 4,
      first: dayNumber(2015, 1, 181),
      last: dayNumber(2015, 1, 203),
      hottest: 36,
      longest: 2,
    },
  ]);
});

test("where it is hottest in January, summers are of years that begin in July", () => {
  const { seasons } = told(yearOf(2015, { 10: 34, 20: 35, 350: 33 }));
  expect(seasons.map(({ year, hot }) => [year, hot])).toEqual([
    [2014, 2],
    [2015, 1],
  ]);
});

test("a part is too warm on the days on which the plan asked about that high says so", () => {
  const hot = { 150: 26, 180: 31, 181: 30.2, 200: 36, 202: 44 };
  const { often, worst, known } = told(yearOf(2015, hot));
  const years = known / 365.25;
  for (const { id, atWorst, expected } of often) {
    const days = Object.values(hot).map((high) => {
      const heat = heatOfPlan(plan, { high: Math.ceil(high) });
      if (!heat.ok) throw new Error("the plan can be reckoned");
      return heat.heat.parts.find((part) => part.id === id)!;
    });
    expect(atWorst * years).toBeCloseTo(days.filter(({ hottest }) => hottest.less > 0).length, 9);
    expect(expected * years).toBeCloseTo(days.filter((part) => part.expected.less > 0).length, 9);
  }
  expect(often.map(({ id }) => id)).toEqual(["hen line", "pan"]);
  expect(worst!.day.high).toBe(44);
});

test("a record without highest temperatures, or without a warm day, says so", () => {
  const lows = readAirRecord("date,low C\n2025-01-01,-4\n2025-01-02,-9");
  if (!lows.ok) throw new Error("it can be read");
  expect(writeHeatRecordAnswer(told(lows.record), "metric")).toBe("The record has no highest temperatures.");
  const mild = told(yearOf(2015, {}));
  expect(mild).toMatchObject({ hotAYear: 0, often: [], worst: undefined });
  expect(writeHeatRecordAnswer(mild, "us")).toBe(
    "0 days a year of 86 °F and more, the hottest 64 °F on 2015-01-01.",
  );
});
