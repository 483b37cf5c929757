/**
 * What guards against a mishap, from the cheapest to the dearest; common practice, no source.
 *
 * @source common-practice, not stated, from memory
 */
export const GUARD_KINDS = [
  "look",
  "secondVent",
  "tap",
  "limiter",
  "spareDrinker",
  "alarm",
  "secondBarrel",
  "secondStation",
] as const;
export type GuardKind = (typeof GUARD_KINDS)[number];

/** Something that can be done against a mishap. Times [s], heights and bores [m]. */
export type Guard =
  /** Somebody looks at least so often [s]. */
  | { readonly kind: "look"; readonly every: number }
  /** A second opening that lets air in. */
  | { readonly kind: "secondVent"; readonly source: number }
  /** A tap at the start of a run, shut when it is found so long after [s]. */
  | { readonly kind: "tap"; readonly run: number; readonly within: number }
  /** A disc with a hole at the start of a run [m]: the smallest, in half millimetres, that harms no verdict. */
  | { readonly kind: "limiter"; readonly run: number; readonly hole: number }
  /** One more drinker of a group. */
  | { readonly kind: "spareDrinker"; readonly group: number }
  /** A float that rings when the level has fallen to a height above the inside bottom [m]. */
  | { readonly kind: "alarm"; readonly source: number; readonly level: number }
  /** A vessel like it beside it, joined to it. */
  | { readonly kind: "secondBarrel"; readonly source: number }
  /** A vessel and line like these for the same birds, with nothing in common. */
  | { readonly kind: "secondStation" };

/** What a guard makes of a mishap; all by running the mishap again with it. */
export interface GuardResult {
  readonly guard: Guard;
  /** Until a bird goes without, or half of the drinkers are dry [s]; undefined where it never comes to that. */
  readonly harmAfter: number | undefined;
  /** To the ground [m³], until it is found or nothing is left. */
  readonly lost: number;
  /** More time than without it [s]; undefined where harm no longer comes at all. */
  readonly buysTime: number | undefined;
  /** Less water lost than without it [m³], negative where more is; 0 where the mishap itself loses none. */
  readonly savesWater: number;
  /** Pours out with everything full [m³/s]: the most it can. */
  readonly leakRate: number;
  /** Whether with it a look every day is soon enough. */
  readonly isEnough: boolean;
}

/** Time left to mend it when it is found [s]; common practice, no source. */
export const TIME_TO_MEND = 4 * 3600;
/** Birds and water are looked at once a day at least [s]. */
export const DAILY = 86_400;
