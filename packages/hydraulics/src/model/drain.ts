import { createHeap } from "../numerics/heap.js";
import { type Line, SEGMENT_KIND } from "./line.js";

/** Water that stays in a dip of the line after its low ends were opened. */
export interface Sag {
  /** Its lowest point: a drain there would let it out. */
  readonly point: number;
  /** The run that point lies on, and how far along it [m]. */
  readonly run: number;
  readonly along: number;
  /** Height of the lowest place that water must pass on its way out, over the lowest point [m]. */
  readonly depth: number;
  readonly volume: number;
}

/** An end that is opened, and what comes out of it [m³]. */
export interface DrainEnd {
  readonly point: number;
  readonly isSource: boolean;
  readonly volume: number;
}

export interface Drain {
  /** All the pipe holds [m³]. */
  readonly volume: number;
  readonly ends: readonly DrainEnd[];
  readonly sags: readonly Sag[];
  /** What has to be opened by hand: shut taps, one-way valves, regulators; as segments. */
  readonly devices: readonly number[];
}

/**
 * What comes out of a full line when its low ends are opened, and what stays in its dips. Pipe is full up to the
 * lowest crest that its water must pass on the way to an open end; air comes in at the drinkers and the high ends.
 * Heights are those of the pipe's middle; the film that wets a level pipe is not counted.
 *
 * @param line  from `buildLine`
 */
export function drainOf(line: Line): Drain {
  const ways = waysOf(line);
  const drains = lowEnds(line, ways);
  const { crest, end } = crestsTo(line, ways, drains);
  const out = new Map(drains.map((point) => [point, 0]));
  const left = new Float64Array(line.segments.count);
  let volume = 0;
  for (let s = 0; s < line.segments.count; s += 1) {
    const whole = (Math.PI / 4) * line.segments.bore[s] ** 2 * line.segments.length[s];
    volume += whole;
    const [low, share] = shareLeft(line, crest, s);
    left[s] = whole * share;
    const drain = end[low];
    if (drain >= 0) out.set(drain, (out.get(drain) ?? 0) + whole - left[s]);
  }
  const sources = new Set(line.sources.map(({ point }) => point));
  return {
    volume,
    ends: drains.map((point) => ({ point, isSource: sources.has(point), volume: out.get(point) ?? 0 })),
    sags: sagsOf(line, ways, crest, left),
    devices: devicesOf(line),
  };
}

/** Segments at each point. */
function waysOf({ points, segments }: Line): number[][] {
  const ways: number[][] = Array.from({ length: points.count }, () => []);
  for (let s = 0; s < segments.count; s += 1) {
    ways[segments.from[s]]!.push(s);
    ways[segments.to[s]]!.push(s);
  }
  return ways;
}

const across = ({ segments }: Line, s: number, p: number) =>
  segments.from[s] === p ? segments.to[s] : segments.from[s];

/** Ends of the line, and outlets of sources, from which every way goes up or level; else the lowest point of each net. */
function lowEnds(line: Line, ways: readonly (readonly number[])[]): number[] {
  const { points } = line;
  const sources = new Set(line.sources.map(({ point }) => point));
  const isLow = (p: number) => ways[p].every((s) => points.height[across(line, s, p)] >= points.height[p]);
  const isEnd = (p: number) => (ways[p].length === 1 || sources.has(p)) && isLow(p);
  return netsOf(line, ways).flatMap((net) => {
    const ends = net.filter(isEnd);
    if (ends.length > 0) return ends;
    return net.reduce((lowest, p) => (points.height[p] < points.height[lowest] ? p : lowest), net[0]);
  });
}

/** Points with pipe at them, gathered where pipe joins them. */
function netsOf(line: Line, ways: readonly (readonly number[])[]): number[][] {
  const seen = new Uint8Array(line.points.count);
  const nets: number[][] = [];
  for (let start = 0; start < line.points.count; start += 1) {
    if (seen[start] === 1 || ways[start].length === 0) continue;
    seen[start] = 1;
    const net = [start];
    for (const p of net)
      for (const s of ways[p]) {
        const other = across(line, s, p);
        if (seen[other] === 1) continue;
        seen[other] = 1;
        net.push(other);
      }
    nets.push(net);
  }
  return nets;
}

/** For each point, the lowest crest on the best way to a drain, and which drain that is. */
function crestsTo(line: Line, ways: readonly (readonly number[])[], drains: readonly number[]) {
  const { height, count } = line.points;
  const crest = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const end = new Int32Array(count).fill(-1);
  const heap = createHeap<{ at: number; crest: number }>((a, b) => a.crest < b.crest);
  for (const at of drains) {
    crest[at] = height[at];
    end[at] = at;
    heap.push({ at, crest: height[at] });
  }
  for (let next = heap.pop(); next !== undefined; next = heap.pop()) {
    if (next.crest > crest[next.at]) continue;
    for (const s of ways[next.at]) {
      const other = across(line, s, next.at);
      const over = Math.max(next.crest, height[other]);
      if (over >= crest[other]) continue;
      crest[other] = over;
      end[other] = end[next.at];
      heap.push({ at: other, crest: over });
    }
  }
  return { crest, end };
}

/** The lower end of a piece of pipe, and the share of the piece that stays full. */
function shareLeft({ points, segments }: Line, crest: Float64Array, s: number): [number, number] {
  const [a, b] = [segments.from[s], segments.to[s]];
  const [low, high] = points.height[a] <= points.height[b] ? [a, b] : [b, a];
  const rise = points.height[high] - points.height[low];
  const stands = crest[low] - points.height[low];
  if (!(stands > 0)) return [low, 0];
  return [low, rise <= 0 ? 1 : Math.min(1, stands / rise)];
}

/** Pieces that keep water, gathered where they touch; each gathering is a sag. */
function sagsOf(
  line: Line,
  ways: readonly (readonly number[])[],
  crest: Float64Array,
  left: Float64Array,
): Sag[] {
  const { points } = line;
  const seen = new Uint8Array(points.count);
  const holds = (p: number) => crest[p] > points.height[p];
  const sags: Sag[] = [];
  for (let start = 0; start < points.count; start += 1) {
    if (seen[start] === 1 || !holds(start)) continue;
    const counted = new Set<number>();
    const stack = [start];
    let lowest = start;
    seen[start] = 1;
    for (let p = stack.pop(); p !== undefined; p = stack.pop()) {
      if (points.height[p] < points.height[lowest]) lowest = p;
      for (const s of ways[p]) {
        counted.add(s);
        const other = across(line, s, p);
        if (seen[other] === 1 || !holds(other)) continue;
        seen[other] = 1;
        stack.push(other);
      }
    }
    let volume = 0;
    for (const s of counted) volume += left[s];
    if (volume > 0)
      sags.push({ ...placeOf(line, ways, lowest), depth: crest[lowest] - points.height[lowest], volume });
  }
  return sags.sort((a, b) => b.volume - a.volume);
}

function placeOf(line: Line, ways: readonly (readonly number[])[], point: number) {
  const run = line.segments.run[ways[point]![0]]!;
  const { points, along } = line.runs[run];
  return { point, run, along: along[points.indexOf(point)] ?? 0 };
}

function devicesOf({ segments }: Line): number[] {
  const devices: number[] = [];
  for (let s = 0; s < segments.count; s += 1)
    if (segments.shut[s] === 1 || segments.kind[s] !== SEGMENT_KIND.pipe) devices.push(s);
  return devices;
}
