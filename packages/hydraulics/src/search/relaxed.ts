import { addCosts, type CompareCosts, type Cost } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import type { CureSpace, Picks } from "./cure-space.js";
import { type DemandForest, SLACK } from "./demand-forest.js";
import { createFrontFinder, type Domains, type FrontFinder, type Keeping } from "./fronts.js";
import { type Label, readTaken } from "./labels.js";

/** The cheapest that some part of a space could possibly cost, and the plan that is the first to look at for it. */
export interface Bound {
  /** No plan of that part that works costs less. */
  readonly cost: Cost;
  readonly picks: Picks;
}

/**
 * Gives a lower bound for any part of a space, or undefined where the part holds no plan that works.
 *
 * @param domains  options that are left, by run and then by source
 * @param below    only what costs less is of interest; from call to call it may only fall
 */
export type BoundFinder = (domains: Domains, below?: Cost) => Bound | undefined;

/**
 * Bounds by cost alone: every run and stand at its cheapest. For lines in which water has two ways to go.
 *
 * @param isAllowed  whether levels allow an option of the first source's stand
 */
export function boundByCost(
  { runs, sources, spent }: CureSpace,
  compare: CompareCosts,
  isAllowed: (option: number) => boolean,
): BoundFinder {
  const choices = [...runs, ...sources];
  return (whole) => {
    const domains = whole.map((domain, v) => (v === runs.length ? domain.filter(isAllowed) : domain));
    if (domains.some((domain) => domain.length === 0)) return undefined;
    const picks = choices.map(({ options }, v) => cheapest(options, domains[v], compare));
    const cost = choices.reduce((sum, { options }, v) => addCosts(sum, options[picks[v]].cost), spent);
    return { cost, picks };
  };
}

function cheapest(
  options: readonly { readonly cost: Cost }[],
  domain: readonly number[],
  compare: CompareCosts,
): number {
  return domain.reduce((best, option) =>
    compare(options[option].cost, options[best].cost) < 0 ? option : best,
  );
}

/**
 * Bounds by what trees of runs ask of their sources at least (see fronts.ts): for each source the cheapest pair of a
 * label and a stand at which its water stands high enough.
 */
export function boundByDemand(
  forest: DemandForest,
  lines: CureLines,
  compare: CompareCosts,
  keeping?: Keeping,
): (domains: Domains, below?: Cost, spare?: number) => Bound | undefined {
  const { runs, sources, spent } = lines.space;
  const fronts = createFrontFinder(forest, lines, compare, keeping);
  return (domains, below, spare = 0) => {
    if (forest.isCutOff) return undefined;
    const picks = domains.map((domain) => domain[0]);
    let cost = spent;
    for (let s = 0; s < sources.length; s += 1) {
      const found = cheapestPair(fronts, domains, { forest, source: s, lines, compare, below, spare });
      if (found === undefined) return undefined;
      readTaken(found.label.taken, picks);
      picks[runs.length + s] = found.stand;
      cost = addCosts(cost, found.cost);
    }
    return { cost, picks };
  };
}

interface Pairing {
  readonly forest: DemandForest;
  readonly source: number;
  readonly lines: CureLines;
  readonly compare: CompareCosts;
  readonly below: Cost | undefined;
  /** Head that must be left [m]; a bound only where it is 0. */
  readonly spare: number;
}

/** Stands are tried from the cheapest on, until one alone costs more than the best pair. */
function cheapestPair(
  fronts: FrontFinder,
  domains: Domains,
  { forest, source, lines, compare, below, spare }: Pairing,
): { readonly label: Label; readonly stand: number; readonly cost: Cost } | undefined {
  let best: { label: Label; stand: number; cost: Cost } | undefined;
  const { runs, sources } = lines.space;
  const { options } = sources[source];
  const order = [...domains[runs.length + source]].sort((a, b) => compare(options[a].cost, options[b].cost));
  const allowed = order.filter((stand) => forest.standAt(source, stand).allowed);
  for (const stand of allowed) {
    if (best !== undefined && compare(options[stand].cost, best.cost) >= 0) break;
    const { head, asks } = forest.standAt(source, stand);
    const ceiling = below && lessCost(lessCost(below, lines.space.spent), options[stand].cost);
    for (const label of fronts.atNode(source, domains, asks, ceiling)) {
      if (label.head + spare - SLACK > head) continue;
      const cost = addCosts(label.cost, options[stand].cost);
      if (best === undefined || compare(cost, best.cost) < 0) best = { label, stand, cost };
      // Labels come in order of cost: the first that the stand serves is its cheapest.
      break;
    }
  }
  return best;
}

const lessCost = (cost: Cost, by: Cost): Cost => ({
  money: cost.money - by.money,
  unpriced: cost.unpriced - by.unpriced,
  parts: cost.parts - by.parts,
  pipe: cost.pipe - by.pipe,
  runs: cost.runs - by.runs,
  stand: cost.stand - by.stand,
});
