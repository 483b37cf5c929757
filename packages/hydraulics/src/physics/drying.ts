import { requireBetween, requirePositive } from "../numerics/require-number.js";
import { STANDARD_ATMOSPHERE } from "./constants.js";
import { vapourPressureOfWater } from "./water.js";

/** Heat of drying at 30 °C [J/kg], and of it and the air what turns a film of heat into one of vapour. */
const HEAT_OF_DRYING = 2.43e6;
/** c of air [J/(kg K)]; mass of vapour over that of air. */
const HEAT_OF_AIR = 1005;
const VAPOUR_OVER_AIR = 0.622;
/** Density of water, near enough [kg/m³]. */
const DENSITY = 1000;

/**
 * The part of a film that is radiation [W/(m² K)]; it carries no vapour.
 *
 * @source cengel-convection, radiation at some 25 degC, derived
 */
const BY_RADIATION = 4.6;

/**
 * Heat that open water loses by drying.
 *
 *   q = (h − h_r) (p(t) − p(t_d))/γ,  γ = c P/(ε λ)                          (1)
 *
 * The air that takes heat from a surface takes vapour from it in proportion (Lewis).
 *
 * @param air.film  h, see filmOfWind, radiation counted [W/(m² K)], > 4.6
 * @param air.dew   t_d, dew point of the air [°C], 0 to 50
 * @param water     t, of the surface [°C], 0 to 50
 * @returns q [W/m²]; 0 where the air is moister than the surface
 * @valid at about sea level; fresh water
 * @throws RangeError when film is not above its radiation, or a temperature outside 0 to 50 °C
 * @source closed-form, Lewis's relation of heat and vapour, derived; vapour pressure from iapws-sr1-86
 * @example heatOfDrying({ film: 10, dew: 18 }, 30)   // 174.91
 */
export function heatOfDrying(air: { readonly film: number; readonly dew: number }, water: number): number {
  const { film, dew } = air;
  requirePositive("heatOfDrying", { "air.film - 4.6": film - BY_RADIATION });
  requireBetween("heatOfDrying", "air.dew", dew, { least: 0, greatest: 50 });
  requireBetween("heatOfDrying", "water", water, { least: 0, greatest: 50 });
  const gamma = (HEAT_OF_AIR * STANDARD_ATMOSPHERE) / (VAPOUR_OVER_AIR * HEAT_OF_DRYING);
  const vapour = vapourPressureOfWater(water) - vapourPressureOfWater(dew);
  return (Math.max(0, vapour) * (film - BY_RADIATION)) / gamma;
}

/**
 * Depth of water that such drying takes.
 *
 *   E = q/(ρ λ)                                                             (1)
 *
 * @param heat  q, see heatOfDrying [W/m²], ≥ 0
 * @returns E [m/s]
 * @valid fresh water at 10 to 45 °C
 * @source closed-form, heat over heat of drying, derived
 * @example depthDried(100)   // 4.115e-8
 */
export function depthDried(heat: number): number {
  return heat / (DENSITY * HEAT_OF_DRYING);
}
