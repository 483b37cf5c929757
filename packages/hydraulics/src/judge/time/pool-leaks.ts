import type { Line } from "../../model/line.js";
import { STUCK } from "../../model/line.js";
import { findRoot } from "../../numerics/root.js";
import type { PoolLeak } from "../../simulate/drawn-pool.js";
import { type Pool, topOf } from "../../simulate/pool.js";
import type { PreparedLine } from "../../solve/prepare-line.js";
import { reachState } from "../../solve/solve-line.js";

/** What pours out of a pool with nobody drinking, and what that takes from the head at each drinker. */
export interface SolvedLeak extends PoolLeak {
  /** By how much the head at a point stands below the pool's surface, by surface [m]. */
  readonly takenAt: (point: number, surface: number) => number;
}

/** Heights at which a leak is solved; between them flow and heads are straight in the root of the height over its end. */
const HEIGHTS = 32;

/** Whether anything of a line passes water that nobody works. */
export const isLeaky = (line: Line): boolean => outletsOf(line).length > 0;

/** The same line with what pours out of it stopped: what is cut off stays cut off. */
export function withoutLeaks(line: Line): Line {
  if (!isLeaky(line)) return line;
  const { leaks: _, ...rest } = line;
  const stuck = line.drinkers.stuck?.map((state) => (state === STUCK.open ? STUCK.not : state));
  const { stuck: __, ...drinkers } = line.drinkers;
  return {
    ...rest,
    drinkers: stuck?.some((state) => state !== STUCK.not) ? { ...drinkers, stuck } : drinkers,
    sources: line.sources.map((source) =>
      source.feed?.isStuckOpen === true
        ? {
            ...source,
            feed: {
              point: source.feed.point,
              height: source.feed.height,
              coefficient: source.feed.coefficient,
            },
          }
        : source,
    ),
  };
}

/**
 * The leak of a pool, solved with nobody drinking at heights from where it ends to the top. What leaks from a header
 * tank comes through its float valve, and no faster than that lets it in.
 *
 * @param prepared  of the line with what pours out of it
 * @param members   the sources of the pool by index, header tanks among them
 * @returns undefined where nothing leaks of this pool even when it is full
 */
export function solveLeak(
  prepared: PreparedLine,
  pool: Pool,
  members: readonly number[],
): SolvedLeak | undefined {
  const solveAt = (surface: number) => leakAtSurface(prepared, pool, members, surface);
  const top = topOf(pool);
  const bottom = Math.min(...pool.stores.map((store) => store.bottom));
  const full = solveAt(top);
  if (full.flow <= 0) return undefined;
  const endsAt = Math.max(
    bottom,
    endOf((surface) => solveAt(surface).flow, lowestOutlet(prepared.line), top),
  );
  const span = Math.sqrt(Math.max(0, top - endsAt));
  const solved = Array.from({ length: HEIGHTS + 1 }, (_, k) =>
    k === HEIGHTS ? full : solveAt(endsAt + (top - endsAt) * (k / HEIGHTS) ** 2),
  );
  if (endsAt > bottom) solved[0] = { ...solved[0], flow: 0 };
  const between = (surface: number, read: (state: LeakState) => number) => {
    const place = span === 0 ? HEIGHTS : (HEIGHTS * Math.sqrt(Math.max(0, surface - endsAt))) / span;
    const k = Math.min(HEIGHTS - 1, Math.floor(place));
    const share = Math.min(1, Math.max(0, place - k));
    return read(solved[k]) + share * (read(solved[k + 1]) - read(solved[k]));
  };
  return {
    endsAt,
    flowAt: (surface) => (surface <= endsAt && endsAt > bottom ? 0 : between(surface, ({ flow }) => flow)),
    takenAt: (point, surface) =>
      surface <= endsAt && endsAt > bottom ? 0 : between(surface, ({ taken }) => taken[point]),
  };
}

interface LeakState {
  readonly flow: number;
  /** By point: the pool's surface less the head there; nothing where no water comes [m]. */
  readonly taken: Float64Array;
}

function leakAtSurface(
  prepared: PreparedLine,
  pool: Pool,
  members: readonly number[],
  surface: number,
): LeakState {
  const { line } = prepared;
  const sourceHead = Float64Array.from(line.sources, (source) => {
    const store = pool.stores.find((one) => one.source === source.index);
    return store === undefined ? source.base + source.levels.full : Math.min(surface, store.top);
  });
  const atWork = new Uint8Array(line.drinkers.count);
  const moment = { name: "fullIdle", sourceHead, atWork } as const;
  const idle = reachState(prepared, moment);
  const stores = members.filter((i) => pool.stores.some(({ source }) => source === i));
  const tanks = members.filter((i) => !stores.includes(i) && idle.sourceFlow[i] > 0);
  let flow = stores.reduce((sum, i) => sum + idle.sourceFlow[i], 0);
  if (tanks.length > 0) {
    const feeding = Uint8Array.from(line.sources, (_, i) => (tanks.includes(i) ? 1 : 0));
    const fed = reachState(prepared, { ...moment, feeding });
    flow += tanks.reduce((sum, i) => sum + Math.min(idle.sourceFlow[i], fed.feedFlow[i]), 0);
  }
  const taken = idle.head.map((head, p) => (idle.reached[p] === 1 ? Math.max(0, surface - head) : 0));
  return { flow: Math.max(0, flow), taken };
}

/** The height from which on it leaks. */
function endOf(flowAt: (surface: number) => number, lowest: number, top: number): number {
  const hair = 1e-9 * Math.max(1, Math.abs(top));
  if (lowest >= top || flowAt(lowest + (top - lowest) * 1e-6) > 0) return Math.min(lowest, top);
  return findRoot((surface) => (flowAt(surface) > 0 ? 1 : -1), lowest, top, { tolerance: hair }).root;
}

/** Of all that pours, the one that stops last. */
const lowestOutlet = (line: Line): number => Math.min(...outletsOf(line).map(({ height }) => height));

/** Where water pours out of a line that nobody works, and the head at which it begins to [m above datum]. */
export function outletsOf({
  leaks,
  drinkers,
  sources,
}: Line): { readonly point: number; readonly height: number }[] {
  return [
    ...(leaks ?? []),
    ...Array.from(drinkers.stuck ?? []).flatMap((state, d) =>
      state === STUCK.open
        ? [{ point: drinkers.point[d], height: drinkers.height[d] + drinkers.openingHead[d] }]
        : [],
    ),
    ...sources.flatMap(({ feed }) => (feed?.isStuckOpen === true ? [feed] : [])),
  ];
}
