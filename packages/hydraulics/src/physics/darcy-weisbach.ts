/** Friction along full round pipes: one phenomenon, and long because most of it is what its formulas say of themselves. */

import { requireFinite, requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { GRAVITY } from "./constants.js";

/** A full round pipe and the water in it, where the wall plays no part. */
export interface LaminarRun {
  /** L, along the pipe [m]. */
  readonly length: number;
  /** d, inside [m]. */
  readonly bore: number;
  /** ν, kinematic viscosity [m²/s]. */
  readonly viscosity: number;
}

/** The same with a wall of a certain roughness. */
export interface RoughRun extends LaminarRun {
  /** ε, absolute roughness of the wall [m]. */
  readonly roughness: number;
}

/** How water moves along a run. */
export type Regime = "still" | "laminar" | "critical" | "turbulent";

/**
 * Where the laws of this file hold, as Reynolds numbers and relative roughness ε/d.
 *
 * laminar        up to 2000: f = 64/Re (hydraulic-institute-edb, III.A, seen)
 * critical       2000 to 4000: the factor is indeterminate; the bounding laws differ by two (same, seen)
 * colebrook      from 4000 (same, seen), to 1e8 and 0.05 (Moody's chart, from memory)
 * swameeJain     5e3 to 1e8, 1e-6 to 1e-2 (swamee-jain-1976, from memory)
 *
 * @source hydraulic-institute-edb, III.A, seen
 */
export const FRICTION_RANGE = {
  laminar: { least: 0, greatest: 2000 },
  critical: { least: 2000, greatest: 4000 },
  colebrook: { reynolds: { least: 4000, greatest: 1e8 }, relativeRoughness: { least: 0, greatest: 0.05 } },
  swameeJain: { reynolds: { least: 5e3, greatest: 1e8 }, relativeRoughness: { least: 1e-6, greatest: 1e-2 } },
} as const;

/**
 * Below this Reynolds number Churchill's formula is 64/Re to the last bit a double can hold: the turbulent part
 * (A + B)^-1.5 <= (Re/37530)^24 is under 4e-24 of the laminar part (8/Re)^12, and adds 1/12 of that to f. The test
 * of this file repeats the count. Taking 64/Re there also keeps the sixteenth powers from overflowing near Re = 0.
 */
const CHURCHILL_LAMINAR_BELOW = 500;

/**
 * Mean velocity in a full round bore.
 *
 *   v = 4 Q / (π d²)                                                        (1)
 *
 * @param bore  d, inside [m], > 0
 * @param flow  Q, either sign [m³/s]
 * @returns v, same sign as flow [m/s]
 * @valid any
 * @throws RangeError when bore is not finite and positive, or flow is not finite
 * @source closed-form, definition of the mean velocity
 * @example velocityInBore(0.016, 2e-5)   // 0.0995
 */
export function velocityInBore(bore: number, flow: number): number {
  requirePositive("velocityInBore", { bore });
  requireFinite("velocityInBore", { flow });
  return (4 * flow) / (Math.PI * bore * bore);
}

/**
 * Reynolds number of a full round bore.
 *
 *   Re = |v| d / ν = 4 |Q| / (π d ν)                                        (1)
 *
 * @param pipe.bore       d, inside [m], > 0
 * @param pipe.viscosity  ν, kinematic [m²/s], > 0
 * @param flow            Q, either sign [m³/s]
 * @returns Re [-], never negative
 * @valid any
 * @throws RangeError when bore or viscosity is not finite and positive, or flow is not finite
 * @source hydraulic-institute-edb, III.A, seen
 * @example reynoldsNumber({ bore: 0.0158, viscosity: 1.0034e-6 }, 2.4e-5)   // 1927.5
 */
export function reynoldsNumber(
  pipe: { readonly bore: number; readonly viscosity: number },
  flow: number,
): number {
  requirePositive("reynoldsNumber", { "pipe.bore": pipe.bore, "pipe.viscosity": pipe.viscosity });
  requireFinite("reynoldsNumber", { flow });
  return (4 * Math.abs(flow)) / (Math.PI * pipe.bore * pipe.viscosity);
}

/**
 * Regime of flow in a round bore.
 *
 *   still: Re = 0;  laminar: Re < 2000;  critical: 2000 to 4000;  turbulent: Re > 4000      (1)
 *
 * @param reynolds  Re [-], >= 0
 * @returns the regime; both ends 2000 and 4000 count as critical
 * @valid FRICTION_RANGE
 * @throws RangeError when reynolds is negative or not finite
 * @source hydraulic-institute-edb, III.A, seen
 * @example regimeAt(1930)   // "laminar"
 */
export function regimeAt(reynolds: number): Regime {
  requireNotNegative("regimeAt", { reynolds });
  if (reynolds === 0) return "still";
  if (reynolds < FRICTION_RANGE.critical.least) return "laminar";
  return reynolds <= FRICTION_RANGE.critical.greatest ? "critical" : "turbulent";
}

/**
 * Darcy friction factor of laminar flow.
 *
 *   f = 64 / Re                                                             (1)
 *
 * @param reynolds  Re [-], > 0
 * @returns f [-]
 * @valid FRICTION_RANGE.laminar; beyond it the value is too small
 * @throws RangeError when reynolds is not finite and positive
 * @source hydraulic-institute-edb, III.A, seen
 * @example frictionFactorLaminar(1000)   // 0.064
 */
export function frictionFactorLaminar(reynolds: number): number {
  requirePositive("frictionFactorLaminar", { reynolds });
  return 64 / reynolds;
}

/**
 * Darcy friction factor for every regime, one smooth curve.
 *
 *   f = 8 [(8/Re)^12 + (A + B)^-1.5]^(1/12)                                 (1)
 *   A = {2.457 ln 1/[(7/Re)^0.9 + 0.27 ε/d]}^16                             (2)
 *   B = (37530/Re)^16                                                       (3)
 *
 * @param reynolds           Re [-], > 0
 * @param relativeRoughness  ε/d [-], 0 to 1
 * @returns f [-]; exactly 64/Re below Re 500, where the other terms vanish in double precision
 * @valid FRICTION_RANGE; from 2000 to 4000 nature itself differs by a factor of two
 * @throws RangeError when reynolds is not finite and positive or relativeRoughness is not from 0 to 1
 * @source churchill-1977, pp. 91-92, seen as quoted
 * @example frictionFactorChurchill(1e5, 1e-4)   // 0.0184626
 */
export function frictionFactorChurchill(reynolds: number, relativeRoughness: number): number {
  requirePositive("frictionFactorChurchill", { reynolds });
  requireRelativeRoughness("frictionFactorChurchill", relativeRoughness);
  return churchillCurve(reynolds, relativeRoughness);
}

/** The formula of `frictionFactorChurchill` alone, for callers in a loop who have checked what they pass. */
export function churchillCurve(reynolds: number, relativeRoughness: number): number {
  if (reynolds < CHURCHILL_LAMINAR_BELOW) return 64 / reynolds;
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const b = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12);
}

