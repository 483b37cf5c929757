import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/**
 * Half the density of air [kg/m³], as building codes round it for 15 °C at the level of the sea.
 *
 * @source asce-7, velocity pressure, from memory
 */
const HALF_AIR_DENSITY = 0.613;

/**
 * Drag of an upright round vessel and of a box, on the area the wind sees [-].
 *
 * @source common-practice, drag of short cylinders and boxes, from memory
 */
export const DRAG = { round: 0.8, box: 1.3 } as const;

/**
 * Share of its own weight's moment up to which a tank that nothing ties is let stand [-].
 *
 * @source tank-stability-note, unanchored tanks, seen
 */
export const UNTIED_SHARE = 2 / 3;

/**
 * Pressure of wind that is stopped.
 *
 *   q = 0.613 V²                                                            (1)
 *
 * @param speed  V [m/s], >= 0
 * @returns q [Pa]
 * @valid air near the ground; gusts are faster than the mean of a forecast
 * @throws RangeError when speed is negative or not finite
 * @source asce-7, velocity pressure, from memory
 * @example windPressure(10)   // 61.3
 */
export function windPressure(speed: number): number {
  requireNotNegative("windPressure", { speed });
  return HALF_AIR_DENSITY * speed * speed;
}

/**
 * Wind in which a vessel that nothing ties down begins to tip over the edge of its base.
 *
 *   q c A z = m g w / 2,   q = 0.613 V²                                     (1)
 *
 * @param body.mass    m, vessel and water [kg], > 0
 * @param body.width   w, of its base, the narrow way [m], > 0
 * @param body.area    A, seen by the wind [m²], > 0
 * @param body.height  z, of the middle of that area above the base [m], > 0
 * @param body.drag    c (DRAG) [-], > 0
 * @returns V [m/s]
 * @valid a stiff body on firm level ground that does not slide first, in steady wind
 * @throws RangeError when one of them is not finite and positive
 * @source tank-stability-note, moment of wind against that of weight, seen
 * @example windThatTips({ mass: 10, width: 0.585, area: 0.585 * 0.89, height: 0.445, drag: 0.8 })   // 15.889
 */
export function windThatTips(body: {
  readonly mass: number;
  readonly width: number;
  readonly area: number;
  readonly height: number;
  readonly drag: number;
}): number {
  const { mass, width, area, height, drag } = body;
  requirePositive("windThatTips", {
    "body.mass": mass,
    "body.width": width,
    "body.area": area,
    "body.height": height,
    "body.drag": drag,
  });
  return Math.sqrt((mass * GRAVITY * width) / (2 * HALF_AIR_DENSITY * drag * area * height));
}
