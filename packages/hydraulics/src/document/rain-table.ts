import { dayNumber } from "../units/day.js";
import { recordOfDays } from "./rain-days.js";
import {
  type DateOrder,
  type RainDay,
  type RainReading,
  type RainReadingOptions,
  type RainRecord,
  type RainUnit,
  refuse,
} from "./rain-record.js";

/** A table of dates and rain, split into cells. */
export interface Cells {
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly headings: readonly string[] | undefined;
  readonly decimal: "." | ",";
}

/** Which column is what. */
export interface Columns {
  readonly date: number;
  readonly rain: number;
  readonly high: number;
  readonly low: number;
  readonly place: number;
  readonly flags: number;
}

const IS_DATE = /^(\d{4})[-/.]?(\d{1,2})[-/.]?(\d{1,2})(?:[T ].*)?$|^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/;
export const NOT_KNOWN = /^(?:|na|n\/a|nan|null|none|-|--|m|-9999(?:\.0+)?|-999(?:\.0+)?|9999(?:\.0+)?)$/i;
const IS_TRACE = /^(?:t|tr|trace)$/i;

/** Reads a plain table, or a station's table with headings. */
export function readRainTable(lines: readonly string[], options: RainReadingOptions): RainReading {
  const table = cellsOf(lines);
  if (table.rows.length === 0)
    return refuse(
      "tooFew",
      "the record",
      "no line with a date",
      "A record has a line for each day, with its date and its rain.",
      "Check that this is the right file.",
    );
  const columns = findColumns(table);
  if (columns === undefined)
    return refuse(
      "missing",
      "the record",
      `columns ${JSON.stringify((table.headings ?? []).join(", ").slice(0, 60))}`,
      "A column of dates and a column of rain.",
      'Head them for instance "date" and "rain mm".',
    );
  const chosen = chooseRows(table, columns, options);
  if (!chosen.ok) return chosen;
  const order = orderOfDates(chosen.rows, columns.date, options);
  if (!order.ok) return order;
  const isStation = columns.flags >= 0 && /^(station|prcp)/i.test(table.headings?.[0] ?? "");
  const unit = unitOf(table, columns, chosen.rows, isStation, options);
  if (!unit.ok) return unit;
  const read = readRows(chosen.rows, columns, order.dates, table.decimal, unit.unit === "tenths of mm");
  if (!read.ok) return read;
  const format: RainRecord["format"] = isStation ? "station, table" : "table";
  return recordOfDays(read.days, { name: chosen.name, format, unit: unit.unit, flagged: read.flagged });
}

