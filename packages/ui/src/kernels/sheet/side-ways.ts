import type { Line } from "@headfall/hydraulics";
import { type ProfilePath, pathToDrinker } from "../profile-path.js";

/** A way through the line, from its source to the end of the run it is for. */
export interface Way {
  /** Index into `line.runs`. */
  readonly run: number;
  readonly path: ProfilePath;
}

/** More ways than this are not drawn at once; each can still be chosen by itself. */
const MOST_WAYS = 40;

/** The ways drawn from the side, and how many runs with drinkers were left for another print. */
export interface Ways {
  readonly drawn: readonly Way[];
  readonly leftOut: number;
}

/**
 * One way for every branch: to the farthest drinker of each run with drinkers, but none whose drinkers are all on a
 * longer one already.
 *
 * @param run  only the way to the drinkers of this run
 */
export function waysOf(line: Line, run?: number): Ways {
  const farthest = farthestDrinkers(line);
  const wanted = run === undefined ? [...farthest.keys()] : [run].filter((each) => farthest.has(each));
  const ways = wanted.slice(0, MOST_WAYS).flatMap((each): Way[] => {
    const path = pathToDrinker(line, farthest.get(each)!);
    return path === undefined ? [] : [{ run: each, path }];
  });
  const longestFirst = [...ways].sort((a, b) => lengthOfWay(b) - lengthOfWay(a));
  const shown = new Set<number>();
  const kept = new Set<Way>();
  for (const way of longestFirst) {
    if (way.path.drinkers.every((drinker) => shown.has(drinker))) continue;
    kept.add(way);
    for (const drinker of way.path.drinkers) shown.add(drinker);
  }
  return { drawn: ways.filter((way) => kept.has(way)), leftOut: Math.max(0, wanted.length - MOST_WAYS) };
}

/** Along the pipe [m]. */
export const lengthOfWay = ({ path }: Way): number => path.along[path.along.length - 1] ?? 0;

/** By run, in the order of the plan. */
function farthestDrinkers({ drinkers }: Line): ReadonlyMap<number, number> {
  const farthest = new Map<number, number>();
  for (let d = 0; d < drinkers.count; d += 1) {
    const known = farthest.get(drinkers.run[d]!);
    if (known === undefined || drinkers.along[d]! > drinkers.along[known]!) farthest.set(drinkers.run[d]!, d);
  }
  return farthest;
}
