import { WORKED_OUT } from "../case-file.js";
import { SUBJECTS, subjectOf } from "../subjects.js";
import { type Compared, median, shareApart, tableRow, writeShare } from "./compared.js";

const HEAD = [
  ...["subject", "cases", "figures", "sources", "seen", "from memory", "worked out"],
  ...["middle difference", "greatest", "in case"],
];

/** How many, from where, and how far apart: a row by subject, and one of all. */
export function writeSummary(compared: readonly Compared[]): string {
  const rows = Object.keys(SUBJECTS).map((subject) =>
    summaryRow(
      subject,
      compared.filter(({ one }) => subjectOf(one) === subject),
    ),
  );
  return [
    tableRow(HEAD),
    `|---|${"--:|".repeat(HEAD.length - 2)}---|`,
    ...rows,
    summaryRow("**all**", compared),
  ].join("\n");
}

function summaryRow(subject: string, compared: readonly Compared[]): string {
  const figures = compared.flatMap(({ one, expected }) =>
    expected.map((comparison) => ({ one, share: Math.abs(shareApart(comparison)) })),
  );
  const greatest = figures.reduce((most, figure) => (figure.share > most.share ? figure : most), figures[0]!);
  const count = (kind: string) => compared.filter((each) => originOf(each) === kind).length;
  return tableRow([
    subject,
    compared.length,
    figures.length,
    new Set(compared.map(({ source }) => source)).size,
    count("seen"),
    count("from memory"),
    count("worked out"),
    writeShare(median(figures.map(({ share }) => share)), false),
    writeShare(greatest.share, false),
    greatest.share === 0 ? "" : `${greatest.one.id}, ${greatest.one.what}`,
  ]);
}

/** Where the figure of a case is from: read, remembered, or reckoned by hand from a rule that is cited. */
export const originOf = ({ source, one }: Compared): string =>
  WORKED_OUT.has(source) ? "worked out" : one.seen;
