import type { AboveLayout } from "./above/lay-above.js";
import type { Ground } from "./above/spot.js";
import { TURNS } from "./above/turns.js";

/** Two ways closer than this would be drawn upon each other [radians]. */
const CLOSE = Math.PI / 8;

/**
 * Where a new run from a joint would end: straight on from the run that comes there, or turned aside where another
 * already goes that way. To the right from a joint that no run reaches.
 *
 * @param length  of the new run [m]
 */
export function spotStraightOn(layout: AboveLayout, joint: string, length: number): Ground {
  const here = layout.jointByName.get(joint) ?? { x: 0, y: 0 };
  const { heading, taken } = waysAt(layout, joint);
  const isFree = (angle: number) => taken.every((other) => Math.cos(angle - other) < Math.cos(CLOSE));
  const turn = TURNS.find((each) => isFree(heading + each)) ?? 0;
  const angle = heading + turn;
  return { x: here.x + length * Math.cos(angle), y: here.y + length * Math.sin(angle) };
}

/** A place for a new source: at the left, three metres below all that is drawn. */
export function freeSpot(layout: AboveLayout): Ground {
  const spots = [...layout.joints, ...layout.runs.flatMap((run) => run.spots)];
  if (spots.length === 0) return { x: 0, y: 0 };
  return { x: Math.min(...spots.map(({ x }) => x)), y: Math.min(...spots.map(({ y }) => y)) - 3 };
}

function waysAt(layout: AboveLayout, joint: string): { heading: number; taken: number[] } {
  let heading: number | undefined;
  const taken: number[] = [];
  for (const { from, to, spots } of layout.runs) {
    if (spots.length < 2) continue;
    const before = spots.at(-2)!;
    const end = spots.at(-1)!;
    if (to === joint) {
      heading ??= Math.atan2(end.y - before.y, end.x - before.x);
      taken.push(Math.atan2(before.y - end.y, before.x - end.x));
    }
    if (from === joint) taken.push(Math.atan2(spots[1]!.y - spots[0]!.y, spots[1]!.x - spots[0]!.x));
  }
  return { heading: heading ?? 0, taken };
}
