import type { Line } from "@headfall/hydraulics";
import type { ProfilePath } from "../profile-path.js";

/** A stretch of the path that lies in one run; from point `first` to point `last` of the path. */
export interface PathStretch {
  /** Index into `line.runs`. */
  readonly run: number;
  readonly first: number;
  readonly last: number;
  /** Distances along the path [m]. */
  readonly from: number;
  readonly to: number;
}

/** The runs the path goes through, in its order. */
export function stretchesOf(line: Line, path: ProfilePath): PathStretch[] {
  const stretches: { run: number; first: number; last: number; from: number; to: number }[] = [];
  path.segments.forEach((segment, i) => {
    const run = line.segments.run[segment];
    if (segment < 0 || run === undefined) return;
    const open = stretches[stretches.length - 1];
    if (open?.run === run) {
      open.last = i;
      open.to = path.along[i]!;
    } else {
      stretches.push({ run, first: i - 1, last: i, from: path.along[i - 1]!, to: path.along[i]! });
    }
  });
  return stretches;
}

/** Names of the joints the path goes through, by the point of the line. */
export function jointsOn(line: Line, stretches: readonly PathStretch[]): Map<number, string> {
  const ends = stretches.flatMap(({ run }) => {
    const { points } = line.runs[run]!;
    return [points[0]!, points[points.length - 1]!];
  });
  return new Map(ends.map((point) => [point, line.points.id[point]!]));
}
