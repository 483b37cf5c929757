import { requireFinite, requireNotNegative, requirePositive } from "../numerics/require-number.js";

/** A run as Hazen-Williams sees it. */
export interface HazenWilliamsRun {
  /** L, along the pipe [m]. */
  readonly length: number;
  /** d, inside [m]. */
  readonly bore: number;
  /** C, Hazen-Williams coefficient [-]. */
  readonly coefficient: number;
}

/**
 * The constant of the SI form (other printed values spread the loss by 3.7 %), and the exponents of flow and bore.
 *
 * @source hazen-williams-si, SI form, seen; exponent 4.8704 from memory
 */
export const HAZEN_WILLIAMS_LAW = { constant: 10.67, flowExponent: 1.852, boreExponent: 4.8704 } as const;

const { constant: CONSTANT, flowExponent: FLOW_EXPONENT, boreExponent: BORE_EXPONENT } = HAZEN_WILLIAMS_LAW;

/**
 * Where Hazen-Williams has been shown to hold. No published limit covers bores under 50 mm at Reynolds numbers
 * under 4000, which is where drinker lines live.
 *
 * reynolds      experiments behind the exponents: 4e3 to 3.2e6 (christensen-2000, seen)
 * bore          50 mm up (textbook limit, from memory); 1.85 m (from memory) [m]
 * velocity      up to 3 m/s (textbook limit, from memory; 1 to 3 m/s is the good region, seen) [m/s]
 * temperatureC  5 to 25 °C (textbook limit, from memory; constants fitted near 15 to 16 °C, seen) [°C]
 *
 * @source christensen-2000, pp. 167-168, seen
 */
export const HAZEN_WILLIAMS_RANGE = {
  reynolds: { least: 4e3, greatest: 3.2e6 },
  bore: { least: 0.05, greatest: 1.85 },
  velocity: { least: 0, greatest: 3 },
  temperatureC: { least: 5, greatest: 25 },
  source: "christensen-2000",
} as const;

function lossPerUnitFlow(owner: string, run: HazenWilliamsRun): number {
  requireNotNegative(owner, { "run.length": run.length });
  requirePositive(owner, { "run.bore": run.bore, "run.coefficient": run.coefficient });
  return (CONSTANT * run.length) / (run.coefficient ** FLOW_EXPONENT * run.bore ** BORE_EXPONENT);
}

/**
 * Head lost to friction by the Hazen-Williams formula.
 *
 *   h = 10.67 L Q^1.852 / (C^1.852 d^4.8704)                                (1)
 *
 * @param run.length       L, along the pipe [m], >= 0
 * @param run.bore         d, inside [m], > 0
 * @param run.coefficient  C [-], > 0
 * @param flow             Q, positive from first to second end [m³/s]
 * @returns h, same sign as flow [m]; 0 at Q = 0, odd in Q; slope 0 at Q = 0
 * @valid HAZEN_WILLIAMS_RANGE; below it the value is far too small (0.3 of the true loss at Re 500)
 * @throws RangeError when bore or coefficient is not finite and positive, length is negative, or flow is not finite
 * @source hazen-williams-si, SI form, seen; exponent 4.8704 from memory
 * @example headLossHazenWilliams({ length: 100, bore: 0.0158, coefficient: 150 }, 5e-5)   // 0.6394
 */
export function headLossHazenWilliams(run: HazenWilliamsRun, flow: number): number {
  requireFinite("headLossHazenWilliams", { flow });
  return lossPerUnitFlow("headLossHazenWilliams", run) * Math.sign(flow) * Math.abs(flow) ** FLOW_EXPONENT;
}

/**
 * Flow that loses a given head by the Hazen-Williams formula.
 *
 *   Q = [h C^1.852 d^4.8704 / (10.67 L)]^(1/1.852)                          (1)
 *
 * @param run.length       L, along the pipe [m], > 0
 * @param run.bore         d, inside [m], > 0
 * @param run.coefficient  C [-], > 0
 * @param headLoss         h, positive when the first end stands higher [m]
 * @returns Q, same sign as headLoss [m³/s]; the inverse of headLossHazenWilliams
 * @valid HAZEN_WILLIAMS_RANGE
 * @throws RangeError when length, bore or coefficient is not finite and positive, or headLoss is not finite
 * @source hazen-williams-si, SI form solved for Q, seen
 * @example flowHazenWilliams({ length: 100, bore: 0.0158, coefficient: 150 }, 1)   // 6.365e-5
 */
export function flowHazenWilliams(run: HazenWilliamsRun, headLoss: number): number {
  requirePositive("flowHazenWilliams", { "run.length": run.length });
  requireFinite("flowHazenWilliams", { headLoss });
  const perUnit = lossPerUnitFlow("flowHazenWilliams", run);
  return Math.sign(headLoss) * (Math.abs(headLoss) / perUnit) ** (1 / FLOW_EXPONENT);
}

const lies = (value: number, range: { readonly least: number; readonly greatest: number }): boolean =>
  value >= range.least && value <= range.greatest;

/**
 * Whether a state of flow lies inside the published range of Hazen-Williams.
 *
 *   each of Re, d, |v|, t lies from least to greatest of HAZEN_WILLIAMS_RANGE  (1)
 *
 * @param state.bore          d, inside [m]
 * @param state.velocity      v, mean, either sign [m/s]
 * @param state.reynolds      Re, either sign [-]
 * @param state.temperatureC  t, of the water [°C]
 * @returns true when all four lie inside; false for anything not a number
 * @valid any numbers
 * @source christensen-2000, pp. 167-168, seen; the rest as HAZEN_WILLIAMS_RANGE says
 * @example isHazenWilliamsInRange({ bore: 0.0158, velocity: 0.12, reynolds: 1930, temperatureC: 20 })   // false
 */
export function isHazenWilliamsInRange(state: {
  readonly bore: number;
  readonly velocity: number;
  readonly reynolds: number;
  readonly temperatureC: number;
}): boolean {
  return (
    lies(Math.abs(state.reynolds), HAZEN_WILLIAMS_RANGE.reynolds) &&
    lies(state.bore, HAZEN_WILLIAMS_RANGE.bore) &&
    lies(Math.abs(state.velocity), HAZEN_WILLIAMS_RANGE.velocity) &&
    lies(state.temperatureC, HAZEN_WILLIAMS_RANGE.temperatureC)
  );
}
