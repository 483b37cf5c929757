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
import { recordOfDays } from "./rain-days.js";
import {
  type DateOrder,
  type RainDay,
  type RainReading,
  type RainReadingOptions,
  type RainRecord,
  type RainUnit,
  refuseRecord,
} from "./rain-record.js";

/** Which column is what; -1 where there is none. */
interface Columns {
  readonly date: number;
  readonly rain: number;
  readonly high: number;
  readonly low: number;
  readonly place: number;
  readonly flags: number;
}

const HEADED_DATE = /^(date|day|datum|time|dato|fecha|giorno)\b/i;
const HEADED_RAIN = /^(prcp|precip|rain|rainfall|niederschlag|regen|pluie|lluvia|pioggia|mm$|in$)/i;
const IS_TRACE = /^(?:t|tr|trace)$/i;

/** Reads a plain table, or a station's table with headings. */
export function readRainTable(lines: readonly string[], options: RainReadingOptions): RainReading {
  const table = cellsOf(lines);
  if (table.rows.length === 0)
    return refuseRecord({
      code: "tooFew",
      found: "no line with a date",
      allowed: "A record has a line for each day, with its date and its rain.",
      mend: "Check that this is the right file.",
    });
  const columns = findColumns(table);
  if (columns === undefined)
    return refuseRecord({
      code: "missing",
      found: `columns ${JSON.stringify((table.headings ?? []).join(", ").slice(0, 60))}`,
      allowed: "A column of dates and a column of rain.",
      mend: 'Head them for instance "date" and "rain mm".',
    });
  const chosen = chooseRows(table, columns.place, options);
  if (!chosen.ok) return chosen;
  const order = orderOfDates(chosen.rows, columns.date, options);
  if (!order.ok) return order;
  const isStation = columns.flags >= 0 && /^(station|prcp)/i.test(table.headings?.[0] ?? "");
  const unit = unitOf(table, columns, chosen.rows, isStation, options);
  if (!unit.ok) return unit;
  const read = readRows(chosen.rows, {
    columns,
    dates: order.dates,
    decimal: table.decimal,
    isInTenths: unit.unit === "tenths of mm",
  });
  if (!read.ok) return read;
  const format: RainRecord["format"] = isStation ? "station, table" : "table";
  return recordOfDays(read.days, { name: chosen.name, format, unit: unit.unit, flagged: read.flagged });
}

function findColumns(table: Cells): Columns | undefined {
  const named = (pattern: RegExp) => columnHeaded(table, pattern);
  const dateNamed = named(HEADED_DATE);
  const date = dateNamed >= 0 ? dateNamed : columnOfDates(table);
  const rainNamed = named(HEADED_RAIN);
  const isFigure = (cell: string) => isNumber(cell) || NOT_KNOWN.test(cell);
  const rain =
    rainNamed >= 0 ? rainNamed : table.rows[0].cells.findIndex((cell, k) => k !== date && isFigure(cell));
  if (date < 0 || rain < 0) return undefined;
  return {
    date,
    rain,
    high: named(HEADED.high),
    low: named(HEADED.low),
    place: named(HEADED.place),
    flags: named(/^prcp_attributes$/i),
  };
}

const isNumber = (cell: string) => /^-?\d+(?:[.,]\d+)?$/.test(cell);

/** The unit as a heading names it, or as a station's table has it; else it is asked. */
function unitOf(
  { headings, decimal }: Cells,
  columns: Columns,
  rows: Cells["rows"],
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

/** What is needed to read a row. */
interface RowForm {
  readonly columns: Columns;
  readonly dates: DateOrder;
  readonly decimal: "." | ",";
  readonly isInTenths: boolean;
}

function readRows(
  rows: Cells["rows"],
  form: RowForm,
): { ok: true; days: RainDay[]; flagged: number } | Extract<RainReading, { ok: false }> {
  const { columns, dates, decimal, isInTenths } = form;
  const days: RainDay[] = [];
  let flagged = 0;
  for (const { line, cells } of rows) {
    const cell = (column: number) => cells[column] ?? "";
    const day = dayIn(cell(columns.date), dates);
    if (day === undefined) return faultyDate(cell(columns.date), line);
    const typed = cell(columns.rain);
    const isMissing = NOT_KNOWN.test(typed);
    const value = IS_TRACE.test(typed) ? 0 : numberIn(typed, decimal);
    if (!isMissing && (value === undefined || value < 0)) return faultyRain(typed, value, line);
    const isFlagged = (cell(columns.flags).split(",")[1] ?? "").trim() !== "";
    if (isFlagged) flagged += 1;
    const air = (column: number) => {
      const one = numberIn(cell(column), decimal);
      return one === undefined ? undefined : one / (isInTenths ? 10 : 1);
    };
    const rain = isMissing || isFlagged ? undefined : value;
    days.push({ day, rain, high: air(columns.high), low: air(columns.low) });
  }
  return { ok: true, days, flagged };
}

const faultyDate = (typed: string, line: number) =>
  refuseRecord({
    code: "unreadableQuantity",
    found: JSON.stringify(typed.slice(0, 40)),
    allowed: "A date, as on the other lines.",
    mend: 'Write for instance "2026-07-04".',
    line,
  });

const faultyRain = (typed: string, value: number | undefined, line: number) =>
  value === undefined
    ? refuseRecord({
        code: "unreadableQuantity",
        found: JSON.stringify(typed.slice(0, 40)),
        allowed: "The rain of the day, a number; nothing where it is not known.",
        mend: "Correct or clear it.",
        line,
      })
    : refuseRecord({
        code: "outOfRange",
        found: typed,
        allowed: "Rain is not below 0.",
        mend: "Correct it, or clear it where it is not known.",
        line,
      });
