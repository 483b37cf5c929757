import { lossesOf, serve } from "./asked.js";
import { climb, type Laid } from "./climb.js";
import { addCosts, type CompareCosts, type Cost, NO_COST } from "./cost.js";
import { type CostAbove, costAbove } from "./cost-above.js";
import type { CureLines } from "./cure-lines.js";
import type { Asks, DemandForest } from "./demand-forest.js";
import {
  bothOf,
  frontOf,
  type Hoped,
  joinNeighbours,
  keepLikely,
  type Label,
  labelOf,
  NOTHING,
  type Thinning,
} from "./labels.js";
import { leastDrawn, mostHeads } from "./most-heads.js";

/** Options that each run may still take, by position in the space. */
export type Domains = readonly (readonly number[])[];

/** Finds, from the far ends to the sources, the fronts of every part: no label of a front is worse than another in all. */
export interface FrontFinder {
  /**
   * What hangs on a node: the labels of all below it, and of its own drinkers.
   *
   * @param ceiling  labels that cost as much are of no interest; with one stand, from call to call it may only fall
   */
  atNode(node: number, domains: Domains, asks: Asks, ceiling?: Cost): readonly Label[];
}

/** How labels are kept: all that fit bound every plan; or the likeliest few, of which the cheapest is a good plan if not the best. */
export interface Keeping {
  readonly most: number;
  readonly thin: Thinning;
}

const BOUNDING: Keeping = { most: 4000, thin: joinNeighbours };
export const GUESSING: Keeping = { most: 60, thin: keepLikely };

/** Where two parts meet, so many of each, if all pairs of them were more than can be looked at quickly. */
const MOST_MEETING = 120;
const MOST_PAIRS = MOST_MEETING * MOST_MEETING;

/** What is asked of the way above with one stand. */
interface Above {
  readonly most: readonly Float64Array[];
  readonly cost: CostAbove;
}

/**
 * The least head a part needs is found from its far ends: at a drinker its height and the head for its need; along a
 * pipe more by what the flow loses in it; where pipes meet the most that any of them needs. Flows are those at just
 * these heads. In a plan that works every head is at least that, and so is every flow; hence a plan whose source
 * stands lower than this figure does not work. A wider pipe never raises the figure. Labels that, with the least that the
 * runs above must cost for them, come to the ceiling are dropped.
 */
export function createFrontFinder(
  forest: DemandForest,
  lines: CureLines,
  compare: CompareCosts,
  { most, thin }: Keeping = BOUNDING,
): FrontFinder {
  const known = new Map<string, readonly Hoped[]>();
  const losses = lossesOf(lines);
  const above = aboveStands(forest, lines, compare, losses);
  const subtree = subtreesOf(forest);
  const keyOf = (c: number, domains: Domains, asks: Asks, runs: readonly number[]) =>
    `${c}|${asks.stand}|${runs.map((run) => domains[run].join()).join("|")}`;
  const once = <Kept>(kept: Map<string, Kept>, key: string, find: () => Kept): Kept => {
    const one = kept.get(key) ?? find();
    kept.set(key, one);
    return one;
  };
  /** Those that may still lead to a plan that works and costs less than the ceiling. */
  const hopeFor = (
    labels: readonly Label[],
    node: number,
    asks: Asks,
    ceiling: Cost | undefined,
  ): Hoped[] => {
    const { cost } = above(asks);
    return labels.flatMap((label) => {
      const rest = cost(node, label.asked);
      if (rest === undefined) return [];
      const least = addCosts(label.cost, rest);
      return ceiling !== undefined && compare(least, ceiling) >= 0 ? [] : [{ label, least }];
    });
  };
  const climbed = new Map<string, readonly Label[]>();
  const ofChain = (c: number, domains: Domains, asks: Asks, ceiling: Cost | undefined): readonly Hoped[] => {
    const chain = forest.chains[c];
    const [, ...beyond] = subtree[c];
    const under = keyOf(c, domains, asks, beyond);
    const withOption = (option: number) =>
      once(climbed, `${option}|${under}`, () => {
        const { cost } = lines.space.runs[chain.run].options[option];
        const { most: heads } = above(asks);
        const laid: Laid = { lossOf: losses(chain.run, option), cost, option, asks, most: heads };
        const labels = atNode(chain.nodes[chain.nodes.length - 1], domains, asks, ceiling);
        return labels.flatMap((label) => climb(forest, chain, label, laid) ?? []);
      });
    return once(known, keyOf(c, domains, asks, subtree[c]), () =>
      thin(
        frontOf(hopeFor(domains[chain.run].flatMap(withOption), chain.above, asks, ceiling), compare),
        most,
        compare,
      ),
    );
  };
  const atNode = (node: number, domains: Domains, asks: Asks, ceiling?: Cost): readonly Label[] => {
    const [first, ...others] = forest.below[node];
    let hoped =
      first === undefined ? [{ label: NOTHING, least: NO_COST }] : ofChain(first, domains, asks, ceiling);
    for (const c of others) {
      const both = pairsOf(hoped, ofChain(c, domains, asks, ceiling), thin, compare);
      hoped = thin(frontOf(hopeFor(both, node, asks, ceiling), compare), most, compare);
    }
    return hoped.map(({ label }) => {
      const asked = [...label.asked];
      serve(forest.line.drinkers, asks, node, asked);
      return labelOf(asked, label.cost, label.taken);
    });
  };
  return { atNode };
}

/** What is asked of the way above every part, found once for each stand. */
function aboveStands(
  forest: DemandForest,
  lines: CureLines,
  compare: CompareCosts,
  losses: ReturnType<typeof lossesOf>,
): (asks: Asks) => Above {
  const known = new Map<Asks, Above>();
  return (asks) => {
    const before = known.get(asks);
    if (before !== undefined) return before;
    const drawn = leastDrawn(forest, lines, losses, asks);
    const above: Above = {
      most: mostHeads(forest, asks, drawn),
      cost: costAbove(forest, lines, compare, { losses, asks, drawn }),
    };
    known.set(asks, above);
    return above;
  };
}

/** Runs of each chain and of all that hangs on it. */
function subtreesOf({ chains, below }: DemandForest): number[][] {
  const runs: number[][] = chains.map(({ run }) => [run]);
  for (let c = chains.length - 1; c >= 0; c -= 1) {
    for (const node of chains[c].nodes) for (const under of below[node]) runs[c].push(...runs[under]);
  }
  return runs;
}

/** What two parts that hang on one node ask together. */
function pairsOf(
  some: readonly Hoped[],
  others: readonly Hoped[],
  thin: Thinning,
  compare: CompareCosts,
): Label[] {
  const isMany = some.length * others.length > MOST_PAIRS;
  const [left, right] = isMany
    ? [thin(some, MOST_MEETING, compare), thin(others, MOST_MEETING, compare)]
    : [some, others];
  return left.flatMap((a) => right.map((b) => bothOf(a.label, b.label)));
}
