import type { Spot } from "./profile-request.js";

/** Rounding that a spot on the very edge is forgiven [px]. */
const EDGE = 0.01;

/** Whether a spot lies between two edges across the drawing [px]. */
export const isWithin = ({ x }: Spot, [left, right]: readonly [number, number]): boolean =>
  x >= left - EDGE && x <= right + EDGE;

/** The part of a line that lies between two edges; x never falls along it. */
export function cutTo(spots: readonly Spot[], edges: readonly [number, number]): Spot[] {
  return spots.flatMap((spot, i) => {
    const before = spots[i - 1] ?? spot;
    const crossed = edges.filter((edge) => before.x < edge - EDGE && spot.x > edge + EDGE);
    const cuts = crossed.map((x) => ({
      x,
      y: before.y + ((spot.y - before.y) * (x - before.x)) / (spot.x - before.x),
    }));
    return isWithin(spot, edges) ? [...cuts, spot] : cuts;
  });
}
