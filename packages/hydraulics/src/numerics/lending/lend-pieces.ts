import { createHeap } from "../heap.js";
import { type Borrower, createBorrower, piecesOf } from "./borrower.js";
import { boundOf, type Relaxed } from "./bound.js";
import { improve } from "./improve.js";
import { type LeastShort, leastShort } from "./least-short.js";
import { costOfLending, type Lending, type LendingCost, type Lent } from "./lending.js";
import { createSearch, type LendingSearch, type Limits, weighted } from "./searched.js";

/** The best way of lending that was found, and what no way can be below. */
export interface LendingAnswer {
  readonly lent: Lent;
  readonly cost: LendingCost;
  /** No way leaves less short; and of those that leave as little, none costs less than this: the same where proven. */
  readonly bound: LendingCost;
  readonly isProven: boolean;
  /** By period: the least short any way leaves in it. */
  readonly leastShort: readonly number[];
  /** Parts of all ways that were looked at. */
  readonly parts: number;
  /** Whether counts had to be held down: the proof is then of the ways with such counts. */
  readonly isHeldDown: boolean;
}

/** How long a search for the best lending may go on. */
export interface LendingOptions {
  /** Parts looked at before what is found must do; if left out, up to 400, fewer where each is much work. */
  readonly mostParts?: number;
  /** Told how much is done, from 0 to 1; false ends the search. */
  readonly mayGoOn?: (done: number) => boolean;
}

interface Part {
  readonly limits: Limits;
  readonly relaxed: Relaxed;
}

/**
 * Lends pieces to borrowers through all periods: the least left short, then the fewest handed out anew, then the least
 * upkeep.
 *
 * What is left short is decided period by period, as pieces come back (1). The rest is branch and bound: borrowers
 * are tied to each other by the stock alone, so with a price on each piece in each period each goes its own cheapest
 * way, which bounds what all can do together (2); where the bound does not close, a count of one borrower in one
 * period
 * is held to at most, or at least, a number (3).
 *
 * @returns the way found, with the bound it was measured by
 * @source held-karp-1971, Lagrangean bounds within branch and bound, from memory
 * @example lendPieces({ stock: [3], lasts: [7], asks: [[{ weight: 12, met: 0, shares: [0.5] }]], upkeep: [0] }).lent   // [[[2]]]
 */
export function lendPieces(
  lending: Lending,
  { mayGoOn = () => true, ...options }: LendingOptions = {},
): LendingAnswer {
  const borrowers = lending.asks.map((_, b) => createBorrower(lending, b));
  const { mostParts = partsFor(lending, borrowers) } = options;
  const least = lending.lasts.map((_, t) => leastShort(borrowers, lending.stock, t)); // (1)
  const search = createSearch(lending, borrowers, least);
  improve(search, startFrom(borrowers, least));
  const queue = createHeap<Part>((a, b) => a.relaxed.bound < b.relaxed.bound);
  let parts = 0;
  const enter = (limits: Limits, from: Parameters<typeof boundOf>[2]) => {
    parts += 1;
    const relaxed = boundOf(search, limits, from); // (2)
    if (relaxed !== undefined && relaxed.bound < search.best.value) queue.push({ limits, relaxed });
  };
  enter(search.limits, undefined);
  let open = search.best.value;
  let hasEnded = false;
  for (let part = queue.pop(); part !== undefined; part = queue.pop()) {
    open = Math.min(search.best.value, part.relaxed.bound);
    if (open >= search.best.value) break;
    if (parts >= mostParts || !mayGoOn(parts / mostParts)) {
      hasEnded = true;
      break;
    }
    const at = whereTorn(search, part);
    if (at === undefined) continue;
    for (const limits of divide(search, part, at)) enter(limits, { ...part.relaxed, changed: at.b }); // (3)
  }
  const found = search.best.value;
  return answerOf(search, { least, bound: hasEnded ? open : found, parts });
}

/** States gone through, period by period, before a search should end; and its parts at least and at most. */
const [MOST_VISITS, FEWEST_PARTS, MOST_PARTS] = [4e7, 20, 400];

