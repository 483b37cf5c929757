import type { Line } from "../../model/line.js";
import type { Topology } from "../topology.js";

/**
 * Drinkers as the solver sees them: the head a drinker needs at its node to pass a flow,
 * h = start + (q/k)^(1/x) for q >= 0, where `start` is its own height and opening head together.
 */
export interface DrinkerLaws {
  readonly count: number;
  readonly node: Int32Array;
  /** Height of the valve and opening head [m above datum]. */
  readonly start: Float64Array;
  readonly coefficient: Float64Array;
  readonly exponent: Float64Array;
  /** No drinker is taken to answer more strongly than this to head [m2/s]. */
  readonly greatestConductance: Float64Array;
}

/**
 * Head [m] below which it is not told apart how a drinker answers. One that is nearly shut answers without bound to the
 * first hair of head: to the last bit of a number, with more than the line holds.
 */
export const LEAST_REACH = 1e-6;

/** @param into  laws of a line with the same topology, to be filled anew */
export function buildDrinkerLaws(line: Line, topology: Topology, into = emptyLaws(topology)): DrinkerLaws {
  const { height, openingHead, coefficient, exponent } = line.drinkers;
  const { drinker } = topology;
  for (let k = 0; k < drinker.length; k += 1) {
    const d = drinker[k];
    into.start[k] = height[d] + openingHead[d];
    into.coefficient[k] = coefficient[d];
    into.exponent[k] = exponent[d];
    into.greatestConductance[k] = greatestConductance(into, k);
  }
  return into;
}

function emptyLaws({ drinker, drinkerNode }: Topology): DrinkerLaws {
  const zeros = () => new Float64Array(drinker.length);
  return {
    count: drinker.length,
    node: drinkerNode,
    start: zeros(),
    coefficient: zeros(),
    exponent: zeros(),
    greatestConductance: zeros(),
  };
}

/** What it passes for each metre of head over the first LEAST_REACH; a law that begins flat answers more strongly later. */
function greatestConductance(laws: DrinkerLaws, d: number): number {
  return laws.exponent[d] < 1 ? drinkerFlowAt(laws, d, LEAST_REACH) / LEAST_REACH : Number.POSITIVE_INFINITY;
}

/** Head above `start` that each working drinker needs for its flow, and the slope of that. */
export function evaluateDrinkers(
  laws: DrinkerLaws,
  working: Int32Array,
  flow: Float64Array,
  loss: Float64Array,
  slope: Float64Array,
): void {
  const { coefficient, exponent } = laws;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    const share = flow[d] / coefficient[d];
    if (share <= 0) {
      loss[d] = 0;
      slope[d] = 0;
    } else if (exponent[d] === 0.5) {
      loss[d] = share * share;
      slope[d] = (2 * share) / coefficient[d];
    } else {
      loss[d] = share ** (1 / exponent[d]);
      slope[d] = loss[d] / (exponent[d] * flow[d]);
    }
  }
}

/** What drinker `d` passes with `head` above its start. */
export function drinkerFlowAt(laws: DrinkerLaws, d: number, head: number): number {
  if (head <= 0) return 0;
  return laws.coefficient[d] * (laws.exponent[d] === 0.5 ? Math.sqrt(head) : head ** laws.exponent[d]);
}
