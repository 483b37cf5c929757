/**
 * Pieces of several kinds are lent to borrowers, period by period. What is asked: the least left short in all; of that
 * with the fewest pieces handed out anew; of that with the least upkeep. Plain numbers: who borrows what, and why, is
 * for the caller to know.
 */
export interface Lending {
  /** Pieces of each kind. */
  readonly stock: readonly number[];
  /** How long each period lasts; any whole unit. */
  readonly lasts: readonly number[];
  /** By borrower, by period. */
  readonly asks: readonly (readonly Ask[])[];
  /** By kind: what a piece costs for a unit of time while it is lent to somebody who asks; whole numbers. */
  readonly upkeep: readonly number[];
}

/** What one borrower asks in one period. */
export interface Ask {
  /** How much the whole of it counts; 0: it asks nothing, and may keep whatever it has. */
  readonly weight: number;
  /** Share of it that is met without any piece, from 0. */
  readonly met: number;
  /** By kind: share of it that one piece meets; 0: no such piece may be there. */
  readonly shares: readonly number[];
}

/** By borrower, by period, by kind: pieces it has. */
export type Lent = readonly (readonly (readonly number[])[])[];

/** What a way of lending comes to, in order of what counts first. */
export interface LendingCost {
  /** Weight left short, beyond half of an ask four times, times how long: in thousandths, so that it is a whole number. */
  readonly short: number;
  /** Pieces handed to a borrower who had not that piece in the period before. */
  readonly handed: number;
  readonly upkeep: number;
}

/** Shares that add up to 1 within this are enough: sums of thirds and sevenths are not exact. */
const ENOUGH = 1e-9;
const THOUSANDTHS = 1000;
/** What is missing beyond half of an ask counts so many times: rather two that have half than one without anything. */
const SORE = 4;
const HALF = 0.5;

/** How much a share that is missing counts: itself, but what goes beyond a half SORE times. */
const felt = (missing: number): number => missing + (SORE - 1) * Math.max(0, missing - HALF);

/** The most that one more share can take off what counts as short. */
export const MOST_FELT = SORE;

/** What counts as short of an ask [weight × time, thousandths; beyond half of it SORE times], a whole number. */
export function shortOf({ weight, met, shares }: Ask, lasts: number, has: readonly number[]): number {
  let left = 1 - met;
  for (let k = 0; k < shares.length; k += 1) left -= has[k] * shares[k];
  return weight === 0 || left <= ENOUGH ? 0 : Math.ceil(THOUSANDTHS * weight * lasts * felt(left) - ENOUGH);
}

/** Whether a piece of a kind may be with a borrower. */
export const mayHave = ({ weight, shares }: Ask, kind: number): boolean => weight === 0 || shares[kind] > 0;

/** Pieces of a kind that are enough for an ask alone; Infinity where none would be. */
export function enoughAlone({ weight, met, shares }: Ask, kind: number): number {
  if (weight === 0 || met >= 1 - ENOUGH) return 0;
  return shares[kind] > 0 ? Math.ceil((1 - met) / shares[kind] - ENOUGH) : Number.POSITIVE_INFINITY;
}

/** What a way of lending comes to; whether the stock allows it is not looked at. */
export function costOfLending({ lasts, asks, upkeep }: Lending, lent: Lent): LendingCost {
  const cost = { short: 0, handed: 0, upkeep: 0 };
  asks.forEach((own, b) => {
    own.forEach((ask, t) => {
      const has = lent[b][t];
      cost.short += shortOf(ask, lasts[t], has);
      has.forEach((count, k) => {
        cost.handed += Math.max(0, count - (t === 0 ? 0 : lent[b][t - 1][k]));
        if (ask.weight > 0) cost.upkeep += count * upkeep[k] * lasts[t];
      });
    });
  });
  return cost;
}

/** Below 0 where the first is better. */
export const compareLending = (a: LendingCost, b: LendingCost): number =>
  a.short - b.short || a.handed - b.handed || a.upkeep - b.upkeep;
