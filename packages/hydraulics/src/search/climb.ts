import { SEGMENT_KIND } from "../model/line.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import { FIGURES, FLOW, headAsked, type LossOf, NEED, PROBE, serve } from "./asked.js";
import { addCosts, type Cost } from "./cost.js";
import { type Asks, type Chain, type DemandForest, SLACK } from "./demand-forest.js";
import { type Label, labelOf } from "./labels.js";

/** A run with one of its options laid in it. */
export interface Laid {
  readonly lossOf: LossOf;
  readonly cost: Cost;
  readonly option: number;
  readonly asks: Asks;
  /** The most head that can stand at each node, by law [m above datum]. */
  readonly most: readonly Float64Array[];
}

/** A label carried up through a run; undefined where more is asked than a regulator holds, or can stand there. */
export function climb(forest: DemandForest, chain: Chain, label: Label, laid: Laid): Label | undefined {
  const { asks, cost, option } = laid;
  const asked = [...label.asked];
  for (let k = chain.nodes.length - 1; k >= 0; k -= 1) {
    if (headAsked(asked) > asks.held[chain.nodes[k]] + SLACK) return undefined;
    for (let law = 0; law < FRICTION_LAWS.length; law += 1)
      if (!addLoss(forest, chain.nodes[k], asked, law, laid)) return undefined;
    if (k > 0) serve(forest.line.drinkers, asks, chain.nodes[k - 1], asked);
  }
  return labelOf(asked, addCosts(label.cost, cost), {
    run: chain.run,
    option,
    below: label.taken,
    beside: undefined,
  });
}

/** Adds what the segment above a node loses by one law; false where more is asked then than can stand there. */
function addLoss(
  { line, topology }: DemandForest,
  node: number,
  asked: number[],
  law: number,
  { lossOf, asks, most }: Laid,
): boolean {
  const at = FIGURES * law;
  const s = topology.segment[node];
  const flow = asked[at + FLOW];
  const valve = line.segments.kind[s] === SEGMENT_KIND.oneWay ? line.segments.setting[s] : 0;
  if (flow > 0) asked[at + NEED] += valve + lossOf(law, s, flow);
  if (asked[at + PROBE] > Number.NEGATIVE_INFINITY)
    asked[at + PROBE] += valve + lossOf(law, s, flow + asks.oneMore);
  return Math.max(asked[at + NEED], asked[at + PROBE]) <= most[law][topology.parent[node]] + SLACK;
}
