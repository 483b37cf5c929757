import { flowOfDrinker } from "../model/drinker-flow.js";
import { type Line, SEGMENT_KIND } from "../model/line.js";
import { buildLossTable, type LossTable, lossByTable } from "../solve/loss-table.js";
import type { FrictionLaw } from "../solve/solution.js";
import { addCosts, type CompareCosts, type Cost, NO_COST } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import { type Asks, type Chain, type DemandForest, SLACK } from "./demand-forest.js";

/**
 * What a part of the tree asks of the water above it, with some sizes in it: the head that must stand at its top for
 * every drinker in it to have its need, and the flow that then runs at least.
 */
export interface Label {
  /** For those certainly at work, and for one more bird at any other [m above datum]. */
  readonly need: number;
  readonly probe: number;
  readonly flow: number;
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

/** Labels kept of one part; of more, neighbours are put together at the lesser of all their figures. */
const MOST_LABELS = 400;
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
   * @param ceiling  labels that cost as much are of no interest; from call to call it may only fall
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
  law: FrictionLaw,
  compare: CompareCosts,
): FrontFinder {
  const known = new Map<string, readonly Label[]>();
  const losses = lossesOf(lines, law);
  const subtree = subtreesOf(forest);
  const keyOf = (c: number, domains: Domains, asks: Asks, runs: readonly number[]) =>
    `${c}|${asks.alike[c]}|${runs.map((run) => domains[run].join()).join("|")}`;
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
        const laid: Laid = { lossOf: losses(chain.run, option), cost, option, asks };
        const labels = atNode(chain.nodes[chain.nodes.length - 1], domains, asks, ceiling);
        return labels.flatMap((label) => climb(forest, chain, label, laid) ?? []);
      });
    return once(keyOf(c, domains, asks, subtree[c]), () =>
      frontOf(domains[chain.run].flatMap(withOption), compare, ceiling),
    );
  };
  const atNode = (node: number, domains: Domains, asks: Asks, ceiling?: Cost): readonly Label[] => {
    let labels: readonly Label[] = [NOTHING];
    for (const c of forest.below[node])
      labels = meet(labels, ofChain(c, domains, asks, ceiling), compare, ceiling);
    return labels.map((label) => {
      const asked: Asked = { need: label.need, probe: label.probe, flow: label.flow };
      serve(forest, asks, node, asked);
      return { ...label, ...asked };
    });
  };
  return { atNode };
}

const NOTHING: Label = {
  need: Number.NEGATIVE_INFINITY,
  probe: Number.NEGATIVE_INFINITY,
  flow: 0,
  cost: NO_COST,
  taken: undefined,
};

type LossOf = (segment: number, flow: number) => number;

