/** A cell: text, a number, or nothing. */
export type CsvCell = string | number | undefined;

/** How a table is written as a file. */
export interface CsvOptions {
  /** Whether the file begins with the mark by which some spreadsheets know UTF-8. */
  readonly mark?: boolean;
}

const BYTE_ORDER_MARK = "\ufeff";
/** What a spreadsheet may take for the beginning of a formula, wide forms of East Asian keyboards included. */
const BEGINS_A_FORMULA = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;
/** More digits than any measurement has, fewer than rounding spoils. */
const FIGURES = 9;

/**
 * Rows as comma-separated values (RFC 4180): lines end in CR LF, a cell with a comma, quote or line break stands in
 * quotes. Text that a spreadsheet would run as a formula gets an apostrophe before it; numbers never do.
 *
 * @param rows     the header row first
 * @param options  whether to begin with the mark of UTF-8
 * @returns the text of the file; a number that is not finite is an empty cell
 * @example writeCsv([["name", "length [m]"], ["=1+1", -2.5]])   // name,length [m] / '=1+1,-2.5
 */
export function writeCsv(rows: readonly (readonly CsvCell[])[], { mark = false }: CsvOptions = {}): string {
  const lines = rows.map((row) => `${row.map(writeCell).join(",")}\r\n`);
  return `${mark ? BYTE_ORDER_MARK : ""}${lines.join("")}`;
}

function writeCell(cell: CsvCell): string {
  if (cell === undefined) return "";
  return typeof cell === "number" ? writePlainNumber(cell) : quoted(defused(cell));
}

const defused = (text: string): string => (BEGINS_A_FORMULA.test(text) ? `'${text}` : text);

/** Blanks at the ends are kept by quotes too: some readers trim them off otherwise. */
const quoted = (text: string): string =>
  /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** Digits and a point, never an exponent, never "-0". */
function writePlainNumber(value: number): string {
  if (!Number.isFinite(value)) return "";
  const rounded = Number(value.toPrecision(FIGURES));
  if (rounded === 0) return "0";
  const decimals = FIGURES - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  const text = rounded.toFixed(Math.min(100, Math.max(0, decimals)));
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}
