import { type BestPattern, bestPattern, type Pattern } from "./best-pattern.js";
import type { Bars } from "./cutting.js";

/** One way to cut one kind of bar, and how often it is done in the relaxed plan. */
export interface RelaxedCut {
  readonly kind: number;
  readonly pattern: Pattern;
  readonly times: number;
}

/** The cheapest plan in which bars may be cut a fraction of a time, and what it proves. */
export interface RelaxedCutting {
  readonly cuts: readonly RelaxedCut[];
  /** Worth of a piece of each size: no bar sold yields more than its price. */
  readonly worth: readonly number[];
  /** The most a bar of each kind on hand can yield; 0 for those sold. */
  readonly yields: readonly number[];
  /** No plan costs less. */
  readonly bound: number;
}

interface Column {
  /** Kind of bar; -1: more pieces than wanted; -2: a bar on hand that is not cut; -3: a piece nobody can cut. */
  readonly kind: number;
  readonly pattern: Pattern;
  readonly price: number;
}

const SURPLUS = -1;
const UNUSED = -2;
const MISSING = -3;
const ROUNDS = 2000;
const NOTHING = 1e-7;

/**
 * Solves the cutting problem with fractions allowed, making patterns as they are wanted, by the simplex method on
 * the rows "as many of each size as wanted" and "no more bars of a kind than there are". From the worth of the pieces
 * at the end follows a bound that needs no trust in the method, for every worth of pieces gives one, once scaled so
 * that no bar sold yields more than its price.
 *
 *   bound = sum of worth x wanted - sum over kinds on hand of yield x supply                              (1)
 *
 * @source gilmore-gomory-1961, patterns made as they are wanted, from memory
 * @source farley-1990, bound from any worth of pieces, from memory
 */
export function relaxCutting(bars: Bars): RelaxedCutting {
  const rows = rowsOf(bars);
  const basis = rows.map((row) => firstColumn(bars, rows, row));
  const inverse = rows.map((_, r) =>
    rows.map((_row, c) => (r === c ? 1 / Math.max(1, columnOf(rows, basis[r])[r]) : 0)),
  );
  const right = rows.map(({ wanted, supply }) => wanted ?? supply ?? 0);
  let amounts = times(inverse, right);
  let prices = basis.map(({ price }) => price);
  for (let round = 0; round < ROUNDS; round += 1) {
    const dual = rows.map((_, c) => prices.reduce((sum, price, r) => sum + price * inverse[r][c], 0));
    const entering = bestColumn(bars, rows, dual);
    if (entering === undefined) break;
    const direction = times(inverse, columnOf(rows, entering));
    const leaving = leastRatio(amounts, direction);
    if (leaving < 0) break;
    pivot(inverse, direction, leaving);
    basis[leaving] = entering;
    prices = basis.map(({ price }) => price);
    amounts = times(inverse, right);
  }
  const dual = rows.map((_, c) => prices.reduce((sum, price, r) => sum + price * inverse[r][c], 0));
  const cuts = basis
    .map(({ kind, pattern }, r) => ({ kind, pattern, times: amounts[r] }))
    .filter(({ kind, times: often }) => kind >= 0 && often > NOTHING);
  const proofs = [proofOf(bars, dual.slice(0, bars.size.length)), proofOf(bars, bars.size)];
  return { cuts, ...proofs.reduce((a, b) => (b.bound > a.bound ? b : a)) };
}

interface Row {
  /** Size that is counted, and how many are wanted; or the kind of bar, and how many there are. */
  readonly size?: number;
  readonly wanted?: number;
  readonly kind?: number;
  readonly supply?: number;
}

const rowsOf = ({ wanted, supply }: Bars): Row[] => [
  ...wanted.map((count, size) => ({ size, wanted: count })),
  ...supply.flatMap((count, kind) => (Number.isFinite(count) ? [{ kind, supply: count }] : [])),
];

function columnOf(rows: readonly Row[], { kind, pattern }: Column): number[] {
  if (kind === UNUSED) return rows.map((row) => (row.kind === pattern[0] ? 1 : 0));
  const sign = kind === SURPLUS ? -1 : 1;
  return rows.map((row) => (row.size === undefined ? (row.kind === kind ? 1 : 0) : sign * pattern[row.size]));
}

