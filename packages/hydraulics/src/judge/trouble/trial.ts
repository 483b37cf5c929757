import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { Severity } from "./cause.js";

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
  /** Source that nothing fills any more. */
  readonly notFilled?: number;
}
