import type { Line } from "../model/line.js";
import type { DaySetting } from "./day-setting.js";
import type { DrawnPool, Refill } from "./drawn-pool.js";
import { givesAll, type Pool, surfaceAfter, volumesAfter } from "./pool.js";

/** What all sources come to while a day runs. */
export interface DaySources {
  /** Pressure surface of each [m above datum]. */
  readonly surfaces: Float64Array;
  /** Let into each [m³]. */
  readonly poured: Float64Array;
  /** Let into all of them, and drawn [m³]. */
  readonly sums: { poured: number; drawn: number };
}

/** A header tank is taken as full as long as what fills it gives. */
const daySources = ({ sources }: Line): DaySources => ({
  surfaces: Float64Array.from(sources, ({ base, levels }) => base + levels.full),
  poured: new Float64Array(sources.length),
  sums: { poured: 0, drawn: 0 },
});

/** The pools while a day runs; lists by pool. */
export interface DayPools {
  readonly pools: readonly DrawnPool[];
  readonly sources: DaySources;
  /** What stood in the stores when last one was filled up. */
  readonly since: Pool[];
  /** Drawn since then, less what has run in [m³]. */
  readonly drawn: Float64Array;
  /** All that can be drawn of what stood there [m³]. */
  readonly all: Float64Array;
  /** Where the pool presses from [m above datum]. */
  readonly height: Float64Array;
}

/** The pools at midnight. */
export function beginPools({ line, pools }: DaySetting): DayPools {
  const begun: DayPools = {
    pools,
    sources: daySources(line),
    since: [...pools],
    drawn: new Float64Array(pools.length),
    all: Float64Array.from(pools, givesAll),
    height: new Float64Array(pools.length),
  };
  for (const p of pools.keys()) settlePool(begun, p);
  return begun;
}

/** Time goes on: hoses run, and where a round comes by hand, stores are filled. */
export function passPools(running: DayPools, from: number, to: number): void {
  running.pools.forEach((pool, p) => {
    pool.refills.forEach((refill, i) => {
      if (refill.kind === "hose") {
        const volume = Math.min(running.drawn[p], refill.flow * (to - from));
        running.drawn[p] -= volume;
        notePoured(running.sources, pool.stores[i].source, volume);
      } else if (refill.kind === "byHand" && isBetween(refill, from, to)) fillStore(running, p, i);
    });
    settlePool(running, p);
  });
}

function fillStore(running: DayPools, p: number, i: number): void {
  const { since, drawn, all, sources } = running;
  const { stores } = since[p];
  const left = volumesAfter(since[p], drawn[p]);
  since[p] = { stores, start: left.map((one, k) => (k === i ? stores[k].full : one)) };
  drawn[p] = 0;
  all[p] = givesAll(since[p]);
  notePoured(sources, stores[i].source, stores[i].full - left[i]);
}

function notePoured({ sums, poured }: DaySources, source: number, volume: number): void {
  sums.poured += volume;
  poured[source] += volume;
}

/** The surfaces follow what was drawn. */
function settlePool({ since, drawn, height, sources }: DayPools, p: number): void {
  const { stores, start } = since[p];
  height[p] = surfaceAfter(since[p], drawn[p]);
  for (let i = 0; i < stores.length; i += 1)
    sources.surfaces[stores[i].source] = Math.min(stores[i].surfaceAt(start[i]), height[p]);
}

/** By source [m³]; 0 for one of no pool. */
export function volumesNow({ since, drawn, sources }: DayPools): number[] {
  const volumes = Array.from(sources.surfaces, () => 0);
  since.forEach((pool, p) => {
    volumesAfter(pool, drawn[p]).forEach((volume, i) => {
      volumes[pool.stores[i].source] = volume;
    });
  });
  return volumes;
}

/** Whether a round by hand falls into (from, to]; on any day at the round's time of day. */
function isBetween(refill: Extract<Refill, { kind: "byHand" }>, from: number, to: number): boolean {
  const before = Math.floor((from - refill.first) / refill.every + 1e-12);
  return Math.floor((to - refill.first) / refill.every + 1e-12) > before && to >= refill.first % 86_400;
}
