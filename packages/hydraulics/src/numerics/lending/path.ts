import type { Borrower } from "./borrower.js";

/** What steers one borrower's way through the periods. */
export interface PathPrices {
  /** What a piece handed out costs. */
  readonly handed: number;
  /** By period, by kind: price of having a piece; and by period, price of what is left short. */
  readonly pieces: readonly Float64Array[];
  readonly short: Float64Array;
  /** By period, by digit: least and most pieces; by period, the most that may be left short. */
  readonly least: readonly Uint16Array[];
  readonly most: readonly Uint16Array[];
  readonly shortMost: Float64Array;
}

export interface Path {
  readonly cost: number;
  /** By period. */
  readonly states: readonly number[];
}

/**
 * The cheapest way of one borrower through all periods, exactly: for each state the cost of the best way to it,
 *
 *   F_t(x) = c_t(x) + min_y [ F_{t−1}(y) + h Σ_k max(0, x_k − y_k) ],   F_{−1} = 0 at x = 0                    (1)
 *
 * The minimum over y is taken a piece at a time: down to what both have for nothing, then up at h a piece. All states
 * on that way are listed, as the list is closed downwards.
 *
 * @returns undefined where the limits leave no way
 * @source felzenszwalb-2012, distance transforms of sampled functions, from memory
 */
export function cheapestPath(borrower: Borrower, prices: PathPrices): Path | undefined {
  const periods = borrower.short.length;
  const best: Float64Array[] = [];
  for (let t = 0; t < periods; t += 1) {
    const reach = t === 0 ? fromNothing(borrower.states) : Float64Array.from(best[t - 1]);
    spread(borrower, reach, prices.handed);
    addOwn(borrower, reach, prices, t);
    best.push(reach);
  }
  let state = leastOf(best[periods - 1]);
  const cost = best[periods - 1][state];
  if (!Number.isFinite(cost)) return undefined;
  const path = new Array<number>(periods);
  for (let t = periods - 1; t > 0; t -= 1) {
    path[t] = state;
    state = cameFrom(borrower, best[t - 1], state, prices.handed);
  }
  path[0] = state;
  return { cost, states: path };
}

function fromNothing(states: number): Float64Array {
  const start = new Float64Array(states).fill(Number.POSITIVE_INFINITY);
  start[0] = 0;
  return start;
}

/** Lets every state be reached from every other: first a piece fewer for nothing, then a piece more for `handed`. */
function spread({ below, states }: Borrower, reach: Float64Array, handed: number): void {
  for (const down of below)
    for (let s = states - 1; s > 0; s -= 1)
      if (down[s] >= 0 && reach[s] < reach[down[s]]) reach[down[s]] = reach[s];
  for (const down of below)
    for (let s = 1; s < states; s += 1)
      if (down[s] >= 0 && reach[down[s]] + handed < reach[s]) reach[s] = reach[down[s]] + handed;
}

function addOwn(borrower: Borrower, reach: Float64Array, prices: PathPrices, t: number): void {
  const { kinds, counts, states } = borrower;
  const [short, upkeep] = [borrower.short[t], borrower.upkeep[t]];
  const [shortMost, shortPrice] = [prices.shortMost[t], prices.short[t]];
  // Infinity stands for a piece that may not be there.
  for (let s = 0; s < states; s += 1)
    reach[s] += short[s] <= shortMost ? upkeep[s] + shortPrice * short[s] : Number.POSITIVE_INFINITY;
  for (const [d, kind] of kinds.entries()) {
    const [own, price] = [counts[d], prices.pieces[t][kind]];
    const [least, most] = [prices.least[t][d], prices.most[t][d]];
    for (let s = 0; s < states; s += 1)
      reach[s] += own[s] < least || own[s] > most ? Number.POSITIVE_INFINITY : own[s] * price;
  }
}

/** The state before from which a state is reached at its cost; of several the first. */
function cameFrom({ counts, states }: Borrower, before: Float64Array, to: number, handed: number): number {
  let [least, from] = [Number.POSITIVE_INFINITY, 0];
  for (let s = 0; s < states; s += 1) {
    let cost = before[s];
    for (let d = 0; d < counts.length && cost < least; d += 1) {
      const more = counts[d][to] - counts[d][s];
      if (more > 0) cost += handed * more;
    }
    if (cost < least) [least, from] = [cost, s];
  }
  return from;
}

function leastOf(values: Float64Array): number {
  let at = 0;
  for (let s = 1; s < values.length; s += 1) if (values[s] < values[at]) at = s;
  return at;
}
