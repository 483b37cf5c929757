import type { Borrower } from "./borrower.js";

/** The least that must be left short in one period, all borrowers together. */
export interface LeastShort {
  /** What the way found leaves short, and what no way can be below; the same where it is proven. */
  readonly short: number;
  readonly bound: number;
  /** By borrower: a state of such a way. */
  readonly states: readonly number[];
}

/** Ways looked at in a period before what is found must do. */
const MOST_LOOKS = 200_000;

interface Option {
  readonly state: number;
  readonly short: number;
  /** By kind. */
  readonly pieces: readonly number[];
}

/**
 * Gives out the stock of one period with the least left short, by depth first, borrower by borrower: each takes only
 * states of which no piece could be left away for nothing; what is left never looks at the same stock twice unless
 * less is short by then; and a branch ends where the others, each with all that is left, could not do better.
 */
export function leastShort(
  borrowers: readonly Borrower[],
  stock: readonly number[],
  period: number,
): LeastShort {
  const options = borrowers.map((borrower) => optionsOf(borrower, stock.length, period));
  const left = [...stock];
  const fits = ({ pieces }: Option) => pieces.every((count, k) => count <= left[k]);
  const bestAlone = (from: number) => {
    let sum = 0;
    for (let b = from; b < options.length; b += 1)
      sum += options[b].find(fits)?.short ?? Number.POSITIVE_INFINITY;
    return sum;
  };
  const floor = bestAlone(0);
  const chosen = borrowers.map(() => 0);
  const seen = new Map<string, number>();
  let best: { readonly short: number; readonly states: readonly number[] } = {
    short: Number.POSITIVE_INFINITY,
    states: chosen,
  };
  let looks = 0;
  const descend = (b: number, short: number): void => {
    looks += 1;
    if (b === options.length) {
      best = { short, states: [...chosen] };
      return;
    }
    if (short + bestAlone(b) >= best.short) return;
    const key = `${b}:${left.join()}`;
    if ((seen.get(key) ?? Number.POSITIVE_INFINITY) <= short) return;
    seen.set(key, short);
    for (const option of options[b]) {
      if (looks > MOST_LOOKS || best.short <= floor) return;
      if (short + option.short >= best.short) break;
      if (!fits(option)) continue;
      take(option, 1);
      chosen[b] = option.state;
      descend(b + 1, short + option.short);
      take(option, -1);
    }
  };
  descend(0, 0);
  return { short: best.short, bound: looks > MOST_LOOKS ? floor : best.short, states: best.states };

  function take({ pieces }: Option, times: number): void {
    pieces.forEach((count, k) => {
      left[k] -= times * count;
    });
  }
}

/** States of which every piece counts, the least short first, then the fewest pieces. */
function optionsOf(
  { kinds, counts, below, short, states }: Borrower,
  ofStock: number,
  period: number,
): Option[] {
  const own = short[period];
  const options: Option[] = [];
  for (let state = 0; state < states; state += 1) {
    if (!Number.isFinite(own[state])) continue;
    if (below.some((down) => down[state] >= 0 && own[down[state]] <= own[state])) continue;
    const pieces = new Array<number>(ofStock).fill(0);
    kinds.forEach((kind, d) => {
      pieces[kind] = counts[d][state];
    });
    options.push({ state, short: own[state], pieces });
  }
  const total = ({ pieces }: Option) => pieces.reduce((sum, count) => sum + count, 0);
  return options.sort((a, b) => a.short - b.short || total(a) - total(b) || a.state - b.state);
}
