import type { DrawdownEvent, DrawnPool, PoolLeak } from "./drawn-pool.js";
import { type LeakPieces, layLeak } from "./leak-pieces.js";
import { drawnAt, type Pool, surfaceAfter } from "./pool.js";

/** A pool as it is drawn down: what was in it when last filled, what was drawn since, what has happened already. */
export interface Standing {
  readonly pool: DrawnPool;
  readonly index: number;
  /** What happens when it has come down to some height; never changes. */
  readonly marks: readonly Mark[];
  /** By store [m³]; and the height each presses from with that in it. */
  start: readonly number[];
  tops: readonly number[];
  /** The most that can be drawn of it: with its last drinker dry nothing leaves it, whatever stands above its outlets [m³]. */
  all: number;
  /** The same of what birds can draw: less than all where it leaks below the last drinker. */
  birdsAll: number;
  /** Only where it leaks: drawn where something happens, rising [m³]; and what leaks meanwhile. */
  places: readonly number[];
  leak: LeakPieces | undefined;
  drawn: number;
  /** By mark: drawn since it was last filled when it has come down to it [m³]. */
  at: Float64Array;
  /** Marks as they are come to. */
  order: readonly number[];
  /** By mark: 1 where it has happened. */
  readonly gone: Uint8Array;
  /** Places in the order: all before `next` have happened or cannot, none from `end` on has happened. */
  next: number;
  end: number;
}

interface Mark {
  /** Undefined: when all is given. */
  readonly surface: number | undefined;
  /** By store: what is left in it then [m³]. Looked for once, since a sealed vessel makes that dear. */
  readonly left: readonly number[];
  readonly event: DrawdownEvent;
}

export function standingOf(pool: DrawnPool, index: number): Standing {
  const marks = marksOf(pool, index);
  const one: Standing = {
    pool,
    index,
    marks,
    start: [],
    tops: [],
    all: 0,
    birdsAll: 0,
    places: [],
    leak: undefined,
    drawn: 0,
    at: new Float64Array(marks.length),
    order: [],
    gone: new Uint8Array(marks.length),
    next: 0,
    end: marks.length,
  };
  fillTo(one, pool.start);
  return one;
}

export const poolNow = ({ pool, start }: Standing): Pool => ({ stores: pool.stores, start });

/** Filled again, to these volumes; what water stands above again may happen again. */
export function fillTo(one: Standing, start: readonly number[]): void {
  one.start = start;
  one.tops = one.pool.stores.map((store, i) => store.surfaceAt(start[i]));
  one.birdsAll = one.marks.reduce(
    (most, mark) => (mark.event.kind === "drinkerDry" ? Math.max(most, drawnAtMark(one, mark)) : most),
    0,
  );
  one.all = one.birdsAll;
  one.drawn = 0;
  if (one.pool.leak !== undefined) openLeak(one, one.pool.leak);
  const at = Float64Array.from(one.marks, (mark) => drawnAtMark(one, mark));
  one.at = at;
  one.order = Array.from(at.keys()).sort((a, b) => at[a] - at[b] || a - b);
  one.next = 0;
  one.end = at.length;
  forget(one);
}

function openLeak(one: Standing, leak: PoolLeak): void {
  const pool = poolNow(one);
  one.all = Math.max(one.birdsAll, drawnAt(pool, leak.endsAt));
  // Where a store begins to give, or its level leaves the foot of an air tube, the height bends.
  const kinks = pool.stores.map(({ top }) => drawnAt(pool, top - 1e-9));
  const marks = one.marks.map((mark) => drawnAtMark(one, mark));
  one.places = [...new Set([...marks, ...kinks, one.birdsAll])].sort((a, b) => a - b);
  one.leak = layLeak(pool, leak, kinks);
}

/** Drawn since it was last filled when it has come down to a mark [m³]. */
function drawnAtMark({ start, tops, all }: Standing, { surface, left }: Mark): number {
  if (surface === undefined) return all;
  return left.reduce((sum, rest, i) => (tops[i] <= surface ? sum : sum + Math.max(0, start[i] - rest)), 0);
}

/** Heights that were passed on the way down, each at its own time. */
export function crossBetween(
  one: Standing,
  { before, rate, from }: { readonly before: number; readonly rate: number; readonly from: number },
  events: DrawdownEvent[],
): void {
  const { marks, at, order, gone } = one;
  const crossed: number[] = [];
  while (one.next < order.length && !(one.drawn < at[order[one.next]] - 1e-15)) {
    const k = order[one.next++];
    const isNeverAbove = marks[k].surface !== undefined && at[k] <= 0;
    if (gone[k] === 0 && !isNeverAbove) crossed.push(k);
  }
  one.end = Math.max(one.end, one.next);
  for (const k of crossed.sort((a, b) => a - b)) {
    gone[k] = 1;
    const time = rate > 0 ? from + Math.max(0, at[k] - before) / rate : from;
    events.push({ ...marks[k].event, time });
  }
}

/** What is dry or short from the start. */
export function noteCrossings(standing: readonly Standing[], time: number, events: DrawdownEvent[]): void {
  for (const one of standing) {
    const top = surfaceAfter(poolNow(one), 0);
    one.marks.forEach(({ surface, event }, k) => {
      if (surface === undefined ? one.all > 0 : top > surface) return;
      one.gone[k] = 1;
      one.end = one.marks.length;
      events.push({ ...event, time });
    });
  }
}

/** Marks that water stands above again may be passed again. */
export function forget(one: Standing): void {
  const { at, order, gone, drawn } = one;
  const [first, end] = [firstBeyond(one), one.end];
  for (let i = first; i < end; i += 1) if (drawn < at[order[i]]) gone[order[i]] = 0;
  one.end = first;
  one.next = Math.min(one.next, first);
}

/** The first place in the order that is not come to yet. */
function firstBeyond({ at, order, drawn }: Standing): number {
  let [low, high] = [0, order.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (drawn < at[order[middle]]) high = middle;
    else low = middle + 1;
  }
  return low;
}

function marksOf(pool: DrawnPool, index: number): Mark[] {
  const known = new Map<number, readonly number[]>();
  const leftAt = (surface: number) => {
    const left =
      known.get(surface) ?? pool.stores.map((store) => Math.max(store.dead, store.volumeAt(surface)));
    known.set(surface, left);
    return left;
  };
  const mark = (surface: number | undefined, event: DrawdownEvent): Mark => ({
    surface,
    left: surface === undefined ? [] : leftAt(surface),
    event,
  });
  return [
    ...pool.dryBelow.map(({ drinker, surface }) => mark(surface, { time: 0, kind: "drinkerDry", drinker })),
    ...pool.pens.map(({ pen }) =>
      // At the latest when nothing is left.
      mark(pool.shortBelow.find((one) => one.pen === pen)?.surface, {
        time: 0,
        kind: "penShort",
        pen,
        pool: index,
      }),
    ),
    mark(undefined, { time: 0, kind: "empty", pool: index }),
  ];
}
