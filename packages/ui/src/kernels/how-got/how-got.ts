import { type Expression, evaluate, inLetters, inNumbers, type Term, termsOf } from "./expression.js";

/** How one number came about: the law in letters, the same with this plan's numbers, where it holds, and who says so. */
export interface HowGot {
  readonly title: string;
  /** The number as the page shows it. */
  readonly result: string;
  /** First the formula that gives the result, where one does; then those of the numbers in it that cannot be asked by themselves. */
  readonly steps: readonly Step[];
  /** What a sum is made up of, where it has many parts. */
  readonly parts?: Parts;
  /** What was looked through for it, where that does not add up to it. */
  readonly listed?: Parts;
  /** Where the laws used hold, and whether this plan's figures lie there. */
  readonly valid: readonly Validity[];
  readonly secondOpinion?: SecondOpinion;
  readonly notes: readonly string[];
  /** Keys of reference-tables/sources.json. */
  readonly sources: readonly string[];
}

/** What is told of a number whose making is no longer at hand. */
export const untold = (
  title: string,
  because = "The plan has changed since; press the number again.",
): HowGot => ({ title, result: "not known", steps: [], valid: [], notes: [because], sources: [] });

/** One formula, in letters and with its numbers. */
export interface Step {
  readonly formula: string;
  readonly filled: string;
  /** What the numbers come to, in SI. */
  readonly value: number;
  readonly terms: readonly Term[];
}

/** A table: of parts that add up to what is shown, or of what was looked through. */
export interface Parts {
  readonly caption: string;
  /** Heads of the columns; the first names the part. */
  readonly columns: readonly string[];
  readonly rows: readonly Part[];
}

export interface Part {
  readonly cells: readonly string[];
  /** What it adds to the sum, in SI. */
  readonly value: number;
  /** Keys of sources of this part's own figures. */
  readonly source?: string;
}

/** The range in which a law holds, in words with its numbers, and where this plan stands. */
export interface Validity {
  readonly law: string;
  readonly holds: string;
  /** Empty where a law holds everywhere. */
  readonly here: string;
  readonly isInside: boolean;
}

/** The same figure by the other law. */
export interface SecondOpinion {
  readonly by: string;
  readonly result: string;
  readonly difference: string;
}

/**
 * One step from its formula. `unit` is the size in SI of the unit the formula reckons in, for those laws that hold in
 * certain units only.
 */
export function stepOf(
  symbol: string,
  expression: Expression,
  write: (value: number) => string,
  unit = 1,
): Step {
  const value = evaluate(expression) * unit;
  return {
    formula: `${symbol} = ${inLetters(expression)}`,
    filled: `${inNumbers(expression)} = ${write(value)}`,
    value,
    terms: termsOf(expression),
  };
}

/** Steps of a line that could not be solved would be full of holes: only those whose every number is one are shown. */
export function soundSteps(...steps: readonly Step[]): readonly Step[] {
  return steps.filter(
    ({ value, terms }) => Number.isFinite(value) && terms.every((term) => Number.isFinite(term.value)),
  );
}