/** What a run loses with one of its options. */
function lossesOf(lines: CureLines, law: FrictionLaw): (run: number, option: number) => LossOf {
  const tables = new Map<Line, LossTable>();
  return (run, option) => {
    const line = lines.withOption(run, option);
    const table = tables.get(line) ?? buildLossTable(line, law);
    tables.set(line, table);
    return (segment, flow) => lossByTable(line, table, segment, flow);
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

interface Laid {
  readonly lossOf: LossOf;
  readonly cost: Cost;
  readonly option: number;
  readonly asks: Asks;
}

/** A label carried up through a run; undefined where more is asked than a regulator holds, or any source has. */
function climb(
  forest: DemandForest,
  chain: Chain,
  label: Label,
  { lossOf, cost, option, asks }: Laid,
): Label | undefined {
  const { segments } = forest.line;
  const asked: Asked = { need: label.need, probe: label.probe, flow: label.flow };
  for (let k = chain.nodes.length - 1; k >= 0; k -= 1) {
    const s = forest.topology.segment[chain.nodes[k]];
    if (Math.max(asked.need, asked.probe) > asks.held[chain.nodes[k]] + SLACK) return undefined;
    const valve = segments.kind[s] === SEGMENT_KIND.oneWay ? segments.setting[s] : 0;
    if (asked.flow > 0) asked.need += valve + lossOf(s, asked.flow);
    if (asked.probe > Number.NEGATIVE_INFINITY) asked.probe += valve + lossOf(s, asked.flow + asks.oneMore);
    if (Math.max(asked.need, asked.probe) > asks.most + SLACK) return undefined;
    if (k > 0) serve(forest, asks, chain.nodes[k - 1], asked);
  }
  const taken: Taken = { run: chain.run, option, below: label.taken, beside: undefined };
  return { ...asked, cost: addCosts(label.cost, cost), taken };
}

interface Asked {
  need: number;
  probe: number;
  flow: number;
}

/**
 * Adds the drinkers that hang at a node itself. Where one more bird must find its need, the head that stands without
 * it is no less; so flows are those at the greater of the two.
 */
function serve({ line }: DemandForest, asks: Asks, node: number, asked: Asked): void {
  const [working, idle] = [asks.atWork[node], asks.idle[node]];
  for (const { height, head } of idle) asked.probe = Math.max(asked.probe, height + head);
  asked.need = Math.max(asked.need, asked.probe);
  for (const { height, head } of working) asked.need = Math.max(asked.need, height + head);
  for (const { drinker, height } of working)
    asked.flow += flowOfDrinker(line.drinkers, drinker, asked.need - height);
}

/** What two parts that hang on one node ask together. */
function meet(
  some: readonly Label[],
  others: readonly Label[],
  compare: CompareCosts,
  ceiling: Cost | undefined,
): readonly Label[] {
  const isMany = some.length * others.length > MOST_PAIRS;
  const [left, right] = isMany ? [thin(some, MOST_MEETING), thin(others, MOST_MEETING)] : [some, others];
  const both = left.flatMap((a) =>
    right.map(
      (b): Label => ({
        need: Math.max(a.need, b.need),
        probe: Math.max(a.probe, b.probe),
        flow: a.flow + b.flow,
        cost: addCosts(a.cost, b.cost),
        taken: b.taken === undefined ? a.taken : { ...b.taken, beside: a.taken },
      }),
    ),
  );
  return some.length === 1 ? both : frontOf(both, compare, ceiling);
}

/** Labels in order of cost, without those that another beats in cost and in all it asks; not more than can be carried on quickly. */
function frontOf(
  labels: readonly Label[],
  compare: CompareCosts,
  ceiling: Cost | undefined,
): readonly Label[] {
  const wanted =
    ceiling === undefined ? [...labels] : labels.filter(({ cost }) => compare(cost, ceiling) < 0);
  const sorted = wanted.sort((a, b) => compare(a.cost, b.cost) || a.need - b.need || a.probe - b.probe);
  const front: Label[] = [];
  let lowest: Label | undefined;
  for (const label of sorted) {
    if (lowest !== undefined && asksNoMore(lowest, label)) continue;
    if (front.slice(-LOOK_BACK).some((kept) => asksNoMore(kept, label))) continue;
    front.push(label);
    if (lowest === undefined || label.need < lowest.need) lowest = label;
  }
  return thin(front, MOST_LABELS);
}

/** A label is held against the one that needs least, and against so many last ones: nearly all that are beaten are so by these. */
const LOOK_BACK = 8;

const asksNoMore = (a: Label, b: Label): boolean =>
  a.need <= b.need && a.probe <= b.probe && a.flow <= b.flow;

/**
 * Neighbours in cost put together, as one label that costs no more and asks no more than any of them: still a bound
 * for all. Kept apart are those between which most head lies.
 */
function thin(front: readonly Label[], most: number): readonly Label[] {
  if (front.length <= most) return front;
  const gaps = front.map(({ need, probe }, k) =>
    k === 0
      ? Number.POSITIVE_INFINITY
      : Math.abs(Math.max(front[k - 1].need, front[k - 1].probe) - Math.max(need, probe)),
  );
  const least = [...gaps].sort((a, b) => b - a)[most - 1];
  const thinned: Label[] = [];
  front.forEach((label, k) => {
    const last = thinned.at(-1);
    if (last === undefined || (gaps[k] >= least && thinned.length < most)) thinned.push(label);
    else thinned[thinned.length - 1] = lesserOf(last, label);
  });
  return thinned;
}

const lesserOf = (a: Label, b: Label): Label => ({
  ...a,
  need: Math.min(a.need, b.need),
  probe: Math.min(a.probe, b.probe),
  flow: Math.min(a.flow, b.flow),
});

/** Options taken in a label, by run; runs it says nothing of keep `picks`. */
export function readTaken(taken: Taken | undefined, picks: number[]): void {
  for (let one = taken; one !== undefined; one = one.beside) {
    picks[one.run] = one.option;
    readTaken(one.below, picks);
  }
}
