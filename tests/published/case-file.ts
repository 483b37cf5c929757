import { readdirSync, readFileSync } from "node:fs";

/** How far the library may stand from a printed figure; either bound met is enough, and each has its reason. */
export interface Tolerance {
  /** Share of the printed figure. */
  readonly relative?: number;
  /** In the unit the figure is printed in. */
  readonly absolute?: number;
  readonly why: string;
}

/** Figures by name: plain numbers have no unit, texts carry theirs ("0.272 ft"). */
export type Figures = Readonly<Record<string, number | string>>;

/** One worked example of a source. */
export interface PublishedCase {
  readonly id: string;
  /** Where in the source. */
  readonly page: string;
  readonly seen: "seen" | "from memory";
  /** What is worked, in words. */
  readonly what: string;
  /** Which question of QUESTIONS it puts to the library. */
  readonly question: string;
  readonly given: Readonly<Record<string, unknown>>;
  readonly expect: Figures;
  /** What the source prints wrongly; the library must refuse it and meet `expect`. */
  readonly slip?: Figures;
  readonly tolerance: Tolerance;
  readonly note?: string;
}

export interface CaseFile {
  /** Key in reference-tables/sources.json. */
  readonly source: string;
  readonly title: string;
  readonly cases: readonly PublishedCase[];
}

/** Sources that print no figure: what follows from a definition, or our own arithmetic on rules and rows that are cited. */
export const WORKED_OUT: ReadonlySet<string> = new Set([
  "closed-form",
  "cautious-defaults",
  "jenkins-1978",
  "reservoir-exercise",
]);

const folder = new URL("./", import.meta.url);

/** Every file of cases beside this one, by name. */
export function loadCaseFiles(): { readonly name: string; readonly file: CaseFile }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".cases.json"))
    .sort()
    .map((name) => ({ name, file: JSON.parse(readFileSync(new URL(name, folder), "utf8")) as CaseFile }));
}

/** The bounds of a tolerance in words: "2 %", "0.06", "4 % or 0.01". */
export function writeBound({ relative, absolute }: Tolerance): string {
  return [
    ...(relative === undefined ? [] : [`${Number((100 * relative).toPrecision(3))} %`]),
    ...(absolute === undefined ? [] : [`${absolute}`]),
  ].join(" or ");
}
