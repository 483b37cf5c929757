import { lengthOf } from "./lay-above.js";
import type { Ground } from "./spot.js";

/** A place on a way, nearest to some other place. */
export interface OnWay {
  readonly place: Ground;
  /** How far off the way the other place is [m]. */
  readonly distance: number;
  /** Share of the way from its start, 0 to 1. */
  readonly share: number;
  /** The piece it lies on: from spot `piece` to the next. */
  readonly piece: number;
}

export const distanceOf = (one: Ground, other: Ground): number =>
  Math.hypot(other.x - one.x, other.y - one.y);

/** The place on a way from spot to spot that is nearest to `at`. */
export function nearestOnWay(spots: readonly Ground[], at: Ground): OnWay {
  const whole = lengthOf(spots);
  let best: OnWay = { place: spots[0]!, distance: distanceOf(spots[0]!, at), share: 0, piece: 0 };
  let behind = 0;
  for (let piece = 0; piece + 1 < spots.length; piece++) {
    const [from, to] = [spots[piece]!, spots[piece + 1]!];
    const length = distanceOf(from, to);
    const t = length === 0 ? 0 : shareAcross(from, to, at);
    const place = { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
    const distance = distanceOf(place, at);
    if (distance < best.distance)
      best = { place, distance, share: whole === 0 ? 0 : (behind + t * length) / whole, piece };
    behind += length;
  }
  return best;
}

/** Where the foot of the perpendicular falls between two places, held between them: 0 to 1. */
function shareAcross(from: Ground, to: Ground, at: Ground): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const t = ((at.x - from.x) * dx + (at.y - from.y) * dy) / (dx * dx + dy * dy);
  return Math.min(1, Math.max(0, t));
}
