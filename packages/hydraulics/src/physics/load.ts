import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/**
 * Pressure of a load on what it stands on.
 *
 *   p = m g / a                                                             (1)
 *
 * @param load.mass  m, all that stands there [kg], >= 0
 * @param load.area  a, that touches the ground: feet or pads, all together [m²], > 0
 * @returns p [Pa]
 * @valid a load in the middle of stiff feet; one that leans to a side presses more there
 * @throws RangeError when mass is negative or area not positive, or either not finite
 * @source closed-form, definition
 * @example bearingPressure({ mass: 100, area: 0.5 })   // 1961.33
 */
export function bearingPressure(load: { readonly mass: number; readonly area: number }): number {
  requireNotNegative("bearingPressure", { "load.mass": load.mass });
  requirePositive("bearingPressure", { "load.area": load.area });
  return (load.mass * GRAVITY) / load.area;
}

/**
 * Height of the middle of the mass of several parts, one on the other.
 *
 *   z = sum m z / sum m                                                     (1)
 *
 * @param parts  each with its mass [kg], >= 0, and the height of its own middle [m]
 * @returns z [m]; 0 where nothing weighs
 * @valid any parts
 * @throws RangeError when a mass is negative or not finite
 * @source closed-form, definition
 * @example centreOfMass([{ mass: 10, height: 1 }, { mass: 30, height: 2 }])   // 1.75
 */
export function centreOfMass(parts: readonly { readonly mass: number; readonly height: number }[]): number {
  let mass = 0;
  let moment = 0;
  for (const part of parts) {
    requireNotNegative("centreOfMass", { mass: part.mass });
    mass += part.mass;
    moment += part.mass * part.height;
  }
  return mass === 0 ? 0 : moment / mass;
}

/**
 * Tilt at which a standing thing falls over: its middle of mass stands over the edge of its base.
 *
 *   tan θ = w / (2 z)                                                       (1)
 *
 * @param body.width   w, of its base, the narrow way [m], > 0
 * @param body.height  z, of the middle of its mass above the base [m], > 0
 * @returns θ [rad], from 0 to π/2
 * @valid a stiff body on firm ground; water that moves to the low side makes it less
 * @throws RangeError when width or height is not finite and positive
 * @source closed-form, statics
 * @example tiltThatTopples({ width: 1, height: 0.5 })   // 0.7854
 */
export function tiltThatTopples(body: { readonly width: number; readonly height: number }): number {
  requirePositive("tiltThatTopples", { "body.width": body.width, "body.height": body.height });
  return Math.atan(body.width / (2 * body.height));
}
