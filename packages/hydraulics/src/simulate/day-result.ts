/** What happens at an instant of a simulated day. */
export const DAY_EVENTS = { begins: 0, ends: 1, waits: 2, givesUp: 3 } as const;

/** Every event of a day in order, for playing it: parallel arrays. */
export interface DayEvents {
  readonly count: number;
  /** [s after midnight], rising. */
  readonly time: Float64Array;
  /** One of `DAY_EVENTS`. */
  readonly kind: Uint8Array;
  readonly bird: Int32Array;
  /** Drinker by index; −1 for a bird that waits or gives up. */
  readonly drinker: Int32Array;
}

/** One bird's day. Volumes [m³], times [s]. */
export interface BirdDay {
  readonly pen: number;
  readonly batch: number;
  readonly wanted: number;
  readonly drunk: number;
  readonly bouts: number;
  /** Times it waited in vain; times it found no drinker that gave water, or its own ran dry under it. */
  readonly gaveUp: number;
  readonly foundDry: number;
  readonly waited: number;
  readonly longestWait: number;
}

/** One drinker's day. */
export interface DrinkerDay {
  readonly drinker: string;
  readonly bouts: number;
  /** Passed, what was spilled counted [m³]. */
  readonly drawn: number;
  /** With at least one bird at it [s]. */
  readonly busy: number;
  /** Least flow it passed while worked [m³/s]; 0 when it gave none or nobody came. */
  readonly leastFlow: number;
}

/** One pen's day. */
export interface PenDay {
  readonly pen: string;
  readonly birds: number;
  readonly wanted: number;
  readonly drunk: number;
  /** Birds that got less than 80 % of what they wanted. */
  readonly short: number;
  /** Most birds drinking at once, and when [s after midnight]. */
  readonly mostAtOnce: number;
  readonly mostAt: number;
  /** Share of the light with every place taken. */
  readonly allTaken: number;
  /** Share of the light in which none of its drinkers gave water, and when that first was [s]; undefined if never. */
  readonly dry: number;
  readonly dryFrom: number | undefined;
  /**
   * Comers, and how those waited who came to drinkers that gave: mean, the wait not passed by 95 in a hundred, the
   * longest [s]; 0 where none did. `foundDry` counts the others, who are no wait at all.
   */
  readonly comers: number;
  readonly meanWait: number;
  readonly wait95: number;
  readonly longestWait: number;
  readonly gaveUp: number;
  readonly foundDry: number;
}

/**
 * One simulated day: each bird, drinker and pen; levels of each source; what the sums come to. Volumes [m³], times
 * [s].
 */
export interface DayResult {
  readonly seed: number;
  /** Days since 1970-01-01; undefined when the plan names no day and none was asked for. */
  readonly day: number | undefined;
  readonly figure: "expect" | "size";
  readonly birds: readonly BirdDay[];
  readonly drinkers: readonly DrinkerDay[];
  readonly pens: readonly PenDay[];
  readonly sources: readonly {
    readonly source: string;
    readonly start: number;
    readonly end: number;
    readonly poured: number;
    readonly drawn: number;
  }[];
  /** Level of each source through the day: parallel arrays, about every five minutes. */
  readonly levels: { readonly time: Float64Array; readonly level: readonly Float64Array[] };
  /** drunk + spilled = drawn; start + poured − drawn = end [m³]. */
  readonly balance: {
    readonly drunk: number;
    readonly spilled: number;
    readonly drawn: number;
    readonly start: number;
    readonly poured: number;
    readonly end: number;
  };
  /** How the line was solved on the way. */
  readonly solver: {
    /** Sets of drinkers at work that were solved, how often they were asked for, and how many did not solve. */
    readonly solves: number;
    readonly asked: number;
    readonly unsolved: number;
  };
  readonly events: DayEvents | undefined;
}
