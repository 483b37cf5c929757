import { LIMITS } from "./limits.js";
import { writeFound } from "./problem.js";
import { readStationLines } from "./rain-lines.js";
import { type RainReading, type RainReadingOptions, refuse } from "./rain-record.js";
import { readRainTable } from "./rain-table.js";

/**
 * Reads a daily record of rain: a station file of GHCN-Daily in one of its published forms (fixed columns, lines by
 * station or by year, table with headings), or a plain table of dates and rain. What the text leaves open is asked,
 * never guessed.
 *
 * @param text     the file's text
 * @param options  answers to what was asked
 * @returns the record, a question, or one clear problem; never throws
 */
export function readRainRecord(text: string, options: RainReadingOptions = {}): RainReading {
  if (typeof text !== "string")
    return refuse(
      "notText",
      "the record",
      writeFound(text),
      "A record is text.",
      "Pass the text of the file.",
    );
  if (text.length > LIMITS.textLength)
    return refuse(
      "tooLarge",
      "the record",
      `${text.length} characters`,
      `A record has at most ${LIMITS.textLength} characters.`,
      "Cut it to some ten years.",
    );
  const lines = text.replace(/^\ufeff/, "").split(/\r\n|\n|\r/);
  const first = lines.find((line) => line.trim() !== "") ?? "";
  if (isFixedColumns(first)) return readStationLines(lines, "fixed columns");
  if (isStationLine(first)) return readStationLines(lines, "lines");
  return readRainTable(lines, options);
}

/** Station, year, month, element in columns 1 to 21, then days of eight columns each. */
export const isFixedColumns = (line: string) =>
  /^[A-Z0-9_-]{11}\d{6}[A-Z0-9]{4}[ \d-]{5}/.test(line) && line.length >= 29;

/** Station, date, element, value, flags; no headings. */
export const isStationLine = (line: string) => /^[A-Z0-9_-]{11},\d{8},[A-Z0-9]{4},-?\d+,/.test(line);
