/** A daily record as a table of any make: separators, headings, dates, several places. Read alike for rain and for air. */
import { dayNumber } from "../units/day.js";
import type { DateOrder, RainReading, RainReadingOptions } from "./rain-record.js";

/** A table with a date on each line, split into cells. */
export interface Cells {
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly headings: readonly string[] | undefined;
  readonly decimal: "." | ",";
}

const IS_DATE = /^(\d{4})[-/.]?(\d{1,2})[-/.]?(\d{1,2})(?:[T ].*)?$|^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/;
/** Cells of a day that is not known, as records write them. */
export const NOT_KNOWN = /^(?:|na|n\/a|nan|null|none|-|--|m|-9999(?:\.0+)?|-999(?:\.0+)?|9999(?:\.0+)?)$/i;

/** The lines split at the sign that the first of them have, comments and blank lines passed over. */
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

/** The column whose heading is of a kind; -1 where there is none. */
export const columnHeaded = ({ headings }: Cells, pattern: RegExp): number =>
  headings?.findIndex((heading) => pattern.test(heading)) ?? -1;

/** The first column with a date on the first line; -1 where there is none. */
export const columnOfDates = ({ rows: [row] }: Cells): number =>
  row.cells.findIndex((cell) => IS_DATE.test(cell));

/** How the columns are headed that a record of rain and one of air both have. */
export const HEADED = {
  high: /^(tmax|temp_?max|t_max|high|max)/i,
  low: /^(tmin|temp_?min|t_min|low|min)/i,
  place: /^(location|place|site|station|name)$/i,
} as const;

/** The rows of one place; asks which where there are several. */
export function chooseRows(
  { rows }: Cells,
  place: number,
  options: RainReadingOptions,
): { ok: true; rows: Cells["rows"]; name: string } | Extract<RainReading, { ok: false }> {
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
  rows: Cells["rows"],
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

/** A number as the table writes it; undefined where there is something else. */
export function numberIn(cell: string, decimal: "." | ","): number | undefined {
  const text = decimal === "," ? cell.replace(",", ".") : cell;
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

/** The day a cell names; undefined where there is no such day. */
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
