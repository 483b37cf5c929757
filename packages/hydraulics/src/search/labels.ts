import { type Asked, askedByBoth, asksNoMore, headAsked, NOTHING_ASKED } from "./asked.js";
import { addCosts, type CompareCosts, type Cost, NO_COST } from "./cost.js";

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

export const labelOf = (asked: Asked, cost: Cost, taken: Taken | undefined): Label => ({
  asked,
  head: headAsked(asked),
  cost,
  taken,
});

export const NOTHING = labelOf(NOTHING_ASKED, NO_COST, undefined);

export const bothOf = (a: Label, b: Label): Label =>
  labelOf(
    askedByBoth(a.asked, b.asked),
    addCosts(a.cost, b.cost),
    b.taken === undefined ? a.taken : { ...b.taken, beside: a.taken },
  );

/** How many labels are kept of one part where there are more, and what becomes of the others. */
export type Thinning = (front: readonly Hoped[], most: number, compare: CompareCosts) => readonly Hoped[];

/** A label, with what all runs from the far ends of its part to the source cost at least. */
export interface Hoped {
  readonly label: Label;
  readonly least: Cost;
}

/** Labels in order of cost, without those that another beats in cost and in all it asks. */
export function frontOf(labels: readonly Hoped[], compare: CompareCosts): readonly Hoped[] {
  const sorted = [...labels].sort(
    (a, b) => compare(a.label.cost, b.label.cost) || a.label.head - b.label.head,
  );
  const front: Hoped[] = [];
  let lowest: Label | undefined;
  for (const hoped of sorted) {
    const { label } = hoped;
    if (lowest !== undefined && asksNoMore(lowest.asked, label.asked)) continue;
    if (isBeaten(label, front)) continue;
    front.push(hoped);
    if (lowest === undefined || label.head < lowest.head) lowest = label;
  }
  return front;
}

/** A label is held against the one that needs least, and against so many last ones: nearly all that are beaten are so by these. */
const LOOK_BACK = 40;

function isBeaten(label: Label, front: readonly Hoped[]): boolean {
  for (let k = front.length - 1; k >= Math.max(0, front.length - LOOK_BACK); k -= 1)
    if (asksNoMore(front[k].label.asked, label.asked)) return true;
  return false;
}

/**
 * Neighbours in cost put together, as one label that costs no more and asks no more than any of them: still a bound
 * for all. Kept apart are those between which most head lies, the cheapest, and the one that asks least.
 */
export const joinNeighbours: Thinning = (front, most) => {
  if (front.length <= most) return front;
  const head = (k: number) => front[k].label.head;
  const gaps = front.map((_, k) =>
    k === 0 || k === front.length - 1 ? Number.POSITIVE_INFINITY : Math.abs(head(k - 1) - head(k)),
  );
  const least = [...gaps].sort((a, b) => b - a)[most - 1];
  const thinned: Hoped[] = [];
  front.forEach((hoped, k) => {
    const last = thinned.at(-1);
    if (last === undefined || (gaps[k] >= least && thinned.length < most)) thinned.push(hoped);
    else thinned[thinned.length - 1] = { label: lesserOf(last.label, hoped.label), least: last.least };
  });
  return thinned;
};

const lesserOf = (a: Label, b: Label): Label =>
  labelOf(
    a.asked.map((figure, k) => Math.min(figure, b.asked[k])),
    a.cost,
    a.taken,
  );

/** Those kept that promise the cheapest plan: every label is one that some plan has, and no bound for those left out. */
export const keepLikely: Thinning = (front, most, compare) => {
  if (front.length <= most) return front;
  const likely = [...front].sort((a, b) => compare(a.least, b.least) || a.label.head - b.label.head);
  return likely.slice(0, most).sort((a, b) => compare(a.label.cost, b.label.cost));
};

/** Options taken in a label, by run; runs it says nothing of keep `picks`. */
export function readTaken(taken: Taken | undefined, picks: number[]): void {
  for (let one = taken; one !== undefined; one = one.beside) {
    picks[one.run] = one.option;
    readTaken(one.below, picks);
  }
}
