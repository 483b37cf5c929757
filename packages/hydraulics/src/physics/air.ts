import { requireBetween, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";
import { surfaceTensionOfWater, type Water } from "./water.js";

/** Slopes of the pipe, downward, for which air can be cleared by flow [rad]: level to plumb. */
export const CLEARING_SLOPE_RANGE = { least: 0, greatest: Math.PI / 2 } as const;

/** (r² ρ g/σ) at which a long bubble in a plumb tube no longer rises by itself; bretherton-1961, from memory. */
const BOND_NUMBER_THAT_HOLDS = 0.842;

/**
 * Mean velocity of water that carries trapped air down a sloping pipe and out of it.
 *
 *   V = √(g d) [0.825 + 0.25 √(sin θ)]                                      (1)
 *
 * @param pipe.bore        d, inside [m], > 0
 * @param pipe.slopeAngle  θ, of the falling pipe below level [rad], 0 to π/2
 * @returns V [m/s]
 * @valid measured in pipes wider than 50 mm; small pipes need more or less, and published models differ
 * @throws RangeError when bore is not finite and positive or slopeAngle not from 0 to π/2
 * @source wisner-1975, seen as quoted
 * @example velocityThatClearsAir({ bore: 0.0158, slopeAngle: 0 })   // 0.3247
 */
export function velocityThatClearsAir(pipe: { readonly bore: number; readonly slopeAngle: number }): number {
  requirePositive("velocityThatClearsAir", { "pipe.bore": pipe.bore });
  requireBetween("velocityThatClearsAir", "pipe.slopeAngle", pipe.slopeAngle, CLEARING_SLOPE_RANGE);
  return Math.sqrt(GRAVITY * pipe.bore) * (0.825 + 0.25 * Math.sqrt(Math.sin(pipe.slopeAngle)));
}

/**
 * Flow that carries trapped air down a sloping pipe and out of it.
 *
 *   Q = V π d²/4,   V = velocityThatClearsAir; grows as d^2.5               (1)
 *
 * @param pipe.bore        d, inside [m], > 0
 * @param pipe.slopeAngle  θ, of the falling pipe below level [rad], 0 to π/2
 * @returns Q [m³/s]
 * @valid as velocityThatClearsAir
 * @throws RangeError as velocityThatClearsAir
 * @source wisner-1975, seen as quoted
 * @example flowThatClearsAir({ bore: 0.0266, slopeAngle: 0 })   // 2.342e-4
 */
export function flowThatClearsAir(pipe: { readonly bore: number; readonly slopeAngle: number }): number {
  return (velocityThatClearsAir(pipe) * Math.PI * pipe.bore ** 2) / 4;
}

/**
 * Bore of a plumb tube below which a plug of air stays where it is.
 *
 *   d = 2 √(0.842 σ / (ρ g))                                                (1)
 *
 * @param water  the water, 0 to 50 °C
 * @returns d [m], about 5 mm
 * @valid clean water and a clean tube; soap lowers it
 * @throws RangeError when the water's temperature is outside 0 to 50 °C or its density not positive
 * @source bretherton-1961, from memory
 * @example boreThatHoldsBubble({ temperatureC: 20, density: 998.2, viscosityDynamic: 1e-3, viscosity: 1e-6, vapourPressure: 2339 })   // 0.005
 */
export function boreThatHoldsBubble(water: Water): number {
  requirePositive("boreThatHoldsBubble", { "water.density": water.density });
  const tension = surfaceTensionOfWater(water.temperatureC);
  return 2 * Math.sqrt((BOND_NUMBER_THAT_HOLDS * tension) / (water.density * GRAVITY));
}
