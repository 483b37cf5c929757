import type { Problem } from "./problem.js";

/** Units a table of rain may be in; the published station files say theirs by their form. */
export const RAIN_UNITS = { mm: 1e-3, cm: 1e-2, in: 0.0254, "tenths of mm": 1e-4 } as const;
/** A unit that a record of rain may be in. */
export type RainUnit = keyof typeof RAIN_UNITS;

/** How days are written where the text itself leaves it open. */
export type DateOrder = "day first" | "month first";

/** What a record of rain does not say of itself. */
export interface RainReadingOptions {
  /** Unit of the rain, where the text does not say it. */
  readonly unit?: RainUnit;
  /** Order of day and month, where the text does not say it. */
  readonly dates?: DateOrder;
  /** Which place, where the text is of several. */
  readonly place?: string;
}

/** What is worth knowing of a record that could be read. */
export type RainFinding =
  | { readonly code: "daysMissing"; readonly days: number; readonly share: number }
  | { readonly code: "yearIncomplete"; readonly year: number; readonly share: number }
  | { readonly code: "flagged"; readonly days: number }
  | { readonly code: "dayTwice"; readonly days: number }
  | { readonly code: "suspicious"; readonly day: number; readonly rain: number };

/** Rain of each day from the first to the last, none left out. */
export interface RainRecord {
  readonly name: string;
  readonly format: "station, fixed columns" | "station, lines" | "station, table" | "table";
  readonly unit: RainUnit;
  /** Days since 1970-01-01. */
  readonly firstDay: number;
  /** [m]; 0 where it is not known. */
  readonly rain: Float64Array;
  /** 1 where the rain of a day is not known. */
  readonly missing: Uint8Array;
  /** Highest and lowest air temperature of each day [°C] with 1 where both are known; undefined without such columns. */
  readonly air:
    | { readonly high: Float64Array; readonly low: Float64Array; readonly known: Uint8Array }
    | undefined;
  readonly findings: readonly RainFinding[];
}

/** What has to be asked before a text can be read, with the answers there are. */
export type RainQuestion =
  | {
      readonly ask: "unit";
      readonly choices: readonly RainUnit[];
      readonly example: string;
      readonly mostInDay: number;
    }
  | { readonly ask: "dates"; readonly choices: readonly DateOrder[]; readonly example: string }
  | { readonly ask: "place"; readonly choices: readonly string[] };

/** A record of rain, or what must be asked about it, or what is wrong with it. */
export type RainReading =
  | { readonly ok: true; readonly record: RainRecord }
  | { readonly ok: false; readonly question: RainQuestion }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A day as read, before the gaps are found. */
export interface RainDay {
  readonly day: number;
  /** In the unit of the text; undefined where it is missing. */
  readonly rain: number | undefined;
  readonly high?: number | undefined;
  readonly low?: number | undefined;
}

/** One clear problem with a record, and on which of its lines where it is on one. */
export function refuseRecord(problem: Pick<Problem, "code" | "found" | "allowed" | "mend" | "line">): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  const { line } = problem;
  return {
    ok: false,
    problems: [{ ...problem, path: "the record", ...(line === undefined ? {} : { column: 1 }) }],
  };
}
