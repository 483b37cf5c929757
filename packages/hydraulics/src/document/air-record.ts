import type { Problem } from "./problem.js";
import type { DateOrder } from "./rain-record.js";

/** Units that temperatures of a table may be in. */
export const AIR_UNITS = ["C", "F", "tenths of C"] as const;
/** A unit that a record of air may be in. */
export type AirUnit = (typeof AIR_UNITS)[number];

/** What a record of air does not say of itself. */
export interface AirReadingOptions {
  /** Unit of the temperatures, where the text does not say it. */
  readonly degrees?: AirUnit;
  readonly dates?: DateOrder;
  readonly place?: string;
}

/** Lowest and highest air of each day from the first to the last, none left out [°C]. */
export interface AirRecord {
  readonly name: string;
  /** Days since 1970-01-01. */
  readonly firstDay: number;
  /** NaN where it is not known. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Days whose lowest is known. */
  readonly known: number;
}

/** What has to be asked before a text can be read, with the answers there are. */
export type AirQuestion =
  | { readonly ask: "degrees"; readonly choices: readonly AirUnit[]; readonly example: string }
  | { readonly ask: "dates"; readonly choices: readonly DateOrder[]; readonly example: string }
  | { readonly ask: "place"; readonly choices: readonly string[] };

/** A record of air, or what must be asked about it, or what is wrong with it. */
export type AirReading =
  | { readonly ok: true; readonly record: AirRecord }
  | { readonly ok: false; readonly question: AirQuestion }
  | { readonly ok: false; readonly problems: readonly Problem[] };
