import type { Spot } from "./profile-request.js";

/** Rounding that a spot on the very edge is forgiven [px]. */
const EDGE = 0.01;

/** Whether a spot lies between two edges across the drawing [px]. */
export const isWithin = ({ x }: Spot, [left, right]: readonly [number, number]): boolean =>
  x >= left - EDGE && x <= right + EDGE;

/** The part of a line that lies between two edges; x never falls along it. */
export function cutTo(spots: readonly Spot[], edges: readonly [number, number]): Spot[] {
  const kept: Spot[] = [];
  let before = spots[0];
  for (const spot of spots) {
    for (const edge of edges) {
      const isCrossed = before!.x < edge - EDGE && spot.x > edge + EDGE;
      if (isCrossed) kept.push(spotBetween(before!, spot, edge));
    }
    if (isWithin(spot, edges)) kept.push(spot);
    before = spot;
  }
  return kept;
}

const spotBetween = (one: Spot, other: Spot, x: number): Spot => ({
  x,
  y: one.y + ((other.y - one.y) * (x - one.x)) / (other.x - one.x),
});
