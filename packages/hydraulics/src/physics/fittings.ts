import {
  requireBetween,
  requireFinite,
  requireNotNegative,
  requirePositive,
} from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";
import { headLossLaminar, reynoldsNumber, velocityInBore } from "./darcy-weisbach.js";

const INCH = 0.0254;
const US_GALLON = 3.785411784e-3;
/** Conventional water under standard gravity [N/m³]: flow factors are defined for water of relative density 1. */
const CONVENTIONAL_WATER = 9806.65;
const POUND_PER_SQUARE_INCH = (0.45359237 * GRAVITY) / INCH ** 2; // [Pa]

/**
 * Loss coefficient of a fitting by Hooper's two-K method: it rises as flow turns laminar.
 *
 *   K = K₁/Re + K∞ (1 + 1/ID),   ID in inches                               (1)
 *
 * @param fitting.k1         K₁, the coefficient at Re 1 [-], >= 0
 * @param fitting.kInfinity  K∞, the coefficient of a large fitting at high Re [-], >= 0
 * @param fitting.bore       ID, inside, here in metres [m], > 0
 * @param reynolds           Re in that bore [-], > 0
 * @returns K [-], upon the velocity head in that bore
 * @valid any Re > 0; published coefficients scatter by 20 to 50 %
 * @throws RangeError when a coefficient is negative, or bore or reynolds is not finite and positive
 * @source hooper-1981, p. 97, seen as quoted
 * @example lossCoefficientTwoK({ k1: 1500, kInfinity: 4, bore: 0.0508 }, 1e4)   // 6.15
 */
export function lossCoefficientTwoK(
  fitting: { readonly k1: number; readonly kInfinity: number; readonly bore: number },
  reynolds: number,
): number {
  requireNotNegative("lossCoefficientTwoK", { "fitting.k1": fitting.k1 });
  requirePositive("lossCoefficientTwoK", { reynolds });
  return fitting.k1 / reynolds + sizeCorrected("lossCoefficientTwoK", fitting);
}

/**
 * Two-K coefficient at high Reynolds number, corrected for the size of the fitting: the k∞ of headLossFitting.
 *
 *   K∞ (1 + 1/ID),   ID in inches                                           (1)
 *
 * @param fitting.kInfinity  K∞, of a large fitting [-], >= 0
 * @param fitting.bore       ID, inside, here in metres [m], > 0
 * @returns coefficient [-]
 * @valid as lossCoefficientTwoK
 * @throws RangeError when kInfinity is negative or bore is not finite and positive
 * @source hooper-1981, p. 97, seen as quoted
 * @example lossCoefficientAtSize({ kInfinity: 4, bore: 0.0508 })   // 6
 */
export function lossCoefficientAtSize(fitting: {
  readonly kInfinity: number;
  readonly bore: number;
}): number {
  return sizeCorrected("lossCoefficientAtSize", fitting);
}

function sizeCorrected(
  owner: string,
  fitting: { readonly kInfinity: number; readonly bore: number },
): number {
  requireNotNegative(owner, { "fitting.kInfinity": fitting.kInfinity });
  requirePositive(owner, { "fitting.bore": fitting.bore });
  return fitting.kInfinity * (1 + INCH / fitting.bore);
}

/**
 * Head lost for a loss coefficient.
 *
 *   h = K v |v| / (2 g)                                                     (1)
 *
 * @param coefficient  K, upon that velocity; of combining tees it may be negative [-]
 * @param velocity     v, mean, either sign [m/s]
 * @returns h, same sign as velocity for K > 0 [m of this water]
 * @valid any
 * @throws RangeError when either is not finite
 * @source hydraulic-institute-edb, III.B, seen
 * @example headLossOfCoefficient(0.5, 1)   // 0.025493
 */
export function headLossOfCoefficient(coefficient: number, velocity: number): number {
  requireFinite("headLossOfCoefficient", { coefficient, velocity });
  return (coefficient * velocity * Math.abs(velocity)) / (2 * GRAVITY);
}

