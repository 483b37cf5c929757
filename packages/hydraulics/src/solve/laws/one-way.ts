import { type Line, SEGMENT_KIND } from "../../model/line.js";
import type { Topology } from "../topology.js";

/**
 * One-way valves that are open: each takes the head that opens it, whatever the flow. A valve that water would run
 * back through under this law is cut out of the line (solve-line.ts); so the law itself stays smooth.
 */
export interface OneWayLaws {
  /** Edges that hold a valve, and the head it takes, signed along the edge [m]. */
  readonly edge: Int32Array;
  readonly taken: Float64Array;
}

const NO_VALVES: OneWayLaws = { edge: new Int32Array(0), taken: new Float64Array(0) };

export function buildOneWayLaws(line: Line, topology: Topology): OneWayLaws {
  const edges: number[] = [];
  for (let e = 0; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (s >= 0 && line.segments.kind[s] === SEGMENT_KIND.oneWay) edges.push(e);
  }
  if (edges.length === 0) return NO_VALVES;
  return {
    edge: Int32Array.from(edges),
    taken: Float64Array.from(edges, (e) => topology.sign[e] * line.segments.setting[topology.segment[e]]),
  };
}

/** Adds what the valves take to the losses that the pipe kernel wrote. */
export function addOneWayLosses(laws: OneWayLaws, loss: Float64Array): void {
  for (let v = 0; v < laws.edge.length; v += 1) loss[laws.edge[v]] += laws.taken[v];
}
