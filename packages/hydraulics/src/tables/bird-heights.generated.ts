// Made from reference-tables/bird-height.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { CitationRow, HangRow } from "./bird-types.js";

export const hangCitations: readonly CitationRow[] = [
  ["common-practice","not stated","from memory"],
  ["keeper-nipple-heights","text","seen"],
  ["breeder-manual-recollected","general","from memory"],
  ["recollected-low-head-flows","heights of meat bird lines","from memory"],
];

export const hangRows: readonly (readonly [string, readonly HangRow[]])[] = [
  ["coturnix",[["cup",1,0.01,0.005,0.015,0],["nipple",1,0.05,0.04,0.06,0],["cup",42,0.09,0.08,0.1,0],["nipple",42,0.14,0.12,0.18,0]]],
  ["duck",[["trough",49,0.175,0.15,0.2,0]]],
  ["hen",[["nipple",1,0.102,0.09,0.115,1],["nipple",5,0.165,0.15,0.18,1],["nipple",28,0.33,0.3,0.36,1],["cup",140,0.225,0.2,0.25,2],["nipple",140,0.533,0.457,0.61,1]]],
  ["meat-breeder",[["nipple",1,0.1,0.09,0.11,3],["nipple",49,0.4,0.37,0.43,3],["cup",140,0.225,0.2,0.25,2],["nipple",140,0.533,0.457,0.61,1]]],
  ["meat-chicken",[["cup",1,0.05,0.04,0.06,0],["nipple",1,0.1,0.09,0.11,3],["nipple",7,0.135,0.12,0.15,3],["nipple",14,0.19,0.17,0.21,3],["nipple",21,0.245,0.22,0.27,3],["nipple",28,0.295,0.27,0.32,3],["nipple",35,0.335,0.31,0.36,3],["nipple",42,0.37,0.34,0.4,3],["nipple",49,0.4,0.37,0.43,3],["cup",56,0.2,0.175,0.225,0]]],
  ["pullet",[["cup",1,0.05,0.04,0.06,0],["nipple",1,0.102,0.09,0.115,1],["nipple",5,0.165,0.15,0.18,1],["nipple",28,0.33,0.3,0.36,1],["cup",56,0.2,0.175,0.225,0],["cup",140,0.225,0.2,0.25,2],["nipple",140,0.533,0.457,0.61,1]]],
];
