import { type Ask, enoughAlone } from "./lending.js";

export interface StateList {
  /** Kinds that ever serve, by position in the stock. */
  readonly kinds: readonly number[];
  /** By state, by such a kind: pieces. The one with no pieces comes first, and each after those with fewer. */
  readonly states: readonly (readonly number[])[];
  /** Whether some of use were too many to be listed. */
  readonly isHeldDown: boolean;
}

/** As many states as are gone through in every period without holding down what may be had. */
const MANY = 1500;
/** No more in any case. */
const TOO_MANY = 4000;

/**
 * The states of one borrower that are worth looking at.
 *
 * More of a kind than is ever enough alone is of no use: such a piece could be left out for as long as it is there. In
 * a period a state is tight where each of its pieces counts; all states with fewer pieces are tight then too, so that
 * the list is closed downwards, and going from one state to another never leaves it. States with pieces above a tight
 * one only wait for another time. All are listed where they are not too many; else those with the fewest that wait.
 */
export function listStates(stock: readonly number[], asks: readonly Ask[]): StateList {
  const most = stock.map((pieces, kind) =>
    Math.min(pieces, Math.max(0, ...asks.map((ask) => enoughAlone(ask, kind)).filter(Number.isFinite))),
  );
  const kinds = [...most.keys()].filter((kind) => most[kind] > 0);
  const top = kinds.map((kind) => most[kind]);
  const whole = top.reduce((product, count) => product * (count + 1), 1);
  if (whole <= MANY) return { kinds, states: grow(top, () => 0, 0, whole), isHeldDown: false };
  const waiting = createWaiting(kinds, asks);
  let states = grow(top, waiting, 0, TOO_MANY);
  for (let more = 1; ; more += 1) {
    const next = grow(top, waiting, more, MANY + 1);
    if (next.length > MANY || next.length === states.length) break;
    states = next;
  }
  return { kinds, states, isHeldDown: states.length < whole };
}

/** States from none upwards, a piece at a time, whose waiting pieces are at most so many. */
function grow(
  top: readonly number[],
  waiting: (state: readonly number[]) => number,
  mostWaiting: number,
  enough: number,
): (readonly number[])[] {
  const begin = top.map(() => 0);
  const states: (readonly number[])[] = [begin];
  const seen = new Set([begin.join()]);
  for (let at = 0; at < states.length; at += 1) {
    for (const [d, count] of states[at].entries()) {
      if (count === top[d] || states.length >= enough) continue;
      const next = states[at].map((own, e) => (e === d ? own + 1 : own));
      const key = next.join();
      if (seen.has(key) || waiting(next) > mostWaiting) continue;
      seen.add(key);
      states.push(next);
    }
  }
  return states;
}

/** How many pieces of a state only wait: the fewest that must go for the rest to be tight in some period. */
function createWaiting(kinds: readonly number[], asks: readonly Ask[]): (state: readonly number[]) => number {
  const known = new Map<string, number>();
  const different = [...new Map(asks.map((ask) => [JSON.stringify(ask), ask])).values()];
  const waiting = (state: readonly number[]): number => {
    const key = state.join();
    const found = known.get(key);
    if (found !== undefined) return found;
    const withOneFewer = (d: number) => state.map((own, e) => (e === d ? own - 1 : own));
    const least = different.some((ask) => isTight(ask, kinds, state))
      ? 0
      : 1 + Math.min(...state.flatMap((count, d) => (count > 0 ? [waiting(withOneFewer(d))] : [])));
    known.set(key, least);
    return least;
  };
  return waiting;
}

/** Whether every piece counts: without any one of them the ask would be left shorter. */
function isTight({ weight, met, shares }: Ask, kinds: readonly number[], state: readonly number[]): boolean {
  const own = state.map((count, d) => count * shares[kinds[d]]);
  const covered = met + own.reduce((sum, share) => sum + share, 0);
  return state.every(
    (count, d) =>
      count === 0 || (weight > 0 && shares[kinds[d]] > 0 && covered - shares[kinds[d]] < 1 - 1e-9),
  );
}
