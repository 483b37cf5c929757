import {
  AIR_UNITS,
  type AirQuestion,
  type AirReading,
  type AirReadingOptions,
  type AirRecord,
  type AirUnit,
} from "./air-record.js";
import {
  type Cells,
  cellsOf,
  chooseRows,
  columnHeaded,
  columnOfDates,
  dayIn,
  HEADED,
  NOT_KNOWN,
  numberIn,
  orderOfDates,
} from "./day-table.js";
import { type RainQuestion, refuseRecord } from "./rain-record.js";
import { readStationFile, recordLines } from "./station-file.js";

/** A day as read. */
interface AirDay {
  readonly day: number;
  low: number | undefined;
  high: number | undefined;
}

/** A record longer than this is cut by its reader's own choice of years. */
const MOST_DAYS = 200 * 366;

/** Nothing on earth is colder or warmer than these [°C]. */
const SENSIBLE = { least: -90, most: 60 } as const;

/**
 * Reads a daily record of the air: a station file of GHCN-Daily with TMIN, in any of its published forms, or a plain
 * table of dates and lowest temperatures. What the text leaves open is asked, never guessed.
 *
 * @param text     the file's text
 * @param options  answers to what was asked
 * @returns the record, a question, or one clear problem; never throws
 * @example readAirRecord("date,low C\n2025-01-01,-4\n2025-01-02,-9").record.low[1]   // -9
 */
export function readAirRecord(text: string, options: AirReadingOptions = {}): AirReading {
  const opened = recordLines(text);
  if (!opened.ok) return opened;
  const { lines, form } = opened;
  return form === "table" ? readTable(lines, options) : readStation(lines, form);
}

function readStation(lines: readonly string[], form: "fixed columns" | "lines"): AirReading {
  const days = new Map<number, AirDay>();
  const read = readStationFile(lines, form, ({ day, element, value, isFlagged }) => {
    if (value === undefined || isFlagged || (element !== "TMIN" && element !== "TMAX")) return;
    const one = days.get(day) ?? { day, low: undefined, high: undefined };
    days.set(day, one);
    one[element === "TMIN" ? "low" : "high"] = value / 10;
  });
  return read.ok ? recordOf([...days.values()], read.station) : read;
}

function readTable(lines: readonly string[], options: AirReadingOptions): AirReading {
  const table = cellsOf(lines);
  const columns = table.rows.length === 0 ? undefined : findColumns(table);
  if (columns === undefined)
    return refuseRecord({
      code: "missing",
      found: `columns ${JSON.stringify((table.headings ?? []).join(", ").slice(0, 60))}`,
      allowed: "A column of dates and one of the lowest temperature of each.",
      mend: 'Head them for instance "date" and "tmin C".',
    });
  const { place } = options;
  const chosen = chooseRows(table, columns.place, place === undefined ? {} : { place });
  if (!chosen.ok) return "question" in chosen ? { ok: false, question: alike(chosen.question) } : chosen;
  const order = orderOfDates(
    chosen.rows,
    columns.date,
    options.dates === undefined ? {} : { dates: options.dates },
  );
  if (!order.ok) return "question" in order ? { ok: false, question: alike(order.question) } : order;
  const unit = unitOf(table, columns.low, chosen.rows, options);
  if (typeof unit !== "string") return unit;
  const days: AirDay[] = [];
  for (const { line, cells } of chosen.rows) {
    const day = dayIn(cells[columns.date] ?? "", order.dates);
    const low = airIn(cells[columns.low] ?? "", table.decimal, unit);
    if (day === undefined || low === "unreadable")
      return unreadable(day === undefined ? cells[columns.date] : cells[columns.low], line);
    const high = columns.high < 0 ? undefined : airIn(cells[columns.high] ?? "", table.decimal, unit);
    days.push({ day, low, high: high === "unreadable" ? undefined : high });
  }
  return recordOf(days, chosen.name);
}

/** Columns of dates and air: lowest, and highest where there is one. */
function findColumns(table: Cells) {
  const date = columnOfDates(table);
  const low = columnHeaded(table, HEADED.low);
  if (date < 0 || low < 0) return undefined;
  return { date, low, high: columnHeaded(table, HEADED.high), place: columnHeaded(table, HEADED.place) };
}

/** Questions of both readers are alike; that of the rain's unit is never met here. */
const alike = (question: RainQuestion): AirQuestion =>
  question.ask === "unit" ? { ask: "degrees", choices: AIR_UNITS, example: question.example } : question;

const unreadable = (cell: string | undefined, line: number) =>
  refuseRecord({
    code: "unreadableQuantity",
    found: JSON.stringify((cell ?? "").slice(0, 40)),
    allowed: "A date and a temperature, as on the other lines; nothing where it is not known.",
    mend: "Correct or clear it.",
    line,
  });

function airIn(cell: string, decimal: "." | ",", unit: AirUnit): number | undefined | "unreadable" {
  if (cell.trim() === "" || NOT_KNOWN.test(cell)) return undefined;
  const value = numberIn(cell, decimal);
  if (value === undefined) return "unreadable";
  return unit === "F" ? (value - 32) / 1.8 : unit === "C" ? value : value / 10;
}

/** As the heading says; tenths where values are beyond any air; else it is asked. */
function unitOf(
  { headings, decimal }: Cells,
  column: number,
  rows: Cells["rows"],
  { degrees }: AirReadingOptions,
): AirUnit | Extract<AirReading, { question: object }> {
  if (degrees !== undefined) return degrees;
  const heading = headings?.[column] ?? "";
  if (/(?:\b|_|°)c(?:elsius)?\b/i.test(heading)) return "C";
  if (/(?:\b|_|°)f(?:ahrenheit)?\b/i.test(heading)) return "F";
  const values = rows.map(({ cells }) => numberIn(cells[column] ?? "", decimal) ?? 0);
  if (values.every(Number.isInteger) && values.some((value) => Math.abs(value) > 140)) return "tenths of C";
  const example = rows[0]?.cells.join(", ").slice(0, 80) ?? "";
  return { ok: false, question: { ask: "degrees", choices: AIR_UNITS, example } };
}

function recordOf(days: readonly AirDay[], name: string): AirReading {
  const told = days.filter(({ low }) => low !== undefined);
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { day, low, high } of told) {
    first = Math.min(first, day);
    last = Math.max(last, day);
    const wrong = [low, high].find((one = 0) => one < SENSIBLE.least || one > SENSIBLE.most);
    if (wrong !== undefined)
      return refuseRecord({
        code: "outOfRange",
        found: `${Number(wrong.toPrecision(4))} °C`,
        allowed: "The air is from -90 to 60 °C.",
        mend: "Check the unit of the temperatures.",
      });
  }
  const count = last - first + 1;
  if (told.length === 0 || count > MOST_DAYS)
    return refuseRecord({
      code: told.length === 0 ? "tooFew" : "tooMany",
      found: told.length === 0 ? "no day with a lowest temperature" : `${count} days`,
      allowed: `A record has a line for each day, with its date and lowest temperature, for at most ${MOST_DAYS} days.`,
      mend: "Check that this is the file of a station that measures temperature.",
    });
  const record: AirRecord = {
    name,
    firstDay: first,
    low: new Float64Array(count).fill(Number.NaN),
    high: new Float64Array(count).fill(Number.NaN),
    known: new Set(told.map(({ day }) => day)).size,
  };
  for (const { day, low, high } of told) {
    record.low[day - first] = low ?? Number.NaN;
    record.high[day - first] = high ?? Number.NaN;
  }
  return { ok: true, record };
}
