import { describe, expect, it } from "vitest";
import { randomFrom, splitmix64, xoshiro128 } from "../../../packages/hydraulics/src/numerics/random.js";

describe("splitmix64", () => {
  // Published check vector for seed 1234567 (from memory).
  it("gives its published first numbers", () => {
    const next = splitmix64(1234567n);
    expect([next(), next(), next(), next(), next()]).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });
});

describe("xoshiro128", () => {
  // First numbers from state 1, 2, 3, 4 as other implementations print them (from memory).
  it("gives its published first numbers", () => {
    const next = xoshiro128([1, 2, 3, 4]);
    expect([next(), next(), next(), next()]).toEqual([11520, 0, 5927040, 70819200]);
  });

  it("takes a state of which one word alone is not nought", () => {
    for (let at = 0; at < 4; at += 1) {
      const state: [number, number, number, number] = [0, 0, 0, 0];
      state[at] = 8;
      const next = xoshiro128(state);
      expect(Array.from({ length: 8 }, next).some((word) => word > 0)).toBe(true);
    }
  });

  it("refuses a state of nought, from which it would never leave", () => {
    expect(() => xoshiro128([0, 0, 0, 0])).toThrow("one word must differ");
  });
});

describe("randomFrom", () => {
  it("gives the same stream for the same seed and another for another", () => {
    const take = (seed: number) => {
      const random = randomFrom(seed);
      return Array.from({ length: 20 }, () => [random.uniform(), random.normal(), random.integerBelow(6)]);
    };
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
    expect(take(-1)).not.toEqual(take(1));
  });

  it("uniform is two words of the stream of its seed, 27 bits and 26, as a fraction", () => {
    const spread = splitmix64(77n);
    const [first, second] = [spread(), spread()];
    const words = [first, first >> 32n, second, second >> 32n].map((one) => Number(one & 0xffffffffn));
    const next = xoshiro128(words as [number, number, number, number]);
    const random = randomFrom(77);
    for (let i = 0; i < 50; i += 1) {
      const [high, low] = [BigInt(next()) >> 5n, BigInt(next()) >> 6n];
      expect(random.uniform()).toBe(Number((high << 26n) | low) / 2 ** 53);
    }
  });

  it("normal gives both numbers of a pair drawn inside the circle, one after the other", () => {
    const [pairs, random] = [randomFrom(5), randomFrom(5)];
    for (let i = 0; i < 20; i += 1) {
      let [u, v, s] = [0, 0, 2];
      while (s >= 1 || s === 0) {
        [u, v] = [2 * pairs.uniform() - 1, 2 * pairs.uniform() - 1];
        s = u * u + v * v;
      }
      const stretch = Math.sqrt((-2 * Math.log(s)) / s);
      expect([random.normal(), random.normal()]).toEqual([u * stretch, v * stretch]);
    }
  });

  it("uniform lies from 0 to under 1 with the mean and spread of an even draw", () => {
    const random = randomFrom(20261125);
    const count = 200_000;
    let sum = 0;
    let squares = 0;
    const tenths = new Array<number>(10).fill(0);
    for (let i = 0; i < count; i++) {
      const u = random.uniform();
      expect(u >= 0 && u < 1).toBe(true);
      sum += u;
      squares += u * u;
      tenths[Math.floor(10 * u)]!++;
    }
    // Bounds of five standard errors.
    expect(Math.abs(sum / count - 1 / 2)).toBeLessThan(5 / Math.sqrt(12 * count));
    expect(Math.abs(squares / count - 1 / 3)).toBeLessThan((5 * Math.sqrt(4 / 45)) / Math.sqrt(count));
    const chiSquare = tenths.reduce((total, seen) => total + (seen - count / 10) ** 2 / (count / 10), 0);
    expect(chiSquare).toBeLessThan(27.9); // 9 degrees of freedom, chance 1 in 1000
  });

  it("normal has mean 0, variance 1, no skew, kurtosis 3 and the normal share within one", () => {
    const random = randomFrom(4);
    const count = 200_000;
    const moments = [0, 0, 0, 0];
    let within = 0;
    for (let i = 0; i < count; i++) {
      const z = random.normal();
      for (let power = 1; power <= 4; power++) moments[power - 1]! += z ** power / count;
      if (Math.abs(z) < 1) within++;
    }
    const five = 5 / Math.sqrt(count);
    expect(Math.abs(moments[0]!)).toBeLessThan(five);
    expect(Math.abs(moments[1]! - 1)).toBeLessThan(five * Math.sqrt(2));
    expect(Math.abs(moments[2]!)).toBeLessThan(five * Math.sqrt(15));
    expect(Math.abs(moments[3]! - 3)).toBeLessThan(five * Math.sqrt(96));
    expect(Math.abs(within / count - 0.682689492)).toBeLessThan(five / 2);
  });

  it("integerBelow gives each face of a die about as often", () => {
    const random = randomFrom(11);
    const seen = new Array<number>(6).fill(0);
    for (let i = 0; i < 60_000; i++) seen[random.integerBelow(6)]!++;
    expect(seen.reduce((total, one) => total + (one - 10_000) ** 2 / 10_000, 0)).toBeLessThan(20.5); // 5 d.f., 1 in 1000
  });

  it("refuses a seed or a count that is no whole number", () => {
    expect(() => randomFrom(1.5)).toThrow("seed is 1.5");
    expect(() => randomFrom(Number.NaN)).toThrow(RangeError);
    expect(() => randomFrom(1).integerBelow(0)).toThrow("count is 0");
    expect(() => randomFrom(1).integerBelow(1.5)).toThrow("count is 1.5");
    expect(() => randomFrom(1).integerBelow(2 ** 54)).toThrow("count is 18014398509481984");
  });
});
