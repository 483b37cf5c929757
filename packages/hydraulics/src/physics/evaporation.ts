import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { valueBetween } from "../numerics/value-between.js";

const MM_A_DAY = 1e-3 / 86_400;

/**
 * Open water's loss by the day's highest air temperature [°C, mm/day]: cool, mild, hot and dry.
 *
 * @source common-practice, ranges of 2, 4 to 6, and 8 to 12 mm a day, from memory
 */
export const EVAPORATION_BY_AIR = { highC: [10, 24, 36], mmPerDay: [2, 5, 10] } as const;

/**
 * What small pans lose over a large one in the sun, as a factor: their walls warm; least and greatest to expect.
 *
 * @source common-practice, 1.1 to 1.4 in sun, derived
 */
export const SMALL_PAN_IN_SUN = { factor: 1.25, least: 1.1, most: 1.4 } as const;

/**
 * Evaporation asked of an open surface by a reading of an evaporation pan.
 *
 *   E = Kₚ Eₚ                                                                                               (1)
 *
 * @param reading.pan          Eₚ, fall of the pan's water [m/s], >= 0
 * @param reading.coefficient  Kₚ, from 0.35 to 0.85 by the pan's surroundings, > 0
 * @returns E [m/s]
 * @valid means over days
 * @throws RangeError when pan is negative or the coefficient not positive
 * @source fao-56, chapter 4, from memory
 * @example evaporationFromPan({ pan: 9.12e-8, coefficient: 0.85 })   // 7.75e-8
 */
export function evaporationFromPan(reading: { readonly pan: number; readonly coefficient: number }): number {
  requireNotNegative("evaporationFromPan", { "reading.pan": reading.pan });
  requirePositive("evaporationFromPan", { "reading.coefficient": reading.coefficient });
  return reading.pan * reading.coefficient;
}

/**
 * What open water loses to the air on a day of such a high, in shade or sun. A rough figure: wind and dryness of the
 * air, which nobody at a pen measures, count as much.
 *
 * @param high      highest air temperature of the day [°C]
 * @param isShaded  whether the sun is kept off it
 * @returns E [m/s]
 * @valid small open pans and rings; twice or half as much happens
 * @source common-practice, ranges of 2, 4 to 6, and 8 to 12 mm a day, from memory
 * @example evaporationInAir(24, true)   // 5.787e-8
 */
export function evaporationInAir(high: number, isShaded: boolean): number {
  const rate = valueBetween(EVAPORATION_BY_AIR.highC, EVAPORATION_BY_AIR.mmPerDay, high);
  return rate * MM_A_DAY * (isShaded ? 1 : SMALL_PAN_IN_SUN.factor);
}

/**
 * Volume an open surface loses.
 *
 *   V = E A t                                                                                               (1)
 *
 * @param surface.rate  E [m/s], >= 0
 * @param surface.area  A [m²], >= 0
 * @param surface.time  t [s], >= 0
 * @returns V [m³]
 * @throws RangeError when one is negative
 * @valid any
 * @source closed-form, volume from a rate, derived
 * @example evaporated({ rate: 6.944e-8, area: 0.12566, time: 86400 })   // 7.54e-4
 */
export function evaporated(surface: {
  readonly rate: number;
  readonly area: number;
  readonly time: number;
}): number {
  const { rate, area, time } = surface;
  requireNotNegative("evaporated", { "surface.rate": rate, "surface.area": area, "surface.time": time });
  return rate * area * time;
}
