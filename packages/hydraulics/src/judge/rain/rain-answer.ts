import type { Problem } from "../../document/problem.js";
import type { RainBalance, RainConvention, RoofRun } from "../../simulate/rain.js";

/** Days short and water missing in a part of the record. */
export interface RainPart {
  readonly days: number;
  readonly shortDays: number;
  readonly missing: number;
  readonly rain: number;
}

/** One way through the record: how the day is reckoned, and how full the vessel was when it began. */
export interface RainRun {
  readonly convention: RainConvention;
  readonly begins: "full" | "empty";
  readonly balance: RainBalance;
  /** Share of the days, and of the water wanted, that was there. */
  readonly inTime: number;
  readonly inVolume: number;
  /** Longest run of days with birds short. */
  readonly longestShort: number;
  readonly years: readonly (RainPart & { readonly year: number })[];
  /** December to February, March to May, June to August, September to November. */
  readonly seasons: readonly RainPart[];
}

/** A roof and a vessel through a record of rain. Volumes [m³], by day where they are lists. */
export interface RainSupply {
  readonly source: string;
  readonly index: number;
  readonly roof: RoofRun;
  readonly figure: "expect" | "size";
  readonly days: number;
  readonly firstDay: number;
  readonly missingDays: number;
  /** Whether heat was taken from the record's own temperatures, or from the plan's weather. */
  readonly heatFrom: "record" | "plan";
  /** By day [m³]. */
  readonly inflow: Float64Array;
  readonly demand: Float64Array;
  /** Full less lowest level [m³]. */
  readonly usable: number;
  /** Drawn on an average day, and on the hottest [m³]. */
  readonly demandMean: number;
  readonly demandMost: number;
  readonly runs: readonly RainRun[];
  /** The size that never fails with this roof (sequent peak, begun full); undefined: no size lasts. */
  readonly neverFails: number | undefined;
  /** The same when each day is drawn before its rain comes in; undefined likewise. */
  readonly neverFailsDrawnFirst: number | undefined;
  /** Least roof with which the vessel as it is never fails, drawn first, begun full [m²]; undefined: none does. */
  readonly roofNeeded: number | undefined;
  /** Usable sizes with the days short, drawn first and begun full, for a picture. */
  readonly sizes: readonly { readonly usable: number; readonly shortDays: number }[];
  readonly overflow: {
    readonly diameter: number;
    /** What the pipe passes with the water standing level with its top [m³/s]. */
    readonly passes: number;
    /** What the roof sheds in a downpour [m³/s]. */
    readonly downpour: number;
    readonly isEnough: boolean;
    /** Least diameter that is [m]. */
    readonly needed: number;
    /** The wettest day of the record [m], and what runs over on it at most [m³]. */
    readonly wettest: number;
    readonly wettestOver: number;
  };
}

/** What a record of rain is run against. */
export interface RainOptions {
  /** Source by position; the first with a roof unless told. */
  readonly source?: number;
  /** Which figure of intake is drawn; to size on unless told. */
  readonly figure?: "expect" | "size";
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
}

/** How a roof and a vessel do, or what in the plan contradicts itself. */
export type RainAnswer =
  | { readonly ok: true; readonly supply: RainSupply }
  | { readonly ok: false; readonly problems: readonly Problem[] };
