import { readdirSync, readFileSync } from "node:fs";
import { csvParse } from "d3";

const folder = new URL("./", import.meta.url);
const text = (file) => readFileSync(new URL(file, folder), "utf8");

/** Names of all tables, sorted: every `<name>.csv` beside this file. */
export const tableNames = readdirSync(folder)
  .filter((file) => file.endsWith(".csv"))
  .map((file) => file.slice(0, -4))
  .sort();

/** One table: what it is about, its columns in order, and its rows as text. */
export function loadTable(name) {
  const rows = csvParse(text(`${name}.csv`));
  return { name, about: JSON.parse(text(`${name}.about.json`)), columns: rows.columns, rows: [...rows] };
}

/** Every source by its key. */
export function loadSources() {
  return JSON.parse(text("sources.json"));
}
