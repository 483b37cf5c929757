import { flowOfDrinker } from "../model/drinker-flow.js";
import { createDayFlows } from "./day-flows.js";
import { beginPools, passPools, volumesNow } from "./day-pools.js";
import type { DaySetting } from "./day-setting.js";

/** The water of a day: what stands in the sources, and what the drinkers at work pass from it. */
export interface DayWater {
  /** By drinker: passed while worked [m³/s]. */
  readonly flow: Float64Array;
  readonly gives: (drinker: number) => boolean;
  /** Solves for those at work, ascending. */
  readonly solve: (working: Int32Array, count: number) => void;
  /** Takes from the pools what was drawn at each drinker, and lets in what fills them, over a time. */
  readonly draw: (drinker: number, volume: number) => void;
  readonly pass: (from: number, to: number) => void;
  readonly volumes: () => number[];
  readonly sums: { readonly poured: number; readonly drawn: number };
  readonly tally: { readonly solves: number; readonly asked: number; readonly unsolved: number };
  readonly bySource: { readonly poured: Float64Array };
}

export function createDayWater(setting: DaySetting): DayWater {
  const { line, airHead } = setting;
  const flows = createDayFlows(line);
  const flow = new Float64Array(line.drinkers.count);
  const pools = beginPools(setting);
  const { sources, height, drawn, all } = pools;
  const { poolOf, dryBelow } = feedsOf(setting);
  const gives = (d: number): boolean => {
    const p = poolOf[d];
    return p >= 0 && height[p] > dryBelow[d] && drawn[p] < all[p];
  };
  return {
    ...{ flow, gives, sums: sources.sums, bySource: sources, tally: flows.tally },
    solve(working, count) {
      flows.find(working, count, sources.surfaces, flow);
      for (let k = 0; k < count; k += 1) {
        const d = working[k];
        if (!gives(d)) flow[d] = 0;
        else if (airHead[d] > 0 && flow[d] > 0) flow[d] = weakened(setting, d, flow[d]);
      }
    },
    draw(d, volume) {
      const p = poolOf[d];
      if (p < 0) return;
      drawn[p] += volume;
      sources.sums.drawn += volume;
    },
    pass: (from, to) => passPools(pools, from, to),
    volumes: () => volumesNow(pools),
  };
}

/** By drinker: the pool it hangs on (−1 for none), and the height of its surface below which it gives nothing. */
function feedsOf({ line, pools }: DaySetting) {
  const poolOf = new Int32Array(line.drinkers.count).fill(-1);
  const dryBelow = new Float64Array(line.drinkers.count).fill(Number.POSITIVE_INFINITY);
  pools.forEach((pool, p) => {
    for (const { drinker, surface } of pool.dryBelow) {
      poolOf[drinker] = p;
      dryBelow[drinker] = surface;
    }
  });
  return { poolOf, dryBelow };
}

/** The flow with the head that air takes gone from it. */
function weakened({ line, airHead }: DaySetting, d: number, flow: number): number {
  const { drinkers } = line;
  const spare = (flow / drinkers.coefficient[d]) ** (1 / drinkers.exponent[d]);
  return flowOfDrinker(drinkers, d, spare + drinkers.openingHead[d] - airHead[d]);
}
