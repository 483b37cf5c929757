/** Numbers spread evenly over (0, 1): one for each input of each sample. */
export interface Draws {
  /** From 0 to 1, both excluded. */
  uniform(sample: number, input: number): number;
}

/** Degree and inner coefficients of a primitive polynomial, and first direction numbers, from the second dimension on. */
const POLYNOMIALS: readonly (readonly [degree: number, inner: number, first: readonly number[]])[] = [
  [1, 0, [1]],
  [2, 1, [1, 3]],
  [3, 1, [1, 3, 1]],
  [3, 2, [1, 1, 1]],
  [4, 1, [1, 1, 3, 3]],
  [4, 4, [1, 3, 5, 13]],
  [5, 2, [1, 1, 5, 5, 17]],
  [5, 4, [1, 1, 5, 5, 5]],
  [5, 7, [1, 1, 7, 11, 19]],
  [5, 11, [1, 1, 5, 1, 1]],
  [5, 13, [1, 1, 1, 3, 11]],
  [5, 14, [1, 3, 5, 5, 31]],
  [6, 1, [1, 3, 3, 9, 7, 49]],
  [6, 13, [1, 1, 1, 15, 21, 21]],
  [6, 16, [1, 3, 1, 13, 27, 49]],
];

/** Dimensions whose points are even together, not each for itself only. */
export const SOBOL_DIMENSIONS = POLYNOMIALS.length + 1;
const BITS = 32;
const DIRECTIONS = POLYNOMIALS.reduce(
  (table, polynomial, d) => {
    table.set(directionsOf(...polynomial), BITS * (d + 1));
    return table;
  },
  new Uint32Array(BITS * SOBOL_DIMENSIONS).map((_, i) => (i < BITS ? 2 ** (BITS - 1 - i) : 0)),
);

function directionsOf(degree: number, inner: number, first: readonly number[]): Uint32Array {
  const v = new Uint32Array(BITS);
  for (let i = 0; i < BITS; i += 1) {
    if (i < degree) {
      v[i] = first[i] << (BITS - 1 - i);
      continue;
    }
    v[i] = v[i - degree] ^ (v[i - degree] >>> degree);
    for (let k = 1; k < degree; k += 1) if (((inner >>> (degree - 1 - k)) & 1) === 1) v[i] ^= v[i - k];
  }
  return v;
}

/**
 * One coordinate of a point of Sobol's sequence, as 32 bits after the binary point.
 *
 *   x = ⊕ vᵢ over the bits i that are set in the point's number                                        (1)
 *
 * @param point      number of the point, whole, from 0
 * @param dimension  which coordinate, from 0 to SOBOL_DIMENSIONS − 1
 * @returns x · 2³², a whole number from 0 to 2³² − 1
 * @valid up to 2³² points
 * @throws RangeError when there is no such dimension
 * @source joe-kuo-2008, direction numbers, from memory
 * @example sobolBits(1, 0)   // 2147483648
 */
export function sobolBits(point: number, dimension: number): number {
  if (!(dimension >= 0 && dimension < SOBOL_DIMENSIONS))
    throw new RangeError(
      `sobolBits: dimension is ${dimension}; it must be from 0 to ${SOBOL_DIMENSIONS - 1}`,
    );
  let bits = 0;
  for (let rest = point, i = BITS * dimension; rest > 0; rest >>>= 1, i += 1)
    if ((rest & 1) === 1) bits ^= DIRECTIONS[i];
  return bits >>> 0;
}

const reversed = (word: number): number => {
  let x = word;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return ((x >>> 16) | (x << 16)) >>> 0;
};

/** Each bit turned or not by what the bits below it are, and by the seed. */
const turned = (word: number, seed: number): number => {
  let x = (word + seed) | 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return x >>> 0;
};

/**
 * Turns each bit of a fraction by what stands before it: points that were even stay even, wherever they come to lie.
 *
 *   x′ = rev(h(rev(x), seed)),  h such that a bit hangs only on those below it                          (1)
 *
 * @param bits  32 bits after the binary point
 * @param seed  whole number of 32 bits
 * @returns 32 bits again
 * @valid any
 * @source burley-2020, from memory
 * @example scrambled(scrambled(5, 0), 0) === 5   // true
 */
export const scrambled = (bits: number, seed: number): number => reversed(turned(reversed(bits), seed));

/** A seed of 32 bits for one thing of that name. */
export function seedOf(text: string, seed: number): number {
  let hash = (0x811c9dc5 ^ seed) >>> 0;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  hash ^= hash >>> 16;
  hash = Math.imul(hash, 0x85ebca6b);
  hash ^= hash >>> 13;
  hash = Math.imul(hash, 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/**
 * Draws that fill the room of the inputs evenly: the first of them as Sobol's sequence, scrambled; each of the others
 * evenly for itself, in an order of its own. What is drawn for one beyond the first hangs on its name and the seed
 * only, not on what stands beside it.
 *
 * @param names     of the inputs, the weightiest first; no two alike
 * @param seed      whole number
 * @param together  how many of them are even together, at most SOBOL_DIMENSIONS
 */
export function evenDraws(names: readonly string[], seed: number, together = SOBOL_DIMENSIONS): Draws {
  const turn = Uint32Array.from(names, (name) => seedOf(name, seed));
  const order = Uint32Array.from(names, (name) => seedOf(`order of ${name}`, seed));
  const first = Math.min(together, SOBOL_DIMENSIONS);
  return {
    uniform(sample, input) {
      const fromLast = input < first ? reversed(sobolBits(sample, input)) : scrambled(sample, order[input]);
      return (reversed(turned(fromLast, turn[input])) + 0.5) / 2 ** BITS;
    },
  };
}
