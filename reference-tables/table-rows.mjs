/** Rows of a reference table as objects in SI units, and modules of them. */

/** SI value of one of a unit. Exact by definition. */
const SI = { mm: 1e-3, m: 1, kg: 1, kPa: 1000, L: 1e-3, mL: 1e-6, "mL/min": 1e-6 / 60, d: 1, 1: 1 };

const camel = (column) => column.replace(/_(\w)/g, (_, letter) => letter.toUpperCase());

/** Field names follow the columns without their unit. */
export const field = (column, unit) => {
  const suffix = `_${unit.toLowerCase().replace("/", "_")}`;
  return camel(column.endsWith(suffix) ? column.slice(0, -suffix.length) : column);
};

/** Twelve figures, so that 15.621 mm is 0.015621 and not its neighbour. */
export const siValue = (text, unit) => Number((Number(text) * SI[unit]).toPrecision(12));

export function cellOf(table, row, column) {
  const { unit } = table.about.columns[column];
  return unit === "text" ? row[column] : siValue(row[column], unit);
}

export const citationOf = (row) => ({ source: row.source, where: row.where, seen: row.seen });
export const words = (text) => (text === "" ? [] : text.split(";"));

/** A row as an object with the named columns and its citation. A blank in one of them is an error. */
export function objectOf(table, row, columns) {
  const made = {};
  for (const column of columns) {
    if (row[column] === "") throw new Error(`${table.name}.csv: ${row.id} has no ${column}`);
    made[field(column, table.about.columns[column].unit)] = cellOf(table, row, column);
  }
  if (row.also !== undefined) made.also = words(row.also);
  made.citation = citationOf(row);
  return made;
}

/** Rows a plan can mean; other published values stay in the table. */
export const defaultRows = (table) => table.rows.filter((row) => row.default === "yes");

export function moduleOf(name, type, rows) {
  const lines = rows.map((row) => `  ${JSON.stringify(row)},`);
  return [
    `// Made from reference-tables/${name} by reference-tables/compile-tables.mjs. Edit the table, not this file.`,
    `import type { ${type} } from "./row-types.js";`,
    "",
    `export const ${name.replace(/\.\w+$/, "")}: readonly ${type}[] = [`,
    ...lines,
    "];",
    "",
  ].join("\n");
}
