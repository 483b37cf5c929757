import {
  type BarCut,
  type BarPlan,
  fillBars,
  isBetter,
  planOf,
  roundRelaxed,
  shrinkBars,
} from "./bar-plan.js";
import {
  type Bars,
  barsOf,
  type CutBar,
  type Cutting,
  type CuttingAsked,
  GRAIN,
  inGrains,
} from "./cutting.js";
import { relaxCutting } from "./relaxed-cutting.js";
import { searchCuts } from "./search-cuts.js";

/** States looked at before the search ends without a proof, unless told otherwise. */
export const MOST_STATES = 30_000;

/**
 * Cuts wanted lengths from stock so that the least new stock is bought, and of the plans that buy as little, the one
 * that cuts into the least of what is on hand.
 *
 * The bound is that of the relaxed problem, rounded up to the next sum of lengths sold. Where a plan reaches it, that
 * is the proof; else every other plan is looked at, the longest piece first, bar by bar, as far as `most` allows.
 *
 * @param asked.pieces     lengths wanted, and how many of each; above 0
 * @param asked.sold       lengths that new stock is sold in; none where nothing can be bought
 * @param asked.leftovers  what lies there, each once
 * @param asked.kerf       width of a cut, 0 or more, in the same unit
 * @returns bars and their pieces, and what is proven of them
 * @throws RangeError when a length is not finite and above 0, or the kerf negative
 * @source gilmore-gomory-1961, relaxed problem, from memory
 * @example cutStock({ pieces: [{ length: 2, count: 3 }], sold: [6.1], leftovers: [2.5], kerf: 0.003 }).bought   // 6.1
 */
export function cutStock(asked: CuttingAsked): Cutting {
  requireLengths(asked);
  const { bars, uncut } = barsOf(asked);
  const relaxed = relaxCutting(bars);
  const bound = leastSum(bars, relaxed.bound);
  const first = firstPlan(bars);
  const searched = searchCuts(bars, relaxed, { bound, first, most: asked.most ?? MOST_STATES });
  const plan = searched.plan ?? { cuts: [], bought: 0, onHand: 0 };
  const missing = searched.plan === undefined ? wantedLengths(bars, asked.kerf) : [];
  return {
    bars: plan.cuts.map((cut) => barOf(bars, cut, inGrains(asked.kerf))),
    bought: plan.bought * GRAIN,
    leftoverUsed: plan.onHand * GRAIN,
    uncut: [...uncut, ...missing].sort((a, b) => b - a),
    bound: bound * GRAIN,
    isProven: searched.plan !== undefined && (plan.bought <= bound || searched.isComplete),
    isLeastLeftover: searched.plan !== undefined && (plan.onHand === 0 || searched.isComplete),
    worth: bars.size.map((size, i) => ({
      length: (size - inGrains(asked.kerf)) * GRAIN,
      worth: relaxed.worth[i] * GRAIN,
    })),
    states: searched.states,
  };
}

function requireLengths({ pieces, sold, leftovers, kerf }: CuttingAsked): void {
  for (const length of [...pieces.map((piece) => piece.length), ...sold, ...leftovers])
    if (!(Number.isFinite(length) && inGrains(length) > 0))
      throw new RangeError(`cutStock: a length is ${length}; it must be finite and above 0`);
  if (!(Number.isFinite(kerf) && kerf >= 0))
    throw new RangeError(`cutStock: kerf is ${kerf}; it must be finite and not below 0`);
}

/** The better of two plans made without a search; none where the pieces do not all fit. */
function firstPlan(bars: Bars): BarPlan | undefined {
  let best: BarPlan | undefined;
  for (const make of [fillBars, roundRelaxed]) {
    const cuts = make(bars);
    if (cuts === undefined) continue;
    for (const plan of [planOf(bars, cuts), planOf(bars, shrinkBars(bars, cuts))])
      if (isBetter(plan, best)) best = plan;
  }
  return best;
}

/** Sums of many lengths are not counted out beyond this many tries. */
const MOST_SUMS = 200_000;

/** The least sum of lengths sold that is not below the bound: nothing between can be bought. */
function leastSum(bars: Bars, bound: number): number {
  const least = bound - Math.max(1, bound * 1e-9);
  if (least <= 0) return 0;
  const sold = bars.length.filter((_, kind) => bars.price[kind] > 0).sort((a, b) => b - a);
  if (sold.length === 0) return bound;
  let best = Number.POSITIVE_INFINITY;
  let tries = 0;
  const add = (at: number, sum: number): void => {
    tries += 1;
    if (tries > MOST_SUMS || sum >= best) return;
    if (sum >= least) best = sum;
    else if (at === sold.length - 1)
      best = Math.min(best, sum + sold[at] * Math.ceil((least - sum) / sold[at]));
    else
      for (let total = sum; ; total += sold[at]) {
        add(at + 1, total);
        if (total >= least) break;
      }
  };
  add(0, 0);
  return tries > MOST_SUMS ? bound : best;
}

const wantedLengths = (bars: Bars, kerf: number): number[] =>
  bars.size.flatMap((size, i) => new Array<number>(bars.wanted[i]).fill((size - inGrains(kerf)) * GRAIN));

function barOf(bars: Bars, { kind, pattern }: BarCut, kerf: number): CutBar {
  const pieces = pattern.flatMap((count, i) => new Array<number>(count).fill(bars.size[i] - kerf));
  const rest = bars.length[kind] - pieces.reduce((sum, piece) => sum + piece + kerf, 0);
  return {
    from: bars.price[kind] > 0 ? "sold" : "leftover",
    length: bars.length[kind] * GRAIN,
    pieces: pieces.map((piece) => piece * GRAIN),
    rest: Math.max(0, rest) * GRAIN,
  };
}
