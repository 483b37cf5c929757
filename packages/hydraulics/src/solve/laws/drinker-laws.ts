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
}

export function buildDrinkerLaws(line: Line, topology: Topology): DrinkerLaws {
  const { drinkers } = line;
  const { drinker } = topology;
  const take = (from: Float64Array) => {
    const taken = new Float64Array(drinker.length);
    for (let d = 0; d < drinker.length; d += 1) taken[d] = from[drinker[d]];
    return taken;
  };
  const start = take(drinkers.height);
  const opening = take(drinkers.openingHead);
  for (let d = 0; d < start.length; d += 1) start[d] += opening[d];
  return {
    count: drinker.length,
    node: topology.drinkerNode,
    start,
    coefficient: take(drinkers.coefficient),
    exponent: take(drinkers.exponent),
  };
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
