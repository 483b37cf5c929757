import { snap } from "./snap.js";
import type { Ground } from "./spot.js";
import { distanceOf, nearestOnWay } from "./ways.js";

export interface StrokeRequest {
  /** The line as the hand drew it, from start to end. */
  readonly stroke: readonly Ground[];
  /** Wobble up to this is not meant [m]. */
  readonly tolerance: number;
  /** Pieces are whole numbers of these long where they may be [m]. */
  readonly step: number;
  /** Whether the last place is where it is on purpose: on a joint or a run. */
  readonly isEndFixed: boolean;
}

/**
 * A line drawn with a finger as a few straight pieces: Douglas and Peucker's thinning, then every piece in a sensible
 * direction and length. The start stays; so does a fixed end.
 *
 * @returns start, corners, end; a stroke that goes nowhere is its start alone
 */
export function straightenStroke(request: StrokeRequest): readonly Ground[] {
  const { stroke, tolerance } = request;
  const thinned = withoutStubs(thin(stroke, tolerance), 2 * tolerance);
  if (thinned.length < 2) return thinned;
  return withoutStraightOnes(alongDirections(thinned, request), tolerance / 2);
}

/** Keeps the places that a straight line between the kept ones would miss by more than the tolerance. */
function thin(stroke: readonly Ground[], tolerance: number): readonly Ground[] {
  if (stroke.length < 3) return stroke;
  const ends = [stroke[0]!, stroke[stroke.length - 1]!];
  let [farthest, most] = [0, tolerance];
  for (let i = 1; i < stroke.length - 1; i++) {
    const { distance } = nearestOnWay(ends, stroke[i]!);
    if (distance > most) [farthest, most] = [i, distance];
  }
  if (farthest === 0) return ends;
  const before = thin(stroke.slice(0, farthest + 1), tolerance);
  return [...before.slice(0, -1), ...thin(stroke.slice(farthest), tolerance)];
}

/** Drops places hardly away from the one before, but keeps both ends when the whole goes anywhere. */
function withoutStubs(spots: readonly Ground[], least: number): readonly Ground[] {
  const [start, end] = [spots[0]!, spots[spots.length - 1]!];
  const kept = [start];
  for (const spot of spots.slice(1, -1))
    if (distanceOf(kept[kept.length - 1]!, spot) >= least && distanceOf(spot, end) >= least) kept.push(spot);
  if (kept.length > 1 || distanceOf(start, end) > 0) kept.push(end);
  return kept;
}

/** Snaps piece after piece; what follows a snapped corner moves with it, so that an upright piece stays upright. */
function alongDirections(spots: readonly Ground[], { step, isEndFixed }: StrokeRequest): readonly Ground[] {
  const straight = [spots[0]!];
  let shift = { x: 0, y: 0 };
  for (const [i, spot] of spots.slice(1).entries()) {
    const isFixed = isEndFixed && i === spots.length - 2;
    const at = { x: spot.x + shift.x, y: spot.y + shift.y };
    const anchor = straight[straight.length - 1]!;
    const place = isFixed ? spot : snap({ at, anchor, step, reach: 0 }).place;
    shift = { x: place.x - spot.x, y: place.y - spot.y };
    if (distanceOf(anchor, place) > 1e-9) straight.push(place);
  }
  return isEndFixed ? meetingTheEnd(straight, spots) : straight;
}

/** Slides the last corner along its own piece until the piece to a fixed end is straight, where it was drawn so. */
function meetingTheEnd(straight: readonly Ground[], spots: readonly Ground[]): readonly Ground[] {
  const [before, corner, end] = straight.slice(-3);
  if (end === undefined || before === undefined || corner === undefined) return straight;
  const drawn = spots[spots.length - 2]!;
  const { to, place } = snap({ at: end, anchor: drawn, step: 1e-6, reach: 0 });
  const met = crossing(before, corner, end, { x: place.x - drawn.x, y: place.y - drawn.y });
  if (to.kind !== "direction" || met === undefined) return straight;
  return [...straight.slice(0, -2), met, end];
}

/** Where the line on from `from` through `through` crosses the line through `end` in a direction; ahead of `from` only. */
function crossing(from: Ground, through: Ground, end: Ground, direction: Ground): Ground | undefined {
  const along = { x: through.x - from.x, y: through.y - from.y };
  const across = along.x * direction.y - along.y * direction.x;
  const size = Math.hypot(along.x, along.y) * Math.hypot(direction.x, direction.y);
  // Nearly parallel lines cross far off, if at all.
  if (Math.abs(across) < 0.3 * size) return undefined;
  const t = ((end.x - from.x) * direction.y - (end.y - from.y) * direction.x) / across;
  return t > 0.05 ? { x: from.x + along.x * t, y: from.y + along.y * t } : undefined;
}

/** Drops corners that the pieces beside them pass straight through. */
function withoutStraightOnes(spots: readonly Ground[], tolerance: number): readonly Ground[] {
  const kept: Ground[] = [];
  spots.forEach((spot, i) => {
    const [before, after] = [kept[kept.length - 1], spots[i + 1]];
    const isStraight =
      before !== undefined &&
      after !== undefined &&
      nearestOnWay([before, after], spot).distance <= tolerance;
    if (!isStraight) kept.push(spot);
  });
  return kept;
}
