import { flowOfDrinker } from "../../model/drinker-flow.js";
import type { Flock } from "../../model/flock.js";
import { type Line, SEGMENT_KIND } from "../../model/line.js";
import { findRoot } from "../../numerics/root.js";
import { crowdLoad } from "../../simulate/crowd-load.js";
import { type DrinkerPlace, groupOf, placesOf } from "../../simulate/crowd-want.js";
import type { DrawnPool, Refill } from "../../simulate/drawdown.js";
import { wantOfPen } from "../../simulate/pen-want.js";
import { topOf } from "../../simulate/pool.js";
import { type Store, storeOf } from "../../simulate/store.js";
import { type PreparedLine, prepareLine, startAfresh } from "../../solve/prepare-line.js";
import { reachState } from "../../solve/solve-line.js";
import type { WeighedLine } from "../weigh-line.js";
import { outletsOf, type SolvedLeak, solveLeak } from "./pool-leaks.js";

/** What is drawn on besides the birds, and how each source is filled again. */
export interface Supply {
  /** By source. */
  readonly refills: readonly Refill[];
  /** Water in each source when it begins [m³]. */
  readonly start: readonly number[];
  /** Drinkers out of work, by index: they give nothing. */
  readonly failed: ReadonlySet<number>;
  /** What each drinker that drips loses [m³/s]. */
  readonly dripRate: number;
  /** The same line with what pours out of it by a mishap; left out where nothing does. */
  readonly leaking?: Line | undefined;
}

/**
 * The sources of a line as pools, each with the heights at which its drinkers give out. A header tank stands for the
 * pool that fills it: its own water is not counted, which is the cautious side.
 */
export function poolsOf(judged: WeighedLine, flock: Flock, supply: Supply): DrawnPool[] {
  const { line } = judged;
  const reach = sourcesOfDrinkers(line);
  const { leaking } = supply;
  const root = rootsOf(line, leaking === undefined ? reach : [...reach, ...sourcesOfLeaks(leaking)]);
  const prepared = prepareLine(leaking ?? line, "darcyWeisbach");
  const members = new Map<number, number[]>();
  line.sources.forEach((source, i) => {
    if (source.feed !== undefined) return;
    members.set(root[i], [...(members.get(root[i]) ?? []), i]);
  });
  return [...members.entries()].map(([rootIndex, sources]) => {
    const stores = sources.map((i) => storeOf(line, line.sources[i]));
    const drinkers = reach.flatMap((from, d) => (from.some((i) => root[i] === rootIndex) ? [d] : []));
    const served = drinkers.filter((d) => !supply.failed.has(d));
    const servedHere = new Set(served);
    const start = sources.map((i) => supply.start[i]);
    const top = topOf({ stores, start });
    const joined = line.sources.flatMap((_, i) => (root[i] === rootIndex ? [i] : []));
    const leak =
      leaking === undefined ? undefined : solveLeak(startAfresh(prepared), { stores, start }, joined);
    const bare: DrawnPool = {
      stores,
      start,
      ...(leak === undefined ? {} : { leak }),
      refills: sources.map((i) => supply.refills[i]),
      drips: supply.dripRate * drinkers.filter((d) => dripsWhenFull(judged, d)).length,
      pens: flock.pens.flatMap((pen, p) => shareOf(pen.drinkers, servedHere, supply.failed, p)),
      dryBelow: served.map((drinker) => ({
        drinker,
        surface: dryWith(leak, dryBelow(judged, reach, drinker), { judged, reach, drinker, top }),
      })),
      shortBelow: [],
    };
    return { ...bare, shortBelow: pensShortBelow(prepared, flock, bare, servedHere) };
  });
}

/** Sources from which water can reach each drinker through open pipe. */
function sourcesOfDrinkers(line: Line): number[][] {
  const { drinkers } = line;
  const reach: number[][] = Array.from({ length: drinkers.count }, () => []);
  line.sources.forEach((source, i) => {
    const seen = pointsFrom(line, source.point);
    for (let d = 0; d < drinkers.count; d += 1) if (seen[drinkers.point[d]] === 1) reach[d].push(i);
  });
  return reach;
}

/** The same of what pours out. */
function sourcesOfLeaks(line: Line): number[][] {
  const points = outletsOf(line).map(({ point }) => point);
  const seen = line.sources.map(({ point }) => pointsFrom(line, point));
  return points.map((point) => seen.flatMap((from, i) => (from[point] === 1 ? [i] : [])));
}

/** 1 where water can come to from a point; devices let it through one way only. */
function pointsFrom({ points, segments }: Line, start: number): Uint8Array {
  const seen = new Uint8Array(points.count);
  const stack = [start];
  seen[start] = 1;
  const meeting: number[][] = Array.from({ length: points.count }, () => []);
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.shut[s] === 1) continue;
    meeting[segments.from[s]].push(s);
    if (segments.kind[s] === SEGMENT_KIND.pipe) meeting[segments.to[s]].push(s);
  }
  for (let p = stack.pop(); p !== undefined; p = stack.pop()) {
    for (const s of meeting[p]) {
      const other = segments.from[s] === p ? segments.to[s] : segments.from[s];
      if (seen[other] === 1) continue;
      seen[other] = 1;
      stack.push(other);
    }
  }
  return seen;
}

