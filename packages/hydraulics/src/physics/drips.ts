import { requireNotNegative } from "../numerics/require-number.js";

/**
 * Volumes of a drop [m³]: 20 drops a millilitre in a laboratory, which is nearest to what hangs from a pin; 4,000 a
 * litre as water from a tap is commonly reckoned.
 *
 * @source hydrology-drops, laboratory drop of 0.05 mL, seen
 * @source drips-page, 4,000 drips a litre, seen
 */
export const DROP_VOLUME = { small: 0.05e-6, large: 0.25e-6 } as const;

/**
 * What is lost by dripping.
 *
 *   q = n V                                                                 (1)
 *
 * @param drip.rate    n, drops in a second [1/s], >= 0
 * @param drip.volume  V, of a drop [m³], >= 0 (DROP_VOLUME)
 * @returns q [m³/s]
 * @valid drops that fall one by one, slower than about five a second
 * @throws RangeError when rate or volume is negative or not finite
 * @source hydrology-drops, drops counted, seen
 * @example flowOfDrips({ rate: 1, volume: 0.25e-6 })   // 2.5e-7
 */
export function flowOfDrips(drip: { readonly rate: number; readonly volume: number }): number {
  requireNotNegative("flowOfDrips", { "drip.rate": drip.rate, "drip.volume": drip.volume });
  return drip.rate * drip.volume;
}
