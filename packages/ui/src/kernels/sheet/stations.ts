import type { Line } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { aboveGround, drinkerAboveGround, writeMark } from "./part-words.js";
import type { Way } from "./side-ways.js";

/** A place on a way whose heights are marked on site. */
export interface Station {
  /** Along the pipe from the source [m], and the same in words. */
  readonly at: number;
  readonly along: string;
  readonly name: string;
  readonly pipe: string;
  /** Height of the drinker's valve; empty where none hangs. */
  readonly drinker: string;
  /** Heavier stations keep their words when there is no room for all. */
  readonly weight: number;
}

/** Ends of runs, surveyed places, and the first and last drinker of each stretch, from the source on. */
export function stationsOf(line: Line, { path }: Way, system: UnitSystem): Station[] {
  const marked = markedDrinkers(line, path.drinkers);
  const drinkerAt = new Map(marked.map((drinker) => [line.drinkers.point[drinker]!, drinker]));
  const ends = new Set(path.points.filter((_, i) => isRunEnd(line, path.segments, i)));
  return path.points.flatMap((point, i): Station[] => {
    const drinker = drinkerAt.get(point);
    const isMeasured = line.points.measured[point] === 1;
    if (drinker === undefined && !isMeasured && !ends.has(point)) return [];
    const id = line.points.id[point]!;
    return [
      {
        at: path.along[i]!,
        along: writeMark(path.along[i]!, system),
        name:
          drinker === undefined
            ? id
            : ends.has(point)
              ? `${id}, ${line.drinkers.id[drinker]}`
              : line.drinkers.id[drinker]!,
        pipe: writeMark(aboveGround(line, point), system),
        drinker: drinker === undefined ? "" : writeMark(drinkerAboveGround(line, drinker), system),
        weight: ends.has(point) ? 3 : drinker === undefined ? 1 : 2,
      },
    ];
  });
}

/** The first and last drinker of each group on the way. */
function markedDrinkers({ drinkers }: Line, onWay: readonly number[]): number[] {
  return onWay.filter((drinker, i) => {
    const group = drinkers.group[drinker];
    return drinkers.group[onWay[i - 1] ?? -1] !== group || drinkers.group[onWay[i + 1] ?? -1] !== group;
  });
}

/** Whether the way changes from one run to another here, begins or ends. */
function isRunEnd(line: Line, segments: readonly number[], i: number): boolean {
  const [before, after] = [segments[i]!, segments[i + 1]];
  if (before < 0 || after === undefined) return true;
  return line.segments.run[before] !== line.segments.run[after];
}

/** A stretch of one run on a way: from and to along the pipe [m], and how much lower its end is [m]. */
export interface Stretch {
  readonly run: number;
  readonly from: number;
  readonly to: number;
  readonly fall: number;
}

/** The runs a way goes through, from the source on. */
export function stretchesOf(line: Line, { path }: Way): Stretch[] {
  const { height } = line.points;
  const stretches: { run: number; from: number; to: number; fall: number }[] = [];
  for (let i = 1; i < path.points.length; i += 1) {
    const run = line.segments.run[path.segments[i]!]!;
    const fall = height[path.points[i - 1]!]! - height[path.points[i]!]!;
    const last = stretches[stretches.length - 1];
    if (last === undefined || last.run !== run)
      stretches.push({ run, from: path.along[i - 1]!, to: path.along[i]!, fall });
    else {
      last.to = path.along[i]!;
      last.fall += fall;
    }
  }
  return stretches;
}
