import { bestPattern, type Pattern } from "./best-pattern.js";
import type { Bars } from "./cutting.js";
import { relaxCutting } from "./relaxed-cutting.js";

/** A bar of one kind, cut by one pattern. */
export interface BarCut {
  readonly kind: number;
  readonly pattern: Pattern;
}

/** Bars with what they come to: what is bought, and what is taken from what is on hand. */
export interface BarPlan {
  readonly cuts: readonly BarCut[];
  readonly bought: number;
  readonly onHand: number;
}

export const isSold = (bars: Bars, kind: number): boolean => bars.price[kind] > 0;

/** Less bought is better; of those that buy as little, the one that cuts into less. */
export const isBetter = (a: Pick<BarPlan, "bought" | "onHand">, b: BarPlan | undefined): boolean =>
  b === undefined || a.bought < b.bought || (a.bought === b.bought && a.onHand < b.onHand);

export function planOf(bars: Bars, cuts: readonly BarCut[]): BarPlan {
  const lengths = (sold: boolean) =>
    cuts.reduce((sum, { kind }) => sum + (isSold(bars, kind) === sold ? bars.length[kind] : 0), 0);
  return { cuts, bought: lengths(true), onHand: lengths(false) };
}

const without = (bars: Bars, cuts: readonly BarCut[]): Bars => {
  const wanted = [...bars.wanted];
  const supply = [...bars.supply];
  for (const { kind, pattern } of cuts) {
    supply[kind] -= 1;
    pattern.forEach((count, i) => {
      wanted[i] -= count;
    });
  }
  return { ...bars, wanted, supply };
};

const isDone = ({ wanted }: Bars): boolean => wanted.every((count) => count <= 0);

/** Fills bar after bar as full as it goes, the longest piece first; what is on hand comes before what is sold. */
export function fillBars(bars: Bars): BarCut[] | undefined {
  const cuts: BarCut[] = [];
  let left = bars;
  while (!isDone(left)) {
    const next = fullestBar(left);
    if (next === undefined) return undefined;
    cuts.push(next);
    left = without(left, [next]);
  }
  return cuts;
}

/** The bar that wastes least of itself while it takes the longest piece still wanted. */
function fullestBar(bars: Bars): BarCut | undefined {
  const first = bars.wanted.findIndex((count) => count > 0);
  let best: (BarCut & { readonly share: number }) | undefined;
  bars.capacity.forEach((capacity, kind) => {
    if (bars.supply[kind] <= 0 || bars.size[first] > capacity) return;
    const wanted = bars.wanted.map((count, i) => (i === first ? count - 1 : count));
    const { pattern, worth } = bestPattern(bars.size, bars.size, wanted, capacity - bars.size[first]);
    const share = (worth + bars.size[first]) / capacity + (isSold(bars, kind) ? 0 : 1);
    if (best !== undefined && share <= best.share) return;
    best = { kind, pattern: pattern.map((count, i) => (i === first ? count + 1 : count)), share };
  });
  return best;
}

/** Whole times of the relaxed plan are taken, then the nearest to whole, and the rest is relaxed again. */
export function roundRelaxed(bars: Bars): BarCut[] | undefined {
  const cuts: BarCut[] = [];
  let left = bars;
  while (!isDone(left)) {
    const open = left.wanted.flatMap((count, i) => (count > 0 ? [i] : []));
    const kinds = left.supply.flatMap((count, kind) => (count > 0 ? [kind] : []));
    const relaxed = relaxCutting(reduced(left, open, kinds));
    const whole = relaxed.cuts.filter(({ times }) => times >= 1 - 1e-6);
    const nearest = relaxed.cuts.reduce((a, b) => (b.times > a.times ? b : a), relaxed.cuts[0]);
    if (nearest === undefined) return undefined;
    for (const { kind, pattern, times } of whole.length > 0 ? whole : [nearest]) {
      for (let time = 0; time < Math.max(1, Math.floor(times + 1e-6)); time += 1) {
        const cut = clipped(left, kinds[kind], pattern, open);
        if (cut === undefined) break;
        cuts.push(cut);
        left = without(left, [cut]);
      }
    }
  }
  return cuts;
}

const reduced = (bars: Bars, open: readonly number[], kinds: readonly number[]): Bars => ({
  size: open.map((i) => bars.size[i]),
  wanted: open.map((i) => bars.wanted[i]),
  capacity: kinds.map((kind) => bars.capacity[kind]),
  length: kinds.map((kind) => bars.length[kind]),
  supply: kinds.map((kind) => bars.supply[kind]),
  price: kinds.map((kind) => bars.price[kind]),
});

/** A pattern of the open sizes with no more pieces than are still wanted, filled up with what else fits. */
function clipped(bars: Bars, kind: number, pattern: Pattern, open: readonly number[]): BarCut | undefined {
  if (bars.supply[kind] <= 0) return undefined;
  const taken = bars.size.map(() => 0);
  open.forEach((i, k) => {
    taken[i] = Math.min(pattern[k], bars.wanted[i]);
  });
  if (taken.every((count) => count === 0)) return undefined;
  const used = taken.reduce((sum, count, i) => sum + count * bars.size[i], 0);
  const wanted = bars.wanted.map((count, i) => count - taken[i]);
  const more = bestPattern(bars.size, bars.size, wanted, bars.capacity[kind] - used);
  return { kind, pattern: taken.map((count, i) => count + more.pattern[i]) };
}

/** Each bar exchanged for the cheapest one that its pieces still fit, what is on hand before what is sold. */
export function shrinkBars(bars: Bars, cuts: readonly BarCut[]): BarCut[] {
  const supply = [...bars.supply];
  for (const { kind } of cuts) supply[kind] -= 1;
  const used = (pattern: Pattern) => pattern.reduce((sum, count, i) => sum + count * bars.size[i], 0);
  return [...cuts]
    .sort((a, b) => used(b.pattern) - used(a.pattern))
    .map(({ kind, pattern }) => {
      const better = bars.capacity.findIndex(
        (capacity, k) => k < kind && supply[k] > 0 && used(pattern) <= capacity,
      );
      if (better < 0) return { kind, pattern };
      supply[kind] += 1;
      supply[better] -= 1;
      return { kind: better, pattern };
    });
}
