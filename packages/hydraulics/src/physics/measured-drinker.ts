import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { sumOf } from "../numerics/sum.js";
import { DRINKER_EXPONENT_RANGE, type DrinkerLaw } from "./orifice.js";

/** One reading with jug and watch: what a drinker held open gave at a head. */
export interface MeasuredReading {
  /** Height of the water above the drinker [m]. */
  readonly head: number;
  /** Flow [m³/s]. */
  readonly flow: number;
}

/** What to be told about a fit before it is trusted. */
export type MeasurementFinding =
  /** The exponent came out under the range of any known drinker: suspect a reading, or the drinker regulates. */
  | "exponent-low"
  /** The exponent came out over that range: suspect a reading or an opening head. */
  | "exponent-high"
  /** The heads are too alike to tell the exponent; it was assumed. */
  | "heads-alike"
  /** With two readings the curve passes through both: they cannot show their own error. */
  | "no-check";

/** A drinker's law from readings, with how far to trust it. */
export interface MeasuredLaw {
  readonly law: DrinkerLaw;
  /** Standard doubt of the flow at centreHead, as a share of it [-]. */
  readonly relativeDoubt: number;
  /** Standard doubt of the exponent [-]. */
  readonly exponentDoubt: number;
  /** Head at which the readings balance (geometric mean above opening), where the law is surest [m]. */
  readonly centreHead: number;
  /** For each reading ln(flow read / flow of the law), about its relative error [-]. */
  readonly residuals: readonly number[];
  readonly outside: readonly MeasurementFinding[];
}

/** What is known beside the readings. */
export interface MeasurementOptions {
  /** Head below which nothing comes; 0 unless given [m]. */
  readonly openingHead?: number;
  /** Standard error of one reading of flow, as a share of it; 0.05 unless given [-]. Common practice, no source. */
  readonly readingError?: number;
  /** The exponent assumed where the heads cannot tell it; 0.5 unless given, a plain orifice [-]. */
  readonly assumedExponent?: number;
}

/** Doubt of an exponent nobody measured: an even spread over the range of known drinkers. */
const UNMEASURED_EXPONENT_DOUBT =
  (DRINKER_EXPONENT_RANGE.greatest - DRINKER_EXPONENT_RANGE.least) / Math.sqrt(12);

/**
 * The law of a drinker from jug-and-watch readings, by least squares through the logarithms.
 *
 *   ln q = ln k + x ln(h − h₀);   x = S_xy/S_xx,   ln k = ȳ − x x̄           (1)
 *   doubt of x = σ/√S_xx,  doubt of ln q at the centre = σ/√n               (2)
 *   σ = the larger of the stated reading error and √(Σr²/(n − 2))           (3)
 *
 * Where (2) would leave x more doubtful than an exponent nobody measured (0.23), x is assumed instead and "heads-alike"
 * is found. An exponent outside DRINKER_EXPONENT_RANGE is reported, never changed.
 *
 * @param readings  one or more; two or more at heads well apart to tell the exponent
 * @param options   openingHead [m], readingError [-], assumedExponent [-]
 * @returns the law, its doubts, residuals and findings
 * @valid heads between and near those read; doubtOfFlow tells how doubt grows beyond
 * @throws RangeError when there is no reading, a flow is not positive, a head not above openingHead, or an option
 *   is out of its bounds
 * @source least-squares, closed form of a straight line
 * @example fitDrinkerLaw([{ head: 0.25, flow: 1e-6 }, { head: 1, flow: 2e-6 }]).law.exponent   // 0.5
 */
