import type { Flock } from "../model/flock.js";
import { flockInDays } from "../model/flock-on.js";
import type { Line } from "../model/line.js";
import type { DrawdownEvent, DrawnPool, Refill } from "./drawn-pool.js";
import { leakThrough, type Moved } from "./leaking.js";
import { drawOfPen, type IntakeFigure, type PenDraw } from "./pen-draw.js";
import { volumesAfter } from "./pool.js";
import {
  crossBetween,
  fillTo,
  forget,
  noteCrossings,
  poolNow,
  type Standing,
  standingOf,
} from "./standing.js";

export type { DrawdownEvent, DrawnPool, PoolLeak, Refill } from "./drawn-pool.js";

const DAY = 86_400;

/** Water in each source at a time. */
export interface LevelPoint {
  readonly time: number;
  /** By source [m³]. */
  readonly volumes: readonly number[];
}

/** Water drawn down through days and nights. */
export interface Drawdown {
  /** In the order they happen; times [s] since midnight of the first day. */
  readonly events: readonly DrawdownEvent[];
  readonly levels: readonly LevelPoint[];
  /** Start + poured in = drawn + left, each kept as its own sum [m³]. */
  readonly balance: {
    readonly start: number;
    readonly poured: number;
    readonly drawn: number;
    readonly left: number;
  };
  /** Of what was drawn: what leaked and dripped, and no bird had [m³]. */
  readonly lost: number;
  readonly until: number;
}

export interface DrawdownOptions {
  readonly figure: IntakeFigure;
  /** When it begins [s after midnight of the flock's day]. */
  readonly from: number;
  /** How long at most [s]. */
  readonly lasts: number;
  /** The flock on each day, counted from 0: its ages, its air. */
  readonly flockOn?: (day: number) => Flock;
}

/**
 * Draws the water down through days and nights. Between the edges of the day's curve the draw is even, so the time at
 * which a pool has come down to any height is found exactly, not stepped over.
 */
export function drawDown(
  line: Line,
  flock: Flock,
  pools: readonly DrawnPool[],
  options: DrawdownOptions,
): Drawdown {
  const on = options.flockOn ?? ((day: number) => flockInDays(flock, day));
  const standing = pools.map(standingOf);
  const events: DrawdownEvent[] = [];
  const levels: LevelPoint[] = [];
  const balance = { start: sumOf(standing.flatMap(({ start }) => start)), poured: 0, drawn: 0 };
  const end = options.from + options.lasts;
  let lost = 0;
  let time = options.from;
  let draws: { day: number; pens: readonly PenDraw[] } | undefined;
  noteCrossings(standing, time, events);
  while (time < end && !standing.every(isEmpty)) {
    const day = Math.floor(time / DAY + 1e-12);
    if (draws?.day !== day) draws = { day, pens: drawsOn(line, on(day), options.figure) };
    const next = Math.min(
      end,
      nextEdge(draws.pens, time),
      nextRefill(standing, time),
      dayAfter(options.from, time),
    );
    levels.push(levelsAt(line, standing, time));
    for (const one of standing) {
      const moved = advance(one, rateOf(one.pool, draws.pens, time, next), { from: time, to: next }, events);
      balance.drawn += moved.drawn;
      balance.poured += moved.poured;
      lost += moved.lost;
    }
    time = next;
    balance.poured += refillAt(standing, time, events);
  }
  levels.push(levelsAt(line, standing, time));
  const left = sumOf(levels[levels.length - 1].volumes);
  events.sort((a, b) => a.time - b.time);
  return { events, levels, balance: { ...balance, left }, lost, until: time };
}

const sumOf = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0);
const isEmpty = (one: Standing) => one.drawn >= one.all * (1 - 1e-12) && !isFed(one.pool);
const isFed = ({ refills }: DrawnPool) => refills.some(({ kind }) => kind !== "none");

function drawsOn(line: Line, flock: Flock, figure: IntakeFigure): PenDraw[] {
  return flock.pens.map((pen) => drawOfPen(line, flock, pen, figure));
}

/** The next time at which some draw changes, midnight among them. */
function nextEdge(pens: readonly PenDraw[], time: number): number {
  const midnight = Math.floor(time / DAY + 1e-12) * DAY;
  const edges = [DAY, ...pens.flatMap(({ edges: all }) => all)].map((edge) => midnight + edge);
  return Math.min(...edges.filter((edge) => edge > time + 1e-6));
}

/** The next time at the hour it began: levels are told there each day. */
const dayAfter = (from: number, time: number) => from + (Math.floor((time - from) / DAY + 1e-9) + 1) * DAY;

