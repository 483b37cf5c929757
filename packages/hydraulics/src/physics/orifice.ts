import { requireFinite, requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/** What a drinker passes while it is worked: q = k (h − h₀)^x above its opening head. */
export interface DrinkerLaw {
  /** k, flow at 1 m of head above the opening head [m³/s]. */
  readonly coefficient: number;
  /** x, 0.5 for a plain orifice, 1 for a laminar passage [-]. */
  readonly exponent: number;
  /** h₀, head below which nothing comes [m]. */
  readonly openingHead: number;
}

/**
 * Exponents of published emitters and drinkers [-]: 0.5 orifice, 0.57 smooth long path, 1 laminar (seen); about 0.4
 * vortex (from memory). 0 would be a regulating one, for which this law has no inverse.
 *
 * @source emitter-exponents, table of exponents, seen
 */
export const DRINKER_EXPONENT_RANGE = { least: 0.3, greatest: 1.1 } as const;

/**
 * Discharge coefficients of openings in a thin or thick wall [-].
 *
 * sharp edge 0.61 (0.61 to 0.62), short flush tube 0.82 (0.8 to 0.82), rounded 0.98: seen.
 *
 * @source unwin-1911, article Hydraulics, seen
 */
export const DISCHARGE_COEFFICIENT = { sharp: 0.61, shortTube: 0.82, rounded: 0.98 } as const;

/**
 * Flow of a drinker while worked, at a head.
 *
 *   q = k max(0, h − h₀)^x                                                  (1)
 *
 * @param law.coefficient  k [m³/s at 1 m], >= 0
 * @param law.exponent     x [-], > 0
 * @param law.openingHead  h₀ [m], >= 0
 * @param head             h, at the drinker [m]
 * @returns q [m³/s]; 0 at and below the opening head
 * @valid DRINKER_EXPONENT_RANGE, and heads near those at which the law was measured
 * @throws RangeError when coefficient or openingHead is negative, exponent not positive, or head not finite
 * @source emitter-exponents, q = k h^x, seen
 * @example flowAtHead({ coefficient: 2e-6, exponent: 0.5, openingHead: 0 }, 0.25)   // 1e-6
 */
export function flowAtHead(law: DrinkerLaw, head: number): number {
  requireLaw("flowAtHead", law);
  requireFinite("flowAtHead", { head });
  return head <= law.openingHead ? 0 : law.coefficient * (head - law.openingHead) ** law.exponent;
}

/**
 * Head at which a drinker passes a flow.
 *
 *   h = h₀ + (q/k)^(1/x)                                                    (1)
 *
 * @param law.coefficient  k [m³/s at 1 m], > 0
 * @param law.exponent     x [-], > 0
 * @param law.openingHead  h₀ [m], >= 0
 * @param flow             q [m³/s], >= 0
 * @returns h [m]; the opening head at q = 0
 * @valid as flowAtHead
 * @throws RangeError when coefficient or exponent is not positive, openingHead negative, or flow negative
 * @source emitter-exponents, q = k h^x solved for h, seen
 * @example headAtFlow({ coefficient: 2e-6, exponent: 0.5, openingHead: 0.05 }, 1e-6)   // 0.3
 */
export function headAtFlow(law: DrinkerLaw, flow: number): number {
  requireLaw("headAtFlow", law);
  requirePositive("headAtFlow", { "law.coefficient": law.coefficient });
  requireNotNegative("headAtFlow", { flow });
  return law.openingHead + (flow / law.coefficient) ** (1 / law.exponent);
}

/**
 * The law of a drinker that passes one known flow at one known head.
 *
 *   k = q / (h − h₀)^x                                                      (1)
 *
 * @param point.head         h [m], above the opening head
 * @param point.flow         q there [m³/s], >= 0
 * @param point.exponent     x; 0.5 unless given [-], > 0
 * @param point.openingHead  h₀; 0 unless given [m], >= 0
 * @returns the law; flowAtHead of it at that head is that flow
 * @valid as flowAtHead
 * @throws RangeError when head is not above openingHead, flow or openingHead negative, or exponent not positive
 * @source emitter-exponents, q = k h^x solved for k, seen
 * @example drinkerLawThrough({ head: 0.25, flow: 1e-6, exponent: 0.5, openingHead: 0 }).coefficient   // 2e-6
 */
export function drinkerLawThrough(point: {
  readonly head: number;
  readonly flow: number;
  readonly exponent?: number;
  readonly openingHead?: number;
}): DrinkerLaw {
  const { head, flow, exponent = 0.5, openingHead = 0 } = point;
  requireNotNegative("drinkerLawThrough", { "point.flow": flow, "point.openingHead": openingHead });
  requirePositive("drinkerLawThrough", { "point.exponent": exponent });
  if (!(Number.isFinite(head) && head > openingHead)) {
    throw new RangeError(
      `drinkerLawThrough: point.head is ${head}; it must be above the opening head ${openingHead}`,
    );
  }
  return { coefficient: flow / (head - openingHead) ** exponent, exponent, openingHead };
}

/**
 * Flow out of an opening under a head.
 *
 *   Q = C_d a √(2 g h)                                                      (1)
 *
 * @param orifice.area                  a, of the opening [m²], >= 0
 * @param orifice.dischargeCoefficient  C_d [-], > 0 (DISCHARGE_COEFFICIENT)
 * @param head                          h, over the opening's middle; negative when water would run in [m]
 * @returns Q, same sign as head [m³/s]
 * @valid heads above about two openings high; C_d rises by 2.5 % from 3 m to 0.3 m of head, more at low Re
 * @throws RangeError when area is negative, dischargeCoefficient not positive, or head not finite
 * @source unwin-1911, article Hydraulics, seen
 * @example flowThroughOrifice({ area: 1e-4, dischargeCoefficient: 0.61 }, 1)   // 2.7015e-4
 */
export function flowThroughOrifice(
  orifice: { readonly area: number; readonly dischargeCoefficient: number },
  head: number,
): number {
  requireNotNegative("flowThroughOrifice", { "orifice.area": orifice.area });
  requirePositive("flowThroughOrifice", { "orifice.dischargeCoefficient": orifice.dischargeCoefficient });
  requireFinite("flowThroughOrifice", { head });
  const speed = Math.sqrt(2 * GRAVITY * Math.abs(head));
  return Math.sign(head) * orifice.dischargeCoefficient * orifice.area * speed;
}

function requireLaw(owner: string, law: DrinkerLaw): void {
  requireNotNegative(owner, { "law.coefficient": law.coefficient, "law.openingHead": law.openingHead });
  requirePositive(owner, { "law.exponent": law.exponent });
}
