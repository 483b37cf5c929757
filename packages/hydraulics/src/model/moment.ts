/** The four moments every plan is solved for. */
export const MOMENTS = ["fullIdle", "fullBusiest", "lowestBusiest", "ordinary"] as const;
export type MomentName = (typeof MOMENTS)[number];

/** What sets the line at one moment: the water that feeds it, and who drinks. */
export interface Moment {
  readonly name: MomentName;
  /** Height of the pressure surface of each source [m above datum], in the order of `line.sources`. */
  readonly sourceHead: Float64Array;
  /** 1 where a drinker is at work, in the order of `line.drinkers`. */
  readonly atWork: Uint8Array;
}
