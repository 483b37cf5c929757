/** Reads comma-separated values back by the rules of RFC 4180, by hand: sign by sign, quotes doubled inside quotes. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = "";
  let inQuotes = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charAt(at);
    if (inQuotes) {
      if (sign !== '"') cell += sign;
      else if (text.charAt(at + 1) === '"') {
        cell += '"';
        at += 1;
      } else inQuotes = false;
    } else if (sign === '"') {
      if (cell !== "") throw new Error(`a quote inside a bare cell, at ${at}`);
      inQuotes = true;
    } else if (sign === ",") {
      row.push(cell);
      cell = "";
    } else if (sign === "\r" && text.charAt(at + 1) === "\n") {
      rows.push([...row, cell]);
      row = [];
      cell = "";
      at += 1;
    } else if (sign === "\r" || sign === "\n") {
      throw new Error(`a bare line break outside quotes, at ${at}`);
    } else cell += sign;
  }
  if (inQuotes || cell !== "" || row.length > 0) throw new Error("the last line does not end");
  return rows;
}

/** The rows as objects by title. */
export function recordsOf(text: string): Record<string, string>[] {
  const [titles = [], ...rows] = readCsv(text);
  return rows.map((row) => {
    if (row.length !== titles.length) throw new Error(`${row.length} cells under ${titles.length} titles`);
    return Object.fromEntries(titles.map((title, i) => [title, row[i] ?? ""]));
  });
}