/**
 * Head lost in a fitting whose two-K coefficients are known for its size.
 *
 *   h = (K₁/Re + K∞) v |v| / (2 g),   the first term linear in v            (1)
 *
 * @param fitting.k1         K₁ [-], >= 0
 * @param fitting.kInfinity  K∞, already corrected for size (lossCoefficientAtSize) [-], >= 0
 * @param fitting.bore       d, inside [m], > 0
 * @param fitting.viscosity  ν, kinematic, of the water [m²/s], > 0
 * @param flow               Q, positive from first to second end [m³/s]
 * @returns h, same sign as flow [m of this water]; 0 at Q = 0, odd and rising in Q
 * @valid any Re; published coefficients scatter by 20 to 50 %
 * @throws RangeError when a coefficient is negative, bore or viscosity not finite and positive, or flow not finite
 * @source hooper-1981, p. 97, seen as quoted
 * @example headLossFitting({ k1: 800, kInfinity: 1.04, bore: 0.0158, viscosity: 1.0034e-6 }, 2.4e-5)   // 0.001112
 */
export function headLossFitting(
  fitting: {
    readonly k1: number;
    readonly kInfinity: number;
    readonly bore: number;
    readonly viscosity: number;
  },
  flow: number,
): number {
  requireNotNegative("headLossFitting", {
    "fitting.k1": fitting.k1,
    "fitting.kInfinity": fitting.kInfinity,
  });
  const velocity = velocityInBore(fitting.bore, flow);
  if (reynoldsNumber(fitting, flow) === 0) return 0;
  // K₁/Re v|v| / 2g is the laminar law over a length of d K₁/64: so it stays finite as Re goes to 0.
  const linear = headLossLaminar({ ...fitting, length: (fitting.bore * fitting.k1) / 64 }, flow);
  return linear + headLossOfCoefficient(fitting.kInfinity, velocity);
}

/**
 * Loss coefficient of a valve from its metric flow factor.
 *
 *   K = 2 g Δh / v²  with Δh = 10⁵ Pa/(ρ g) (Q/K_v)²,  ρ = 1000 kg/m³,  Q and K_v in m³/h               (1)
 *
 * @param valve.kv    K_v, flow at a loss of 1 bar, by custom in m³/h [m³/h], > 0
 * @param valve.bore  d, upon whose velocity head K is wanted [m], > 0
 * @returns K [-]
 * @valid turbulent flow; K_v says nothing of laminar loss
 * @throws RangeError when kv or bore is not finite and positive
 * @source technical-paper-410, 410M Example 7-2 (K = 1.6e9 d⁴/K_v², d in m), seen as quoted
 * @example lossCoefficientFromKv({ kv: 500, bore: 0.154 })   // 3.597
 */
export function lossCoefficientFromKv(valve: { readonly kv: number; readonly bore: number }): number {
  requirePositive("lossCoefficientFromKv", { "valve.kv": valve.kv, "valve.bore": valve.bore });
  return coefficientAt(velocityInBore(valve.bore, valve.kv / 3600), 1e5 / 1000);
}

/**
 * Loss coefficient of a valve from its US flow factor.
 *
 *   K = 2 Δp/(ρ v²)  with Δp = 1 psi at Q = C_v,  ρ g = 9806.65 N/m³        (1)
 *
 * @param valve.cv    C_v, flow at a loss of 1 psi, by custom in US gallons a minute [gpm], > 0
 * @param valve.bore  d, upon whose velocity head K is wanted [m], > 0
 * @returns K [-]
 * @valid turbulent flow; C_v says nothing of laminar loss
 * @throws RangeError when cv or bore is not finite and positive
 * @source technical-paper-410, K = 890 d⁴/C_v² with d in inches, from memory
 * @example lossCoefficientFromCv({ cv: 4, bore: 0.0158 })   // 8.324
 */
export function lossCoefficientFromCv(valve: { readonly cv: number; readonly bore: number }): number {
  requirePositive("lossCoefficientFromCv", { "valve.cv": valve.cv, "valve.bore": valve.bore });
  const pressureOverDensity = (POUND_PER_SQUARE_INCH * GRAVITY) / CONVENTIONAL_WATER;
  return coefficientAt(velocityInBore(valve.bore, (valve.cv * US_GALLON) / 60), pressureOverDensity);
}

