import { readStationLines } from "./rain-lines.js";
import type { RainReading, RainReadingOptions } from "./rain-record.js";
import { readRainTable } from "./rain-table.js";
import { recordLines } from "./station-file.js";

/**
 * Reads a daily record of rain: a station file of GHCN-Daily in one of its published forms (fixed columns, lines by
 * station or by year, table with headings), or a plain table of dates and rain. What the text leaves open is asked,
 * never guessed.
 *
 * @param text     the file's text
 * @param options  answers to what was asked
 * @returns the record, a question, or one clear problem; never throws
 * @example readRainRecord("date,rain mm\n2025-05-01,12").record.rain[0]   // 0.012
 */
export function readRainRecord(text: string, options: RainReadingOptions = {}): RainReading {
  const opened = recordLines(text);
  if (!opened.ok) return opened;
  const { lines, form } = opened;
  return form === "table" ? readRainTable(lines, options) : readStationLines(lines, form);
}
