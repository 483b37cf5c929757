import {
  type Checked,
  type Plan,
  writeDrinkersCsv,
  writeHeightsCsv,
  writeRunsCsv,
  writeSourcesCsv,
} from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { saveFile } from "../storage/save-file.js";
import { savedName } from "./saved-name.js";

/** Begins with the mark by which spreadsheets know UTF-8. */
const MARK = { mark: true } as const;

/** The tables of a checked plan, by the word that goes into the name of the file. */
export const TABLES = {
  drinkers: (checked: Checked, system: UnitSystem) => writeDrinkersCsv(checked, system, MARK),
  runs: (checked: Checked, system: UnitSystem) => writeRunsCsv(checked, system, MARK),
  sources: (checked: Checked, system: UnitSystem) => writeSourcesCsv(checked, system, MARK),
  heights: (checked: Checked, system: UnitSystem) => writeHeightsCsv(checked.line, system, MARK),
} as const;
export type TableName = keyof typeof TABLES;

/** Saves a table for a spreadsheet; returns the name of the file. */
export function saveTable(table: TableName, plan: Plan, checked: Checked, system: UnitSystem): string {
  const name = savedName(plan, table, "csv");
  saveFile(name, new Blob([TABLES[table](checked, system)], { type: "text/csv;charset=utf-8" }));
  return name;
}