/** Sources that share a drinker, or of which one fills the other, have the same root. */
function rootsOf(line: Line, reach: readonly (readonly number[])[]): number[] {
  const root = line.sources.map((_, i) => i);
  const rootOf = (i: number): number => (root[i] === i ? i : rootOf(root[i]));
  const join = (a: number, b: number) => {
    root[rootOf(Math.max(a, b))] = rootOf(Math.min(a, b));
  };
  for (const from of reach) for (const i of from.slice(1)) join(from[0], i);
  line.sources.forEach((source, i) => {
    const { feed } = source;
    if (feed === undefined) return;
    line.sources.forEach((other, k) => {
      if (k !== i && pointsFrom(line, other.point)[feed.point] === 1) join(k, i);
    });
  });
  return root.map((_, i) => rootOf(i));
}

const dripsWhenFull = ({ drinkers }: WeighedLine, d: number): boolean =>
  drinkers[d].verdict === "drips" || drinkers[d].also.some(({ verdict }) => verdict === "drips");

/** The part of a pen's drinkers that hang on these: birds go to those that work. */
function shareOf(
  drinkers: readonly number[],
  served: ReadonlySet<number>,
  failed: ReadonlySet<number>,
  pen: number,
): { pen: number; share: number }[] {
  const working = drinkers.filter((d) => !failed.has(d));
  const here = working.filter((d) => served.has(d)).length;
  return here === 0 ? [] : [{ pen, share: here / working.length }];
}

/**
 * The surface at which nothing comes from a drinker any more [m above datum]: its valve with its opening head and the
 * air left in the way, the highest place on the way, or the valve that fills its header tank.
 */
function dryBelow(judged: WeighedLine, reach: readonly (readonly number[])[], d: number): number {
  const { line, solved, filling } = judged;
  const { drinkers } = line;
  const point = drinkers.point[d];
  const valve = drinkers.height[d] + drinkers.openingHead[d] + filling.airHead[point];
  const crest = solved.darcyWeisbach.lowestBusiest.idle.head[point] + filling.above[point];
  const [header] = reach[d].map((i) => line.sources[i].feed).filter((feed) => feed !== undefined);
  if (header !== undefined) return header.height;
  return Math.max(valve, Number.isFinite(crest) ? crest : valve);
}

/** The same with a leak, which takes from the head at the drinker: no lower than without, no higher than the top. */
function dryWith(
  leak: SolvedLeak | undefined,
  still: number,
  at: {
    readonly judged: WeighedLine;
    readonly reach: readonly (readonly number[])[];
    readonly drinker: number;
    readonly top: number;
  },
): number {
  const { line } = at.judged;
  if (leak === undefined || at.reach[at.drinker].some((i) => line.sources[i].feed !== undefined))
    return still;
  const point = line.drinkers.point[at.drinker];
  const { top } = at;
  const over = (surface: number) => surface - leak.takenAt(point, surface) - still;
  if (still >= top || over(still) >= -1e-12) return still;
  return over(top) <= 0 ? top : findRoot(over, still, top).root;
}

/**
 * By pen the surface below which its drinkers, all worked at once, pass less than the birds drink in their busiest
 * hour: from there on some bird goes without. At the latest when the last of them is dry.
 */
function pensShortBelow(prepared: PreparedLine, flock: Flock, pool: DrawnPool, served: ReadonlySet<number>) {
  const top = topOf(pool);
  const bottom = Math.min(...pool.stores.map((store: Store) => store.bottom));
  return pool.pens.flatMap(({ pen: p, share }) => {
    const pen = flock.pens[p];
    const want = wantOfPen(prepared.line, pen, flock.weather);
    if (want.birds === 0) return [];
    const mine = pen.drinkers.filter((d) => served.has(d));
    const capacity = capacityBySurface(startAfresh(prepared), pool, mine);
    const spare = (surface: number) => {
      const { demand, capacity: most } = crowdLoad(want.batches, capacity(surface));
      return most - share * demand;
    };
    if (spare(top) <= 0) return [{ pen: p, surface: top }];
    const lastDry = lowestDry(pool, served, pen.drinkers);
    if (spare(bottom) > 0) return lastDry > bottom ? [{ pen: p, surface: lastDry }] : [];
    const surface = findRoot(spare, bottom, top, { tolerance: 1e-6 }).root;
    return [{ pen: p, surface: Math.max(surface, Math.min(top, lastDry)) }];
  });
}

/** The surface at which the last of a pen's drinkers on this pool gives out. */
function lowestDry(pool: DrawnPool, served: ReadonlySet<number>, drinkers: readonly number[]): number {
  const mine = new Set(drinkers);
  return pool.dryBelow.reduce(
    (least, { drinker, surface }) =>
      served.has(drinker) && mine.has(drinker) ? Math.min(least, surface) : least,
    Number.POSITIVE_INFINITY,
  );
}

/** What the drinkers of a pen pass with all of them worked, as the pool's surface stands. */
function capacityBySurface(prepared: PreparedLine, pool: DrawnPool, mine: readonly number[]) {
  const { line } = prepared;
  const atWork = new Uint8Array(line.drinkers.count);
  for (const d of mine) atWork[d] = 1;
  return (surface: number): DrinkerPlace[] => {
    const sourceHead = Float64Array.from(line.sources, (source) => {
      const store = pool.stores.find((one) => one.source === source.index);
      return Math.min(surface, store === undefined ? source.base + source.levels.full : store.top);
    });
    const state = reachState(prepared, { name: "lowestBusiest", sourceHead, atWork });
    return mine.map((d) => {
      const head = state.head[line.drinkers.point[d]] - line.drinkers.height[d];
      const isThere = state.reached[line.drinkers.point[d]] === 1;
      const group = groupOf(line, d);
      const flow = isThere ? flowOfDrinker(line.drinkers, d, head) : 0;
      return { flow, workedBy: group.workedBy, places: placesOf(group) };
    });
  };
}
