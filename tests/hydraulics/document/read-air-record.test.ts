import { readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import type { AirReading, AirReadingOptions } from "../../../packages/hydraulics/src/document/air-record.js";
import { readAirRecord } from "../../../packages/hydraulics/src/document/read-air-record.js";
import { dayNumber } from "../../../packages/hydraulics/src/units/day.js";

const recordOf = (text: string, options?: AirReadingOptions) => {
  const reading = readAirRecord(text, options);
  if (!reading.ok) throw new Error(JSON.stringify(reading));
  return reading.record;
};
const problem = (reading: AirReading) => ("problems" in reading ? reading.problems[0] : undefined);
const question = (reading: AirReading) => ("question" in reading ? reading.question : undefined);

test("a station file in fixed columns gives TMIN and TMAX in tenths of a degree, flagged and missing ones left out", () => {
  const cell = (value: number, flag = " ") => `${String(value).padStart(5)} ${flag} `;
  const month = (element: string, cells: readonly string[]) =>
    `XX000000001201501${element}${[...cells, ...Array.from({ length: 31 - cells.length }, () => cell(-9999))].join("")}`;
  const record = recordOf(
    [
      month("PRCP", [cell(5)]),
      month("TMAX", [cell(31), cell(12)]),
      month("TMIN", [cell(-52), cell(-9999), cell(-8, "I"), cell(4)]),
    ].join("\n"),
  );
  expect(record).toMatchObject({ name: "XX000000001", firstDay: dayNumber(2015, 1, 1), known: 2 });
  expect([...record.low]).toEqual([-5.2, Number.NaN, Number.NaN, 0.4]);
  expect(record.high[0]).toBe(3.1);
});

test("lines by station do too", () => {
  const record = recordOf("XX000000001,20150101,TMIN,-52,,,S,\nXX000000001,20150102,TMIN,-61,,,S,\n");
  expect([...record.low]).toEqual([-5.2, -6.1]);
});

describe("a plain table", () => {
  const table = (heading: string, ...lines: readonly string[]) => `date,${heading}\n${lines.join("\n")}\n`;

  it("says its unit in the heading, in either unit", () => {
    expect([...recordOf(table("tmin C", "2015-01-01,-5", "2015-01-02,")).low]).toEqual([-5]);
    expect([...recordOf(table("tmin_f", "2015-01-01,23")).low]).toEqual([-5]);
  });

  it("is asked its unit where it does not, and takes the answer", () => {
    const text = table("tmin", "2015-01-01,23");
    expect(question(readAirRecord(text))).toMatchObject({
      ask: "degrees",
      choices: ["C", "F", "tenths of C"],
    });
    expect(recordOf(text, { degrees: "F" }).low[0]).toBe(-5);
    expect(recordOf(table("TMIN", "2015-01-01,-150", "2015-01-02,20")).low[0]).toBe(-15);
  });

  it("is asked about dates and places as a record of rain is", () => {
    const text = "date,tmin C,place\n01/02/2015,-5,here\n";
    expect(question(readAirRecord(text))).toMatchObject({ ask: "dates" });
    expect(recordOf(text, { dates: "day first" }).firstDay).toBe(dayNumber(2015, 2, 1));
    const two = "date,tmin C,place\n2015-01-01,-5,here\n2015-01-01,3,there\n";
    expect(question(readAirRecord(two))).toEqual({ ask: "place", choices: ["here", "there"] });
    expect(recordOf(two, { place: "there" }).low[0]).toBe(3);
  });

  it.each([
    ["no such column", "date,rain mm\n2015-01-01,3\n", "missing"],
    ["nothing", "", "missing"],
    ["no temperature", table("tmin C", "2015-01-01,"), "tooFew"],
    ["words", table("tmin C", "2015-01-01,cold"), "unreadableQuantity"],
    ["a day that is none", table("tmin C", "2015-02-30,-3"), "unreadableQuantity"],
    ["air beyond any", table("tmin C", "2015-01-01,-120"), "outOfRange"],
    ["days too far apart", table("tmin C", "1015-01-01,-3", "2015-01-01,-3"), "tooMany"],
  ])("with %s is refused in one clear problem", (_, text, code) => {
    expect(problem(readAirRecord(text))?.code).toBe(code);
  });
});

test("the record of New York that open data ships has 41, 74, 79 and 70 nights of frost, the coldest -16 °C", () => {
  const record = recordOf(readFileSync("node_modules/vega-datasets/data/weather.csv", "utf8"), {
    degrees: "C",
    place: "New York",
  });
  const counts = [2012, 2013, 2014, 2015].map((year) => {
    const from = dayNumber(year, 1, 1) - record.firstDay;
    return record.low.slice(from, dayNumber(year + 1, 1, 1) - record.firstDay).filter((low) => low < 0)
      .length;
  });
  expect(counts).toEqual([41, 74, 79, 70]);
  expect(Math.min(...record.low)).toBe(-16);
});
