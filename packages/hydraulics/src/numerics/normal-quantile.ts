/** Numerators and denominators of the three ranges, highest power first. */
const MIDDLE = {
  over: [
    2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4, 4.5921953931549871457e4,
    1.3731693765509461125e4, 1.9715909503065514427e3, 1.3314166789178437745e2, 3.387132872796366608,
  ],
  under: [
    5.226495278852854561e3, 2.8729085735721942674e4, 3.930789580009271061e4, 2.1213794301586595867e4,
    5.3941960214247511077e3, 6.871870074920579083e2, 4.2313330701600911252e1, 1,
  ],
} as const;
const FLANK = {
  over: [
    7.7454501427834140764e-4, 2.27238449892691845833e-2, 2.4178072517745061177e-1, 1.27045825245236838258,
    3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
  ],
  under: [
    1.05075007164441684324e-9, 5.475938084995344946e-4, 1.51986665636164571966e-2, 1.4810397642748007459e-1,
    6.8976733498510000455e-1, 1.6763848301838038494, 2.05319162663775882187, 1,
  ],
} as const;
const TAIL = {
  over: [
    2.01033439929228813265e-7, 2.71155556874348757815e-5, 1.2426609473880784386e-3, 2.6532189526576123093e-2,
    2.9656057182850489123e-1, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
  ],
  under: [
    2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
    1.48753612908506148525e-2, 1.3692988092273580531e-1, 5.9983220655588793769e-1, 1,
  ],
} as const;

const ratioAt = ({ over, under }: { over: readonly number[]; under: readonly number[] }, x: number): number =>
  horner(over, x) / horner(under, x);

const horner = (coefficients: readonly number[], x: number): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

/**
 * The value a standard normal stays under with a given chance: three ratios of polynomials of degree seven.
 *
 *   |p − 1/2| ≤ 0.425:  z = q A(r)/B(r),  q = p − 1/2,  r = 0.425² − q²                                 (1)
 *   else r = √(−ln min(p, 1 − p)):  r ≤ 5:  z = ∓ C(r − 1.6)/D(r − 1.6);  r > 5:  z = ∓ E(r − 5)/F(r − 5)   (2)
 *
 * @param chance  p, above 0 and below 1 [-]
 * @returns z [-]; its relative error is about 1e-16
 * @valid 0 < p < 1
 * @throws RangeError when the chance is not between 0 and 1, both excluded
 * @source wichura-1988, PPND16, from memory
 * @example normalQuantile(0.975)   // 1.96
 */
export function normalQuantile(chance: number): number {
  if (!(chance > 0 && chance < 1))
    throw new RangeError(`normalQuantile: chance is ${chance}; it must be above 0 and below 1`);
  const q = chance - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratioAt(MIDDLE, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? chance : 1 - chance));
  const size = r <= 5 ? ratioAt(FLANK, r - 1.6) : ratioAt(TAIL, r - 5);
  return q < 0 ? -size : size;
}
