/** What a cure may cost in: the user's own money, things to be bought, or centimetres by which a stand moves. */
export const COST_MEASURES = ["money", "parts", "stand"] as const;
/** What counts first in a cost. */
export type CostMeasure = (typeof COST_MEASURES)[number];

/** What a change of the plan costs. All are 0 or more and add up over changes. */
export interface Cost {
  /** In the plan's own money, of all that has a price. */
  readonly money: number;
  /** Things to be bought that have no price in the plan. */
  readonly unpriced: number;
  /** Things to be bought: a device, or pipe for one run. */
  readonly parts: number;
  /** Pipe to be bought [m]. */
  readonly pipe: number;
  /** Runs laid anew, with bought pipe or with pipe on hand. */
  readonly runs: number;
  /** How far stands go up or down, in all [m]. */
  readonly stand: number;
}

export const NO_COST: Cost = { money: 0, unpriced: 0, parts: 0, pipe: 0, runs: 0, stand: 0 };

type Term = keyof Cost;

/**
 * What decides first, and between equals next. What has no price goes after all that has: nobody can say how much it
 * is. Every order ends with the others, so that of two equally cheap cures the lesser change is taken.
 */
const ORDER: Readonly<Record<CostMeasure, readonly Term[]>> = {
  money: ["unpriced", "money", "runs", "stand", "parts", "pipe"],
  parts: ["parts", "pipe", "runs", "stand", "unpriced", "money"],
  stand: ["stand", "parts", "pipe", "runs", "unpriced", "money"],
};

/** Differences smaller than this are rounding: of a millionth of a metre, or of the plan's money. */
const SAME = 1e-6;

/** Puts costs in order by one measure: below 0 where `a` is the cheaper. */
export type CompareCosts = (a: Cost, b: Cost) => number;

export const compareBy =
  (measure: CostMeasure): CompareCosts =>
  (a, b) => {
    for (const term of ORDER[measure]) {
      const difference = a[term] - b[term];
      if (difference > SAME || difference < -SAME) return difference;
    }
    return 0;
  };

export const addCosts = (a: Cost, b: Cost): Cost => ({
  money: a.money + b.money,
  unpriced: a.unpriced + b.unpriced,
  parts: a.parts + b.parts,
  pipe: a.pipe + b.pipe,
  runs: a.runs + b.runs,
  stand: a.stand + b.stand,
});

/** One size on the shelf: what a metre costs, and how much of it lies there already. */
export interface ShelfSize {
  readonly pipe: string;
  /** Per metre; undefined where the plan gives none. */
  readonly price: number | undefined;
  /** [m] */
  readonly onHand: number;
}

/**
 * What it costs to lay these lengths [m] of one size, with what is on hand used first.
 *
 *   bought = max(0, sum of lengths - on hand)                                                             (1)
 *
 * For a single run of many it is never more than that run's share of the whole: max(0, a + b - h) is at least
 * max(0, a - h) + max(0, b - h) for h >= 0; so the costs of single runs add up to a lower bound.
 */
export function costOfPipe({ price, onHand }: ShelfSize, lengths: readonly number[]): Cost {
  const bought = Math.max(0, lengths.reduce((sum, length) => sum + length, 0) - onHand);
  const tooLong = lengths.filter((length) => length > onHand + SAME).length;
  const parts = bought > SAME ? Math.max(1, tooLong) : 0;
  return {
    money: bought * (price ?? 0),
    unpriced: price === undefined ? parts : 0,
    parts,
    pipe: bought,
    runs: lengths.length,
    stand: 0,
  };
}
