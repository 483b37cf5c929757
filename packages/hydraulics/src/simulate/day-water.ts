import { flowOfDrinker } from "../model/drinker-flow.js";
import { createDayFlows } from "./day-flows.js";
import type { DaySetting } from "./day-setting.js";
import type { Refill } from "./drawdown.js";
import { givesAll, type Pool, surfaceAfter, volumesAfter } from "./pool.js";

/** The water of a day: what stands in the sources, and what the drinkers at work pass from it. */
export interface DayWater {
  /** Pressure surface of each source [m above datum]. */
  readonly surfaces: Float64Array;
  /** By drinker: passed while worked [m³/s]. */
  readonly flow: Float64Array;
  readonly gives: (drinker: number) => boolean;
  /** Solves for those at work, ascending. */
  readonly solve: (working: Int32Array, count: number) => void;
  /** Takes from the pools what was drawn at each drinker, and lets in what fills them, over a time. */
  readonly draw: (drinker: number, volume: number) => void;
  readonly pass: (from: number, to: number) => void;
  readonly volumes: () => number[];
  readonly sums: { poured: number; drawn: number };
  readonly tally: { readonly solves: number; readonly asked: number; readonly unsolved: number };
  readonly bySource: { readonly poured: Float64Array };
}

export function createDayWater(setting: DaySetting): DayWater {
  const { line, pools, airHead } = setting;
  const { drinkers } = line;
  const flows = createDayFlows(line);
  const surfaces = new Float64Array(line.sources.length);
  const flow = new Float64Array(drinkers.count);
  const poolOf = new Int32Array(drinkers.count).fill(-1);
  const dryBelow = new Float64Array(drinkers.count).fill(Number.POSITIVE_INFINITY);
  pools.forEach((pool, p) => {
    for (const { drinker, surface } of pool.dryBelow) {
      poolOf[drinker] = p;
      dryBelow[drinker] = surface;
    }
  });
  const start = pools.map((pool) => [...pool.start]);
  const drawn = new Float64Array(pools.length);
  const heights = new Float64Array(pools.length);
  const sums = { poured: 0, drawn: 0 };
  const poured = new Float64Array(line.sources.length);
  const now = (p: number): Pool => ({ stores: pools[p].stores, start: start[p] });
  const all = pools.map((_, p) => givesAll(now(p)));
  // A header tank is taken as full as long as what fills it gives.
  for (const source of line.sources) surfaces[source.index] = source.base + source.levels.full;

  const settle = (p: number) => {
    heights[p] = surfaceAfter(now(p), drawn[p]);
    pools[p].stores.forEach((store, i) => {
      surfaces[store.source] = Math.min(store.surfaceAt(start[p][i]), heights[p]);
    });
  };
  pools.forEach((_, p) => {
    settle(p);
  });

  const fill = (p: number, i: number) => {
    const left = volumesAfter(now(p), drawn[p]);
    const store = pools[p].stores[i];
    const volume = store.full - left[i];
    start[p] = left.map((one, k) => (k === i ? store.full : one));
    drawn[p] = 0;
    all[p] = givesAll(now(p));
    sums.poured += volume;
    poured[store.source] += volume;
    settle(p);
  };

  return {
    surfaces,
    flow,
    sums,
    bySource: { poured },
    tally: flows.tally,
    gives: (d) => {
      const p = poolOf[d];
      return p >= 0 && heights[p] > dryBelow[d] && drawn[p] < all[p];
    },
    solve(working, count) {
      flows.find(working, count, surfaces, flow);
      for (let k = 0; k < count; k += 1) {
        const d = working[k];
        const p = poolOf[d];
        if (p < 0 || heights[p] <= dryBelow[d] || drawn[p] >= all[p]) flow[d] = 0;
        else if (airHead[d] > 0 && flow[d] > 0) flow[d] = weakened(setting, d, flow[d]);
      }
    },
    draw(d, volume) {
      const p = poolOf[d];
      if (p < 0) return;
      drawn[p] += volume;
      sums.drawn += volume;
    },
    pass(from, to) {
      pools.forEach((pool, p) => {
        pool.refills.forEach((refill, i) => {
          if (refill.kind === "hose") {
            const volume = Math.min(drawn[p], refill.flow * (to - from));
            drawn[p] -= volume;
            sums.poured += volume;
            poured[pool.stores[i].source] += volume;
          } else if (refill.kind === "byHand" && isBetween(refill, from, to)) fill(p, i);
        });
        settle(p);
      });
    },
    volumes: () => {
      const volumes = line.sources.map(() => 0);
      pools.forEach((pool, p) => {
        volumesAfter(now(p), drawn[p]).forEach((volume, i) => {
          volumes[pool.stores[i].source] = volume;
        });
      });
      return volumes;
    },
  };
}

/** Whether a round by hand falls into (from, to]; on any day at the round's time of day. */
function isBetween(refill: Extract<Refill, { kind: "byHand" }>, from: number, to: number): boolean {
  const before = Math.floor((from - refill.first) / refill.every + 1e-12);
  return Math.floor((to - refill.first) / refill.every + 1e-12) > before && to >= refill.first % 86_400;
}

/** The flow with the head that air takes gone from it. */
function weakened({ line, airHead }: DaySetting, d: number, flow: number): number {
  const { drinkers } = line;
  const spare = (flow / drinkers.coefficient[d]) ** (1 / drinkers.exponent[d]);
  return flowOfDrinker(drinkers, d, spare + drinkers.openingHead[d] - airHead[d]);
}
