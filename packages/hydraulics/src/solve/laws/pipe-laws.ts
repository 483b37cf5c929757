import type { Line } from "../../model/line.js";
import { GRAVITY } from "../../physics/constants.js";
import type { Topology } from "../topology.js";

/** A law that fills in the loss and its slope for every pipe at the flows given. */
export type PipeKernel = (
  laws: PipeLaws,
  count: number,
  flow: Float64Array,
  loss: Float64Array,
  slope: Float64Array,
) => void;

/**
 * What the pipe kernels need of each edge, worked out once per line and friction law. Roots have all zeros but a
 * slope floor, so that the kernels can run over every edge without asking.
 */
export interface PipeLaws {
  readonly kernel: PipeKernel;
  /** Whether the law is flat at no flow. */
  readonly hasCorner: boolean;
  /** Hazen-Williams: r in h = r Q^1.852. Darcy-Weisbach: c in h = c f Q^2. */
  readonly resistance: Float64Array;
  /** Linear term [s/m2]: laminar part of the fittings. */
  readonly linear: Float64Array;
  /** Quadratic term [s2/m5]: turbulent part of the fittings. */
  readonly quadratic: Float64Array;
  /** Darcy-Weisbach only: Reynolds number per flow [s/m3], laminar loss per flow [s/m2], relative roughness [-]. */
  readonly reynoldsPerFlow: Float64Array;
  readonly laminar: Float64Array;
  readonly relativeRoughness: Float64Array;
  /** Added to the slope (never to the loss) where the law itself may be flat: no length, or no flow [s/m2]. */
  readonly slopeFloor: Float64Array;
  /**
   * Hazen-Williams only: flow below which the slope is not followed any lower in choosing a step [m3/s]. The law itself
   * is kept.
   */
  readonly floorFlow: Float64Array;
}

/** Least slope in choosing a step [s/m2], so that a pipe of no length can be divided by. No loss is added. */
export const SLOPE_FLOOR = 1e-4;

/** The fittings of an edge as a linear and a quadratic term: K1/Re and K-infinity velocity heads. */
function fittingTerms({ segments, water }: Line, s: number): { linear: number; quadratic: number } {
  const bore = segments.bore[s];
  const velocityPerFlow = 4 / (Math.PI * bore * bore);
  return {
    linear: (segments.k1[s] * water.viscosity * velocityPerFlow) / (2 * GRAVITY * bore),
    quadratic: (segments.kInfinity[s] * velocityPerFlow * velocityPerFlow) / (2 * GRAVITY),
  };
}

/** Columns of zeros for a topology, which each friction law fills. */
export function emptyPipeLaws({ segment }: Topology, kernel: PipeKernel, hasCorner: boolean): PipeLaws {
  const zeros = () => new Float64Array(segment.length);
  return {
    kernel,
    hasCorner,
    resistance: zeros(),
    linear: zeros(),
    quadratic: zeros(),
    reynoldsPerFlow: zeros(),
    laminar: zeros(),
    relativeRoughness: zeros(),
    slopeFloor: zeros(),
    floorFlow: zeros(),
  };
}

/** Fills the columns that both friction laws share; each adds its own. */
export function fillFittings(laws: PipeLaws, line: Line, topology: Topology): void {
  laws.slopeFloor.fill(SLOPE_FLOOR);
  for (let e = 0; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (s < 0) continue;
    const terms = fittingTerms(line, s);
    laws.linear[e] = terms.linear;
    laws.quadratic[e] = terms.quadratic;
  }
}
