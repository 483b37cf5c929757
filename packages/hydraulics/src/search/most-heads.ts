import { SEGMENT_KIND } from "../model/line.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import {
  type Asked,
  askedByBoth,
  FIGURES,
  FLOW,
  type LossOf,
  NEED,
  NOTHING_ASKED,
  PROBE,
  serve,
} from "./asked.js";
import type { CureLines } from "./cure-lines.js";
import type { Asks, DemandForest } from "./demand-forest.js";

/** By law and node, what runs and what is lost at least in the segment above it, in any plan of the space that works. */
export interface LeastDrawn {
  /** [m3/s] */
  readonly flow: readonly Float64Array[];
  /** [m] */
  readonly lost: readonly Float64Array[];
}

/**
 * The most head that can stand at each node in any plan of the space, by law [m above datum]: that of the source, less
 * what is lost on the way at least. What asks more at a node need not be carried on to the source to be found too much.
 */
export function mostHeads(
  { topology }: DemandForest,
  asks: Asks,
  { lost }: LeastDrawn,
): readonly Float64Array[] {
  return lost.map((loss) => {
    const head = new Float64Array(topology.nodeCount).fill(asks.most);
    for (let i = topology.rootCount; i < topology.nodeCount; i += 1)
      head[i] = head[topology.parent[i]] - loss[i];
    return head;
  });
}

/**
 * In each segment the loss of whichever of its sizes loses least, at the flow that runs when every run below has such
 * a size too.
 */
export function leastDrawn(
  { line, topology }: DemandForest,
  lines: CureLines,
  losses: (run: number, option: number) => LossOf,
  asks: Asks,
): LeastDrawn {
  const lawsOf = lines.space.runs.map(({ options }, run) => options.map((_, option) => losses(run, option)));
  const [flows, lost] = [0, 1].map(() => FRICTION_LAWS.map(() => new Float64Array(topology.nodeCount)));
  const askedAt: Asked[] = Array.from({ length: topology.nodeCount }, () => NOTHING_ASKED);
  for (let i = topology.nodeCount - 1; i >= topology.rootCount; i -= 1) {
    const s = topology.segment[i];
    const asked = [...askedAt[i]];
    serve(line.drinkers, asks, i, asked);
    const valve = line.segments.kind[s] === SEGMENT_KIND.oneWay ? line.segments.setting[s] : 0;
    for (let law = 0; law < FRICTION_LAWS.length; law += 1) {
      const at = FIGURES * law;
      const flow = asked[at + FLOW];
      if (flow === 0) continue;
      const sizes = lawsOf[line.segments.run[s]];
      const loss =
        valve +
        sizes.reduce((least, lossOf) => Math.min(least, lossOf(law, s, flow)), Number.POSITIVE_INFINITY);
      asked[at + NEED] += loss;
      asked[at + PROBE] += loss;
      lost[law][i] = loss;
      flows[law][i] = flow;
    }
    askedAt[topology.parent[i]] = askedByBoth(askedAt[topology.parent[i]], asked);
  }
  return { flow: flows, lost };
}
