import { SEGMENT_KIND } from "../model/line.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import { type Asked, FIGURES, type LossOf, NEED, PROBE } from "./asked.js";
import { addCosts, type CompareCosts, type Cost, NO_COST } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import { type Asks, type Chain, type DemandForest, SLACK } from "./demand-forest.js";
import type { LeastDrawn } from "./most-heads.js";

/**
 * What the runs between a node and its source cost at least, for what is asked at the node to stand there; undefined
 * where no sizes of theirs leave so much.
 */
export type CostAbove = (node: number, asked: Asked) => Cost | undefined;

/** For a cost, from cheap to dear, the most head that stands at a node by one law [m above datum]. */
type Bought = readonly { readonly cost: Cost; readonly head: number }[];

/** More figures than this are put together with the dearer neighbour, at the lesser cost. */
const MOST_FIGURES = 250;

/**
 * From the source on, the most head that each sum of money leaves at a node: that at the node before, less what each size
 * of the run between loses with the least flow. The figures of a node bound all plans, whatever lies beside its way.
 */
export function costAbove(
  { line, topology, chains }: DemandForest,
  lines: CureLines,
  compare: CompareCosts,
  {
    losses,
    asks,
    drawn,
  }: {
    readonly losses: (run: number, option: number) => LossOf;
    readonly asks: Asks;
    readonly drawn: LeastDrawn;
  },
): CostAbove {
  const { kind, setting } = line.segments;
  const known = new Map<number, readonly Bought[]>();
  const chainOf = new Map<number, Chain>();
  for (const chain of chains) for (const node of chain.nodes) chainOf.set(node, chain);
  const lossTo = (law: number, chain: Chain, node: number, option: number): number => {
    const lossOf = losses(chain.run, option);
    let lost = 0;
    for (const on of chain.nodes) {
      const [s, flow] = [topology.segment[on], drawn.flow[law][on]];
      if (flow > 0) lost += lossOf(law, s, flow) + (kind[s] === SEGMENT_KIND.oneWay ? setting[s] : 0);
      if (on === node) break;
    }
    return lost;
  };
  const boughtAt = (node: number): readonly Bought[] => {
    const chain = chainOf.get(node);
    const bought =
      known.get(node) ??
      FRICTION_LAWS.map((_, law): Bought => {
        if (chain === undefined) return [{ cost: NO_COST, head: asks.most }];
        const before = boughtAt(chain.above)[law];
        const steps = lines.space.runs[chain.run].options.flatMap(({ cost }, option) => {
          const lost = lossTo(law, chain, node, option);
          return before.map((one) => ({ cost: addCosts(one.cost, cost), head: one.head - lost }));
        });
        return stepsOf(steps, compare);
      });
    known.set(node, bought);
    return bought;
  };
  return (node, asked) => {
    let least: Cost = NO_COST;
    const bought = boughtAt(node);
    for (let law = 0; law < bought.length; law += 1) {
      const at = FIGURES * law;
      const cost = costOfHead(bought[law], Math.max(asked[at + NEED], asked[at + PROBE]) - SLACK);
      if (cost === undefined) return undefined;
      if (compare(cost, least) > 0) least = cost;
    }
    return least;
  };
}

/** In order of cost, each with more head than all before. */
function stepsOf(figures: { cost: Cost; head: number }[], compare: CompareCosts): Bought {
  figures.sort((a, b) => compare(a.cost, b.cost) || b.head - a.head);
  const steps: { cost: Cost; head: number }[] = [];
  for (const figure of figures) {
    const last = steps.at(-1);
    if (last === undefined || figure.head > last.head) steps.push(figure);
  }
  if (steps.length <= MOST_FIGURES) return steps;
  const every = Math.ceil(steps.length / MOST_FIGURES);
  return steps.flatMap(({ cost }, k) =>
    k % every === 0 ? [{ cost, head: steps[Math.min(steps.length, k + every) - 1].head }] : [],
  );
}

/** The cheapest that leaves so much head; heads rise with the cost. */
function costOfHead(bought: Bought, head: number): Cost | undefined {
  let [low, high] = [0, bought.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (bought[middle].head >= head) high = middle;
    else low = middle + 1;
  }
  return bought[low]?.cost;
}
