import { SEGMENT_KIND } from "../model/line.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import {
  type Asked,
  askedByBoth,
  asksNoMore,
  FIGURES,
  FLOW,
  headAsked,
  type LossOf,
  lossesOf,
  NEED,
  NOTHING_ASKED,
  PROBE,
  serve,
} from "./asked.js";
import { addCosts, type CompareCosts, type Cost, NO_COST } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import { type Asks, type Chain, type DemandForest, SLACK } from "./demand-forest.js";
import { mostHeads } from "./most-heads.js";

/**
 * What a part of the tree asks of the water above it, with some sizes in it: the head that must stand at its top for
 * every drinker in it to have its need, and the flow that then runs at least.
 */
export interface Label {
  readonly asked: Asked;
  /** The greatest head in it [m above datum]. */
  readonly head: number;
  readonly cost: Cost;
  /** Options taken, innermost last. */
  readonly taken: Taken | undefined;
}

export interface Taken {
  readonly run: number;
  readonly option: number;
  readonly below: Taken | undefined;
  readonly beside: Taken | undefined;
}

/** Where two parts meet, so many of each, if all pairs of them were more than can be looked at quickly. */
const MOST_MEETING = 120;
const MOST_PAIRS = MOST_MEETING * MOST_MEETING;

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

/**
 * The least head a part needs is found from its far ends: at a drinker its height and the head for its need; along a
 * pipe more by what the flow loses in it; where pipes meet the most that any of them needs. Flows are those at just
 * these heads. In a plan that works every head is at least that, and so is every flow; hence a plan whose source
 * stands lower than this figure does not work. A wider pipe never raises the figure.
 */
export function createFrontFinder(
  forest: DemandForest,
  lines: CureLines,
  compare: CompareCosts,
  { most, join }: Thinning = BOUNDING,
): FrontFinder {
  const known = new Map<string, readonly Label[]>();
  const losses = lossesOf(lines);
  const mosts = new Map<Asks, readonly Float64Array[]>();
  const mostFor = (asks: Asks) => {
    const heads = mosts.get(asks) ?? mostHeads(forest, lines, losses, asks);
    mosts.set(asks, heads);
    return heads;
  };
  const subtree = subtreesOf(forest);
  const keyOf = (c: number, domains: Domains, asks: Asks, runs: readonly number[]) =>
    `${c}|${asks.stand}|${runs.map((run) => domains[run].join()).join("|")}`;
  const once = (key: string, find: () => readonly Label[]): readonly Label[] => {
    const labels = known.get(key) ?? find();
    known.set(key, labels);
    return labels;
  };
  const ofChain = (c: number, domains: Domains, asks: Asks, ceiling: Cost | undefined): readonly Label[] => {
    const chain = forest.chains[c];
    const [, ...beyond] = subtree[c];
    const under = keyOf(c, domains, asks, beyond);
    const withOption = (option: number) =>
      once(`${option}|${under}`, () => {
        const { cost } = lines.space.runs[chain.run].options[option];
        const laid: Laid = { lossOf: losses(chain.run, option), cost, option, asks, most: mostFor(asks) };
        const labels = atNode(chain.nodes[chain.nodes.length - 1], domains, asks, ceiling);
        return labels.flatMap((label) => climb(forest, chain, label, laid) ?? []);
      });
    return once(keyOf(c, domains, asks, subtree[c]), () =>
      frontOf(domains[chain.run].flatMap(withOption), compare, { ceiling, most, join }),
    );
  };
  const atNode = (node: number, domains: Domains, asks: Asks, ceiling?: Cost): readonly Label[] => {
    let labels: readonly Label[] = [NOTHING];
    for (const c of forest.below[node])
      labels = meet(labels, ofChain(c, domains, asks, ceiling), compare, { ceiling, most, join });
    return labels.map((label) => {
      const asked = [...label.asked];
      serve(forest.line.drinkers, asks, node, asked);
      return labelOf(asked, label.cost, label.taken);
    });
  };
  return { atNode };
}

const labelOf = (asked: Asked, cost: Cost, taken: Taken | undefined): Label => ({
  asked,
  head: headAsked(asked),
  cost,
  taken,
});

const NOTHING = labelOf(NOTHING_ASKED, NO_COST, undefined);

/** Runs of each chain and of all that hangs on it. */
function subtreesOf({ chains, below }: DemandForest): number[][] {
  const runs: number[][] = chains.map(({ run }) => [run]);
  for (let c = chains.length - 1; c >= 0; c -= 1) {
    for (const node of chains[c].nodes) for (const under of below[node]) runs[c].push(...runs[under]);
  }
  return runs;
}

/** What becomes of two neighbours where there are too many labels. */
type Join = (cheaper: Label, dearer: Label) => Label;

const cheaperOf: Join = (cheaper) => cheaper;

