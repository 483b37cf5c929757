import { type CaseFile, loadCaseFiles, type PublishedCase } from "../case-file.js";
import { type Comparison, compareCase, QUESTIONS } from "../compare-case.js";
import { Givens, inUnit, splitFigure } from "../figures.js";

const files: ReadonlyMap<string, CaseFile> = new Map(loadCaseFiles().map(({ file }) => [file.source, file]));

/** Cases of one source that put one question. */
export const casesOf = (source: string, question: string): readonly PublishedCase[] =>
  files.get(source)!.cases.filter((one) => one.question === question);

/** One printed figure of a case beside ours; undefined where the case does not print it. */
export const comparisonOf = (one: PublishedCase, figure: string): Comparison | undefined =>
  compareCase(one).expected.find(({ name }) => name === figure);

/** A given of a case as printed, without its unit. */
export const givenNumber = (one: PublishedCase, name: string): number =>
  splitFigure(one.given[name] as number | string).value;

/** What the library answers to the question of a case with some givens changed, in a unit. */
export function answerTo(
  one: PublishedCase,
  changed: Readonly<Record<string, unknown>>,
  { figure, unit }: { readonly figure: string; readonly unit: string },
): number {
  const answer = QUESTIONS[one.question]!(new Givens({ ...one.given, ...changed }));
  return inUnit(answer[figure]!, unit);
}

/** Numbers from one to another, evenly or by equal ratios. */
export const spread = (from: number, to: number, count: number, isLog = false): number[] =>
  Array.from({ length: count + 1 }, (_, k) =>
    isLog ? from * (to / from) ** (k / count) : from + ((to - from) * k) / count,
  );

/** Ours less the printed figure, in per cent of it. */
export const percentApart = ({ printed, difference }: Comparison): number => (100 * difference) / printed;
