/** The two friction laws every line is solved with. */
export const FRICTION_LAWS = ["hazenWilliams", "darcyWeisbach"] as const;
/** One of the two friction laws. */
export type FrictionLaw = (typeof FRICTION_LAWS)[number];

/** Worst residual of a kind, and where. */
export interface Residual {
  readonly worst: number;
  /** Point (continuity) or segment (energy) index; -1 when there is none. */
  readonly at: number;
}

/**
 * The state of a line at one moment. Every outcome has the same fields; an unsolved one carries the best state
 * seen and why it stopped. Arrays are in the order of the line and alias no solver buffer.
 */
export interface LineSolution {
  readonly outcome: "solved" | "stalled";
  readonly friction: FrictionLaw;
  /** Hydraulic head at each point [m above datum]. Points cut off from every source carry their own height. */
  readonly head: Float64Array;
  /** 1 where a point is joined to a source by open pipe. */
  readonly reached: Uint8Array;
  /** Flow in each segment, positive from its first to its second point [m3/s]. */
  readonly flow: Float64Array;
  /** Flow of each drinker [m3/s]. */
  readonly drinkerFlow: Float64Array;
  /** Draw from each source [m3/s]. */
  readonly sourceFlow: Float64Array;
  /** By source: what its float valve lets into it from the line [m3/s]; 0 where it has none or it is shut. */
  readonly feedFlow: Float64Array;
  /** What pours out of each leak of the line [m3/s]; empty where it has none. */
  readonly leakFlow: Float64Array;
  /** Recomputed from scratch, by other code than the solver: continuity [m3/s], energy [m]. */
  readonly checks: { readonly continuity: Residual; readonly energy: Residual };
  readonly effort: { readonly steps: number; readonly evaluations: number };
}
