import type { Checked } from "@headfall/hydraulics";
import type { ProfilePath } from "../profile-path.js";
import { lengthStep, type UnitSystem } from "../typed-quantity.js";
import { fallReferenceOf } from "./fall-reference.js";
import { type PathStretch, stretchesOf } from "./path-stretches.js";

/** A place on the pipe that can be surveyed, as the edit names it. */
export interface ReadingPlace {
  /** Position in the plan's runs, and distance from the run's start [m]. */
  readonly run: number;
  readonly along: number;
  /** How much lower the pipe is there than what falls are counted from [m]. */
  readonly fall: number;
}

/** Places are told apart from the ends of a run and from each other by at least this [m]. */
const ROOM = 0.02;

/**
 * The place on the pipe at a distance along the path, brought to a whole decimetre (or three inches) where the run is long enough, with the
 * height the pipe has there now; undefined where there is no room for a reading between the run's ends.
 */
export function readingPlaceAt(
  { line }: Checked,
  path: ProfilePath,
  along: number,
  system: UnitSystem,
): ReadingPlace | undefined {
  const stretch = stretchesOf(line, path).find(({ from, to }) => along >= from && along <= to);
  if (stretch === undefined) return undefined;
  const run = line.runs[stretch.run]!;
  const coarse = (system === "us" ? 6 : 10) * lengthStep(system);
  const exact = distanceInRun(stretch, path, run, along);
  const near = run.length > 1 ? Math.round(exact / coarse) * coarse : exact;
  const place = near > ROOM && near < run.length - ROOM ? near : exact;
  if (place <= ROOM || place >= run.length - ROOM) return undefined;
  const { height } = fallReferenceOf(line, run);
  return { run: run.index, along: place, fall: height - heightInRun(run, place, line.points.height) };
}

/**
 * Where a listed button puts a surveyed height: in the middle of the longest piece of pipe of a run between its
 * joints and surveyed places.
 *
 * @param run  index into `line.runs`
 * @returns the distance along the path [m], or undefined when the path does not go through the run
 */
export function middleOfLongest({ line }: Checked, path: ProfilePath, run: number): number | undefined {
  const stretch = stretchesOf(line, path).find((candidate) => candidate.run === run);
  if (stretch === undefined) return undefined;
  const { first, last } = stretch;
  const knots: number[] = [];
  for (let i = first; i <= last; i++)
    if (i === first || i === last || line.points.measured[path.points[i]!] === 1) knots.push(path.along[i]!);
  let best: { middle: number; length: number } | undefined;
  for (let k = 1; k < knots.length; k++) {
    const [a, b] = [knots[k - 1]!, knots[k]!];
    if (best === undefined || b - a > best.length) best = { middle: (a + b) / 2, length: b - a };
  }
  return best?.middle;
}

interface RunPoints {
  readonly points: Int32Array;
  readonly along: Float64Array;
  readonly length: number;
}

/** Distance from the start of the run, whichever way the path goes through it. */
function distanceInRun(stretch: PathStretch, path: ProfilePath, run: RunPoints, along: number): number {
  const first = run.along[run.points.indexOf(path.points[stretch.first]!)] ?? 0;
  const last = run.along[run.points.indexOf(path.points[stretch.last]!)] ?? run.length;
  return last >= first ? first + (along - stretch.from) : first - (along - stretch.from);
}

function heightInRun({ points, along }: RunPoints, place: number, heights: Float64Array): number {
  let k = 1;
  while (k < along.length - 1 && along[k]! < place) k++;
  const [a, b] = [heights[points[k - 1]!]!, heights[points[k]!]!];
  const span = along[k]! - along[k - 1]!;
  return span > 0 ? a + ((b - a) * (place - along[k - 1]!)) / span : b;
}
