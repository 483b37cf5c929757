import { type CaseFile, type PublishedCase, writeBound } from "./case-file.js";
import { type Comparison, compareCase } from "./compare-case.js";

const HEADING = `# Published figures and what the library makes of them

Written by \`npm run validate\` from the cases under \`tests/published/\`; not to be edited by hand. \`npm test\` holds every
figure to its tolerance, and this page to the cases. "Seen" was read at the source; "from memory" was not. A figure in
~~strokes~~ is a slip of the source: the library must refuse it, and meets the right figure in the row above.
`;

/** The validation report: a table for each source, from the cases and what the library answers now. */
export function writeValidation(files: readonly { readonly file: CaseFile }[]): string {
  const cases = files.flatMap(({ file }) => file.cases);
  const figures = cases.reduce((count, one) => count + Object.keys(one.expect).length, 0);
  const slips = cases.filter((one) => one.slip !== undefined).length;
  const counted = `${cases.length} cases with ${figures} figures from ${files.length} sources; ${slips} cases hold slips of their source.\n`;
  return [HEADING, counted, ...files.map(({ file }) => writeSource(file))].join("\n");
}

function writeSource({ source, title, cases }: CaseFile): string {
  return [
    `## ${title}`,
    "",
    `Key \`${source}\`.`,
    "",
    "| case | what | where | seen | figure | published | computed | difference | allowed |",
    "|---|---|---|---|---|---|---|---|---|",
    ...cases.flatMap(writeCase),
    "",
    ...writeReasons(cases),
    "",
  ].join("\n");
}

/** Why each tolerance is what it is; cases of one reason share a line. */
function writeReasons(cases: readonly PublishedCase[]): string[] {
  const idsOf = new Map<string, string[]>();
  for (const { id, tolerance, note } of cases) {
    const reason = note === undefined ? tolerance.why : `${tolerance.why}; ${note}`;
    idsOf.set(reason, [...(idsOf.get(reason) ?? []), id]);
  }
  return [...idsOf].map(([reason, ids]) => `- ${ids.join(", ")}: ${reason}.`);
}

function writeCase(one: PublishedCase): string[] {
  const { expected, slips } = compareCase(one);
  const row = (comparison: Comparison, published: string) =>
    `| ${[
      one.id,
      one.what,
      one.page,
      one.seen,
      comparison.name,
      published,
      withUnit(written(comparison.computed), comparison),
      difference(comparison),
      writeBound(one.tolerance),
    ].join(" | ")} |`;
  return [
    ...expected.map((comparison) => row(comparison, withUnit(`${comparison.printed}`, comparison))),
    ...slips.map((comparison) => row(comparison, `~~${withUnit(`${comparison.printed}`, comparison)}~~`)),
  ];
}

const withUnit = (figure: string, { unit }: Comparison): string =>
  unit === "" ? figure : `${figure} ${unit}`;

/** Six digits: the last bits of a power differ from one machine to the next, and no source needs more. */
const written = (value: number): string => `${Number(value.toPrecision(6))}`;

/** As a share of the printed figure; what is under a millionth is written as such. */
function difference({ printed, difference: left }: Comparison): string {
  const share = (100 * left) / Math.abs(printed);
  if (Math.abs(share) < 1e-4) return "under 0.0001 %";
  return `${share > 0 ? "+" : ""}${Number(share.toPrecision(2))} %`;
}
