import { findRoot } from "../numerics/root.js";
import type { Store } from "./store.js";

/**
 * Sources that feed some of the same drinkers: what is drawn comes from the one that presses from highest, until it
 * stands level with the next, then from both. That is how a line gives that loses nothing on the way, and lines of
 * this kind lose next to nothing.
 */
export interface Pool {
  readonly stores: readonly Store[];
  /** In each store when nothing has been drawn [m³]. */
  readonly start: readonly number[];
}

/** All that can be drawn from a pool [m³]. */
export const givesAll = ({ stores, start }: Pool): number =>
  stores.reduce((sum, store, i) => sum + Math.max(0, start[i] - store.dead), 0);

/** Height the pool presses from with nothing drawn [m above datum]. */
export const topOf = ({ stores, start }: Pool): number =>
  Math.max(...stores.map((store, i) => store.surfaceAt(start[i])));

/** Drawn when the pool's surface has come down to a height [m³]: what stood above it in each store. */
export function drawnAt({ stores, start }: Pool, surface: number): number {
  return stores.reduce((sum, store, i) => {
    if (store.surfaceAt(start[i]) <= surface) return sum;
    return sum + Math.max(0, start[i] - Math.max(store.dead, store.volumeAt(surface)));
  }, 0);
}

/** Where the pool's surface stands after so much was drawn [m above datum]. */
export function surfaceAfter(pool: Pool, drawn: number): number {
  const { stores, start } = pool;
  if (stores.length === 1) {
    const [store] = stores;
    return store.surfaceAt(Math.max(store.dead, start[0] - Math.max(0, drawn)));
  }
  const [top, bottom] = [topOf(pool), Math.min(...stores.map(({ bottom: least }) => least))];
  if (drawn <= 0) return top;
  if (drawn >= givesAll(pool)) return bottom;
  return findRoot((surface) => drawnAt(pool, surface) - drawn, bottom, top).root;
}

/** What is left in each store after so much was drawn; sums to what was there less that, to the last digit it can. */
export function volumesAfter(pool: Pool, drawn: number): number[] {
  const { stores, start } = pool;
  if (stores.length === 1) return [start[0] - drawn];
  const surface = surfaceAfter(pool, drawn);
  const left = stores.map((store, i) => {
    if (store.surfaceAt(start[i]) <= surface) return start[i];
    return Math.max(store.dead, Math.min(start[i], store.volumeAt(surface)));
  });
  // A store at its air tube gives at one height: what the others did not give is its own.
  const rest =
    start.reduce((sum, volume) => sum + volume, 0) - drawn - left.reduce((sum, one) => sum + one, 0);
  const giving = left.findIndex((volume, i) => volume < start[i] || rest < 0);
  if (giving >= 0) left[giving] += rest;
  return left;
}
