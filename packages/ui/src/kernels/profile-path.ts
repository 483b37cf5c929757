import type { Line } from "@headfall/hydraulics";

/** The way from a source to the end of the run a drinker sits on: what the drawing unrolls from left to right. */
export interface ProfilePath {
  /** Index into `line.sources`. */
  readonly source: number;
  /** Point indices, from the source's outlet on. */
  readonly points: readonly number[];
  /** Distance from the outlet along the pipe, at each of those points [m]. */
  readonly along: readonly number[];
  /** Segment that leads to each point; -1 for the first. */
  readonly segments: readonly number[];
  /** Drinkers that sit on the way, by index into `line.drinkers`, nearest first. */
  readonly drinkers: readonly number[];
}

/**
 * Finds the way from the nearest source to a drinker, and on to the end of its run, so that its neighbours further
 * out are on the drawing too. In a ring the way with the fewest pieces is taken.
 *
 * @param line     the line
 * @param drinker  index into `line.drinkers`
 * @returns undefined when no pipe joins the drinker to a source, or the line has no such drinker
 */
export function pathToDrinker(line: Line, drinker: number): ProfilePath | undefined {
  return pathTo(line, line.drinkers.point[drinker]!, line.drinkers.run[drinker]!);
}

/** The same for any point of the line; `run` is the run it is looked at on, else the one the way there ends with. */
export function pathTo(line: Line, goal: number, run?: number): ProfilePath | undefined {
  const arrived = spreadFromSources(line);
  // A point the line does not have is reached by none either.
  if ((arrived.by[goal] ?? UNSEEN) === UNSEEN) return undefined;
  const points = [goal];
  const segments: number[] = [];
  for (let point = goal; arrived.by[point]! >= 0; ) {
    const segment = arrived.by[point]!;
    segments.unshift(segment);
    point = otherEnd(line, segment, point);
    points.unshift(point);
  }
  segments.unshift(-1);
  const last = segments[segments.length - 1]!;
  const onRun = run ?? (last >= 0 ? line.segments.run[last] : undefined);
  if (onRun !== undefined) extendToRunEnd(line, onRun, points, segments);
  const along = distances(line, segments);
  const source = line.sources.findIndex((candidate) => candidate.point === points[0]);
  return { source, points, along, segments, drinkers: drinkersOn(line, points) };
}

const UNSEEN = -2;
const AT_SOURCE = -1;

/** The ways into a line, which never changes: several are asked for at each drawing. */
const spreads = new WeakMap<Line, { by: Int32Array }>();

function spreadFromSources(line: Line): { by: Int32Array } {
  const known = spreads.get(line);
  if (known !== undefined) return known;
  const spread = spreadAfresh(line);
  spreads.set(line, spread);
  return spread;
}

/** Breadth first from all outlets at once; `by` is the segment each point was reached through. */
function spreadAfresh(line: Line): { by: Int32Array } {
  const neighbours = segmentsAtPoints(line);
  const by = new Int32Array(line.points.count).fill(UNSEEN);
  const queue: number[] = [];
  for (const source of line.sources) {
    by[source.point] = AT_SOURCE;
    queue.push(source.point);
  }
  for (let next = 0; next < queue.length; next++) {
    const point = queue[next]!;
    for (let at = neighbours.start[point]!; at < neighbours.start[point + 1]!; at++) {
      const segment = neighbours.segment[at]!;
      const far = otherEnd(line, segment, point);
      if (by[far] !== UNSEEN) continue;
      by[far] = segment;
      queue.push(far);
    }
  }
  return { by };
}

/** Segments that end at each point, packed: those of point p stand at start[p] to start[p + 1]. */
function segmentsAtPoints(line: Line): { start: Int32Array; segment: Int32Array } {
  const { from, to, count } = line.segments;
  const start = new Int32Array(line.points.count + 1);
  for (let s = 0; s < count; s++) {
    start[from[s]! + 1]!++;
    start[to[s]! + 1]!++;
  }
  for (let p = 0; p < line.points.count; p++) start[p + 1]! += start[p]!;
  const fill = start.slice();
  const segment = new Int32Array(2 * count);
  for (let s = 0; s < count; s++) {
    segment[fill[from[s]!]!++] = s;
    segment[fill[to[s]!]!++] = s;
  }
  return { start, segment };
}

function otherEnd(line: Line, segment: number, point: number): number {
  const from = line.segments.from[segment]!;
  return from === point ? line.segments.to[segment]! : from;
}

/** Goes on from the last point in the direction the way was going, along its own run. */
function extendToRunEnd(line: Line, onRun: number, points: number[], segments: number[]): void {
  const run = line.runs[onRun]!;
  const at = run.points.indexOf(points[points.length - 1]!);
  if (at < 0) return;
  const before = points[points.length - 2];
  const isBackward = before !== undefined && at + 1 < run.points.length && run.points[at + 1] === before;
  const last = isBackward ? 0 : run.points.length - 1;
  const step = isBackward ? -1 : 1;
  const seen = new Set(points);
  for (let i = at; i !== last; i += step) {
    const point = run.points[i + step]!;
    if (seen.has(point)) return;
    points.push(point);
    segments.push(run.firstSegment + (isBackward ? i - 1 : i));
  }
}

function distances(line: Line, segments: readonly number[]): number[] {
  let sum = 0;
  return segments.map((segment) => {
    if (segment >= 0) sum += line.segments.length[segment]!;
    return sum;
  });
}

function drinkersOn(line: Line, points: readonly number[]): number[] {
  const order = new Map(points.map((point, i) => [point, i]));
  const found: number[] = [];
  for (let d = 0; d < line.drinkers.count; d++) {
    if (order.has(line.drinkers.point[d]!)) found.push(d);
  }
  return found.sort(
    (a, b) => order.get(line.drinkers.point[a]!)! - order.get(line.drinkers.point[b]!)! || a - b,
  );
}
