import type { Line } from "../model/line.js";

/** Drinkers not this far above the ground lie on it: the plan then does not tell how high they hang [m]. */
const ON_THE_GROUND = 0.02;

/** Mean height of some drinkers' valves above the ground [m]; undefined where the plan does not tell. */
export function heightAboveGround({ drinkers, points }: Line, which: readonly number[]): number | undefined {
  if (which.length === 0) return undefined;
  const sum = which.reduce((total, d) => total + drinkers.height[d] - points.ground[drinkers.point[d]], 0);
  const mean = sum / which.length;
  return mean > ON_THE_GROUND ? mean : undefined;
}
