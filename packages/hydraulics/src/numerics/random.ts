/** A stream of random numbers; the same seed gives the same stream on every machine. */
export interface Random {
  /** The next 32 random bits, as a whole number from 0 to 2³² − 1. */
  bits(): number;
  /** From 0 (included) to 1 (excluded), evenly, in steps of 2⁻⁵³; takes two draws of bits. */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
  /** A whole number from 0 to count − 1, evenly. */
  integerBelow(count: number): number;
}

/**
 * Numbers of splitmix64, which spreads a seed over a state.
 *
 *   z += 9E3779B97F4A7C15₁₆;  z = (z ⊕ z≫30) BF58476D1CE4E5B9₁₆;  z = (z ⊕ z≫27) 94D049BB133111EB₁₆;  z ⊕ z≫31      (1)
 *
 * @param seed  any whole number; its lowest 64 bits count
 * @returns a function that gives the next 64 bits
 * @valid any seed
 * @source steele-2014, from memory; constants as in the authors' public code
 * @example splitmix64(1234567n)().toString()   // 6457827717110365317
 */
export function splitmix64(seed: bigint): () => bigint {
  let state = BigInt.asUintN(64, seed);
  return () => {
    state = BigInt.asUintN(64, state + 0x9e3779b97f4a7c15n);
    let z = state;
    z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
    z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
    return z ^ (z >> 31n);
  };
}

const rotatedLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/**
 * xoshiro128**: 32-bit random words from a state of four words.
 *
 *   result = rotl(s₁ · 5, 7) · 9;  then the linear step of shifts and exclusive ors                    (1)
 *
 * @param state  four 32-bit words, not all 0
 * @returns a function that gives the next word, 0 to 2³² − 1
 * @valid any state but all 0
 * @throws RangeError when all four words are 0
 * @source blackman-vigna-2021, xoshiro128**, from memory
 * @example xoshiro128([1, 2, 3, 4])()   // 11520
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [s0, s1, s2, s3] = state.map((word) => word | 0) as [number, number, number, number];
  if ((s0 | s1 | s2 | s3) === 0) throw new RangeError("xoshiro128: state is all 0; one word must differ");
  return () => {
    const result = Math.imul(rotatedLeft(Math.imul(s1, 5), 7), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = rotatedLeft(s3, 11);
    return result;
  };
}

/**
 * A stream of random numbers from a seed: xoshiro128**, its state filled by splitmix64.
 *
 *   uniform = (a≫5 · 2²⁶ + b≫6) / 2⁵³ from two words a, b                                              (1)
 *   normal by the polar method: u √(−2 ln s / s), s = u² + v² < 1                                      (2)
 *
 * @param seed  whole number, exact in a double
 * @returns the stream
 * @valid not for secrets
 * @throws RangeError when seed is not a whole number of at most 2⁵³ − 1
 * @source blackman-vigna-2021, from memory; marsaglia-bray-1964 for (2), from memory
 * @example randomFrom(7).uniform() === randomFrom(7).uniform()   // true
 */
export function randomFrom(seed: number): Random {
  if (!Number.isSafeInteger(seed)) {
    throw new RangeError(`randomFrom: seed is ${seed}; it must be a whole number of at most 2^53 - 1`);
  }
  const spread = splitmix64(BigInt(seed));
  const [first, second] = [spread(), spread()];
  const low = (word: bigint): number => Number(word & 0xffffffffn);
  const bits = xoshiro128([low(first), low(first >> 32n), low(second), low(second >> 32n)]);
  const uniform = (): number => ((bits() >>> 5) * 67_108_864 + (bits() >>> 6)) / 9_007_199_254_740_992;

  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const stretch = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * stretch;
      return u * stretch;
    }
  };
  const integerBelow = (count: number): number => {
    if (!Number.isSafeInteger(count) || count < 1) {
      throw new RangeError(`integerBelow: count is ${count}; it must be a whole number above 0`);
    }
    return Math.floor(uniform() * count);
  };
  return { bits, uniform, normal, integerBelow };
}