export function cellsOf(lines: readonly string[]): Cells {
  const used = lines
    .map((text, index) => ({ text, line: index + 1 }))
    .filter(({ text }) => text.trim() !== "" && !/^\s*[#;]/.test(text));
  const sample = used
    .slice(0, 20)
    .map(({ text }) => text)
    .join("\n");
  const separator = [";", "\t", ","].find((sign) => sample.includes(sign)) ?? " ";
  const split = (text: string) =>
    separator === " " ? text.trim().split(/\s+/) : splitQuoted(text, separator).map((cell) => cell.trim());
  const rows = used.map(({ text, line }) => ({ line, cells: split(text) }));
  const firstIsHeading = rows[0]?.cells.every((cell) => !IS_DATE.test(cell)) ?? false;
  return {
    headings: firstIsHeading ? rows[0].cells : undefined,
    rows: firstIsHeading ? rows.slice(1) : rows,
    decimal: separator === "," ? "." : decimalOf(rows.map(({ cells }) => cells)),
  };
}

/** Cells of one line; a separator within double quotes is text. */
function splitQuoted(text: string, separator: string): string[] {
  if (!text.includes('"')) return text.split(separator);
  const cells: string[] = [];
  let cell = "";
  let isQuoted = false;
  for (const sign of text) {
    if (sign === '"') isQuoted = !isQuoted;
    else if (sign === separator && !isQuoted) {
      cells.push(cell);
      cell = "";
    } else cell += sign;
  }
  cells.push(cell);
  return cells;
}

const decimalOf = (rows: readonly (readonly string[])[]): "." | "," =>
  rows.some((cells) => cells.some((cell) => /^-?\d+,\d+$/.test(cell))) ? "," : ".";

function findColumns({ rows, headings }: Cells): Columns | undefined {
  const [row] = rows;
  const named = (pattern: RegExp) => headings?.findIndex((heading) => pattern.test(heading)) ?? -1;
  const dateNamed = named(/^(date|day|datum|time|dato|fecha|giorno)\b/i);
  const date = dateNamed >= 0 ? dateNamed : row.cells.findIndex((cell) => IS_DATE.test(cell));
  const rainNamed = named(/^(prcp|precip|rain|rainfall|niederschlag|regen|pluie|lluvia|pioggia|mm$|in$)/i);
  const numbers = row.cells
    .map((cell, k) => (k !== date && (isNumber(cell) || NOT_KNOWN.test(cell)) ? k : -1))
    .filter((k) => k >= 0);
  const rain = rainNamed >= 0 ? rainNamed : (numbers[0] ?? -1);
  if (date < 0 || rain < 0) return undefined;
  return {
    date,
    rain,
    high: named(HIGH),
    low: named(LOW),
    place: named(PLACE),
    flags: named(/^prcp_attributes$/i),
  };
}

/** Columns of dates and air: lowest, and highest where there is one. */
export function findAirColumns({ rows, headings }: Cells): Omit<Columns, "rain" | "flags"> | undefined {
  const named = (pattern: RegExp) => headings?.findIndex((heading) => pattern.test(heading)) ?? -1;
  const date = rows[0].cells.findIndex((cell) => IS_DATE.test(cell));
  const low = named(LOW);
  if (date < 0 || low < 0) return undefined;
  return { date, low, high: named(HIGH), place: named(PLACE) };
}

const HIGH = /^(tmax|temp_?max|t_max|high|max)/i;
const LOW = /^(tmin|temp_?min|t_min|low|min)/i;
const PLACE = /^(location|place|site|station|name)$/i;

const isNumber = (cell: string) => /^-?\d+(?:[.,]\d+)?$/.test(cell);

type Rows = Cells["rows"];

/** The rows of one place; asks which where there are several. */
export function chooseRows(
  { rows }: Cells,
  { place }: Pick<Columns, "place">,
  options: RainReadingOptions,
): { ok: true; rows: Rows; name: string } | Extract<RainReading, { ok: false }> {
  if (place < 0) return { ok: true, rows, name: "" };
  const places = [...new Set(rows.map(({ cells }) => cells[place] ?? ""))];
  if (places.length === 1) return { ok: true, rows, name: places[0] };
  const wanted = places.find(
    (one) => one.toLowerCase().replace(/\W/g, "") === options.place?.toLowerCase().replace(/\W/g, ""),
  );
  if (wanted === undefined) return { ok: false, question: { ask: "place", choices: places.slice(0, 50) } };
  return { ok: true, rows: rows.filter(({ cells }) => cells[place] === wanted), name: wanted };
}

/** Which of the two short numbers is the day; one above 12 tells. */
export function orderOfDates(
  rows: Rows,
  column: number,
  options: RainReadingOptions,
): { ok: true; dates: DateOrder } | Extract<RainReading, { ok: false }> {
  let isOpen = false;
  let example = "";
  for (const { cells } of rows) {
    const match = IS_DATE.exec(cells[column] ?? "");
    if (match?.[4] === undefined) continue;
    const [one, other] = [Number(match[4]), Number(match[5])];
    if (one > 12) return { ok: true, dates: "day first" };
    if (other > 12) return { ok: true, dates: "month first" };
    isOpen = true;
    example = match[0];
  }
  if (!isOpen) return { ok: true, dates: "day first" };
  if (options.dates !== undefined) return { ok: true, dates: options.dates };
  return { ok: false, question: { ask: "dates", choices: ["day first", "month first"], example } };
}

/** The unit as a heading names it, or as a station's table has it; else it is asked. */
function unitOf(
  { headings, decimal }: Cells,
  columns: Columns,
  rows: Rows,
  isStation: boolean,
  options: RainReadingOptions,
): { ok: true; unit: RainUnit } | Extract<RainReading, { ok: false }> {
  if (options.unit !== undefined) return { ok: true, unit: options.unit };
  const heading = headings?.[columns.rain] ?? "";
  if (/\bmm\b|millimet/i.test(heading)) return { ok: true, unit: "mm" };
  if (/\bin(?:ch(?:es)?)?\b|["″]/i.test(heading)) return { ok: true, unit: "in" };
  if (/\bcm\b/i.test(heading)) return { ok: true, unit: "cm" };
  const values = rows.map(({ cells }) => numberIn(cells[columns.rain] ?? "", decimal) ?? 0);
  const mostInDay = values.reduce((most, one) => Math.max(most, one), 0);
  // A station's own table counts in tenths of a millimetre, whole numbers; one made on order may be in mm or inches.
  if (isStation && values.every(Number.isInteger)) return { ok: true, unit: "tenths of mm" };
  const wet = rows.find(({ cells }) => (numberIn(cells[columns.rain] ?? "", decimal) ?? 0) > 0);
  const choices: RainUnit[] = isStation ? ["mm", "in", "tenths of mm"] : ["mm", "in", "cm"];
  return {
    ok: false,
    question: { ask: "unit", choices, example: wet?.cells.join(", ").slice(0, 80) ?? "", mostInDay },
  };
}

export function numberIn(cell: string, decimal: "." | ","): number | undefined {
  const text = decimal === "," ? cell.replace(",", ".") : cell;
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

function readRows(
  rows: Rows,
  columns: Columns,
  dates: DateOrder,
  decimal: "." | ",",
  isInTenths: boolean,
): { ok: true; days: RainDay[]; flagged: number } | Extract<RainReading, { ok: false }> {
  const days: RainDay[] = [];
  let flagged = 0;
  for (const { line, cells } of rows) {
    const day = dayIn(cells[columns.date] ?? "", dates);
    if (day === undefined)
      return refuse(
        "unreadableQuantity",
        "the record",
        JSON.stringify((cells[columns.date] ?? "").slice(0, 40)),
        "A date, as on the other lines.",
        'Write for instance "2026-07-04".',
        line,
      );
    const typed = cells[columns.rain] ?? "";
    const value = IS_TRACE.test(typed) ? 0 : numberIn(typed, decimal);
    const isMissing = NOT_KNOWN.test(typed);
    if (value === undefined && !isMissing)
      return refuse(
        "unreadableQuantity",
        "the record",
        JSON.stringify(typed.slice(0, 40)),
        "The rain of the day, a number; nothing where it is not known.",
        "Correct or clear it.",
        line,
      );
    if (value !== undefined && !isMissing && value < 0)
      return refuse(
        "outOfRange",
        "the record",
        typed,
        "Rain is not below 0.",
        "Correct it, or clear it where it is not known.",
        line,
      );
    const isFlagged = columns.flags >= 0 && ((cells[columns.flags] ?? "").split(",")[1] ?? "").trim() !== "";
    if (isFlagged) flagged += 1;
    const scale = isInTenths ? 10 : 1;
    const air = (column: number) => {
      const one = column < 0 ? undefined : numberIn(cells[column] ?? "", decimal);
      return one === undefined ? undefined : one / scale;
    };
    days.push({
      day,
      rain: isMissing || isFlagged ? undefined : value,
      high: air(columns.high),
      low: air(columns.low),
    });
  }
  return { ok: true, days, flagged };
}

export function dayIn(cell: string, dates: DateOrder): number | undefined {
  const match = IS_DATE.exec(cell);
  if (match === null) return undefined;
  const [year, month, day] =
    match[1] !== undefined
      ? [Number(match[1]), Number(match[2]), Number(match[3])]
      : dates === "day first"
        ? [Number(match[6]), Number(match[5]), Number(match[4])]
        : [Number(match[6]), Number(match[4]), Number(match[5])];
  if (month < 1 || month > 12 || day < 1) return undefined;
  const next = month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1);
  const number = dayNumber(year, month, day);
  return number < next ? number : undefined;
}
