import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";

/** How bad it is supposed to be, for telling; what does not apply is left out. */
export interface Severity {
  /** Share of the bore, or of a drinker's flow, that is still open, from 0 (shut) to 1. */
  readonly openShare?: number;
  /** Where on its run [m from the start]. */
  readonly along?: number;
  /** Height of the air's column [m]. */
  readonly airHead?: number;
  /** How far the water stands under where it was thought to [m]. */
  readonly below?: number;
}

/** A supposed state of the line before it is solved. What is left out is as in the plan. */
export interface Trial {
  readonly weight: number;
  readonly severity: Severity;
  readonly line: Line;
  /** Whether points, pipes and taps are those of the plan, so that the solver keeps its numbering. */
  readonly isAlike: boolean;
  readonly flock?: Flock;
  /** By source: where its water really stands [m above its inside bottom]. */
  readonly levels?: readonly number[];
  /** By source: height of the pressure surface [m above datum], where it is not that of the level. */
  readonly heads?: Float64Array;
  readonly atWork?: Uint8Array;
  /** By point: height of the air columns on the way [m]. */
  readonly airHead?: Float64Array;
  /** A drinker whose water runs away before a beak finds it, and the share that is found. */
  readonly spilt?: { readonly drinker: number; readonly left: number };
  /** Source that nothing fills any more. */
  readonly notFilled?: number;
}
