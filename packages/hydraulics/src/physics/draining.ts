import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/** The opening a vessel drains through. */
export interface Outlet {
  /** a, of the opening [m²]. */
  readonly area: number;
  /** C_d [-], see DISCHARGE_COEFFICIENT. */
  readonly dischargeCoefficient: number;
}

/** A fall of the water's surface, both heights above the middle of the outlet. */
export interface LevelFall {
  /** h₁ [m]. */
  readonly from: number;
  /** h₂ [m], not above h₁. */
  readonly to: number;
}

/**
 * Time for the level in a vessel of plumb walls to fall, through an opening.
 *
 *   t = 2 A (√h₁ − √h₂) / (C_d a √(2g))                                     (1)
 *
 * @param vessel.surface  A, of the water's surface [m²], > 0
 * @param outlet          opening: area [m²] and dischargeCoefficient [-], both > 0
 * @param fall            from and to, above the outlet [m]
 * @returns t [s]
 * @valid open vessel, constant C_d, surface much larger than the opening
 * @throws RangeError when surface, area or coefficient is not positive, or the fall does not go down to 0 or above
 * @source torricelli-draining, vertical prism, seen
 * @example timeToDrainPrism({ surface: 3.2 }, { area: 1e-3, dischargeCoefficient: 0.6 }, { from: 5, to: 0 })   // 5385.65
 */
export function timeToDrainPrism(
  vessel: { readonly surface: number },
  outlet: Outlet,
  fall: LevelFall,
): number {
  requirePositive("timeToDrainPrism", { "vessel.surface": vessel.surface });
  requireDraining("timeToDrainPrism", outlet, fall);
  return (2 * vessel.surface * (Math.sqrt(fall.from) - Math.sqrt(fall.to))) / flowAtOneMetre(outlet);
}

/**
 * Time for the level in an upright cylinder to fall, through an opening.
 *
 *   t = 2 (π D²/4) (√h₁ − √h₂) / (C_d a √(2g))                              (1)
 *
 * @param vessel.diameter  D, inside [m], > 0
 * @param outlet           opening: area [m²] and dischargeCoefficient [-], both > 0
 * @param fall             from and to, above the outlet [m]
 * @returns t [s]
 * @valid as timeToDrainPrism
 * @throws RangeError as timeToDrainPrism
 * @source torricelli-draining, vertical prism, seen
 * @example timeToDrainUpright({ diameter: 1.2 }, { area: 1.9635e-3, dischargeCoefficient: 0.6 }, { from: 3, to: 0 })   // 750.9
 */
export function timeToDrainUpright(
  vessel: { readonly diameter: number },
  outlet: Outlet,
  fall: LevelFall,
): number {
  requirePositive("timeToDrainUpright", { "vessel.diameter": vessel.diameter });
  requireDraining("timeToDrainUpright", outlet, fall);
  return timeToDrainPrism({ surface: (Math.PI / 4) * vessel.diameter ** 2 }, outlet, fall);
}

/**
 * Time for the level in a cylinder on its side to fall, through an opening at its lowest line.
 *
 *   t = 4 L [(D − h₂)^1.5 − (D − h₁)^1.5] / (3 C_d a √(2g))                 (1)
 *
 * @param vessel.diameter  D, inside [m], > 0
 * @param vessel.length    L, inside [m], > 0
 * @param outlet           opening: area [m²] and dischargeCoefficient [-], both > 0
 * @param fall             from and to, above the outlet [m], at most D
 * @returns t [s]
 * @valid as timeToDrainPrism
 * @throws RangeError as timeToDrainPrism, or when the fall starts above the vessel
 * @source torricelli-draining, horizontal cylinder, from memory; the test integrates it anew
 * @example timeToDrainLying({ diameter: 0.5715, length: 0.851 }, { area: 1.26677e-4, dischargeCoefficient: 0.61 }, { from: 0.5715, to: 0 })   // 1432
 */
export function timeToDrainLying(
  vessel: { readonly diameter: number; readonly length: number },
  outlet: Outlet,
  fall: LevelFall,
): number {
  const { diameter, length } = vessel;
  requirePositive("timeToDrainLying", { "vessel.diameter": diameter, "vessel.length": length });
  requireDraining("timeToDrainLying", outlet, fall);
  requireWithin("timeToDrainLying", fall, diameter);
  const bracket = (diameter - fall.to) ** 1.5 - (diameter - fall.from) ** 1.5;
  return (4 * length * bracket) / (3 * flowAtOneMetre(outlet));
}

/**
 * Time for the level in a tapered round bucket to fall, through an opening in its bottom.
 *
 *   t = π [2 r₀² h^½ + (4/3) r₀ k h^(3/2) + (2/5) k² h^(5/2)] between h₂ and h₁ / (C_d a √(2g))         (1)
 *   r = r₀ + k h                                                                                       (2)
 *
 * @param vessel.bottomDiameter  2 r₀ [m], > 0
 * @param vessel.topDiameter     inside at the brim [m], > 0
 * @param vessel.height          from bottom to brim [m], > 0
 * @param outlet                 opening: area [m²] and dischargeCoefficient [-], both > 0
 * @param fall                   from and to, above the outlet [m], at most the height
 * @returns t [s]
 * @valid as timeToDrainPrism
 * @throws RangeError as timeToDrainPrism, or when the fall starts above the vessel
 * @source closed-form, Torricelli's law over a frustum; the test integrates it anew
 * @example timeToDrainTapered({ bottomDiameter: 0.26, topDiameter: 0.3, height: 0.36 }, { area: 7.85398e-5, dischargeCoefficient: 0.61 }, { from: 0.36, to: 0 })   // 332.5
 */
export function timeToDrainTapered(
  vessel: { readonly bottomDiameter: number; readonly topDiameter: number; readonly height: number },
  outlet: Outlet,
  fall: LevelFall,
): number {
  const { bottomDiameter, topDiameter, height } = vessel;
  requirePositive("timeToDrainTapered", {
    "vessel.bottomDiameter": bottomDiameter,
    "vessel.topDiameter": topDiameter,
    "vessel.height": height,
  });
  requireDraining("timeToDrainTapered", outlet, fall);
  requireWithin("timeToDrainTapered", fall, height);
  const bottom = bottomDiameter / 2;
  const widening = (topDiameter / 2 - bottom) / height;
  const integral = (h: number): number =>
    Math.sqrt(h) * (2 * bottom ** 2 + (4 / 3) * bottom * widening * h + (2 / 5) * (widening * h) ** 2);
  return (Math.PI * (integral(fall.from) - integral(fall.to))) / flowAtOneMetre(outlet);
}

/** C_d a √(2g), the flow under 1 m [m³/s per √m]. */
const flowAtOneMetre = (outlet: Outlet): number =>
  outlet.dischargeCoefficient * outlet.area * Math.sqrt(2 * GRAVITY);

function requireDraining(owner: string, outlet: Outlet, fall: LevelFall): void {
  requirePositive(owner, {
    "outlet.area": outlet.area,
    "outlet.dischargeCoefficient": outlet.dischargeCoefficient,
  });
  requireNotNegative(owner, { "fall.from": fall.from, "fall.to": fall.to });
  if (fall.to > fall.from) {
    throw new RangeError(`${owner}: fall.to is ${fall.to}; it must not be above fall.from, ${fall.from}`);
  }
}

function requireWithin(owner: string, fall: LevelFall, height: number): void {
  if (fall.from > height) {
    throw new RangeError(`${owner}: fall.from is ${fall.from}; it must not be above the vessel, ${height}`);
  }
}
