import {
  requireBetween,
  requireFinite,
  requireNotNegative,
  requirePositive,
} from "../numerics/require-number.js";
import { GRAVITY, ICE_POINT_KELVIN, STANDARD_ATMOSPHERE } from "./constants.js";
import { DISCHARGE_COEFFICIENT } from "./orifice.js";
import { vapourPressureOfWater, type Water } from "./water.js";

/** Dry air at 20 °C and one atmosphere [kg/m³], from memory. */
export const AIR_DENSITY = 1.204;

/** A vent may cost this share of the head over the lowest drinker; common practice, no source. */
export const VENT_SHARE = 0.01;

/**
 * Head that an open vessel puts on its line: its surface, at the air's pressure.
 *
 *   H = z + h                                                               (1)
 *
 * @param vessel.bottom  z, lowest inside point above the datum [m]
 * @param vessel.level   h, water above that [m], >= 0
 * @returns H, above the datum [m]
 * @valid a vent that passes the draw (ventDiameterFor)
 * @throws RangeError when bottom is not finite or level negative
 * @source closed-form, hydrostatics
 * @example surfaceHeadOpen({ bottom: 0.6, level: 0.8 })   // 1.4
 */
export function surfaceHeadOpen(vessel: { readonly bottom: number; readonly level: number }): number {
  requireFinite("surfaceHeadOpen", { "vessel.bottom": vessel.bottom });
  requireNotNegative("surfaceHeadOpen", { "vessel.level": vessel.level });
  return vessel.bottom + vessel.level;
}

/**
 * Head that an airtight vessel with an air tube puts on its line: the pressure at the tube's foot is the air's, whatever
 * stands above it, until the surface passes the foot.
 *
 *   H = z + min(h, t)                                                       (1)
 *
 * @param vessel.bottom    z, lowest inside point above the datum [m]
 * @param vessel.level     h, water above that [m], >= 0
 * @param vessel.tubeFoot  t, lower end of the tube above the lowest inside point [m], >= 0
 * @returns H, above the datum [m]
 * @valid no leak of air above the foot; bubbles make it pulse by some millimetres (2σ/r: 5 mm for a 3 mm radius)
 * @throws RangeError when bottom is not finite, or level or tubeFoot negative
 * @source mccarthy-1934, p. 100, seen as quoted
 * @example surfaceHeadAirTube({ bottom: 0.6, level: 0.8, tubeFoot: 0.1 })   // 0.7
 */
export function surfaceHeadAirTube(vessel: {
  readonly bottom: number;
  readonly level: number;
  readonly tubeFoot: number;
}): number {
  requireFinite("surfaceHeadAirTube", { "vessel.bottom": vessel.bottom });
  requireNotNegative("surfaceHeadAirTube", {
    "vessel.level": vessel.level,
    "vessel.tubeFoot": vessel.tubeFoot,
  });
  return vessel.bottom + Math.min(vessel.level, vessel.tubeFoot);
}

/**
 * Head that a sealed vessel puts on its line after some water has left: its air has expanded at one temperature.
 *
 *   H = z + h + (p₀/ρg) [V/(V + ΔV) − 1]                                    (1)
 *
 * @param vessel.bottom      z, lowest inside point above the datum [m]
 * @param vessel.level       h, water above that now [m], >= 0
 * @param vessel.airVolume   V, air when it was sealed, at the atmosphere's pressure [m³], > 0
 * @param vessel.withdrawn   ΔV, water drawn since [m³], >= 0
 * @param vessel.density     ρ, of the water [kg/m³], > 0
 * @param vessel.atmosphere  p₀; STANDARD_ATMOSPHERE unless given [Pa], > 0
 * @returns H, above the datum; below the line's lowest drinker the line has stalled [m]
 * @valid slow draw (isothermal); the vapour's part in the pressure, 2 % at 20 °C, is left out
 * @throws RangeError when a member is outside its bounds
 * @source closed-form, Boyle's law and hydrostatics
 * @example surfaceHeadSealed({ bottom: 0, level: 1, airVolume: 0.01, withdrawn: 0.001, density: 998.2 })   // 0.059
 */
