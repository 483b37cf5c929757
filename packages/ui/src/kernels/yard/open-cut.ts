import { type Cut, type Place, trayWall } from "./cut.js";

/** An open pan or trough: what it holds on the slope once the lower lip has run over. */
export function openCut(
  { floor, rim, depth }: { readonly floor: number; readonly rim: number; readonly depth: number },
  slope: number,
): Cut {
  const plane = depth - rim * slope;
  const wall = (z: number) => floor + ((rim - floor) * z) / depth;
  // Where the surface meets the upper wall, or the floor once that is dry.
  const met = (depth - (rim + floor) * slope) / (1 + ((rim - floor) / depth) * slope);
  const upper: readonly Place[] =
    met >= 0
      ? [
          [-floor, 0],
          [-wall(met), met],
        ]
      : [[slope > 0 ? -plane / slope : -floor, 0]];
  return {
    walls: [trayWall(floor, rim, depth)],
    basins: [[...[...upper].reverse(), [floor, 0], [rim, depth]]],
    plane,
    reach: rim,
    top: depth,
  };
}
