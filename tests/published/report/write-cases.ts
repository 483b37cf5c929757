import { type CaseFile, writeBound } from "../case-file.js";
import type { Comparison } from "../compare-case.js";
import { type Compared, shareApart, tableRow, writeShare } from "./compared.js";
import { originOf } from "./summary.js";

/** All cases of one source: what is worked once over, then figure by figure. */
export function writeSource({ source, title }: CaseFile, compared: readonly Compared[]): string {
  return [`### ${title}`, `Key \`${source}\`.`, ...compared.map(writeCase)].join("\n\n");
}

function writeCase(compared: Compared): string {
  const { one, expected, slips } = compared;
  const rows = [
    ...expected.map((comparison) => figureRow(comparison, withUnit(comparison.printed, comparison))),
    ...slips.map((comparison) => figureRow(comparison, `~~${withUnit(comparison.printed, comparison)}~~`)),
  ];
  return [
    `#### ${one.id}: ${one.what}`,
    `${capital(one.page)}; ${originOf(compared)}. Within ${writeBound(one.tolerance)}: ${one.tolerance.why}.${
      one.note === undefined ? "" : ` ${capital(one.note)}.`
    }`,
    [tableRow(["figure", "published", "ours", "difference"]), "|---|--:|--:|--:|", ...rows].join("\n"),
  ].join("\n\n");
}

const figureRow = (comparison: Comparison, published: string): string =>
  tableRow([
    comparison.name,
    published,
    withUnit(comparison.computed, comparison),
    writeShare(shareApart(comparison)),
  ]);

/** Six digits: the last bits of a power differ from one machine to the next, and no source needs more. */
const withUnit = (figure: number, { unit }: Comparison): string =>
  `${Number(figure.toPrecision(6))}${unit === "" ? "" : ` ${unit}`}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