export function surfaceHeadSealed(vessel: {
  readonly bottom: number;
  readonly level: number;
  readonly airVolume: number;
  readonly withdrawn: number;
  readonly density: number;
  readonly atmosphere?: number;
}): number {
  const { bottom, level, airVolume, withdrawn, density, atmosphere = STANDARD_ATMOSPHERE } = vessel;
  requireFinite("surfaceHeadSealed", { "vessel.bottom": bottom });
  requireNotNegative("surfaceHeadSealed", { "vessel.level": level, "vessel.withdrawn": withdrawn });
  requirePositive("surfaceHeadSealed", {
    "vessel.airVolume": airVolume,
    "vessel.density": density,
    "vessel.atmosphere": atmosphere,
  });
  return bottom + level - (atmosphere / (density * GRAVITY)) * (withdrawn / (airVolume + withdrawn));
}

/**
 * Water a sealed vessel gives before its line stalls.
 *
 *   V_out = V ρ g h / (p₀ − ρ g h)                                          (1)
 *
 * @param vessel.airVolume   V, air when sealed, at the atmosphere's pressure [m³], >= 0
 * @param vessel.head        h, of the surface over the highest open drinker, taken as constant [m], >= 0
 * @param vessel.density     ρ, of the water [kg/m³], > 0
 * @param vessel.atmosphere  p₀; STANDARD_ATMOSPHERE unless given [Pa], > 0
 * @returns V_out [m³]
 * @valid slow draw (isothermal), and a fall of level during it that is small beside h
 * @throws RangeError when a member is outside its bounds or h is not below p₀/(ρ g), about 10 m
 * @source closed-form, Boyle's law and hydrostatics
 * @example volumeBeforeStall({ airVolume: 0.01, head: 1, density: 998.2 })   // 0.0010694
 */
export function volumeBeforeStall(vessel: {
  readonly airVolume: number;
  readonly head: number;
  readonly density: number;
  readonly atmosphere?: number;
}): number {
  const { airVolume, head, density, atmosphere = STANDARD_ATMOSPHERE } = vessel;
  requireNotNegative("volumeBeforeStall", { "vessel.airVolume": airVolume, "vessel.head": head });
  requirePositive("volumeBeforeStall", { "vessel.density": density, "vessel.atmosphere": atmosphere });
  const suction = density * GRAVITY * head;
  if (suction >= atmosphere) {
    const most = atmosphere / (density * GRAVITY);
    throw new RangeError(`volumeBeforeStall: vessel.head is ${head}; it must be below p0/(rho g), ${most}`);
  }
  return (airVolume * suction) / (atmosphere - suction);
}

/**
 * Diameter of a round vent that lets in air as fast as water leaves.
 *
 *   d = √(4 a/π),   a = Q / [C_d √(2 ρ g h / ρ_a)]                          (1)
 *
 * @param vent.flow                  Q, greatest draw of water [m³/s], >= 0
 * @param vent.headAllowed           h, head that may be lost at the vent [m], > 0; 1 % of the head is a good rule
 * @param vent.density               ρ, of the water; 998.2 unless given [kg/m³], > 0
 * @param vent.airDensity            ρ_a; 1.204 unless given [kg/m³], > 0
 * @param vent.dischargeCoefficient  C_d; a sharp edge unless given [-], > 0
 * @returns d [m]; a screen or a long tube needs more
 * @valid suction far below an atmosphere
 * @throws RangeError when a member is outside its bounds
 * @source closed-form, Bernoulli's law for air through an opening
 * @example ventDiameterFor({ flow: 1e-4, headAllowed: 0.01 })   // 0.0040458
 */
