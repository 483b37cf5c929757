/**
 * What guards against a mishap of a loose waterer, from the cheapest to the dearest; common practice, no source.
 *
 * @source common-practice, not stated, from memory
 */
export const WATERER_GUARD_KINDS = [
  "look",
  "turnHole",
  "shim",
  "ventHole",
  "weight",
  "longerCord",
  "board",
  "secondWaterer",
] as const;
/** A guard of a loose waterer, told apart. */
export type WatererGuardKind = (typeof WATERER_GUARD_KINDS)[number];

/** Something that can be done against a mishap of a loose waterer. Times [s], lengths [m], masses [kg], pushes [N]. */
export type WatererGuard =
  /** Somebody looks at least so often [s]. */
  | { readonly kind: "look"; readonly every: number }
  /** The air hole looks this way, marked on the jar. */
  | { readonly kind: "turnHole"; readonly way: "sideways" | "downhill" }
  /** Under the lower edge, so that it stands well before it happens. */
  | { readonly kind: "shim"; readonly height: number }
  /** A hole in the lid that lets air in. */
  | { readonly kind: "ventHole" }
  /** A brick or a stone in it, and the push that tips it when nearly empty, without and with it. */
  | {
      readonly kind: "weight";
      readonly mass: number;
      readonly tippedBy: number;
      readonly tippedThenBy: number;
    }
  /** Hook to water. */
  | { readonly kind: "longerCord"; readonly cord: number }
  /** A level board under it, so wide. */
  | { readonly kind: "board"; readonly across: number }
  /** One more like it in the pen. */
  | { readonly kind: "secondWaterer" };

/** What a guard makes of a mishap of a loose waterer; all but a weight by running it again with it. */
export interface WatererGuardResult {
  readonly guard: WatererGuard;
  /** Until a bird goes without [s]; undefined where it never comes to that. */
  readonly harmAfter: number | undefined;
  readonly birdHours: number;
  /** To the ground [m³]. */
  readonly lost: number;
  /** More time than without it [s]; undefined where harm no longer comes at all. */
  readonly buysTime: number | undefined;
  readonly savesWater: number;
  /** Whether with it a look every day is soon enough. */
  readonly isEnough: boolean;
}

/** Time left to fetch water and set it right when it is found [s]; common practice, no source. */
export const TIME_TO_SET_RIGHT = 3600;
