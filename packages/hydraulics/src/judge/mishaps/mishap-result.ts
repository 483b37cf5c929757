import type { Mishap, MishapKind } from "../../model/mishap.js";
import type { GuardResult } from "./guard.js";

/** Volumes of one run [m³], each its own sum: start + poured = drunk + lost + left. */
export interface Balance {
  readonly start: number;
  readonly poured: number;
  /** By birds, what they spill counted. */
  readonly drunk: number;
  /** To the ground: what pours, runs over and drips. */
  readonly lost: number;
  readonly left: number;
}

/** When it comes to what [s]; undefined where it does not in the time it was followed. */
export interface MishapEnd {
  /** Whether birds drink: else harm is told by drinkers. */
  readonly hasBirds: boolean;
  /** Some bird goes without: 0 where nothing comes to its pen at once. */
  readonly firstWithout: { readonly after: number; readonly pen: string } | undefined;
  readonly firstDry: { readonly after: number; readonly drinker: string } | undefined;
  /** Half of the drinkers give nothing. */
  readonly halfDry: number | undefined;
  /** Nothing more leaves any source. */
  readonly empty: number | undefined;
}

/** What one mishap does if nobody looks: everything full when it happens, hoses running, nobody filling by hand. */
export interface MishapResult extends MishapEnd {
  readonly mishap: Mishap;
  /** Pours out with everything full and nobody drinking, and what newly drips with it [m³/s]. */
  readonly leakRate: number;
  readonly dripRate: number;
  readonly balance: Balance;
  /** Drinkers, by index, that do well in the plan and with this mishap do not. */
  readonly dry: readonly number[];
  readonly starve: readonly number[];
  /** Those that neither are dry nor starve. */
  readonly drip: readonly number[];
  /** From full at dusk to dawn: lost [m³], and the fall of each source's level [m]. */
  readonly night: { readonly lost: number; readonly falls: readonly number[] };
  readonly followed: number;
}

/** Mishaps told in one line: of one kind, at the drinkers of one group or at one place, the worst of them in full. */
export interface MishapRow {
  /** Kinds that do the same there by construction, the first tells it. */
  readonly kinds: readonly MishapKind[];
  readonly worst: MishapResult;
  /** How many such mishaps the plan has, and how many of them were run. */
  readonly count: number;
  readonly run: number;
  /** From the least to the most of those run: litres to the ground [m³]. */
  readonly lost: { readonly least: number; readonly most: number };
  /** What guards against the worst, the cheapest kind first; undefined where that was not asked for this row. */
  readonly guards: readonly GuardResult[] | undefined;
  /** The cheapest of them with which a look every day is soon enough, else the one that gives longest. */
  readonly cheapest: GuardResult | undefined;
}
