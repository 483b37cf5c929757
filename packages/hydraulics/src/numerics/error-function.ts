/** Where the series ends and the continued fraction begins. */
const SERIES_BELOW = 2.5;
const TERMS = 60;

/**
 * Error function, erf x = 2/√π ∫₀ˣ e^(−u²) du: by its series up to 2.5, by the continued fraction of its complement
 * beyond.
 *
 * @param x  any number
 * @returns erf x, to about 1e-14
 * @source abramowitz-stegun, 7.1.6 and 7.1.14, from memory
 * @example errorFunction(0.5)   // 0.5204998778
 */
export function errorFunction(x: number): number {
  const size = Math.abs(x);
  const value = size < SERIES_BELOW ? bySeries(size) : 1 - byFraction(size);
  return x < 0 ? -value : value;
}

function bySeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n <= TERMS; n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

function byFraction(x: number): number {
  if (x > 27) return 0;
  let tail = x;
  for (let n = TERMS; n >= 1; n -= 1) tail = x + n / 2 / tail;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * tail);
}
