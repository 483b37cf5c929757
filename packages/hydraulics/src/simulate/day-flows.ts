import { flowOfDrinker } from "../model/drinker-flow.js";
import type { Line } from "../model/line.js";
import { prepareLine } from "../solve/prepare-line.js";
import { reachState } from "../solve/solve-line.js";

/**
 * How far the water may stand from where a set of drinkers was solved [m]. With one source the heads of a set move
 * with the surface, and only the losses, which change with the flows, are those of the level it was solved at; with
 * more they do not move together.
 */
const STEP = { oneSource: 0.05, moreSources: 0.01 } as const;

/** What drinkers pass while a set of them is worked; solved when first asked for, then remembered. */
export interface DayFlows {
  /**
   * Flow of each of the drinkers at work [m³/s], into `flow` by drinker.
   *
   * @param working   drinkers at work, ascending; the first `count` of the array
   * @param surfaces  pressure surface of each source [m above datum]
   */
  readonly find: (working: Int32Array, count: number, surfaces: Float64Array, flow: Float64Array) => void;
  readonly tally: { solves: number; asked: number; unsolved: number };
}

/**
 * Every set is solved from the same start, so that what it gives does not hang on what was solved before: a day is
 * the same whatever days came before it.
 */
export function createDayFlows(line: Line): DayFlows {
  const prepared = prepareLine(line, "darcyWeisbach");
  const base = prepared.current;
  const { drinkers } = line;
  const step = line.sources.length === 1 ? STEP.oneSource : STEP.moreSources;
  const known = new Map<string, Float64Array>();
  const tally = { solves: 0, asked: 0, unsolved: 0 };
  const atWork = new Uint8Array(drinkers.count);

  const solve = (working: Int32Array, count: number, levels: readonly number[]): Float64Array => {
    atWork.fill(0);
    for (let k = 0; k < count; k += 1) atWork[working[k]] = 1;
    prepared.current = base;
    base.work.warm = false;
    const sourceHead = Float64Array.from(levels, (level) => level * step);
    const state = reachState(prepared, { name: "ordinary", sourceHead, atWork });
    tally.solves += 1;
    if (state.outcome !== "solved") tally.unsolved += 1;
    // Heads at the valves; a drinker that water does not reach, or whose set was not solved, gives nothing.
    return Float64Array.from({ length: count }, (_, k) => {
      const d = working[k];
      const point = drinkers.point[d];
      const gives = state.outcome === "solved" && state.reached[point] === 1;
      return gives ? state.head[point] - drinkers.height[d] : Number.NEGATIVE_INFINITY;
    });
  };

  return {
    tally,
    find(working, count, surfaces, flow) {
      tally.asked += 1;
      const levels = Array.from(surfaces, (surface) => Math.round(surface / step));
      let key = levels.join();
      for (let k = 0; k < count; k += 1) key += `,${working[k]}`;
      let heads = known.get(key);
      if (heads === undefined) {
        heads = solve(working, count, levels);
        known.set(key, heads);
      }
      const moved = surfaces.length === 1 ? surfaces[0] - levels[0] * step : 0;
      for (let k = 0; k < count; k += 1) {
        const d = working[k];
        flow[d] = heads[k] === Number.NEGATIVE_INFINITY ? 0 : flowOfDrinker(drinkers, d, heads[k] + moved);
      }
    },
  };
}
