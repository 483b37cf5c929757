import { requirePositive } from "../numerics/require-number.js";

/** A round bowl that a float keeps full, hung by a cord or standing. Lengths [m]. */
export interface FedBowlRing {
  /** Lip, from the middle, > 0. */
  readonly rim: number;
  /** Lip above the float's level, > 0. */
  readonly lipOverLevel: number;
}

/**
 * Slope at which a float-fed bowl runs over, and goes on until what feeds it is empty: the float keeps the middle's
 * level.
 *
 *   tan θ = f / R                                                                                           (1)
 *
 * @param bowl.rim           R [m], > 0
 * @param bowl.lipOverLevel  f [m], > 0
 * @returns tan θ
 * @valid a float that shuts by the level in the middle, still water
 * @throws RangeError when a size is not finite and positive
 * @source closed-form, hydrostatics, derived
 * @example slopeThatOverflows({ rim: 0.18, lipOverLevel: 0.02 })   // 0.1111
 */
export function slopeThatOverflows({ rim, lipOverLevel }: FedBowlRing): number {
  requirePositive("slopeThatOverflows", { "bowl.rim": rim, "bowl.lipOverLevel": lipOverLevel });
  return lipOverLevel / rim;
}

/**
 * How far aside a hung bowl may be held, or pushed slowly, before it spills: it leans as its cord does.
 *
 *   s = l sin(atan(f / R)) = l f / √(R² + f²)                                                               (1)
 *
 * A bowl that swings freely spills later: its water leans with it. One that is knocked, or stopped by a wall, sooner.
 *
 * @param bowl       as slopeThatOverflows
 * @param cord       l, hook to water [m], > 0
 * @returns s, sideways [m]
 * @valid slow pushes; one cord, so that bowl and cord lean alike
 * @throws RangeError when a size is not finite and positive
 * @source closed-form, hydrostatics, derived
 * @example swingForgiven({ rim: 0.18, lipOverLevel: 0.02 }, 1)   // 0.1104
 */
export function swingForgiven(bowl: FedBowlRing, cord: number): number {
  requirePositive("swingForgiven", { cord });
  return cord * Math.sin(Math.atan(slopeThatOverflows(bowl)));
}
