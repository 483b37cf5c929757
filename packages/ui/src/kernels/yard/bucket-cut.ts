import { type Cut, type Place, trayWall } from "./cut.js";

/** A bucket with nipples under it, nine tenths full; it hangs, so its water is level with its base. */
export function bucketCut(radius: number): Cut {
  const high = radius * 2.4;
  const level = 0.9 * high;
  const wide = radius * 1.1;
  return {
    walls: [trayWall(radius, wide, high)],
    basins: [trayWall(radius, wide * 0.99, level)],
    plane: level,
    pins: [-0.5, 0.5].map((x): readonly Place[] => [
      [x * radius, 0],
      [x * radius, -0.035],
    ]),
    reach: wide,
    top: high,
  };
}
