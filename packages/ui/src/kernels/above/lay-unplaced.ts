import type { Ground } from "./spot.js";
import { TURNS } from "./turns.js";

export interface UnplacedRequest {
  readonly sources: readonly string[];
  readonly ends: readonly { readonly from: string; readonly to: string }[];
  /** Length of each run [m]. */
  readonly lengths: readonly number[];
  readonly placed: ReadonlyMap<string, Ground>;
  /** Header tanks, each with the joint that fills it. */
  readonly fedFrom: ReadonlyMap<string, string>;
}

/** Room between sources that nothing joins [m]. */
const APART = 3;
/** A header tank stands this far on from the joint that fills it [m]. */
const BESIDE = 1.5;

/**
 * Gives every joint a place: known ones keep theirs, the others are put at the end of their runs, to scale, straight
 * on where they can and turned aside where a joint has several. Where nothing says otherwise a run goes to the right,
 * so that what lies before a known place lies to its left. A header tank stands beside the joint that fills it.
 */
export function layUnplaced({
  sources,
  ends,
  lengths,
  placed,
  fedFrom,
}: UnplacedRequest): Map<string, Ground> {
  const at = new Map(placed);
  const meeting = runsAt(ends);
  const heading = headingsOf(placed, ends);
  const taken = new Map<string, number>();
  const follow = (start: string) => {
    const queue = [start];
    for (let next = 0; next < queue.length; next++) {
      const here = queue[next]!;
      for (const run of meeting.get(here) ?? []) {
        const { from, to } = ends[run]!;
        const other = from === here ? to : from;
        if (at.has(other)) continue;
        const onward = heading.get(here) ?? (from === here ? 0 : Math.PI);
        const way = `${onward} ${here}`;
        const turn = taken.get(way) ?? 0;
        taken.set(way, turn + 1);
        const angle = onward + TURNS[turn % TURNS.length]!;
        const { x, y } = at.get(here)!;
        const length = Math.max(lengths[run]!, 0.1);
        at.set(other, { x: x + length * Math.cos(angle), y: y + length * Math.sin(angle) });
        heading.set(other, angle);
        queue.push(other);
      }
    }
  };
  for (const name of placed.keys()) follow(name);
  for (const name of [...sources, ...ends.map(({ from }) => from)]) {
    if (!at.has(name)) at.set(name, besideFeed(at, fedFrom.get(name)) ?? { x: 0, y: lowest(at) });
    follow(name);
  }
  return at;
}

/** Which way leads on from known places that a run joins: away from each other. */
function headingsOf(placed: UnplacedRequest["placed"], ends: UnplacedRequest["ends"]): Map<string, number> {
  const heading = new Map<string, number>();
  for (const { from, to } of ends) {
    const [start, end] = [placed.get(from), placed.get(to)];
    if (start === undefined || end === undefined || from === to) continue;
    const angle = Math.atan2(end.y - start.y, end.x - start.x);
    if (!heading.has(to)) heading.set(to, angle);
    if (!heading.has(from)) heading.set(from, angle + Math.PI);
  }
  return heading;
}

function runsAt(ends: UnplacedRequest["ends"]): Map<string, number[]> {
  const meeting = new Map<string, number[]>();
  const add = (name: string, run: number) => {
    const list = meeting.get(name);
    if (list === undefined) meeting.set(name, [run]);
    else list.push(run);
  };
  ends.forEach(({ from, to }, run) => {
    add(from, run);
    if (to !== from) add(to, run);
  });
  return meeting;
}

function besideFeed(at: ReadonlyMap<string, Ground>, feeding: string | undefined): Ground | undefined {
  const place = feeding === undefined ? undefined : at.get(feeding);
  return place === undefined ? undefined : { x: place.x + BESIDE, y: place.y };
}

/** Below all that has a place already; 0 when nothing has. */
function lowest(at: ReadonlyMap<string, Ground>): number {
  if (at.size === 0) return 0;
  let low = Number.POSITIVE_INFINITY;
  for (const { y } of at.values()) low = Math.min(low, y);
  return low - APART;
}
