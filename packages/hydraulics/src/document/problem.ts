/** What can be wrong with a plan. Every code is provoked by a test. */
export const PROBLEM_CODES = [
  "tooLarge",
  "notText",
  "notJson",
  "tooDeep",
  "keyTwice",
  "notAPlan",
  "versionUnknown",
  "versionNewer",
  "wrongType",
  "missing",
  "unknownKey",
  "unreadableQuantity",
  "outOfRange",
  "tooMany",
  "tooFew",
  "tooLong",
  "unprintable",
  "notAChoice",
  "unknownName",
  "nameTwice",
  "unknownPoint",
  "twoWays",
  "doesNotFit",
  "heightsDisagree",
  "notConnected",
  "regulatorInRing",
] as const;
/** What is wrong, told apart. */
export type ProblemCode = (typeof PROBLEM_CODES)[number];

/**
 * One thing wrong with a plan, as data. `path` is where (`runs[3].length`), `found` what stands there, `allowed`
 * what may, `mend` how to put it right. `line` and `column` count from 1 when the plan came as text.
 */
export interface Problem {
  readonly code: ProblemCode;
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  readonly mend: string;
  readonly line?: number;
  readonly column?: number;
}

/** A step into a document: a key of an object or a place in a list. */
export type PathStep = string | number;

/** `["runs", 3, "length"]` as `runs[3].length`; keys that are no plain words are quoted. */
export function writePath(steps: readonly PathStep[]): string {
  let text = "";
  for (const step of steps) {
    if (typeof step === "number") text += `[${step}]`;
    else if (/^[A-Za-z_][\w-]*$/.test(step)) text += text === "" ? step : `.${step}`;
    else text += `[${JSON.stringify(step.slice(0, 40))}]`;
  }
  return text === "" ? "the plan" : text;
}

/** A value as one would show it in a sentence: short, quoted where it is text. */
export function writeFound(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (typeof value === "string") {
    return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  }
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object") return "an object";
  return String(value);
}

/** In the order of the text where that is known, else by path. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0) ||
      a.path.localeCompare(b.path, "en", { numeric: true }),
  );
}
