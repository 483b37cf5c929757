/** What is to be cut, and from what. Lengths in one unit throughout, such as metres. */
export interface CuttingAsked {
  /** Lengths wanted, and how many of each. */
  readonly pieces: readonly { readonly length: number; readonly count: number }[];
  /** Lengths that new stock is sold in; as many of each as are wanted. */
  readonly sold: readonly number[];
  /** What lies there already, each once. */
  readonly leftovers: readonly number[];
  /** Width that each cut takes away, 0 or more. */
  readonly kerf: number;
  /** States the search may look at before it ends without a proof. Default `MOST_STATES`. */
  readonly most?: number;
}

/** One length of stock, and what is cut from it. */
export interface CutBar {
  readonly from: "sold" | "leftover";
  readonly length: number;
  /** Longest first. */
  readonly pieces: readonly number[];
  /** What is left of it when all are cut. */
  readonly rest: number;
}

/** A cutting plan, and how good it is. */
export interface Cutting {
  readonly bars: readonly CutBar[];
  /** New stock to be bought, all together. */
  readonly bought: number;
  /** Stock on hand that is cut into, all together. */
  readonly leftoverUsed: number;
  /** Wanted lengths that no stock is long enough for. */
  readonly uncut: readonly number[];
  /** No cutting plan buys less than this. */
  readonly bound: number;
  /** Whether `bought` is the least there is: it equals the bound, or every other way was looked at. */
  readonly isProven: boolean;
  /** Whether nothing that buys as little cuts into less of what is on hand. */
  readonly isLeastLeftover: boolean;
  /**
   * The proof of the bound: worth of a piece of each length, chosen so that no cutting of a length sold is worth more
   * than that length. What all pieces are worth, less the most the leftovers can yield, must then be bought.
   */
  readonly worth: readonly { readonly length: number; readonly worth: number }[];
  /** States looked at. */
  readonly states: number;
}

/** Lengths inside are whole millionths, so that sums of typed lengths are exact. */
export const GRAIN = 1e-6;
export const inGrains = (length: number): number => Math.round(length / GRAIN);

/**
 * The same question in whole numbers. Each piece carries the cut beside it, and each bar is longer by one cut: n
 * pieces from a bar need n - 1 cuts, or n where something is left.
 */
export interface Bars {
  /** Piece with its cut, longest first, each once. */
  readonly size: readonly number[];
  readonly wanted: readonly number[];
  /** Kinds of bar, the leftovers first, each from short to long. */
  readonly capacity: readonly number[];
  readonly length: readonly number[];
  /** How many there are; infinite for what is sold. */
  readonly supply: readonly number[];
  /** Price: its length for what is sold, nothing for what is on hand. */
  readonly price: readonly number[];
}

/** Rounding of typed lengths may put a bar this much short of what was cut from it [grains]. */
const SLACK = 4;

/** Puts the question into whole numbers, without pieces that fit nothing. */
export function barsOf({ pieces, sold, leftovers, kerf }: CuttingAsked): { bars: Bars; uncut: number[] } {
  const cut = inGrains(kerf);
  const longest = Math.max(0, ...sold, ...leftovers);
  const wanted = new Map<number, number>();
  const uncut: number[] = [];
  for (const { length, count } of pieces) {
    if (count <= 0) continue;
    if (inGrains(length) > inGrains(longest) + SLACK) uncut.push(...new Array<number>(count).fill(length));
    else wanted.set(inGrains(length), (wanted.get(inGrains(length)) ?? 0) + count);
  }
  const sizes = [...wanted.keys()].sort((a, b) => b - a);
  const onHand = countEach(leftovers.map(inGrains));
  const bought = countEach(sold.map(inGrains));
  const length = [...onHand.map(([each]) => each), ...bought.map(([each]) => each)];
  const bars = {
    size: sizes.map((size) => size + cut),
    wanted: sizes.map((size) => wanted.get(size) ?? 0),
    length,
    capacity: length.map((each) => each + cut + SLACK),
    supply: [...onHand.map(([, count]) => count), ...bought.map(() => Number.POSITIVE_INFINITY)],
    price: [...onHand.map(() => 0), ...bought.map(([each]) => each)],
  };
  return { bars, uncut };
}

/** Each value once with how often it comes, from small to large. */
function countEach(values: readonly number[]): [number, number][] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => a - b);
}
