import type { CompareCosts, Cost } from "./cost.js";
import type { CureSpace, Picks } from "./cure-space.js";
import type { BoundFinder } from "./relaxed.js";

/** A plan of a space that works, with what it costs. */
export interface Found {
  readonly picks: Picks;
  readonly cost: Cost;
}

/** What a search came to. */
export interface Searched {
  readonly found: Found | undefined;
  /** Whether nothing in the space that works is cheaper; with nothing found, whether nothing works. */
  readonly proven: boolean;
  /** Where it is not proven: no plan that works costs less than this. */
  readonly bound: Cost | undefined;
  /** Plans the space holds, plans judged, and parts of the space for which a bound was found. */
  readonly plans: number;
  readonly judged: number;
  readonly parts: number;
}

export interface Searching {
  readonly space: CureSpace;
  readonly bound: BoundFinder;
  readonly compare: CompareCosts;
  /** Plans that likely work and cost little more than they must, the likeliest last, if there is a quick way to them. */
  readonly likely?: (below: Cost | undefined) => Iterable<Picks>;
  /** Whether one plan works: the judge's own answer. */
  readonly works: (picks: Picks) => boolean;
  /** Asked before each plan is judged; false ends the search. */
  readonly mayGoOn: () => boolean;
  /** Parts of the space that may be bounded before the search ends. */
  readonly mostParts: number;
  /** Only what is cheaper than this is of interest. */
  readonly below?: Cost | undefined;
}
