import { requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/**
 * Push that tips over what stands on a flat base, at the height of its lip.
 *
 *   F h = m g b / 2                                                                                         (1)
 *
 * @param stand.mass    m, of all of it [kg], > 0
 * @param stand.base    b, across what it stands on, along the push [m], > 0
 * @param stand.height  h, at which it is pushed [m], > 0
 * @returns F, level [N]
 * @valid a slow push on level ground that does not let it slide; its weight over the middle of its base
 * @throws RangeError when a figure is not finite and positive
 * @source closed-form, moments about the edge, derived
 * @example pushThatTips({ mass: 1.8, base: 0.35, height: 0.1 })   // 30.89
 */
export function pushThatTips(stand: {
  readonly mass: number;
  readonly base: number;
  readonly height: number;
}): number {
  const { mass, base, height } = stand;
  requirePositive("pushThatTips", { "stand.mass": mass, "stand.base": base, "stand.height": height });
  return (mass * GRAVITY * base) / (2 * height);
}
