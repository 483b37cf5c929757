import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { ICE_POINT_KELVIN, STANDARD_ATMOSPHERE } from "./constants.js";
import { vapourPressureOfWater } from "./water.js";

/** Air shut in over water that warms [°C], and the pressure about it [Pa]. */
export interface Warming {
  readonly from: number;
  readonly to: number;
  /** Of the air outside; the standard atmosphere if left out. */
  readonly pressure?: number;
}

/**
 * How much of its volume air shut in over water gains as both warm, water free to leave below.
 *
 *   k = (T₂/T₁) (p − pᵥ₁)/(p − pᵥ₂) − 1                                                                      (1)
 *
 * Dry air expands with its absolute temperature; the vapour over warmer water takes more of the pressure.
 *
 * @param warming  from, to [°C], 0 to 50; pressure p [Pa]
 * @returns k; below 0 where it cools, and air is drawn in
 * @valid air at about outside pressure: a column of water under it of less than half a metre changes k by a twentieth
 * @throws RangeError when a temperature is outside 0 to 50 °C or the pressure not above that of the vapour
 * @source closed-form, ideal gas over saturated vapour, derived
 * @example shareGainedByAir({ from: 15, to: 35 })   // 0.1132
 */
export function shareGainedByAir({ from, to, pressure = STANDARD_ATMOSPHERE }: Warming): number {
  const [before, after] = [vapourPressureOfWater(from), vapourPressureOfWater(to)];
  requirePositive("shareGainedByAir", { "pressure less vapour": pressure - Math.max(before, after) });
  const warmer = (to + ICE_POINT_KELVIN) / (from + ICE_POINT_KELVIN);
  return (warmer * (pressure - before)) / (pressure - after) - 1;
}

/**
 * Water pushed out of a vacuum fount as the air in it warms: at most what is left in it.
 *
 *   ΔV = min(k Vₐ, V − Vₐ),  k = shareGainedByAir                                                            (1)
 *
 * @param fount.holds  V, reservoir [m³], > 0
 * @param fount.air    Vₐ of it that is air [m³], 0 to V
 * @param warming      as shareGainedByAir
 * @returns ΔV [m³], of which the ring takes what it has room for before any runs over the lip; 0 where it cools
 * @valid as shareGainedByAir
 * @throws RangeError as shareGainedByAir, or when a volume is out of its range
 * @source closed-form, ideal gas over saturated vapour, derived
 * @example waterPushedOut({ holds: 0.0189, air: 0.0095 }, { from: 15, to: 35 })   // 1.075e-3
 */
export function waterPushedOut(
  fount: { readonly holds: number; readonly air: number },
  warming: Warming,
): number {
  requirePositive("waterPushedOut", { "fount.holds": fount.holds });
  requireNotNegative("waterPushedOut", {
    "fount.air": fount.air,
    "fount.holds less air": fount.holds - fount.air,
  });
  return Math.max(0, Math.min(shareGainedByAir(warming) * fount.air, fount.holds - fount.air));
}

/**
 * The most water warming can push out of a fount, and how full it is then.
 *
 *   k Vₐ = V − Vₐ, so Vₐ = V / (1 + k), ΔV = V k / (1 + k)                                                   (1)
 *
 * @param holds    V, reservoir [m³], > 0
 * @param warming  as shareGainedByAir
 * @returns most ΔV [m³] and the air it happens at [m³]
 * @valid as shareGainedByAir
 * @throws RangeError as shareGainedByAir, or when holds is not finite and positive
 * @source closed-form, ideal gas over saturated vapour, derived
 * @example mostPushedOut(0.0189, { from: 15, to: 35 }).most   // 1.922e-3
 */
export function mostPushedOut(
  holds: number,
  warming: Warming,
): { readonly most: number; readonly air: number } {
  requirePositive("mostPushedOut", { holds });
  const gained = Math.max(0, shareGainedByAir(warming));
  const air = holds / (1 + gained);
  return { most: holds - air, air };
}