/**
 * Darcy friction factor of turbulent flow by the implicit law of Colebrook and White, solved to machine precision.
 *
 *   1/√f = −2 log₁₀[ε/(3.7 d) + 2.51/(Re √f)]                               (1)
 *
 * With x = 1/√f the residual x + 2 log₁₀(a + b x) rises and bends downward, so Newton's steps from its
 * left climb to the root and never pass it; the loop ends when rounding stops the climb.
 *
 * @param reynolds           Re [-], > 0
 * @param relativeRoughness  ε/d [-], 0 to 1
 * @returns f [-]
 * @valid FRICTION_RANGE.colebrook; below Re 4000 the value has no meaning
 * @throws RangeError when reynolds is not finite and positive or relativeRoughness is not from 0 to 1
 * @source colebrook-1939, quoted as eq. 3.A.2 of hydraulic-institute-edb, seen
 * @example frictionFactorColebrook(1e5, 1e-4)   // 0.018513866077
 */
export function frictionFactorColebrook(reynolds: number, relativeRoughness: number): number {
  requirePositive("frictionFactorColebrook", { reynolds });
  requireRelativeRoughness("frictionFactorColebrook", relativeRoughness);
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  let x = Math.min(1, 0.1 / b);
  for (let step = 0; step < 60; step++) {
    const residual = x + 2 * Math.log10(a + b * x);
    const slope = 1 + (2 * b) / (Math.LN10 * (a + b * x));
    const next = x - residual / slope;
    if (step > 2 && next <= x) break;
    x = next;
  }
  return 1 / (x * x);
}

/**
 * Darcy friction factor of turbulent flow, explicit.
 *
 *   f = 0.25 / [log₁₀(ε/(3.7 d) + 5.74/Re^0.9)]²                            (1)
 *
 * @param reynolds           Re [-], > 0
 * @param relativeRoughness  ε/d [-], 0 to 1
 * @returns f [-]
 * @valid FRICTION_RANGE.swameeJain; within about 1 % of Colebrook at common roughness, 3 % over its whole range
 * @throws RangeError when reynolds is under about 11, where the formula breaks down, or relativeRoughness is not from 0 to 1
 * @source swamee-jain-1976, quoted as eq. 3.A.3 of hydraulic-institute-edb, seen
 * @example frictionFactorSwameeJain(1e5, 1e-4)   // 0.0184524
 */
