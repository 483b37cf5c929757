import type { WatererMishap } from "../../../model/waterer-mishap.js";
import type { WatererGuardResult } from "./waterer-guard.js";

/** Volumes of one pen's loose waterers [m³], each its own sum: start + poured = drunk + air + lost + left. */
export interface WatererBalance {
  /** Of it all: what birds cannot drink of it too. */
  readonly start: number;
  readonly poured: number;
  /** By birds, what they spill counted. */
  readonly drunk: number;
  readonly air: number;
  /** To the ground when it happens. */
  readonly lost: number;
  readonly left: number;
}

/** What comes of a pen with loose waterers, from the morning round on. */
export interface WatererEnd {
  /** Until a bird goes without [s]; undefined where it does not in the time it was followed. */
  readonly harmAfter: number | undefined;
  /** Birds times the hours of light for which they are without until somebody comes [h]. */
  readonly birdHours: number;
}

/** What one mishap of one loose waterer does if nobody looks: everything full when it happens, nobody filling by hand. */
export interface WatererMishapResult extends WatererEnd {
  readonly mishap: WatererMishap;
  /** Names. */
  readonly pen: string;
  readonly waterer: string;
  /** How many of its like stand there; it happens to one. */
  readonly count: number;
  readonly birds: number;
  /** Of that one [m³]: to the ground, what birds can drink of it then, and what they could. */
  readonly lost: number;
  readonly gives: number;
  readonly gave: number;
  /** As it then stands or leans: tan of its slope, and of that which drains it; undefined where none does. */
  readonly slope: number;
  readonly drainsAt: number | undefined;
  /** The pen drinks from the line as well, and goes on there. */
  readonly goesOnAtLine: boolean;
  /** Share of what rules and advice ask that the pen has, before and once this one gives nothing more. */
  readonly covered: { readonly before: number; readonly after: number };
  readonly balance: WatererBalance;
  /** Until somebody comes [s]: the next morning, or the round after the one that was missed. */
  readonly comesAfter: number;
  readonly followed: number;
}

/** One mishap of a loose waterer, what guards against it, and what it is held against. */
export interface WatererMishapRow {
  readonly worst: WatererMishapResult;
  /** The pen if nothing goes wrong and nobody fills. */
  readonly nothing: WatererEnd;
  /** The cheapest kind first. */
  readonly guards: readonly WatererGuardResult[];
  /** The cheapest with which a look every day is soon enough, else the one that gives longest. */
  readonly cheapest: WatererGuardResult | undefined;
}
