import type { CaseFile, PublishedCase } from "../case-file.js";
import { type CaseComparison, type Comparison, compareCase } from "../compare-case.js";

/** A case beside what the library answers, with the source it is from. */
export interface Compared extends CaseComparison {
  readonly source: string;
  readonly one: PublishedCase;
}

/** Every case of the files, put to the library once. */
export const compareFiles = (files: readonly { readonly file: CaseFile }[]): Compared[] =>
  files.flatMap(({ file }) => file.cases.map((one) => ({ source: file.source, one, ...compareCase(one) })));

/** Difference as a share of the printed figure; 0 where both are 0. */
export const shareApart = ({ printed, difference }: Comparison): number =>
  difference === 0 ? 0 : difference / Math.abs(printed);

/** A share in per cent, two digits; what is under a millionth is written as such. */
export function writeShare(share: number, signed = true): string {
  if (share === 0) return "none";
  const percent = 100 * share;
  if (Math.abs(percent) < 1e-4) return "under 0.0001 %";
  return `${signed && percent > 0 ? "+" : ""}${Number(percent.toPrecision(2))} %`;
}

/** The middle of a list, nought of an empty one. */
export const median = (list: readonly number[]): number =>
  [...list].sort((a, b) => a - b)[list.length >> 1] ?? 0;

export const tableRow = (cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;