export function frictionFactorSwameeJain(reynolds: number, relativeRoughness: number): number {
  requirePositive("frictionFactorSwameeJain", { reynolds });
  requireRelativeRoughness("frictionFactorSwameeJain", relativeRoughness);
  const argument = relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9;
  if (argument >= 1) {
    throw new RangeError(`frictionFactorSwameeJain: reynolds is ${reynolds}; it must be above 11`);
  }
  return 0.25 / Math.log10(argument) ** 2;
}

/**
 * Head lost to friction in laminar flow along a full round pipe.
 *
 *   h = 32 ν L v / (g d²),   v = 4 Q / (π d²)                               (1)
 *
 * @param run.length     L, along the pipe [m], >= 0
 * @param run.bore       d, inside [m], > 0
 * @param run.viscosity  ν, kinematic, at the water's temperature [m²/s], > 0
 * @param flow           Q, positive from first to second end [m³/s]
 * @returns h, same sign as flow [m of this water]; 0 at Q = 0, linear, odd in Q
 * @valid FRICTION_RANGE.laminar; beyond it the value is too small: the caller reports "outside"
 * @throws RangeError when bore or viscosity is not finite and positive, length is negative, or flow is not finite
 * @source hydraulic-institute-edb, III.A, seen
 * @example headLossLaminar({ length: 30, bore: 0.016, viscosity: 1.004e-6 }, 2e-5)   // 0.0382
 */
export function headLossLaminar(run: LaminarRun, flow: number): number {
  requireRun("headLossLaminar", run, flow);
  return (32 * run.viscosity * run.length * velocityInBore(run.bore, flow)) / (GRAVITY * run.bore * run.bore);
}

/**
 * Head lost to friction along a full round pipe in any regime, Churchill's factor in Darcy and Weisbach's law.
 *
 *   h = f (L/d) v |v| / (2 g),   f = frictionFactorChurchill(Re, ε/d)       (1)
 *
 * Left out: the extra loss of the entrance length (about 0.06 Re d in laminar flow) and of kinetic energy.
 *
 * @param run.length     L, along the pipe [m], >= 0
 * @param run.bore       d, inside [m], > 0
 * @param run.roughness  ε, absolute, of the wall [m], >= 0 and at most the bore
 * @param run.viscosity  ν, kinematic, at the water's temperature [m²/s], > 0
 * @param flow           Q, positive from first to second end [m³/s]
 * @returns h, same sign as flow [m of this water]; 0 at Q = 0, odd and rising in Q
 * @valid FRICTION_RANGE; from Re 2000 to 4000 uncertain by a factor of two
 * @throws RangeError when a member of run is outside its bounds or flow is not finite
 * @source churchill-1977, pp. 91-92, seen as quoted
 * @example headLossDarcyWeisbach({ length: 30, bore: 0.0158, roughness: 1.5e-6, viscosity: 1.0034e-6 }, 5e-5)   // 0.2559
 */
export function headLossDarcyWeisbach(run: RoughRun, flow: number): number {
  requireRun("headLossDarcyWeisbach", run, flow);
  requireNotNegative("headLossDarcyWeisbach", { "run.roughness": run.roughness });
  const reynolds = reynoldsNumber(run, flow);
  if (reynolds < CHURCHILL_LAMINAR_BELOW) return headLossLaminar(run, flow);
  const factor = frictionFactorChurchill(reynolds, run.roughness / run.bore);
  const velocity = velocityInBore(run.bore, flow);
  return (factor * (run.length / run.bore) * velocity * Math.abs(velocity)) / (2 * GRAVITY);
}

function requireRun(owner: string, run: LaminarRun, flow: number): void {
  requireNotNegative(owner, { "run.length": run.length });
  requirePositive(owner, { "run.bore": run.bore, "run.viscosity": run.viscosity });
  requireFinite(owner, { flow });
}

function requireRelativeRoughness(owner: string, relativeRoughness: number): void {
  if (!(relativeRoughness >= 0 && relativeRoughness <= 1)) {
    throw new RangeError(`${owner}: relativeRoughness is ${relativeRoughness}; it must be from 0 to 1`);
  }
}