/** How many labels are kept of one part, and what becomes of neighbours where there are more. */
export interface Thinning {
  readonly most: number;
  readonly join: Join;
}

interface Thinned extends Thinning {
  readonly ceiling: Cost | undefined;
}

interface Laid {
  readonly lossOf: LossOf;
  readonly cost: Cost;
  readonly option: number;
  readonly asks: Asks;
  /** The most head that can stand at each node, by law [m above datum]. */
  readonly most: readonly Float64Array[];
}

/** A label carried up through a run; undefined where more is asked than a regulator holds, or can stand there. */
function climb(forest: DemandForest, chain: Chain, label: Label, laid: Laid): Label | undefined {
  const { asks, cost, option } = laid;
  const asked = [...label.asked];
  for (let k = chain.nodes.length - 1; k >= 0; k -= 1) {
    if (headAsked(asked) > asks.held[chain.nodes[k]] + SLACK) return undefined;
    for (let law = 0; law < FRICTION_LAWS.length; law += 1)
      if (!addLoss(forest, chain.nodes[k], asked, law, laid)) return undefined;
    if (k > 0) serve(forest.line.drinkers, asks, chain.nodes[k - 1], asked);
  }
  const taken: Taken = { run: chain.run, option, below: label.taken, beside: undefined };
  return labelOf(asked, addCosts(label.cost, cost), taken);
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

/** What two parts that hang on one node ask together. */
function meet(
  some: readonly Label[],
  others: readonly Label[],
  compare: CompareCosts,
  thinning: Thinned,
): readonly Label[] {
  const isMany = some.length * others.length > MOST_PAIRS;
  const [left, right] = isMany
    ? [thin(some, MOST_MEETING, thinning.join), thin(others, MOST_MEETING, thinning.join)]
    : [some, others];
  const both = left.flatMap((a) =>
    right.map(
      (b): Label =>
        labelOf(
          askedByBoth(a.asked, b.asked),
          addCosts(a.cost, b.cost),
          b.taken === undefined ? a.taken : { ...b.taken, beside: a.taken },
        ),
    ),
  );
  return some.length === 1 ? both : frontOf(both, compare, thinning);
}

/** Labels in order of cost, without those that another beats in cost and in all it asks; not more than can be carried on quickly. */
function frontOf(
  labels: readonly Label[],
  compare: CompareCosts,
  { ceiling, most, join }: Thinned,
): readonly Label[] {
  const wanted =
    ceiling === undefined ? [...labels] : labels.filter(({ cost }) => compare(cost, ceiling) < 0);
  const sorted = wanted.sort((a, b) => compare(a.cost, b.cost) || a.head - b.head);
  const front: Label[] = [];
  let lowest: Label | undefined;
  for (const label of sorted) {
    if (lowest !== undefined && asksNoMore(lowest.asked, label.asked)) continue;
    if (front.slice(-LOOK_BACK).some((kept) => asksNoMore(kept.asked, label.asked))) continue;
    front.push(label);
    if (lowest === undefined || label.head < lowest.head) lowest = label;
  }
  return thin(front, most, join);
}

/** A label is held against the one that needs least, and against so many last ones: nearly all that are beaten are so by these. */
const LOOK_BACK = 8;

/**
 * Neighbours in cost put together, as one label that costs no more and asks no more than any of them: still a bound
 * for all. Kept apart are those between which most head lies, the cheapest, and the one that asks least.
 */
function thin(front: readonly Label[], most: number, join: Join): readonly Label[] {
  if (front.length <= most) return front;
  const gaps = front.map(({ head }, k) =>
    k === 0 || k === front.length - 1 ? Number.POSITIVE_INFINITY : Math.abs(front[k - 1].head - head),
  );
  const least = [...gaps].sort((a, b) => b - a)[most - 1];
  const thinned: Label[] = [];
  front.forEach((label, k) => {
    const last = thinned.at(-1);
    if (last === undefined || (gaps[k] >= least && thinned.length < most)) thinned.push(label);
    else thinned[thinned.length - 1] = join(last, label);
  });
  return thinned;
}

const lesserOf: Join = (a, b) =>
  labelOf(
    a.asked.map((figure, k) => Math.min(figure, b.asked[k])),
    a.cost,
    a.taken,
  );

/** Every front bounds all that lies behind it. */
const BOUNDING: Thinning = { most: 4000, join: lesserOf };
/** Every label is one that some plan has: the cheapest at the source is a good plan, if not the best. */
export const GUESSING: Thinning = { most: 100, join: cheaperOf };

/** Options taken in a label, by run; runs it says nothing of keep `picks`. */
export function readTaken(taken: Taken | undefined, picks: number[]): void {
  for (let one = taken; one !== undefined; one = one.beside) {
    picks[one.run] = one.option;
    readTaken(one.below, picks);
  }
}