/** K = 2 (Δp/ρ) / v². */
const coefficientAt = (velocity: number, pressureOverDensity: number): number =>
  (2 * pressureOverDensity) / velocity ** 2;

/**
 * Loss coefficient of a barb or insert narrower than its pipe, estimated from the ratio of bores.
 *
 *   K = [0.5 (1 − b²) + (1 − b²)²] / b⁴,   b = bore of the fitting / bore of the pipe                  (1)
 *
 * A sudden narrowing and a sudden widening, both upon the velocity head in the pipe; friction inside is left out.
 *
 * @param boreRatio  b [-], above 0, up to 1
 * @returns K upon the velocity in the pipe [-]; 0 at b = 1
 * @valid Re above 1e4 (published barbs: K 2.72 to 24.16, constant only there); an estimate
 * @throws RangeError when boreRatio is not above 0 and at most 1
 * @source hydraulic-institute-edb, eq. 3.B.3 for the widening, seen; 0.5 (1 − b²) for the narrowing, from memory
 * @example lossCoefficientOfBoreRatio(0.5)   // 15
 */
export function lossCoefficientOfBoreRatio(boreRatio: number): number {
  requirePositive("lossCoefficientOfBoreRatio", { boreRatio });
  requireBetween("lossCoefficientOfBoreRatio", "boreRatio", boreRatio, { least: 0, greatest: 1 });
  const shut = 1 - boreRatio ** 2;
  return (0.5 * shut) / boreRatio ** 4 + lossCoefficientOfWidening(boreRatio);
}

/**
 * Loss coefficient of a sudden widening: from a narrow outlet into its pipe.
 *
 *   K = (1 − b²)² / b⁴,   b = narrow bore / bore of the pipe                (1)
 *
 * @param boreRatio  b [-], above 0, up to 1
 * @returns K upon the velocity in the pipe, the wide side [-]; 0 at b = 1
 * @valid turbulent flow; in laminar flow the jet loses up to as much again
 * @throws RangeError when boreRatio is not above 0 and at most 1
 * @source hydraulic-institute-edb, eq. 3.B.3, seen
 * @example lossCoefficientOfWidening(0.5)   // 9
 */
export function lossCoefficientOfWidening(boreRatio: number): number {
  requirePositive("lossCoefficientOfWidening", { boreRatio });
  requireBetween("lossCoefficientOfWidening", "boreRatio", boreRatio, { least: 0, greatest: 1 });
  return (1 - boreRatio ** 2) ** 2 / boreRatio ** 4;
}

/**
 * Loss coefficient of a fitting from its equivalent length of pipe.
 *
 *   K = f L_e / d                                                           (1)
 *
 * @param fitting.equivalentLength  L_e [m], >= 0
 * @param fitting.bore              d, inside [m], > 0
 * @param fitting.frictionFactor    f, Darcy, of that pipe where the length was measured [-], > 0
 * @returns K [-]
 * @valid the turbulent flow for which lengths are published; with a laminar f the length is too long
 * @throws RangeError when equivalentLength is negative, or bore or frictionFactor not finite and positive
 * @source technical-paper-410, 410M Example 7-2 (K 3.6, f 0.015, L/d 240), seen as quoted
 * @example lossCoefficientFromEquivalentLength({ equivalentLength: 36.96, bore: 0.154, frictionFactor: 0.015 })   // 3.6
 */
export function lossCoefficientFromEquivalentLength(fitting: {
  readonly equivalentLength: number;
  readonly bore: number;
  readonly frictionFactor: number;
}): number {
  const owner = "lossCoefficientFromEquivalentLength";
  requireNotNegative(owner, { "fitting.equivalentLength": fitting.equivalentLength });
  requirePositive(owner, {
    "fitting.bore": fitting.bore,
    "fitting.frictionFactor": fitting.frictionFactor,
  });
  return (fitting.frictionFactor * fitting.equivalentLength) / fitting.bore;
}