function partsFor({ lasts }: Lending, borrowers: readonly Borrower[]): number {
  const states = borrowers.reduce((sum, borrower) => sum + borrower.states, 0);
  const parts = Math.floor(MOST_VISITS / Math.max(1, states * lasts.length));
  return Math.min(MOST_PARTS, Math.max(FEWEST_PARTS, parts));
}

function startFrom(borrowers: readonly Borrower[], least: readonly LeastShort[]): number[][] {
  return borrowers.map((_, b) => least.map(({ states }) => states[b]));
}

function answerOf(
  search: LendingSearch,
  { least, bound, parts }: { least: readonly LeastShort[]; bound: number; parts: number },
): LendingAnswer {
  const { lending, borrowers, best } = search;
  const kinds = lending.stock.length;
  const lent = borrowers.map((borrower, b) =>
    best.states[b].map((state) => piecesOf(borrower, state, kinds)),
  );
  const cost = costOfLending(lending, lent);
  const shortBound = least.reduce((sum, one) => sum + one.bound, 0);
  const { handed, upkeep } = weighted(search, bound);
  const isHeldDown = borrowers.some((borrower) => borrower.isHeldDown);
  return {
    lent,
    cost,
    bound: { short: shortBound, handed, upkeep },
    isProven: bound >= best.value && shortBound === cost.short && !isHeldDown,
    leastShort: least.map(({ short }) => short),
    parts,
    isHeldDown,
  };
}

/**
 * Two parts of one, by a count on which the borrowers do not agree: where they have together more than there is, the
 * one with the most of it; else one whose own count could still be another.
 */
function divide({ borrowers }: LendingSearch, { limits, relaxed }: Part, at: Torn): Limits[] {
  const { b, t, d } = at;
  const count = borrowers[b].counts[d][relaxed.paths[b].states[t]];
  // Where the count stands at its lower end, the part below it is nothing new: held to it, or above it.
  const split = count > limits.least[b][t][d] ? count - 1 : count;
  return [withLimit(limits, at, { most: split }), withLimit(limits, at, { least: split + 1 })];
}

interface Torn {
  readonly b: number;
  readonly t: number;
  readonly d: number;
}

function whereTorn(search: LendingSearch, { limits, relaxed }: Part): Torn | undefined {
  const { paths, pieces } = relaxed;
  const states = paths.map((path) => path.states);
  let [found, most]: [Torn | undefined, number] = [undefined, -1];
  const { borrowers, lending } = search;
  for (let t = 0; t < lending.lasts.length; t += 1) {
    const over = overdrawn(search, states, t);
    for (const [b, { kinds, counts }] of borrowers.entries())
      for (const [d, kind] of kinds.entries()) {
        const [low, high] = [limits.least[b][t][d], limits.most[b][t][d]];
        if (low === high) continue;
        // What is over the stock first, then what is dear, then anything: all parts come to an end.
        const torn =
          1e6 * Math.max(0, over[kind]) * counts[d][states[b][t]] +
          (pieces[t][kind] > 0 ? 1 + pieces[t][kind] / search.handed : 0);
        if (torn > most) [found, most] = [{ b, t, d }, torn];
      }
  }
  return found;
}

/** By kind: pieces lent beyond the stock. */
function overdrawn(
  { borrowers, lending }: LendingSearch,
  states: readonly (readonly number[])[],
  t: number,
): number[] {
  const over = lending.stock.map((pieces) => -pieces);
  for (const [b, { kinds, counts }] of borrowers.entries())
    for (const [d, kind] of kinds.entries()) over[kind] += counts[d][states[b][t]];
  return over;
}

function withLimit(
  limits: Limits,
  { b, t, d }: Torn,
  to: { readonly least?: number; readonly most?: number },
): Limits {
  const change = (all: Limits["least"], value: number | undefined) =>
    value === undefined
      ? all
      : all.map((periods, i) =>
          i !== b
            ? periods
            : periods.map((digits, j) =>
                j !== t ? digits : digits.map((old, k) => (k === d ? value : old)),
              ),
        );
  return { least: change(limits.least, to.least), most: change(limits.most, to.most) };
}
