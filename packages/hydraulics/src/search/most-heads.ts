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

/**
 * The most head that can stand at each node in any plan of the space, by law [m above datum]: that of the source, less
 * what is lost on the way at least. In each segment that is the loss of whichever of its sizes loses least, at the
 * flow that runs when every run below has such a size too. What asks more at a node need not be carried on to the
 * source to be found too much.
 */
export function mostHeads(
  forest: DemandForest,
  lines: CureLines,
  losses: (run: number, option: number) => LossOf,
  asks: Asks,
): readonly Float64Array[] {
  const { topology } = forest;
  const lost = leastLosses(forest, lines, losses, asks);
  return lost.map((loss) => {
    const head = new Float64Array(topology.nodeCount).fill(asks.most);
    for (let i = topology.rootCount; i < topology.nodeCount; i += 1)
      head[i] = head[topology.parent[i]] - loss[i];
    return head;
  });
}

/** By law and node, what is lost at least in the segment above it [m]. */
function leastLosses(
  { line, topology }: DemandForest,
  lines: CureLines,
  losses: (run: number, option: number) => LossOf,
  asks: Asks,
): Float64Array[] {
  const lawsOf = lines.space.runs.map(({ options }, run) => options.map((_, option) => losses(run, option)));
  const lost = FRICTION_LAWS.map(() => new Float64Array(topology.nodeCount));
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
    }
    askedAt[topology.parent[i]] = askedByBoth(askedAt[topology.parent[i]], asked);
  }
  return lost;
}