export function fitDrinkerLaw(
  readings: readonly MeasuredReading[],
  options: MeasurementOptions = {},
): MeasuredLaw {
  const { openingHead = 0, readingError = 0.05, assumedExponent = 0.5 } = options;
  requireReadings(readings, openingHead);
  requirePositive("fitDrinkerLaw", { readingError, assumedExponent });

  const x = readings.map(({ head }) => Math.log(head - openingHead));
  const y = readings.map(({ flow }) => Math.log(flow));
  const count = readings.length;
  const xMean = sumOf(x) / count;
  const yMean = sumOf(y) / count;
  const spread = sumOf(x.map((one) => (one - xMean) ** 2));
  const slope = sumOf(x.map((one, i) => (one - xMean) * (y[i]! - yMean))) / spread;
  const residualsAt = (exponent: number) => y.map((one, i) => one - yMean - exponent * (x[i]! - xMean));
  const errorAt = (exponent: number, fitted: number) => {
    const free = count - fitted;
    const seen = free > 0 ? Math.sqrt(sumOf(residualsAt(exponent).map((r) => r * r)) / free) : 0;
    return Math.max(readingError, seen);
  };

  // A spread of nought makes the slope NaN, and its doubt infinite: both fall to the assumed exponent.
  const slopeDoubt = spread > 0 ? errorAt(slope, 2) / Math.sqrt(spread) : Number.POSITIVE_INFINITY;
  const isAssumed = !(slopeDoubt < UNMEASURED_EXPONENT_DOUBT);
  const exponent = isAssumed ? assumedExponent : slope;
  return {
    law: { coefficient: Math.exp(yMean - exponent * xMean), exponent, openingHead },
    relativeDoubt: errorAt(exponent, isAssumed ? 1 : 2) / Math.sqrt(count),
    exponentDoubt: isAssumed ? UNMEASURED_EXPONENT_DOUBT : slopeDoubt,
    centreHead: openingHead + Math.exp(xMean),
    residuals: residualsAt(exponent),
    outside: findings(exponent, isAssumed, count),
  };
}

/**
 * Standard doubt of a measured drinker's flow at a head, as a share of that flow.
 *
 *   u = √[u_c² + (u_x ln((h − h₀)/(h_c − h₀)))²]                            (1)
 *
 * @param measured  a law from fitDrinkerLaw
 * @param head      h [m], above the opening head
 * @returns u [-]; least at the centre of the readings
 * @valid while u is small, say under 0.3
 * @throws RangeError when head is not above the opening head
 * @source least-squares, doubt of a straight line away from its centre
 * @example doubtOfFlow(fitDrinkerLaw([{ head: 0.25, flow: 1e-6 }, { head: 1, flow: 2e-6 }]), 0.5)   // 0.03536
 */
export function doubtOfFlow(measured: MeasuredLaw, head: number): number {
  const { openingHead } = measured.law;
  if (!(Number.isFinite(head) && head > openingHead)) {
    throw new RangeError(`doubtOfFlow: head is ${head}; it must be above the opening head ${openingHead}`);
  }
  const away = Math.log((head - openingHead) / (measured.centreHead - openingHead));
  return Math.hypot(measured.relativeDoubt, measured.exponentDoubt * away);
}

function findings(exponent: number, isAssumed: boolean, count: number): readonly MeasurementFinding[] {
  const found: MeasurementFinding[] = [];
  if (exponent < DRINKER_EXPONENT_RANGE.least) found.push("exponent-low");
  if (exponent > DRINKER_EXPONENT_RANGE.greatest) found.push("exponent-high");
  if (isAssumed) found.push("heads-alike");
  if (count <= (isAssumed ? 1 : 2)) found.push("no-check");
  return found;
}

function requireReadings(readings: readonly MeasuredReading[], openingHead: number): void {
  requireNotNegative("fitDrinkerLaw", { openingHead });
  if (readings.length === 0)
    throw new RangeError("fitDrinkerLaw: readings is empty; it must hold one or more");
  for (const [i, { head, flow }] of readings.entries()) {
    requirePositive("fitDrinkerLaw", { [`readings[${i}].flow`]: flow });
    if (!(Number.isFinite(head) && head > openingHead)) {
      throw new RangeError(
        `fitDrinkerLaw: readings[${i}].head is ${head}; it must be above the opening head ${openingHead}`,
      );
    }
  }
}
