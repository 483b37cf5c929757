import { expect, test } from "vitest";
import type { AirRecord } from "../../../../packages/hydraulics/src/document/air-record.js";
import { readPlan } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { frostOfRecord } from "../../../../packages/hydraulics/src/judge/weather/frost-record.js";
import { dayNumber } from "../../../../packages/hydraulics/src/units/day.js";

const reading = readPlan(
  JSON.stringify({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "1 m" }],
    runs: [{ id: "hen line", length: "6 m", drinkers: { id: "pins", kind: "nipple-side-action", count: 4 } }],
    pens: [{ birds: { kind: "hen", count: 4 }, waterers: [{ id: "pan", kind: "rubber-pan-3gal" }] }],
  }),
);
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { plan } = reading;

/** A year of 5 °C with colder days put in, days of the year from 0. */
function yearOf(year: number, cold: Readonly<Record<number, number>>): AirRecord {
  const firstDay = dayNumber(year, 1, 1);
  const low = new Float64Array(dayNumber(year + 1, 1, 1) - firstDay).fill(5);
  for (const [day, air] of Object.entries(cold)) low[Number(day)] = air;
  return { name: "", firstDay, low, high: new Float64Array(low.length).fill(Number.NaN), known: low.length };
}

function told(air: AirRecord) {
  const answer = frostOfRecord(plan, air);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.record;
}

test("nights of frost are counted by winters, with first, last, coldest and the longest run", () => {
  const record = told(yearOf(2015, { 3: -4, 4: -9, 5: -1, 60: -2, 340: -6 }));
  expect(record.nightsAYear).toBeCloseTo(5 / (365 / 365.25), 9);
  expect(record.coldest).toEqual({ day: dayNumber(2015, 1, 5), low: -9 });
  expect(record.seasons).toMatchObject([
    {
      year: 2014,
      nights: 4,
      first: dayNumber(2015, 1, 4),
      last: dayNumber(2015, 3, 2),
      coldest: -9,
      longest: 3,
    },
    { year: 2015, nights: 1, first: dayNumber(2015, 12, 7), coldest: -6, longest: 1 },
  ]);
});

test("where it is cold in July, winters are years", () => {
  const { seasons } = told(yearOf(2015, { 180: -3, 190: -4 }));
  expect(seasons).toMatchObject([{ year: 2015, nights: 2, longest: 1 }]);
});

test("how often each part stops follows from each night's frost; the pan wants refills", () => {
  const { stops, refills, worst } = told(yearOf(2015, { 3: -0.4, 4: -12, 5: -12 }));
  const of = (id: string) => stops.find((one) => one.id === id)!;
  expect(of("pins").surely).toBeCloseTo(3 / (365 / 365.25), 6);
  expect(of("hen line").surely).toBeCloseTo(2 / (365 / 365.25), 6);
  expect(of("hen line").atWorst).toBeGreaterThanOrEqual(of("hen line").surely);
  expect(refills[0]).toMatchObject({ id: "pan" });
  expect(refills[0]!.aYear).toBeGreaterThan(1);
  expect(worst?.night.low).toBe(-12);
});

test("a record without frost stops nothing", () => {
  expect(told(yearOf(2015, {}))).toMatchObject({
    nightsAYear: 0,
    coldest: undefined,
    stops: [],
    worst: undefined,
  });
});

test("each night of frost counts once for where most of it is: three in June against two in January make the south", () => {
  const cold = { 3: -1, 4: -1, 160: -1, 161: -1, 162: -1 };
  expect(told(yearOf(2015, cold)).seasons).toMatchObject([{ year: 2015, nights: 5 }]);
  const { 160: _, ...even } = cold;
  expect(told(yearOf(2015, even)).seasons.map(({ year }) => year)).toEqual([2014, 2015]);
});

test("frost in May alone is of a winter in the south; nights colder than -40 degC are reckoned as that", () => {
  expect(told(yearOf(2015, { 130: -3 })).seasons).toMatchObject([{ year: 2015, nights: 1 }]);
  expect(told(yearOf(2015, { 5: -46 })).worst!.night.low).toBe(-40);
});
