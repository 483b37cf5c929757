import { dayNumber } from "../units/day.js";
import { recordOfDays } from "./rain-days.js";
import { type RainDay, type RainReading, refuse } from "./rain-record.js";

/*
 * GHCN-Daily station files (NOAA NCEI; Menne and others 2012). Fixed columns: station 1-11, year 12-15, month 16-17,
 * element 18-21, then for each of 31 days value (5), measurement, quality and source flag (1 each). Lines: station,
 * yyyymmdd, element, value, the three flags, time. Rain in tenths of a millimetre, temperatures in tenths of a degree,
 * -9999 is missing. A value with a quality flag failed a check and is left out; a trace is nought.
 */

export const MISSING = -9999;

export interface StationReading {
  readonly day: number;
  readonly element: string;
  readonly value: number;
  readonly isFlagged: boolean;
}

/** Reads a station file that has no headings. */
export function readStationLines(lines: readonly string[], form: "fixed columns" | "lines"): RainReading {
  const days = new Map<
    number,
    { rain: number | undefined; high: number | undefined; low: number | undefined; hasRain: boolean }
  >();
  let flagged = 0;
  let station = "";
  for (const [index, line] of lines.entries()) {
    if (line.trim() === "") continue;
    const readings = form === "fixed columns" ? readFixed(line) : readLine(line);
    if (readings === undefined) return notAStationLine(line, index + 1, form);
    const name = line.slice(0, 11);
    if (station === "") station = name;
    if (name !== station) return otherStation(name, station, index + 1);
    for (const { day, element, value, isFlagged } of readings) {
      const one = days.get(day) ?? { rain: undefined, high: undefined, low: undefined, hasRain: false };
      days.set(day, one);
      if (element === "PRCP") {
        one.hasRain = true;
        if (isFlagged) flagged += 1;
        else if (value !== MISSING) one.rain = value;
      } else if (value !== MISSING && !isFlagged) {
        if (element === "TMAX") one.high = value / 10;
        if (element === "TMIN") one.low = value / 10;
      }
    }
  }
  const withRain: RainDay[] = [...days.entries()]
    .filter(([, one]) => one.hasRain)
    .map(([day, { rain, high, low }]) => ({ day, rain, high, low }));
  return recordOfDays(withRain, { name: station, format: `station, ${form}`, unit: "tenths of mm", flagged });
}

export function readFixed(line: string): StationReading[] | undefined {
  const match = /^[A-Z0-9_-]{11}(\d{4})(\d{2})([A-Z0-9]{4})/.exec(line);
  if (match === null) return undefined;
  const [year, month, element] = [Number(match[1]), Number(match[2]), match[3]];
  if (month < 1 || month > 12) return undefined;
  const monthEnd =
    (month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1)) - dayNumber(year, month, 1);
  const readings: StationReading[] = [];
  for (let k = 0; k < monthEnd; k += 1) {
    const cell = line.slice(21 + 8 * k, 29 + 8 * k);
    const value = Number(cell.slice(0, 5));
    if (cell.length < 5 || !Number.isInteger(value)) return undefined;
    readings.push({
      day: dayNumber(year, month, k + 1),
      element,
      value,
      isFlagged: (cell[6] ?? " ") !== " ",
    });
  }
  return readings;
}

export function readLine(line: string): StationReading[] | undefined {
  const [, date, element, typed, , quality] = line.split(",");
  const match = /^(\d{4})(\d{2})(\d{2})$/.exec(date ?? "");
  const value = Number(typed);
  if (match === null || element === undefined || typed === undefined || !Number.isInteger(value))
    return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return [{ day: dayNumber(year, month, day), element, value, isFlagged: (quality ?? "") !== "" }];
}

export const notAStationLine = (line: string, at: number, form: string) =>
  refuse(
    "unreadableQuantity",
    "the record",
    JSON.stringify(line.slice(0, 60)),
    form === "fixed columns"
      ? "A line of a station file in fixed columns: station, year, month, element, 31 days of eight columns."
      : "A line of a station file: station, date, element, value, flags.",
    "Take the file anew; it may have been cut or changed by a spreadsheet.",
    at,
  );

export const otherStation = (name: string, station: string, at: number) =>
  refuse(
    "keyTwice",
    "the record",
    JSON.stringify(name),
    `The file began with station ${JSON.stringify(station)}: a record is of one place.`,
    "Keep the lines of one station only.",
    at,
  );
