import { requirePositive } from "../numerics/require-number.js";
import { volumeExpelledByWarming } from "./vent.js";

/**
 * The most water that warming can push out of a vacuum fount: it happens when its air, grown, just fills it.
 *
 *   k Vₐ = V − Vₐ, so Vₐ = V / (1 + k), ΔV = V k / (1 + k),   k V: volumeExpelledByWarming of V               (1)
 *
 * With more water in it there is less air to grow; with less, all of it is out.
 *
 * @param holds         V, reservoir [m³], > 0
 * @param warming.from  first temperature of air and water [°C], 0 to 50
 * @param warming.to    last temperature [°C], 0 to 50
 * @returns most ΔV [m³], 0 where it cools, and the air Vₐ it happens at [m³]
 * @valid air at about outside pressure: half a metre of water held up changes k by a twentieth
 * @throws RangeError when holds is not finite and positive, or a temperature outside 0 to 50 °C
 * @source closed-form, gas laws with moist air, derived
 * @example mostPushedOut(0.0189, { from: 15, to: 35 }).most   // 1.9227e-3
 */
export function mostPushedOut(
  holds: number,
  warming: { readonly from: number; readonly to: number },
): { readonly most: number; readonly air: number } {
  requirePositive("mostPushedOut", { holds });
  const grown = volumeExpelledByWarming({ airVolume: holds, fromC: warming.from, toC: warming.to });
  const air = holds ** 2 / (holds + Math.max(0, grown));
  return { most: holds - air, air };
}
