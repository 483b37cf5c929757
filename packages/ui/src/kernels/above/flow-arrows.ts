import type { Pixel } from "./viewport.js";

/** A small arrow on a run: where, and which way it points [degrees, clockwise from the right]. */
export interface FlowArrow {
  readonly at: Pixel;
  readonly degrees: number;
}

/** Pieces shorter than this have no room for one, and marks nearer than that would cover it [px]. */
const LEAST_PIECE = 36;
const CLEAR = 13;
/** Where along a piece one is tried; not in the middle, where the words are. */
const SHARES = [0.3, 0.7, 0.15, 0.85, 0.5, 0.08, 0.92];

/**
 * One arrow on every straight piece with room for it beside the marks of its drinkers. None where nothing flows.
 */
export function flowArrows(
  spots: readonly Pixel[],
  flow: number,
  marks: readonly Pixel[],
): readonly FlowArrow[] {
  if (!(Math.abs(flow) > 0)) return [];
  return spots.slice(1).flatMap((to, i) => {
    const from = spots[i]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    if (Math.hypot(dx, dy) < LEAST_PIECE) return [];
    const degrees = (Math.atan2(dy, dx) * 180) / Math.PI + (flow < 0 ? 180 : 0);
    const tried = SHARES.map((share) => ({ x: from.x + dx * share, y: from.y + dy * share }));
    const at = tried.find((each) => marks.every(({ x, y }) => Math.hypot(x - each.x, y - each.y) > CLEAR));
    return at === undefined ? [] : [{ at, degrees }];
  });
}
