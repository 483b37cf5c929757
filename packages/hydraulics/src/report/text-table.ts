/** Cells of text under titles. */
export interface Table {
  readonly columns: readonly string[];
  readonly alignRight: readonly boolean[];
  readonly rows: readonly (readonly string[])[];
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes have no width
const COLOUR = /\u001b\[[0-9;]*m/g;
const widthOf = (text: string) => [...text.replace(COLOUR, "")].length;

/** A table in columns two spaces apart, titles first, no rules; no line ends in spaces. */
export function writeTable(table: Table): string {
  const titles = splitTitles(table.columns);
  const lines = [...titles, ...table.rows];
  const widths = table.columns.map((_, c) => Math.max(...lines.map((row) => widthOf(row[c] ?? ""))));
  const cell = (text: string, c: number) => {
    const room = " ".repeat(Math.max(0, widths[c] - widthOf(text)));
    return table.alignRight[c] ? room + text : text + room;
  };
  return lines.map((row) => row.map(cell).join("  ").trimEnd()).join("\n");
}

/** Titles with a comma stand on two lines, so that columns stay as narrow as their figures. */
function splitTitles(columns: readonly string[]): string[][] {
  const parts = columns.map((title) => title.split(", "));
  const height = Math.max(...parts.map((part) => part.length));
  return Array.from({ length: height }, (_, k) =>
    parts.map((part) => part[k - (height - part.length)] ?? ""),
  );
}