export function ventDiameterFor(vent: {
  readonly flow: number;
  readonly headAllowed: number;
  readonly density?: number;
  readonly airDensity?: number;
  readonly dischargeCoefficient?: number;
}): number {
  const { flow, headAllowed, density = 998.2, airDensity = AIR_DENSITY } = vent;
  const { dischargeCoefficient = DISCHARGE_COEFFICIENT.sharp } = vent;
  requireNotNegative("ventDiameterFor", { "vent.flow": flow });
  requirePositive("ventDiameterFor", {
    "vent.headAllowed": headAllowed,
    "vent.density": density,
    "vent.airDensity": airDensity,
    "vent.dischargeCoefficient": dischargeCoefficient,
  });
  const airSpeed = Math.sqrt((2 * density * GRAVITY * headAllowed) / airDensity);
  return Math.sqrt((4 * flow) / (Math.PI * dischargeCoefficient * airSpeed));
}

/**
 * Water pushed out of a vacuum-fed vessel as its trapped air warms.
 *
 *   V_out = V [(T₂/T₁) (p − p_v1)/(p − p_v2) − 1]                           (1)
 *
 * @param air.airVolume   V, moist air trapped at first [m³], >= 0
 * @param air.fromC       first temperature [°C], 0 to 50
 * @param air.toC         last temperature [°C], 0 to 50
 * @param air.atmosphere  p, total pressure of that air; STANDARD_ATMOSPHERE unless given [Pa]
 * @returns V_out [m³]; negative when it cools and draws water or air in
 * @valid air over water for long enough to be moist; constant pressure
 * @throws RangeError when airVolume is negative, a temperature outside 0 to 50 °C, or the air thinner than vapour
 * @source closed-form, gas laws with moist air; vapour pressure from iapws-sr1-86
 * @example volumeExpelledByWarming({ airVolume: 0.01, fromC: 20, toC: 30 })   // 5.443e-4
 */
export function volumeExpelledByWarming(air: {
  readonly airVolume: number;
  readonly fromC: number;
  readonly toC: number;
  readonly atmosphere?: number;
}): number {
  const { airVolume, fromC, toC, atmosphere = STANDARD_ATMOSPHERE } = air;
  requireNotNegative("volumeExpelledByWarming", { "air.airVolume": airVolume });
  const [vapourBefore, vapourAfter] = [vapourPressureOfWater(fromC), vapourPressureOfWater(toC)];
  requireBetween("volumeExpelledByWarming", "air.atmosphere", atmosphere, {
    least: 2 * Math.max(vapourBefore, vapourAfter),
    greatest: 1e7,
  });
  const warming = (toC + ICE_POINT_KELVIN) / (fromC + ICE_POINT_KELVIN);
  return airVolume * ((warming * (atmosphere - vapourBefore)) / (atmosphere - vapourAfter) - 1);
}

/**
 * Greatest height of a siphon's crest above the surface it draws from, for water at rest: there it boils.
 *
 *   h = (p₀ − p_v) / (ρ g)                                                  (1)
 *
 * @param water       the water
 * @param atmosphere  p₀; STANDARD_ATMOSPHERE unless given [Pa]
 * @returns h [m]; air coming out of solution breaks a siphon well before this
 * @valid ordinary water; boiled and degassed water has stood higher
 * @throws RangeError when atmosphere is not finite and positive
 * @source closed-form, hydrostatics; vapour pressure from iapws-sr1-86
 * @example siphonCrestLimit({ temperatureC: 20, density: 998.2, viscosityDynamic: 1e-3, viscosity: 1e-6, vapourPressure: 2339 })   // 10.112
 */
export function siphonCrestLimit(water: Water, atmosphere = STANDARD_ATMOSPHERE): number {
  requirePositive("siphonCrestLimit", { atmosphere });
  return Math.max(0, atmosphere - water.vapourPressure) / (water.density * GRAVITY);
}
