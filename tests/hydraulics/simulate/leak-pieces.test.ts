import { describe, expect, it } from "vitest";
import {
  endOfPiece,
  layLeak,
  leakAt,
  rootOf,
  timeBetween,
} from "../../../packages/hydraulics/src/simulate/leak-pieces.js";
import type { Pool } from "../../../packages/hydraulics/src/simulate/pool.js";

/** A vessel of plumb walls, 0.5 m2, filled to 0.8 m; a leak at 0.2 m of 1e-5 m3/s at 1 m. */
const AREA = 0.5;
const pool: Pool = {
  stores: [
    {
      ...{ source: 0, full: 0.5, dead: 0, top: 1, bottom: 0 },
      surfaceAt: (volume) => volume / AREA,
      volumeAt: (surface) => surface * AREA,
      levelAt: (volume) => volume / AREA,
    },
  ],
  start: [0.4],
};
const flowAt = (surface: number) => 1e-5 * Math.sqrt(Math.max(0, surface - 0.2));
const leak = { endsAt: 0.2, flowAt } as Parameters<typeof layLeak>[1];
const MOST = 0.3;

describe("layLeak", () => {
  const pieces = () => layLeak(pool, leak, []);

  it("lays places evenly in the root of what the leak has not yet got", () => {
    const { most, drawn, root, flow } = pieces();
    expect(most).toBeCloseTo(MOST, 12);
    expect([drawn.length, drawn[0], root[0], root[96]]).toEqual([97, 0, 1, 0]);
    for (let k = 0; k <= 96; k += 1) {
      expect(root[k]).toBeCloseTo(1 - k / 96, 9);
      expect(drawn[k]).toBeCloseTo(MOST * (1 - (1 - k / 96) ** 2), 12);
      expect(flow[k]).toBeCloseTo(1e-5 * Math.sqrt(0.6) * (1 - k / 96), 12);
    }
  });

  it("lays one more where the height bends, between nothing and all", () => {
    const { drawn } = layLeak(pool, leak, [-0.1, 0, 0.1, layLeak(pool, leak, []).most, 0.35]);
    expect(drawn).toHaveLength(98);
    expect([...drawn].filter((one) => one === 0.1)).toHaveLength(1);
    expect([...drawn]).toEqual([...drawn].sort((a, b) => a - b));
  });

  it("leaks by Torricelli's law between the places too, and nothing once all is gone", () => {
    for (const drawn of [0, 0.001, 0.0123, 0.1, 0.2, 0.299])
      expect(leakAt(pieces(), drawn)).toBeCloseTo(flowAt((0.4 - drawn) / AREA), 12);
    expect([leakAt(pieces(), pieces().most), leakAt(pieces(), 0.35)]).toEqual([0, 0]);
    expect(leakAt(pieces(), -0.05)).toBeCloseTo(flowAt(0.8), 12);
  });

  it("knows the end of the piece it is in, down and up", () => {
    const laid = pieces();
    const place = (k: number) => laid.drawn[k]!;
    const within = (place(40) + place(41)) / 2;
    expect([endOfPiece(laid, within, true), endOfPiece(laid, within, false)]).toEqual([place(41), place(40)]);
    expect([endOfPiece(laid, place(40), true), endOfPiece(laid, place(40), false)]).toEqual([
      place(41),
      place(39),
    ]);
    expect([endOfPiece(laid, 0, true), endOfPiece(laid, 0, false)]).toEqual([place(1), 0]);
    expect(endOfPiece(laid, place(96), true)).toBe(place(96));
  });
});

describe("rootOf", () => {
  it("is 1 when nothing is drawn, 0 when all is or there is nothing", () => {
    expect([rootOf(2, 0), rootOf(2, 1.5), rootOf(2, 2), rootOf(2, 3), rootOf(0, 0)]).toEqual([
      1, 0.5, 0, 0, 0,
    ]);
  });
});

describe("timeBetween", () => {
  /** The integral of 2 M s / r(s) by many small steps. */
  const bySum = (most: number, from: { s: number; rate: number }, to: { s: number; rate: number }) => {
    const steps = 20_000;
    let sum = 0;
    for (let k = 0; k < steps; k += 1) {
      const share = (k + 0.5) / steps;
      sum += (from.s + share * (to.s - from.s)) / (from.rate + share * (to.rate - from.rate));
    }
    return (2 * most * (from.s - to.s) * sum) / steps;
  };

  it.each([
    [
      { s: 1, rate: 3 },
      { s: 0.4, rate: 1 },
    ],
    [
      { s: 1, rate: 1 },
      { s: 0.4, rate: 3 },
    ],
    [
      { s: 0.6, rate: 2 },
      { s: 0.5, rate: 2.001 },
    ],
    [
      { s: 0.6, rate: 2 },
      { s: 0.2, rate: 2 },
    ],
    [
      { s: 0.6, rate: 2 },
      { s: 0.2, rate: 1.9979 },
    ],
    // Straight to nothing at s = 0: an opening alone, 2 M (s1 - s2) / m.
    [
      { s: 0.8, rate: 4 },
      { s: 0.2, rate: 1 },
    ],
    // Upwards, as it fills.
    [
      { s: 0.2, rate: -1 },
      { s: 0.8, rate: -3 },
    ],
  ])("from %o to %o is the integral, in closed form or by four points", (from, to) => {
    expect(timeBetween(5, from, to) / bySum(5, from, to)).toBeCloseTo(1, 6);
  });

  it("is that of a vessel that empties through an opening: twice as long as at its first rate", () => {
    expect(timeBetween(MOST, { s: 1, rate: 2e-5 }, { s: 0, rate: 0 })).toBeCloseTo((2 * MOST) / 2e-5, 6);
  });

  it("is nothing on the spot, and endless where nothing flows", () => {
    expect(timeBetween(5, { s: 0.3, rate: 1 }, { s: 0.3, rate: 1 })).toBe(0);
    expect(timeBetween(5, { s: 0.3, rate: 0 }, { s: 0.2, rate: 1 })).toBe(Number.POSITIVE_INFINITY);
  });
});
