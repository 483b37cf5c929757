import { createHeap } from "../heap.js";
import { type Borrower, createBorrower } from "./borrower.js";
import { leastShort } from "./least-short.js";
import { type Ask, enoughAlone, type Lending, MOST_FELT } from "./lending.js";

/** What is least to add to the stock, so that nothing is short that more pieces could help. */
export interface LeastToAdd {
  /** By kind: pieces to add. */
  readonly pieces: readonly number[];
  readonly cost: number;
  /** Nothing cheaper does it; the same where it is proven. */
  readonly bound: number;
  /** By borrower, by period: what stays short whatever is added. */
  readonly never: readonly Float64Array[];
}

/** Purchases looked at before the search ends. */
const MOST_LOOKS = 3000;
const ROUNDING = 1e-9;

interface Purchase {
  readonly pieces: readonly number[];
  readonly cost: number;
  /** With the least that must still come to it. */
  readonly bound: number;
}

/**
 * The cheapest pieces to add, by best first: a piece lessens what is short in a period by no more than its greatest
 * share of what any borrower asks then, as much as such a share can ever be felt (m); which bounds what must still be
 * added from below:
 *
 *   cost to come ≥ short_t / max_k (w_tk / c_k),   w_tk = m max_b share_btk · weight_bt · lasts_t            (1)
 *
 * A purchase grows by pieces that help in the period with the most still to come.
 *
 * @param costs  by kind, of one piece, above 0; Infinity where it cannot be had
 * @returns undefined where the search ended before it found any
 * @example leastToAdd({ stock: [0], lasts: [7], asks: [[{ weight: 12, met: 0, shares: [0.5] }]], upkeep: [0] }, [1]).pieces   // [2]
 */
export function leastToAdd(lending: Lending, costs: readonly number[]): LeastToAdd | undefined {
  const buying = beginBuying(lending, costs);
  const queue = createHeap<Purchase>((a, b) => a.bound < b.bound || (a.bound === b.bound && a.cost > b.cost));
  const seen = new Set<string>();
  queue.push({ pieces: lending.stock.map(() => 0), cost: 0, bound: 0 });
  let looks = 0;
  for (let purchase = queue.pop(); purchase !== undefined && looks < MOST_LOOKS; purchase = queue.pop()) {
    looks += 1;
    const { pieces, cost, bound } = purchase;
    const { toCome, worst } = stillToCome(buying, pieces);
    if (worst === undefined) return { pieces, cost, bound: cost, never: buying.never };
    // What was hoped for is less than what is still to come: back into the queue with what is now known.
    if (cost + toCome > bound + ROUNDING) {
      queue.push({ pieces, cost, bound: cost + toCome });
      continue;
    }
    for (const more of grown(buying, purchase, worst)) {
      const key = more.pieces.join();
      if (seen.has(key)) continue;
      seen.add(key);
      queue.push(more);
    }
  }
  return undefined;
}

/** What is asked of every purchase. */
interface Buying {
  readonly lending: Lending;
  readonly costs: readonly number[];
  /** Kinds worth buying. */
  readonly helpful: ReadonlySet<number>;
  readonly borrowers: readonly Borrower[];
  readonly never: LeastToAdd["never"];
  /** By period in which something is short that pieces can help: the most that one unit of money takes off it, eq. (1). */
  readonly rates: ReadonlyMap<number, number>;
}

function beginBuying(lending: Lending, costs: readonly number[]): Buying {
  const { stock, asks } = lending;
  const ample = { ...lending, stock: stock.map((own, k) => own + mostOfUse(asks, k)) };
  const helpful = worthBuying(ample, costs);
  const offered = ample.stock.map((pieces, k) => (helpful.has(k) ? pieces : stock[k]));
  const borrowers = asks.map((_, b) => createBorrower({ ...lending, stock: offered }, b));
  const never = borrowers.map(({ short }) =>
    Float64Array.from(short, (own) =>
      own.reduce((least, one) => Math.min(least, one), Number.POSITIVE_INFINITY),
    ),
  );
  const periods = scarcePeriods(lending, borrowers, never);
  const rate = (t: number) => Math.max(...[...helpful].map((k) => helpOf(lending, k, t) / costs[k]));
  return { lending, costs, helpful, borrowers, never, rates: new Map(periods.map((t) => [t, rate(t)])) };
}