function nextRefill(standing: readonly Standing[], time: number): number {
  const times = standing.flatMap(({ pool }) =>
    pool.refills.flatMap((refill) => (refill.kind === "byHand" ? [refillAfter(refill, time)] : [])),
  );
  return Math.min(Number.POSITIVE_INFINITY, ...times);
}

function refillAfter(
  { every, first }: { readonly every: number; readonly first: number },
  time: number,
): number {
  if (time < first - 1e-6) return first;
  return first + (Math.floor((time - first) / every + 1e-9) + 1) * every;
}

const isRefillTime = (refill: Refill, time: number) =>
  refill.kind === "byHand" &&
  time >= refill.first - 1e-6 &&
  Math.abs((time - refill.first) / refill.every - Math.round((time - refill.first) / refill.every)) < 1e-9;

/** Draw of a pool between two neighbouring edges [m³/s]. */
function rateOf(pool: DrawnPool, pens: readonly PenDraw[], from: number, to: number): number {
  const clock = (from + to) / 2 - Math.floor((from + to) / 2 / DAY) * DAY;
  return pool.pens.reduce((sum, { pen, share }) => {
    const { edges, rates } = pens[pen];
    const piece = edges.findIndex((edge) => edge > clock) - 1;
    return sum + share * (rates[piece] ?? 0);
  }, pool.drips);
}

/** One pool through a stretch of even draw. What it cannot give is not drawn: birds go without. */
function advance(
  one: Standing,
  rate: number,
  stretch: { readonly from: number; readonly to: number },
  events: DrawdownEvent[],
): Moved {
  const lasts = stretch.to - stretch.from;
  const hose = sumOf(one.pool.refills.map((refill) => (refill.kind === "hose" ? refill.flow : 0)));
  // Every drinker is above the fullest water: nothing leaves, and no hose runs.
  if (one.all <= 0) return { drawn: 0, poured: 0, lost: 0 };
  if (one.leak !== undefined) return leakThrough(one, one.leak, { rate, hose, ...stretch }, events);
  if (hose > 0) return fedStretch(one, { rate, hose, ...stretch }, events);
  const drawn = Math.max(0, Math.min(rate * lasts, one.all - one.drawn));
  const before = one.drawn;
  one.drawn += drawn;
  crossBetween(one, { before, rate, from: stretch.from }, events);
  return { drawn, poured: 0, lost: dripped(one, rate, drawn) };
}

/** Of what was drawn at a rate, what only dripped. */
const dripped = ({ pool: { drips } }: Standing, rate: number, drawn: number): number =>
  drips > 0 && rate > 0 ? (drips / rate) * drawn : 0;

/** A stretch with a hose that runs while the pool is not full. */
function fedStretch(
  one: Standing,
  { rate, hose, from, to }: { rate: number; hose: number; from: number; to: number },
  events: DrawdownEvent[],
): Moved {
  const lasts = to - from;
  const net = rate - hose;
  const before = one.drawn;
  if (net <= 0) {
    // It fills up, and from then on lets in what is drawn.
    one.drawn = Math.max(0, before + net * lasts);
    const drawn = rate * lasts;
    forget(one);
    return { drawn, poured: drawn + before - one.drawn, lost: dripped(one, rate, drawn) };
  }
  one.drawn = Math.min(one.all, before + net * lasts);
  crossBetween(one, { before, rate: net, from }, events);
  const poured = hose * lasts;
  const drawn = poured + one.drawn - before;
  return { drawn, poured, lost: dripped(one, rate, drawn) };
}

/** Poured in by hand at this time; what was dry gives again. */
function refillAt(standing: readonly Standing[], time: number, events: DrawdownEvent[]): number {
  let poured = 0;
  for (const one of standing) {
    if (!one.pool.refills.some((refill) => isRefillTime(refill, time))) continue;
    const left = volumesAfter(poolNow(one), one.drawn);
    const start = left.map((volume, i) => {
      if (!isRefillTime(one.pool.refills[i], time)) return volume;
      const { full, source } = one.pool.stores[i];
      poured += full - volume;
      events.push({ time, kind: "refilled", source, volume: full - volume });
      return full;
    });
    fillTo(one, start);
  }
  return poured;
}

function levelsAt(line: Line, standing: readonly Standing[], time: number): LevelPoint {
  const volumes = line.sources.map(() => 0);
  for (const one of standing) {
    volumesAfter(poolNow(one), one.drawn).forEach((volume, i) => {
      volumes[one.pool.stores[i].source] = volume;
    });
  }
  return { time, volumes };
}
