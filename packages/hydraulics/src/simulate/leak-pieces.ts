import type { PoolLeak } from "./drawn-pool.js";
import { drawnAt, type Pool, surfaceAfter } from "./pool.js";

/**
 * What leaks out of a pool as it is drawn down, at places where it was solved. Between two of them it is taken as
 * straight in s, the root of the share of its water that the leak has not yet got: for an opening under a vessel of
 * plumb walls that is Torricelli's law itself.
 */
export interface LeakPieces {
  /** All that the leak can take [m³]. */
  readonly most: number;
  /** s by place, falling from 1 to 0 [-]. */
  readonly root: Float64Array;
  /** Drawn there, most (1 - s²) [m³]. */
  readonly drawn: Float64Array;
  /** Leaks there [m³/s]. */
  readonly flow: Float64Array;
}

/** Places besides those where the height bends. */
const EVEN_PLACES = 96;

/** @param bends  drawn where the height bends: the level at the foot of an air tube, another vessel begins to give [m³] */
export function layLeak(pool: Pool, leak: PoolLeak, bends: readonly number[]): LeakPieces {
  const most = drawnAt(pool, leak.endsAt);
  const even = Array.from({ length: EVEN_PLACES + 1 }, (_, k) => most * (1 - (1 - k / EVEN_PLACES) ** 2));
  const inside = bends.filter((drawn) => drawn > 0 && drawn < most);
  const drawn = Float64Array.from([...new Set([...even, ...inside])].sort((a, b) => a - b));
  return {
    most,
    drawn,
    root: drawn.map((one) => rootOf(most, one)),
    flow: drawn.map((one) => leak.flowAt(surfaceAfter(pool, one))),
  };
}

export const rootOf = (most: number, drawn: number): number =>
  most <= 0 ? 0 : Math.sqrt(Math.max(0, 1 - drawn / most));

/** The piece that begins at a place or holds it: index of its first place. */
function pieceAt({ drawn }: LeakPieces, at: number): number {
  let low = 0;
  let high = drawn.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (drawn[middle] <= at) low = middle;
    else high = middle;
  }
  return low;
}

/** What leaks when so much was drawn [m³/s]. */
export function leakAt(pieces: LeakPieces, at: number): number {
  const { root, flow, most } = pieces;
  if (at >= most || root.length < 2) return 0;
  const k = pieceAt(pieces, at);
  const share = (root[k] - rootOf(most, at)) / (root[k] - root[k + 1]);
  return flow[k] + Math.min(1, Math.max(0, share)) * (flow[k + 1] - flow[k]);
}

/** The end of the piece that it is in, downwards (more drawn) or upwards [m³]. */
export function endOfPiece(pieces: LeakPieces, at: number, isDraining: boolean): number {
  const { drawn } = pieces;
  const k = pieceAt(pieces, at);
  if (isDraining) return drawn[k + 1];
  return drawn[k] < at ? drawn[k] : drawn[Math.max(0, k - 1)];
}

/**
 * Time from s = `from.s` to `to.s` where the net outflow is straight in s between `from.rate` and `to.rate`.
 *
 *   t = ∫ 2 M s / r(s) ds,   r = p + m s                                    (1)
 *     = 2 M [ (s₁ - s₂)/m - (p/m²) ln(r₁/r₂) ]                              (2)
 *
 * @returns t [s]; infinite where the outflow comes to nothing on the way
 */
export function timeBetween(
  most: number,
  from: { readonly s: number; readonly rate: number },
  to: { readonly s: number; readonly rate: number },
): number {
  const width = from.s - to.s;
  if (width === 0) return 0;
  if (from.rate === 0) return Number.POSITIVE_INFINITY;
  const change = (to.rate - from.rate) / from.rate;
  // Nearly even: the closed form would be the difference of two large numbers.
  if (Math.abs(change) < 1e-3) return gauss(most, from, to);
  const slope = (from.rate - to.rate) / width;
  const rest = from.rate - slope * from.s;
  const bend = Math.abs(rest) <= 1e-14 * Math.abs(from.rate) ? 0 : rest * Math.log(from.rate / to.rate);
  return (2 * most * (width - bend / slope)) / slope;
}

/** Nodes and weights of the four-point rule on (-1, 1). */
const NODES = [
  [0.8611363115940526, 0.34785484513745385],
  [0.33998104358485626, 0.6521451548625461],
] as const;

function gauss(
  most: number,
  from: { readonly s: number; readonly rate: number },
  to: { readonly s: number; readonly rate: number },
): number {
  const middle = (from.s + to.s) / 2;
  const half = (from.s - to.s) / 2;
  const lean = (from.rate - to.rate) / (from.s - to.s);
  const value = (s: number) => s / (to.rate + lean * (s - to.s));
  const sum = NODES.reduce(
    (total, [node, weight]) => total + weight * (value(middle + half * node) + value(middle - half * node)),
    0,
  );
  return 2 * most * half * sum;
}
