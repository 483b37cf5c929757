import { errorFunction } from "../numerics/error-function.js";
import { requireFinite, requireNotNegative } from "../numerics/require-number.js";
import { findRoot } from "../numerics/root.js";

/**
 * α, how fast heat spreads through moist soil [m²/s].
 *
 * @source carslaw-jaeger-1959, moist soil, from memory
 */
export const SOIL_DIFFUSIVITY = 5e-7;

/** Ground that a sudden frost meets. Temperatures [°C]. */
export interface FrostIntoGround {
  /** z, below the surface [m]. */
  readonly depth: number;
  /** t₀, the ground before it. */
  readonly ground: number;
  /** t_a, kept up at the surface. */
  readonly air: number;
}

/**
 * Temperature under ground some time after a frost sets in.
 *
 *   t = t_a + (t₀ − t_a) erf[z/(2 √(α τ))]                                  (1)
 *
 * @param frost  depth z [m], ≥ 0, ground t₀ and air t_a [°C]
 * @param time   τ [s], ≥ 0
 * @returns t [°C]
 * @valid even soil; the heat of freezing soil water is left out, which errs on the cautious side
 * @throws RangeError when depth or time is below 0, or a temperature not finite
 * @source carslaw-jaeger-1959, sec. 2.4, step at the surface, from memory
 * @example groundAfterFrost({ depth: 0.15, ground: 4, air: -8 }, 43200)   // -1.646
 */
export function groundAfterFrost(frost: FrostIntoGround, time: number): number {
  const { depth, ground, air } = frost;
  requireNotNegative("groundAfterFrost", { "frost.depth": depth, time });
  requireFinite("groundAfterFrost", { "frost.ground": ground, "frost.air": air });
  if (time === 0) return ground;
  return air + (ground - air) * errorFunction(depth / (2 * Math.sqrt(SOIL_DIFFUSIVITY * time)));
}

/**
 * Time until a frost has come down to a depth.
 *
 *   τ = z²/(4 α y²),  erf y = −t_a/(t₀ − t_a)                               (1)
 *
 * @param frost  depth z [m], ≥ 0, ground t₀ and air t_a [°C]
 * @returns τ [s]; 0 where the ground is frozen already, Infinity where the air does not freeze
 * @valid as groundAfterFrost
 * @throws RangeError as groundAfterFrost
 * @source carslaw-jaeger-1959, sec. 2.4, solved for the time, from memory
 * @example timeOfFrostAt({ depth: 0.15, ground: 4, air: -8 })   // 24040.9
 */
export function timeOfFrostAt(frost: FrostIntoGround): number {
  const { depth, ground, air } = frost;
  requireNotNegative("timeOfFrostAt", { "frost.depth": depth });
  requireFinite("timeOfFrostAt", { "frost.ground": ground, "frost.air": air });
  if (ground <= 0) return 0;
  if (air >= 0) return Number.POSITIVE_INFINITY;
  const share = -air / (ground - air);
  const y = findRoot((one) => errorFunction(one) - share, 0, 6).root;
  return depth ** 2 / (4 * SOIL_DIFFUSIVITY * y ** 2);
}

/** Harmonics of the day that are followed down; the next is damped to a thousandth within 10 cm. */
const HARMONICS = 12;

/**
 * Temperatures through a day at a depth, where the surface goes through the same day again and again.
 *
 *   each harmonic n of the surface: times e^(−z/d), late by z/d,  d = √(α P/(π n))   (1)
 *
 * @param surface  temperatures at equal steps through the day [°C]
 * @param depth    z [m], ≥ 0
 * @returns the same steps at that depth [°C]; at z = 0 the surface itself
 * @valid even soil, like days; summer ground further down is colder than this
 * @throws RangeError when depth is below 0
 * @source carslaw-jaeger-1959, sec. 2.6, harmonic surface temperature, from memory
 * @example groundThroughDay([10, 20, 30, 20], 0.1)[2]   // 22.8
 */
export function groundThroughDay(surface: readonly number[], depth: number): number[] {
  requireNotNegative("groundThroughDay", { depth });
  if (depth === 0) return [...surface];
  const count = surface.length;
  const mean = surface.reduce((sum, one) => sum + one, 0) / count;
  const below = new Array<number>(count).fill(mean);
  for (let n = 1; n <= Math.min(HARMONICS, Math.floor(count / 2)); n += 1) {
    const reach = Math.sqrt((SOIL_DIFFUSIVITY * 86_400) / (Math.PI * n));
    const angle = (2 * Math.PI * n) / count;
    let [even, odd] = [0, 0];
    surface.forEach((one, k) => {
      even += one * Math.cos(angle * k);
      odd += one * Math.sin(angle * k);
    });
    const share = (2 * n === count ? 1 : 2) / count;
    const damped = share * Math.exp(-depth / reach);
    const late = depth / reach;
    for (let k = 0; k < count; k += 1)
      below[k]! += damped * (even * Math.cos(angle * k - late) + odd * Math.sin(angle * k - late));
  }
  return below;
}