/** One size alone, from the longest bar sold; a bar on hand is not cut at first. */
function firstColumn(bars: Bars, rows: readonly Row[], { size, kind }: Row): Column {
  if (size === undefined) return { kind: UNUSED, pattern: [kind ?? 0], price: 0 };
  const only = (count: number) =>
    rows.flatMap((row) => (row.size === undefined ? [] : row.size === size ? [count] : [0]));
  const longest = bars.length.length - 1;
  const isSold = longest >= 0 && !Number.isFinite(bars.supply[longest]);
  const fit = isSold ? Math.min(bars.wanted[size], Math.floor(bars.capacity[longest] / bars.size[size])) : 0;
  if (fit > 0) return { kind: longest, pattern: only(fit), price: bars.price[longest] };
  return { kind: MISSING, pattern: only(1), price: 1000 * Math.max(...bars.length, bars.size[size]) };
}

/** The column that would cheapen the plan most; none when it is the cheapest. */
function bestColumn(bars: Bars, rows: readonly Row[], dual: readonly number[]): Column | undefined {
  const sizes = bars.size.length;
  const least = NOTHING * Math.max(1, ...bars.length);
  const negative = dual.findIndex((worth, r) => (r < sizes ? worth < -least : worth > least));
  if (negative >= sizes) return { kind: UNUSED, pattern: [rows[negative].kind ?? 0], price: 0 };
  if (negative >= 0)
    return { kind: SURPLUS, pattern: bars.size.map((_, i) => (i === negative ? 1 : 0)), price: 0 };
  let best: Column | undefined;
  let gain = least;
  bars.capacity.forEach((capacity, kind) => {
    const { pattern, worth } = bestPattern(bars.size, dual, bars.wanted, capacity);
    const scarce = rows.findIndex((row) => row.kind === kind);
    const saved = worth + (scarce < 0 ? 0 : dual[scarce]) - bars.price[kind];
    if (saved <= gain) return;
    gain = saved;
    best = { kind, pattern, price: bars.price[kind] };
  });
  return best;
}

const times = (matrix: readonly (readonly number[])[], vector: readonly number[]): number[] =>
  matrix.map((row) => row.reduce((sum, each, c) => sum + each * vector[c], 0));

function leastRatio(amounts: readonly number[], direction: readonly number[]): number {
  let leaving = -1;
  let least = Number.POSITIVE_INFINITY;
  direction.forEach((each, r) => {
    if (each <= NOTHING) return;
    const ratio = Math.max(0, amounts[r]) / each;
    if (ratio < least - 1e-12) [least, leaving] = [ratio, r];
  });
  return leaving;
}

function pivot(inverse: number[][], direction: readonly number[], leaving: number): void {
  const row = inverse[leaving].map((each) => each / direction[leaving]);
  inverse.forEach((other, r) => {
    if (r !== leaving && direction[r] !== 0)
      inverse[r] = other.map((each, c) => each - direction[r] * row[c]);
  });
  inverse[leaving] = row;
}

/** What worth of pieces proves, whoever chose it. */
export function proofOf(
  bars: Bars,
  chosen: readonly number[],
): Pick<RelaxedCutting, "worth" | "yields" | "bound"> {
  const clipped = chosen.map((each) => Math.max(0, each));
  const yieldsOf = (worth: readonly number[]): BestPattern[] =>
    bars.capacity.map((capacity) => bestPattern(bars.size, worth, bars.wanted, capacity));
  const dearest = Math.max(
    1,
    ...yieldsOf(clipped).map(({ worth }, kind) => (bars.price[kind] > 0 ? worth / bars.price[kind] : 0)),
  );
  const worth = clipped.map((each) => each / dearest);
  const yields = yieldsOf(worth).map((best, kind) => (bars.price[kind] > 0 ? 0 : best.worth));
  const all = worth.reduce((sum, each, i) => sum + each * bars.wanted[i], 0);
  const onHand = yields.reduce((sum, each, kind) => sum + (each === 0 ? 0 : each * bars.supply[kind]), 0);
  return { worth, yields, bound: Math.max(0, all - onHand) };
}
