import { describe, expect, it } from "vitest";
import {
  evenDraws,
  SOBOL_DIMENSIONS,
  scrambled,
  seedOf,
  sobolBits,
} from "../../../packages/hydraulics/src/numerics/even-draws.js";

describe("sobolBits", () => {
  /** Point 777 of scipy.stats.qmc.Sobol(16, scramble=False) 1.17.1 takes the points in another order (Gray's): its number here is 777 ^ (777 >> 1). */
  it("gives the point that another implementation gives", () => {
    const point = 777 ^ (777 >> 1);
    const given = Array.from({ length: SOBOL_DIMENSIONS }, (_, d) => sobolBits(point, d) / 2 ** 22);
    expect(given).toEqual([709, 959, 167, 281, 651, 365, 195, 781, 357, 331, 763, 713, 393, 485, 583, 527]);
  });

  it("puts one of the first 2^k points into each of 2^k equal parts, in every dimension", () => {
    for (let d = 0; d < SOBOL_DIMENSIONS; d += 1)
      for (const k of [1, 4, 7]) {
        const parts = new Set(Array.from({ length: 2 ** k }, (_, i) => sobolBits(i, d) >>> (32 - k)));
        expect(parts.size).toBe(2 ** k);
      }
  });

  it("refuses a dimension it has no numbers for", () => {
    expect(() => sobolBits(1, SOBOL_DIMENSIONS)).toThrow(`dimension is ${SOBOL_DIMENSIONS}`);
  });
});

describe("evenDraws", () => {
  const names = Array.from({ length: 24 }, (_, i) => `input ${i}`);

  it("gives the same for the same seed to the bit, and other numbers for another", () => {
    const take = (seed: number) => {
      const draws = evenDraws(names, seed);
      return names.flatMap((_, input) => [0, 1, 2, 199].map((sample) => draws.uniform(sample, input)));
    };
    expect(take(1)).toEqual(take(1));
    expect(take(1).filter((value, i) => value === take(2)[i])).toEqual([]);
  });

  it("puts one of the first 128 into each 128th of every input, with Sobol's points or beyond them", () => {
    const draws = evenDraws(names, 5);
    names.forEach((_, input) => {
      const parts = new Set(
        Array.from({ length: 128 }, (_, sample) => Math.floor(128 * draws.uniform(sample, input))),
      );
      expect(parts.size).toBe(128);
    });
  });

  it("fills the 64 fields of the first two inputs with one of 64 each, eight by eight", () => {
    const draws = evenDraws(names, 9);
    const fields = new Set(
      Array.from(
        { length: 64 },
        (_, k) => 8 * Math.floor(8 * draws.uniform(k, 0)) + Math.floor(8 * draws.uniform(k, 1)),
      ),
    );
    expect(fields.size).toBe(64);
  });

  it("draws for an input by its name: the same wherever it stands among those beyond Sobol's", () => {
    const turned = [...names.slice(0, SOBOL_DIMENSIONS), ...names.slice(SOBOL_DIMENSIONS).reverse()];
    const [one, other] = [evenDraws(names, 3), evenDraws(turned, 3)];
    names.forEach((name, input) => {
      expect(other.uniform(17, turned.indexOf(name))).toBe(one.uniform(17, input));
    });
  });

  it("leaves no two inputs in step", () => {
    const draws = evenDraws(names, 1);
    const column = (input: number) => Array.from({ length: 256 }, (_, k) => draws.uniform(k, input) - 0.5);
    const columns = names.map((_, input) => column(input));
    for (let a = 0; a < names.length; a += 1)
      for (let b = 0; b < a; b += 1) {
        const together = columns[a]!.reduce((sum, x, k) => sum + x * columns[b]![k]!, 0);
        // Four standard deviations of a correlation of 256 random pairs.
        expect(Math.abs((12 * together) / 256)).toBeLessThan(0.25);
      }
  });
});

/** Whole numbers of 32 bits, the long way round. */
const word = (value: bigint): bigint => BigInt.asUintN(32, value);

/** FNV-1a of 32 bits from a basis turned by the seed, then the last mixing of MurmurHash3: both by their definition. */
function seedByDefinition(text: string, seed: number): number {
  let hash = word(0x811c9dc5n ^ BigInt(seed));
  for (const sign of text) hash = word((hash ^ BigInt(sign.charCodeAt(0))) * 0x01000193n);
  hash = word((hash ^ (hash >> 16n)) * 0x85ebca6bn);
  hash = word((hash ^ (hash >> 13n)) * 0xc2b2ae35n);
  return Number(hash ^ (hash >> 16n));
}

const turnedRound = (bits: number): bigint =>
  BigInt(`0b${bits.toString(2).padStart(32, "0").split("").reverse().join("")}`);

function scrambledByDefinition(bits: number, seed: number): number {
  let x = word(turnedRound(bits) + BigInt(seed));
  for (const factor of [0x6c50b47cn, 0xb82f1e52n, 0xc7afe638n, 0x8d22f6e6n]) x = word(x ^ (x * factor));
  return Number(turnedRound(Number(x)));
}

describe("scrambled and seedOf", () => {
  const words = [0, 1, 2, 5, 0x80000000, 0xa5a5a5a5, 0x12345678, 0xffffffff, 3141592653];

  it("scrambled is by definition that of any bits with any seed: the same draws in every version", () => {
    for (const bits of words)
      for (const seed of words) expect(scrambled(bits, seed)).toBe(scrambledByDefinition(bits, seed));
  });

  it("seedOf is by definition that of any name with any seed", () => {
    for (const text of ["", "a", "pressure of the mains", "Alder Bank"])
      for (const seed of [0, 1, 77, 123456789]) expect(seedOf(text, seed)).toBe(seedByDefinition(text, seed));
  });

  it("evenDraws scrambles Sobol's points by the seed of the name, and others by that of their order before", () => {
    const names = Array.from({ length: 18 }, (_, i) => `input ${i}`);
    const draws = evenDraws(names, 3, 4);
    for (const [input, name] of names.entries())
      for (const sample of [0, 1, 100, 777]) {
        const bits =
          input < 4
            ? sobolBits(sample, input)
            : Number(turnedRound(scrambledByDefinition(sample, seedByDefinition(`order of ${name}`, 3))));
        const expected = (scrambledByDefinition(bits, seedByDefinition(name, 3)) + 0.5) / 2 ** 32;
        expect(draws.uniform(sample, input)).toBe(expected);
      }
  });
  it("scrambled keeps together what shared its first bits", () => {
    const parts = new Set(Array.from({ length: 16 }, (_, i) => scrambled((0xa0000000 + i) >>> 0, 77) >>> 4));
    expect(parts.size).toBe(1);
  });

  it("seedOf tells names and seeds apart", () => {
    const seeds = new Set(
      [1, 2, 3].flatMap((seed) => Array.from({ length: 500 }, (_, i) => seedOf(`input ${i}`, seed))),
    );
    expect(seeds.size).toBe(1500);
  });
});
