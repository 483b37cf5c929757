/** Writes the table of every bar, and what stands beside it, between the marks of docs/method/speed.md. */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { BARS, standingOf, writeLimit } from "./bars.mjs";
import { writeFigure } from "./book.mjs";

const PAGE = fileURLToPath(new URL("../../docs/method/speed.md", import.meta.url));

/** What stands between the marks, made of what was measured. */
const MADE = { bars: barTable, memory: memoryTable, batch: batchTable, machine: machineTable };

export function writeSpeed(book) {
  const text = Object.entries(MADE).reduce(
    (page, [mark, write]) => {
      const [begin, end] = [`<!-- measured: ${mark} -->`, "<!-- end -->"];
      const from = page.indexOf(begin) + begin.length;
      const to = page.indexOf(end, from);
      if (from < begin.length || to < 0) throw new Error(`docs/method/speed.md has no place for ${mark}.`);
      return `${page.slice(0, from)}\n\n${write(book)}\n\n${page.slice(to)}`;
    },
    readFileSync(PAGE, "utf8"),
  );
  writeFileSync(PAGE, text);
}

function table(titles, rows) {
  const line = (cells) => `| ${cells.join(" | ")} |`;
  return [line(titles), line(titles.map(() => "---")), ...rows.map(line)].join("\n");
}

function barTable(book) {
  const rows = BARS.map((bar) => {
    const { isMeasured, value, isMet, by, beside } = standingOf(bar, book);
    const what = bar.isOurs ? `${bar.what} (*)` : bar.what;
    if (!isMeasured) return [what, writeLimit(bar), "not measured", "", ""];
    const found = `${writeFigure(value)} ${bar.unit}`.trim();
    return [what, writeLimit(bar), found, isMet ? by : `**missed**, ${by}`, beside];
  });
  return table(["what", "bar", "measured", "", "beside it"], rows);
}

const rowsOf = (book, part) => book.parts[part]?.rows ?? [];

/** All rows of a part; rows of like figures stand in one table. */
function tableOf(rows) {
  if (rows.length === 0) return "Not measured.";
  const groups = groupBy(rows, (row) => Object.keys(row).join("|"));
  return [...groups.values()]
    .map((group) =>
      table(
        Object.keys(group[0]).map((key) => (key === "what" ? "" : key)),
        group.map((row) => Object.values(row).map(writeFigure)),
      ),
    )
    .join("\n\n");
}

function memoryTable(book) {
  return tableOf([...rowsOf(book, "memory"), ...rowsOf(book, "drags")]);
}

function batchTable(book) {
  return tableOf([...rowsOf(book, "batch"), ...rowsOf(book, "hosts")]);
}

function machineTable(book) {
  const rows = Object.entries(book.parts).map(([part, { day, load }]) => [
    `\`${part}\``,
    day,
    load.map((one) => one.toFixed(1)).join(" and "),
  ]);
  return `${book.machine}.\n\n${table(["part", "day", "load before and after"], rows)}`;
}

function groupBy(rows, keyOf) {
  const groups = new Map();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return groups;
}
