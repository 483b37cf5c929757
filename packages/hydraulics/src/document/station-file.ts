import { dayNumber } from "../units/day.js";
import { LIMITS } from "./limits.js";
import { type Problem, writeFound } from "./problem.js";
import { refuseRecord } from "./rain-record.js";

/*
 * GHCN-Daily station files (NOAA NCEI; Menne and others 2012). Fixed columns: station 1-11, year 12-15, month 16-17,
 * element 18-21, then for each of 31 days value (5), measurement, quality and source flag (1 each). Lines: station,
 * yyyymmdd, element, value, the three flags, time. Rain in tenths of a millimetre, temperatures in tenths of a degree,
 * -9999 is missing. A value with a quality flag failed a check and is left out; a trace is nought.
 */

const MISSING = -9999;

/** One value of a station file: tenths of a millimetre or of a degree. */
export interface StationReading {
  readonly day: number;
  readonly element: string;
  /** Undefined where it is missing. */
  readonly value: number | undefined;
  readonly isFlagged: boolean;
}

/** A record's lines, and the form they have; "table" where it is no station file without headings. */
export interface RecordLines {
  readonly lines: readonly string[];
  readonly form: "fixed columns" | "lines" | "table";
}

type Refused = { readonly ok: false; readonly problems: readonly Problem[] };

/** Takes a record's text apart into lines, or refuses what is no text or too long. */
export function recordLines(text: unknown): ({ readonly ok: true } & RecordLines) | Refused {
  if (typeof text !== "string")
    return refuseRecord({
      code: "notText",
      found: writeFound(text),
      allowed: "A record is text.",
      mend: "Pass the text of the file.",
    });
  if (text.length > LIMITS.textLength)
    return refuseRecord({
      code: "tooLarge",
      found: `${text.length} characters`,
      allowed: `A record has at most ${LIMITS.textLength} characters.`,
      mend: "Cut it to some ten years.",
    });
  const lines = text.replace(/^\ufeff/, "").split(/\r\n|\n|\r/);
  return { ok: true, lines, form: formOf(lines.find((line) => line.trim() !== "") ?? "") };
}

function formOf(first: string): RecordLines["form"] {
  // Station, year, month, element in columns 1 to 21, then days of eight columns each.
  if (/^[A-Z0-9_-]{11}\d{6}[A-Z0-9]{4}[ \d-]{5}/.test(first) && first.length >= 29) return "fixed columns";
  // Station, date, element, value, flags; no headings.
  return /^[A-Z0-9_-]{11},\d{8},[A-Z0-9]{4},-?\d+,/.test(first) ? "lines" : "table";
}

/**
 * Goes through a station file that has no headings.
 *
 * @param take  is given each value in turn
 * @returns the station's name, or one clear problem
 */
export function readStationFile(
  lines: readonly string[],
  form: "fixed columns" | "lines",
  take: (reading: StationReading) => void,
): { readonly ok: true; readonly station: string } | Refused {
  let station = "";
  for (const [index, line] of lines.entries()) {
    if (line.trim() === "") continue;
    const readings = form === "fixed columns" ? readFixed(line) : readLine(line);
    if (readings === undefined) return notAStationLine(line, index + 1, form);
    const name = line.slice(0, 11);
    if (station === "") station = name;
    if (name !== station) return otherStation(name, station, index + 1);
    for (const reading of readings) take(reading);
  }
  return { ok: true, station };
}

function readFixed(line: string): StationReading[] | undefined {
  const match = /^[A-Z0-9_-]{11}(\d{4})(\d{2})([A-Z0-9]{4})/.exec(line);
  if (match === null) return undefined;
  const [year, month, element] = [Number(match[1]), Number(match[2]), match[3]];
  if (month < 1 || month > 12) return undefined;
  const readings: StationReading[] = [];
  for (let k = 0; k < daysIn(year, month); k += 1) {
    const cell = line.slice(21 + 8 * k, 29 + 8 * k);
    const value = Number(cell.slice(0, 5));
    if (cell.length < 5 || !Number.isInteger(value)) return undefined;
    readings.push({
      day: dayNumber(year, month, k + 1),
      element,
      value: known(value),
      isFlagged: (cell[6] ?? " ") !== " ",
    });
  }
  return readings;
}

function readLine(line: string): StationReading[] | undefined {
  const [, date, element, typed, , quality] = line.split(",");
  const match = /^(\d{4})(\d{2})(\d{2})$/.exec(date ?? "");
  const value = Number(typed);
  if (match === null || element === undefined || typed === undefined || !Number.isInteger(value))
    return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return undefined;
  return [
    { day: dayNumber(year, month, day), element, value: known(value), isFlagged: (quality ?? "") !== "" },
  ];
}

const daysIn = (year: number, month: number) =>
  (month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1)) - dayNumber(year, month, 1);

const known = (value: number): number | undefined => (value === MISSING ? undefined : value);

const notAStationLine = (line: string, at: number, form: string) =>
  refuseRecord({
    code: "unreadableQuantity",
    found: JSON.stringify(line.slice(0, 60)),
    allowed:
      form === "fixed columns"
        ? "A line of a station file in fixed columns: station, year, month, element, 31 days of eight columns."
        : "A line of a station file: station, date, element, value, flags.",
    mend: "Take the file anew; it may have been cut or changed by a spreadsheet.",
    line: at,
  });

const otherStation = (name: string, station: string, at: number) =>
  refuseRecord({
    code: "keyTwice",
    found: JSON.stringify(name),
    allowed: `The file began with station ${JSON.stringify(station)}: a record is of one place.`,
    mend: "Keep the lines of one station only.",
    line: at,
  });
