import { requireBetween } from "../numerics/require-number.js";

/** Exponents m of flow in loss laws: 1 laminar, 1.75 smooth, 1.852 Hazen-Williams, 2 rough. */
export const LOSS_EXPONENT_RANGE = { least: 1, greatest: 2 } as const;

/**
 * Christiansen's factor: loss along a line of equal, equally spaced outlets over its loss with all flow to the end.
 *
 *   F = 1/(m + 1) + 1/(2N) + √(m − 1)/(6 N²)                                (1)
 *
 * @param count     N, outlets, the first a full spacing from the inlet; whole, >= 1
 * @param exponent  m, of flow in the loss law [-], 1 to 2
 * @returns F [-]; exactly 1 for one outlet, where (1) is up to 0.5 % too large
 * @valid LOSS_EXPONENT_RANGE and one m along the whole line; a drinker line is laminar at its end and turbulent at
 *   its inlet, so sum it run by run instead
 * @throws RangeError when count is not a whole number from 1 or exponent not in LOSS_EXPONENT_RANGE
 * @source christiansen-1942, from memory
 * @example multiOutletFactor(10, 1.852)   // 0.4022
 */
export function multiOutletFactor(count: number, exponent: number): number {
  requireOutlets("multiOutletFactor", count, exponent);
  if (count === 1) return 1;
  return 1 / (exponent + 1) + 1 / (2 * count) + Math.sqrt(exponent - 1) / (6 * count ** 2);
}

/**
 * The same factor as the exact sum that Christiansen's formula stands for.
 *
 *   F = (1/N) Σ (k/N)^m,   k = 1 .. N                                       (1)
 *
 * @param count     N, outlets, the first a full spacing from the inlet; whole, >= 1
 * @param exponent  m, of flow in the loss law [-], 1 to 2
 * @returns F [-]
 * @valid LOSS_EXPONENT_RANGE, one m along the whole line, equal flows
 * @throws RangeError when count is not a whole number from 1 or exponent not in LOSS_EXPONENT_RANGE
 * @source closed-form, sum over the spacings
 * @example multiOutletFactorExact(24, 1)   // 0.520833
 */
export function multiOutletFactorExact(count: number, exponent: number): number {
  requireOutlets("multiOutletFactorExact", count, exponent);
  let sum = 0;
  for (let k = 1; k <= count; k++) sum += (k / count) ** exponent;
  return sum / count;
}

/**
 * Christiansen's factor where the first outlet stands half a spacing from the inlet.
 *
 *   F′ = (2 N F − 1) / (2 N − 1)                                            (1)
 *
 * @param count     N, outlets; whole, >= 1
 * @param exponent  m, of flow in the loss law [-], 1 to 2
 * @returns F′, over the loss of the whole, shorter line [-]
 * @valid as multiOutletFactor
 * @throws RangeError when count is not a whole number from 1 or exponent not in LOSS_EXPONENT_RANGE
 * @source christiansen-1942, half-spacing form from memory; a published row seen
 * @example multiOutletFactorHalfSpacing(10, 1.852)   // 0.3707
 */
export function multiOutletFactorHalfSpacing(count: number, exponent: number): number {
  requireOutlets("multiOutletFactorHalfSpacing", count, exponent);
  return (2 * count * multiOutletFactor(count, exponent) - 1) / (2 * count - 1);
}

function requireOutlets(owner: string, count: number, exponent: number): void {
  if (!Number.isSafeInteger(count) || count < 1) {
    throw new RangeError(`${owner}: count is ${count}; it must be a whole number, 1 or more`);
  }
  requireBetween(owner, "exponent", exponent, LOSS_EXPONENT_RANGE);
}
