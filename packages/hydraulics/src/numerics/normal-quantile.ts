/** Numerators and denominators of the three ranges, highest power first. */
const MIDDLE = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  under: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
} as const;
const FLANK = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
} as const;
const TAIL = {
  over: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  under: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
} as const;

const ratioAt = ({ over, under }: { over: readonly number[]; under: readonly number[] }, x: number): number =>
  horner(over, x) / horner(under, x);

function horner(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = 0; i < coefficients.length; i += 1) sum = sum * x + coefficients[i];
  return sum;
}

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