/** The least cost still to come to a purchase, eq. (1), and the period that asks for it; none where nothing is short. */
function stillToCome(
  { lending, borrowers, never, rates }: Buying,
  pieces: readonly number[],
): { readonly toCome: number; readonly worst: number | undefined } {
  const stock = lending.stock.map((own, k) => own + pieces[k]);
  let [toCome, worst]: [number, number | undefined] = [0, undefined];
  for (const [t, rate] of rates) {
    const short = leastShort(borrowers, stock, t).short - never.reduce((sum, own) => sum + own[t], 0);
    if (short <= 0) continue;
    const come = short / rate;
    if (come > toCome) [toCome, worst] = [come, t];
  }
  return { toCome, worst };
}

/** A purchase with one more piece, of each kind that helps in that period. */
function grown(
  { lending, costs, helpful }: Buying,
  { pieces, cost, bound }: Purchase,
  t: number,
): Purchase[] {
  return [...helpful]
    .filter((k) => helpOf(lending, k, t) > 0)
    .map((k) => ({
      pieces: pieces.map((count, j) => (j === k ? count + 1 : count)),
      cost: cost + costs[k],
      bound: Math.max(bound, cost + costs[k]),
    }));
}

/** The most pieces of a kind that can be of use to all borrowers together in any period. */
function mostOfUse(asks: Lending["asks"], kind: number): number {
  const periods = asks[0]?.length ?? 0;
  let most = 0;
  for (let t = 0; t < periods; t += 1) {
    let sum = 0;
    for (const own of asks) {
      const enough = enoughAlone(own[t], kind);
      if (Number.isFinite(enough)) sum += enough;
    }
    most = Math.max(most, sum);
  }
  return most;
}

/** Kinds that can be had and ever help, but for those of which another is never dearer and always serves as well. */
function worthBuying({ asks }: Lending, costs: readonly number[]): Set<number> {
  const all: Ask[] = asks.flat();
  const kinds = [...costs.keys()].filter(
    (k) => Number.isFinite(costs[k]) && all.some(({ weight, shares }) => weight > 0 && shares[k] > 0),
  );
  const serves = (a: number, b: number) =>
    all.every(({ weight, shares }) => weight === 0 || shares[a] >= shares[b]);
  return new Set(
    kinds.filter(
      (k) =>
        !kinds.some(
          (other) =>
            other !== k &&
            costs[other] <= costs[k] &&
            serves(other, k) &&
            (other < k || costs[other] < costs[k] || !serves(k, other)),
        ),
    ),
  );
}

/** What one piece can take off what is short in a period, at most. */
function helpOf({ asks, lasts }: Lending, kind: number, t: number): number {
  const most = asks.reduce((help, own) => Math.max(help, own[t].weight * own[t].shares[kind]), 0);
  // Whole thousandths, rounded up: so is what is short.
  return most === 0 ? 0 : 1000 * lasts[t] * MOST_FELT * most + 1;
}

/** Periods in which the stock as it is leaves more short than must be; of those that ask alike, the first. */
function scarcePeriods(
  { stock, asks, lasts }: Lending,
  borrowers: readonly Borrower[],
  never: readonly Float64Array[],
): number[] {
  const seen = new Set<string>();
  return [...lasts.keys()].filter((t) => {
    const key = JSON.stringify(asks.map((own) => own[t]));
    if (seen.has(key)) return false;
    seen.add(key);
    return leastShort(borrowers, stock, t).short > never.reduce((sum, own) => sum + own[t], 0);
  });
}
