import { costOfWay, improve } from "./improve.js";
import { cheapestPath, type Path } from "./path.js";
import { repair } from "./repair.js";
import type { LendingSearch, Limits } from "./searched.js";

/** Each borrower's own cheapest way at some prices, and what they say of all ways together. */
export interface Relaxed {
  /** No way within the limits has a lower value. */
  readonly bound: number;
  readonly paths: readonly Path[];
  /** By period, by kind; and by period: the prices that gave this bound. */
  readonly pieces: readonly Float64Array[];
  readonly short: Float64Array;
}

/** Rounds of prices for all ways, and for a part of them, whose prices begin where those of the whole ended. */
const [FIRST_ROUNDS, ROUNDS] = [200, 12];
/** Rounds until a way is made of the prices that keeps to the stock. */
const REPAIR_EACH = 6;
/** Values are whole numbers: a bound is raised to the next, but for what sums of fractions may be off by. */
const ROUNDING = 1e-7;

/**
 * The best bound some rounds of prices give:
 *
 *   L(λ, μ) = Σ_b path_b(λ, μ) − Σ_tk λ_tk n_k − Σ_t μ_t s_t ≤ value of any way                        (1)
 *   λ ← max(0, λ + step (lent − n)),  μ ← max(0, μ + step (short − s)),  step = θ (best − L) / ‖·‖²      (2)
 *
 * @param from  what bounded the part this one is of, to begin with; and the borrower whose limits are not as they were
 * @returns undefined where the limits leave some borrower no way, or no way is better than the best so far
 * @source held-wolfe-crowder-1974, rule of the step, from memory
 */
export function boundOf(
  search: LendingSearch,
  limits: Limits,
  from: (Relaxed & { readonly changed: number }) | undefined,
): Relaxed | undefined {
  const { lending } = search;
  let pieces = from?.pieces ?? lending.lasts.map(() => new Float64Array(lending.stock.length));
  let short = from?.short ?? new Float64Array(lending.lasts.length);
  let best: Relaxed | undefined;
  let eagerness = 1.5;
  let inVain = 0;
  for (let round = 0; round < (from === undefined ? FIRST_ROUNDS : ROUNDS); round += 1) {
    const paths = ownWays(search, limits, { pieces, short }, round === 0 ? from : undefined);
    if (paths === undefined) return undefined;
    const states = paths.map((path) => path.states);
    const slope = slopeOf(search, states);
    const value = paths.reduce((sum, { cost }) => sum + cost, 0) - owed(search, { pieces, short });
    if (best === undefined || value > best.bound) {
      best = { bound: value, paths, pieces, short };
      inVain = 0;
    } else inVain += 1;
    if (slope.isWithin && costOfWay(search, states) < search.best.value) improve(search, states);
    if (wholeFrom(best.bound) >= search.best.value) return undefined;
    if (slope.length === 0) break;
    if (!slope.isWithin && round % REPAIR_EACH === REPAIR_EACH - 1)
      repair(search, { pieces, short }, Math.floor(round / REPAIR_EACH) % search.borrowers.length);
    if (inVain >= 4) [eagerness, inVain] = [eagerness / 2, 0];
    const step = (eagerness * (search.best.value - value)) / slope.length;
    pieces = pieces.map((own, t) => own.map((price, k) => Math.max(0, price + step * slope.pieces[t][k])));
    // What is short counts in thousandths: its slope is scaled alike, so that both kinds of price move together.
    short = short.map((price, t) => Math.max(0, price + (step * slope.short[t]) / slope.scale ** 2));
  }
  return best === undefined ? undefined : { ...best, bound: wholeFrom(best.bound) };
}

const wholeFrom = (bound: number): number => Math.ceil(bound - ROUNDING * Math.max(1, bound));

function ownWays(
  { borrowers, handed, short: shortMost }: LendingSearch,
  { least, most }: Limits,
  { pieces, short }: Pick<Relaxed, "pieces" | "short">,
  known: (Pick<Relaxed, "paths"> & { readonly changed: number }) | undefined,
): Path[] | undefined {
  const paths: Path[] = [];
  for (const [b, borrower] of borrowers.entries()) {
    const path =
      known !== undefined && known.changed !== b
        ? known.paths[b]
        : cheapestPath(borrower, {
            handed,
            pieces,
            short,
            least: least[b],
            most: most[b],
            shortMost,
          });
    if (path === undefined) return undefined;
    paths.push(path);
  }
  return paths;
}

function owed({ lending, short: most }: LendingSearch, { pieces, short }: Pick<Relaxed, "pieces" | "short">) {
  let sum = 0;
  pieces.forEach((own, t) => {
    own.forEach((price, k) => {
      sum += price * lending.stock[k];
    });
    sum += short[t] * most[t];
  });
  return sum;
}

interface Slope {
  readonly pieces: readonly Float64Array[];
  readonly short: Float64Array;
  readonly scale: number;
  /** Sum of squares, of what can still move. */
  readonly length: number;
  /** Whether all borrowers together take no more than there is, and leave no more short than must be. */
  readonly isWithin: boolean;
}

function slopeOf(
  { borrowers, lending, short: most }: LendingSearch,
  paths: readonly (readonly number[])[],
): Slope {
  const pieces = lending.lasts.map(() => Float64Array.from(lending.stock, (count) => -count));
  const short = Float64Array.from(most, (count) => -count);
  const scale = Math.max(1, ...most);
  for (const [b, { kinds, counts, short: own }] of borrowers.entries())
    paths[b].forEach((state, t) => {
      short[t] += own[t][state];
      for (const [d, kind] of kinds.entries()) pieces[t][kind] += counts[d][state];
    });
  let length = 0;
  let isWithin = true;
  pieces.forEach((own, t) => {
    for (const value of own) length += value * value;
    length += (short[t] / scale) ** 2;
    isWithin &&= own.every((value) => value <= 0) && short[t] <= 0;
  });
  return { pieces, short, scale, length, isWithin };
}
