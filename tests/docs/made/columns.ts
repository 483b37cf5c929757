/** Rows of words as columns, the first to the left, the others to the right. */
export function writeColumns(rows: readonly (readonly string[])[]): string {
  const width = rows[0]!.map((_, c) => Math.max(...rows.map((row) => row[c]!.length)));
  return rows
    .map((row) =>
      row
        .map((word, c) => (c === 0 ? word.padEnd(width[c]!) : word.padStart(width[c]!)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
