import { type Lending, shortOf } from "./lending.js";
import { listStates } from "./states.js";

/** One borrower with all it may have: each state is a number of pieces of each kind that ever serves it. */
export interface Borrower {
  readonly index: number;
  /** Kinds that ever serve it, by position in the stock; a digit of a state is the pieces of one of them. */
  readonly kinds: readonly number[];
  readonly states: number;
  /** By digit, by state: pieces; and the state with one piece fewer, −1 where there is none to take. */
  readonly counts: readonly Uint16Array[];
  readonly below: readonly Int32Array[];
  /** By digit: the most of any state. */
  readonly most: readonly number[];
  /** By period, by state: left short; Infinity where a piece may not be there. */
  readonly short: readonly Float64Array[];
  /** By period, by state. */
  readonly upkeep: readonly Float64Array[];
  /** Whether some states that might be of use were too many to be listed. */
  readonly isHeldDown: boolean;
}

export function createBorrower(lending: Lending, index: number): Borrower {
  const asks = lending.asks[index];
  const { kinds, states, isHeldDown } = listStates(lending.stock, asks);
  const at = new Map(states.map((state, s) => [state.join(), s]));
  const counts = kinds.map((_, d) => Uint16Array.from(states, (state) => state[d]));
  const pieces = states.map((state) => spreadOut(kinds, state, lending.stock.length));
  return {
    index,
    kinds,
    states: states.length,
    counts,
    below: kinds.map((_, d) =>
      Int32Array.from(states, (state) =>
        state[d] === 0 ? -1 : (at.get(state.map((count, e) => (e === d ? count - 1 : count)).join()) ?? -1),
      ),
    ),
    most: counts.map((of) => of.reduce((most, count) => Math.max(most, count), 0)),
    short: asks.map((ask, t) =>
      Float64Array.from(pieces, (own) =>
        ask.weight === 0 || own.every((count, k) => count === 0 || ask.shares[k] > 0)
          ? shortOf(ask, lending.lasts[t], own)
          : Number.POSITIVE_INFINITY,
      ),
    ),
    upkeep: asks.map(({ weight }, t) =>
      Float64Array.from(pieces, (own) =>
        weight === 0
          ? 0
          : lending.lasts[t] * own.reduce((sum, count, k) => sum + count * lending.upkeep[k], 0),
      ),
    ),
    isHeldDown,
  };
}

/** Pieces by kind of a state. */
export function piecesOf({ kinds, counts }: Borrower, state: number, ofStock: number): number[] {
  return spreadOut(
    kinds,
    counts.map((of) => of[state]),
    ofStock,
  );
}

function spreadOut(kinds: readonly number[], state: readonly number[], ofStock: number): number[] {
  const pieces = new Array<number>(ofStock).fill(0);
  kinds.forEach((kind, d) => {
    pieces[kind] = state[d];
  });
  return pieces;
}
