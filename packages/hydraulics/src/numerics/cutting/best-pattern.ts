/** How many of each size to cut from one bar. */
export type Pattern = readonly number[];

export interface BestPattern {
  readonly pattern: Pattern;
  readonly worth: number;
}

/**
 * The cutting of one bar that is worth most: a knapsack, by branch and bound over the sizes in order of worth for
 * their length. What is left of the bar can be worth no more than it would be in the best size still open.
 *
 * @param size      length of each, > 0
 * @param worth     of each, 0 or more
 * @param wanted    how many of each there may be
 * @param capacity  of the bar
 * @source gilmore-gomory-1961, the auxiliary knapsack problem, from memory
 */
export function bestPattern(
  size: readonly number[],
  worth: readonly number[],
  wanted: readonly number[],
  capacity: number,
): BestPattern {
  const order = size
    .map((_, i) => i)
    .filter((i) => worth[i] > 0 && wanted[i] > 0 && size[i] <= capacity)
    .sort((a, b) => worth[b] / size[b] - worth[a] / size[a]);
  const taken = new Array<number>(size.length).fill(0);
  let best: BestPattern = { pattern: [...taken], worth: 0 };
  const search = (at: number, room: number, sum: number): void => {
    if (sum > best.worth + 1e-12) best = { pattern: [...taken], worth: sum };
    if (at === order.length) return;
    const i = order[at];
    if (sum + (room * worth[i]) / size[i] <= best.worth + 1e-12) return;
    for (let count = Math.min(wanted[i], Math.floor(room / size[i])); count >= 0; count -= 1) {
      taken[i] = count;
      search(at + 1, room - count * size[i], sum + count * worth[i]);
    }
  };
  search(0, capacity, 0);
  return best;
}
