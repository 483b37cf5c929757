import { lengthOf } from "./lay-above.js";
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
 * One arrow on every straight piece with room for it beside the marks of its drinkers, where water flows.
 *
 * @param spots   the run as drawn, from start to end
 * @param flowAt  flow at a share of the way, positive from start to end
 * @param marks   what an arrow may not lie on
 */
export function flowArrows(
  spots: readonly Pixel[],
  flowAt: (share: number) => number,
  marks: readonly Pixel[],
): readonly FlowArrow[] {
  const whole = lengthOf(spots);
  let behind = 0;
  return spots.slice(1).flatMap((to, i) => {
    const from = spots[i]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const long = Math.hypot(dx, dy);
    const start = behind;
    behind += long;
    if (long < LEAST_PIECE) return [];
    const tried = SHARES.map((share) => ({
      at: { x: from.x + dx * share, y: from.y + dy * share },
      flow: flowAt((start + share * long) / whole),
    }));
    const found = tried.find(({ at, flow }) => Math.abs(flow) > 0 && isClear(at, marks));
    if (found === undefined) return [];
    return [{ at: found.at, degrees: (Math.atan2(dy, dx) * 180) / Math.PI + (found.flow < 0 ? 180 : 0) }];
  });
}

const isClear = (at: Pixel, marks: readonly Pixel[]): boolean =>
  marks.every(({ x, y }) => Math.hypot(x - at.x, y - at.y) > CLEAR);
