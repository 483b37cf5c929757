import { type BarCut, type BarPlan, isBetter, isSold } from "./bar-plan.js";
import type { Pattern } from "./best-pattern.js";
import type { Bars } from "./cutting.js";
import type { RelaxedCutting } from "./relaxed-cutting.js";

export interface CutSearch {
  readonly plan: BarPlan | undefined;
  readonly states: number;
  /** Whether every plan that could be better was looked at. */
  readonly isComplete: boolean;
}

export interface SearchAsked {
  /** Nothing buys less. */
  readonly bound: number;
  readonly first: BarPlan | undefined;
  readonly most: number;
}

/**
 * Looks at every plan that could be better than the first one. The longest piece still wanted goes into a bar of
 * each kind in turn, with every filling of that bar to which nothing more can be added: another plan can be made into
 * such a one by moving pieces forward, at no cost.
 *
 * A branch ends where what is bought so far, and what the worth of the pieces still wanted proves must be bought, is
 * more than in the best plan; or the same while as much of what is on hand is cut; or where the same pieces and bars
 * were left before at no higher cost.
 */
export function searchCuts(
  bars: Bars,
  relaxed: RelaxedCutting,
  { bound, first, most }: SearchAsked,
): CutSearch {
  const left = [...bars.wanted];
  const supply = [...bars.supply];
  const taken: BarCut[] = [];
  const wasCheaper = rememberLeft(left, supply);
  let best = first;
  let states = 0;
  let isComplete = true;
  const mustBuy = mustBuyOf(bars, relaxed, left, supply);

  const visit = (bought: number, onHand: number): void => {
    if (states >= most) {
      isComplete = false;
      return;
    }
    states += 1;
    const piece = left.findIndex((count) => count > 0);
    if (piece < 0) {
      const plan = { cuts: [...taken], bought, onHand };
      if (isBetter(plan, best)) best = plan;
      return;
    }
    if (best !== undefined && isBeaten(best, Math.max(bound, bought + mustBuy()), onHand)) return;
    if (wasCheaper(bought, onHand)) return;
    const ways = waysToCut(bars, left, supply, piece);
    if (ways.length >= MOST_WAYS) isComplete = false;
    for (const cut of ways) {
      take(cut, 1);
      taken.push(cut);
      const { length } = bars;
      if (isSold(bars, cut.kind)) visit(bought + length[cut.kind], onHand);
      else visit(bought, onHand + length[cut.kind]);
      taken.pop();
      take(cut, -1);
    }
  };
  const take = ({ kind, pattern }: BarCut, sign: 1 | -1): void => {
    supply[kind] -= sign;
    pattern.forEach((count, i) => {
      left[i] -= sign * count;
    });
  };
  if (!(best !== undefined && best.bought <= bound && best.onHand === 0)) visit(0, 0);
  return { plan: best, states, isComplete };
}

/** Whether nothing that buys at least this, with so much cut that is on hand, is better. */
const isBeaten = (best: BarPlan, least: number, onHand: number) =>
  least > best.bought || (least > best.bought - 1 && onHand >= best.onHand);

/** Tells whether the same pieces and bars were left before at no higher cost, and remembers what they cost now if not. */
function rememberLeft(left: readonly number[], supply: readonly number[]) {
  const seen = new Map<string, readonly [number, number]>();
  return (bought: number, onHand: number): boolean => {
    const key = `${left.join()}|${supply.join()}`;
    const before = seen.get(key);
    if (before !== undefined && (before[0] < bought || (before[0] === bought && before[1] <= onHand)))
      return true;
    seen.set(key, [bought, onHand]);
    return false;
  };
}

/** Fillings of one bar that are looked at; more come only where hundreds of short pieces are wanted. */
const MOST_WAYS = 20_000;

/** What must still be bought for what is left, by the worth of the pieces; of one length sold, whole bars of it. */
function mustBuyOf(
  bars: Bars,
  { worth, yields }: RelaxedCutting,
  left: readonly number[],
  supply: readonly number[],
): () => number {
  const sold = bars.price.filter((price) => price > 0);
  return () => {
    const pieces = left.reduce((sum, count, i) => sum + count * worth[i], 0);
    const onHand = yields.reduce((sum, each, kind) => sum + (each === 0 ? 0 : each * supply[kind]), 0);
    const least = Math.max(0, (pieces - onHand) * (1 - 1e-9) - 1);
    return sold.length === 1 ? Math.ceil(least / sold[0]) * sold[0] : least;
  };
}

/** The fillings of every kind of bar there is that take the piece and leave no room for another, the fullest first. */
function waysToCut(bars: Bars, left: readonly number[], supply: readonly number[], piece: number): BarCut[] {
  const ways: (BarCut & { readonly rest: number })[] = [];
  bars.capacity.forEach((capacity, kind) => {
    if (supply[kind] <= 0 || bars.size[piece] > capacity) return;
    for (const { pattern, rest } of fillings({
      size: bars.size,
      left,
      piece,
      capacity,
      most: MOST_WAYS - ways.length,
    }))
      ways.push({ kind, pattern, rest });
  });
  const dear = ({ kind }: BarCut) => (isSold(bars, kind) ? 1 : 0);
  return ways.sort((a, b) => dear(a) - dear(b) || a.rest - b.rest);
}

function fillings({
  size,
  left,
  piece,
  capacity,
  most,
}: {
  readonly size: readonly number[];
  readonly left: readonly number[];
  readonly piece: number;
  readonly capacity: number;
  readonly most: number;
}): { pattern: Pattern; rest: number }[] {
  const found: { pattern: Pattern; rest: number }[] = [];
  const pattern = size.map(() => 0);
  const fill = (at: number, room: number): void => {
    if (found.length >= most) return;
    if (at === size.length) {
      const isFull = size.every((each, i) => each > room || pattern[i] === left[i]);
      if (isFull) found.push({ pattern: [...pattern], rest: room });
      return;
    }
    const least = at === piece ? 1 : 0;
    for (let count = Math.min(left[at], Math.floor(room / size[at])); count >= least; count -= 1) {
      pattern[at] = count;
      fill(at + 1, room - count * size[at]);
    }
  };
  fill(piece, capacity);
  return found;
}
