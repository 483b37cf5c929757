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
  keeping: Keeping = BOUNDING,
): FrontFinder {
  const losses = lossesOf(lines);
  const finding: Finding = {
    forest,
    lines,
    compare,
    keeping,
    losses,
    above: aboveStands(forest, lines, compare, losses),
    subtree: subtreesOf(forest),
    known: new Map(),
    climbed: new Map(),
  };
  return {
    atNode: (node, domains, asks, ceiling) => frontAtNode(finding, node, { domains, asks, ceiling }),
  };
}

/** What all fronts are found with, and those found before. */
interface Finding {
  readonly forest: DemandForest;
  readonly lines: CureLines;
  readonly compare: CompareCosts;
  readonly keeping: Keeping;
  readonly losses: ReturnType<typeof lossesOf>;
  readonly above: (asks: Asks) => Above;
  /** By chain: its run, and those of all that hangs on it. */
  readonly subtree: readonly (readonly number[])[];
  /** By chain, stand and options of its subtree: its front. */
  readonly known: Map<string, readonly Hoped[]>;
  /** By option, chain, stand and options beyond: what comes up through the chain. */
  readonly climbed: Map<string, readonly Label[]>;
}

/** What one call asks for. */
interface Wanted {
  readonly domains: Domains;
  readonly asks: Asks;
  readonly ceiling: Cost | undefined;
}

function frontAtNode(finding: Finding, node: number, wanted: Wanted): readonly Label[] {
  const { forest, compare, keeping } = finding;
  const [first, ...others] = forest.below[node];
  let hoped =
    first === undefined ? [{ label: NOTHING, least: NO_COST }] : frontOfChain(finding, first, wanted);
  for (const c of others) {
    const both = pairsOf(hoped, frontOfChain(finding, c, wanted), keeping.thin, compare);
    hoped = keepFront(finding, hopeFor(finding, both, node, wanted));
  }
  return hoped.map(({ label }) => {
    const asked = [...label.asked];
    serve(forest.line.drinkers, wanted.asks, node, asked);
    return labelOf(asked, label.cost, label.taken);
  });
}

/** The front of a chain, at the node above it. */
function frontOfChain(finding: Finding, c: number, wanted: Wanted): readonly Hoped[] {
  const { known, climbed, subtree } = finding;
  const { run, above } = finding.forest.chains[c];
  const [, ...beyond] = subtree[c];
  const under = keyOf(c, wanted, beyond);
  const withOption = (option: number) =>
    once(climbed, `${option}|${under}`, () => climbChain(finding, c, option, wanted));
  return once(known, keyOf(c, wanted, subtree[c]), () => {
    const labels = wanted.domains[run].flatMap(withOption);
    return keepFront(finding, hopeFor(finding, labels, above, wanted));
  });
}

/** All that hangs on the end of a chain, carried up through it with one option laid. */
function climbChain(finding: Finding, c: number, option: number, wanted: Wanted): readonly Label[] {
  const { forest, lines, losses, above } = finding;
  const { asks } = wanted;
  const chain = forest.chains[c];
  const { cost } = lines.space.runs[chain.run].options[option];
  const laid: Laid = { lossOf: losses(chain.run, option), cost, option, asks, most: above(asks).most };
  const labels = frontAtNode(finding, chain.nodes[chain.nodes.length - 1], wanted);
  return labels.flatMap((label) => climb(forest, chain, label, laid) ?? []);
}

/** Those that may still lead to a plan that works and costs less than the ceiling. */
function hopeFor(
  { above, compare }: Finding,
  labels: readonly Label[],
  node: number,
  { asks, ceiling }: Wanted,
): Hoped[] {
  const { cost } = above(asks);
  return labels.flatMap((label) => {
    const rest = cost(node, label.asked);
    if (rest === undefined) return [];
    const least = addCosts(label.cost, rest);
    return ceiling !== undefined && compare(least, ceiling) >= 0 ? [] : [{ label, least }];
  });
}

const keepFront = ({ compare, keeping: { most, thin } }: Finding, hoped: readonly Hoped[]) =>
  thin(frontOf(hoped, compare), most, compare);

const keyOf = (c: number, { domains, asks }: Wanted, runs: readonly number[]) =>
  `${c}|${asks.stand}|${runs.map((run) => domains[run].join()).join("|")}`;

function once<Kept>(kept: Map<string, Kept>, key: string, find: () => Kept): Kept {
  const one = kept.get(key) ?? find();
  kept.set(key, one);
  return one;
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
