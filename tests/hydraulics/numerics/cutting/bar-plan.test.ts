import { describe, expect, it } from "vitest";
import {
  fillBars,
  isBetter,
  planOf,
  roundRelaxed,
  shrinkBars,
} from "../../../../packages/hydraulics/src/numerics/cutting/bar-plan.js";
import type { Bars } from "../../../../packages/hydraulics/src/numerics/cutting/cutting.js";
import {
  proofOf,
  relaxCutting,
} from "../../../../packages/hydraulics/src/numerics/cutting/relaxed-cutting.js";
import { randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";

/** Bars of 6 and 10 on hand, one each; 8 and 12 sold. Pieces of 5 and 3, two and three of them. */
const bars: Bars = {
  size: [5, 3],
  wanted: [2, 3],
  capacity: [6, 10, 8, 12],
  length: [6, 10, 8, 12],
  supply: [1, 1, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
  price: [0, 0, 8, 12],
};
const soldOnly = (wanted: number[], sold: number[]): Bars => ({
  size: [5, 3],
  wanted,
  capacity: sold,
  length: sold,
  supply: sold.map(() => Number.POSITIVE_INFINITY),
  price: sold,
});

describe("planOf", () => {
  it("adds up what is bought and what is cut on hand, each for itself", () => {
    const cuts = [1, 2, 3, 3].map((kind) => ({ kind, pattern: [0, 0] }));
    expect(planOf(bars, cuts)).toMatchObject({ bought: 32, onHand: 10 });
  });
});

describe("isBetter", () => {
  it("asks what is bought, then what is cut on hand; alike is no better", () => {
    const best = { cuts: [], bought: 8, onHand: 5 };
    expect(isBetter({ bought: 8, onHand: 5 }, undefined)).toBe(true);
    expect(isBetter({ bought: 7, onHand: 9 }, best)).toBe(true);
    expect(isBetter({ bought: 9, onHand: 0 }, best)).toBe(false);
    expect(isBetter({ bought: 8, onHand: 4 }, best)).toBe(true);
    expect(isBetter({ bought: 8, onHand: 5 }, best)).toBe(false);
  });
});

describe("fillBars", () => {
  it("fills what is on hand first, the fullest of it, then what is sold, the fullest of that", () => {
    // 5 + 5 fills the bar of 10; of three pieces of 3 two fill the bar of 6 on hand; the last wastes least of 8.
    expect(fillBars(bars)).toMatchObject([
      { kind: 1, pattern: [2, 0] },
      { kind: 0, pattern: [0, 2] },
      { kind: 2, pattern: [0, 1] },
    ]);
  });

  it("takes the bar that a piece wastes least of", () => {
    expect(fillBars(soldOnly([1, 0], [6, 12]))).toMatchObject([{ kind: 0, pattern: [1, 0] }]);
    expect(fillBars(soldOnly([2, 0], [6, 10]))).toMatchObject([{ kind: 1, pattern: [2, 0] }]);
  });

  it("gives nothing where a piece fits nothing that is left", () => {
    expect(fillBars(soldOnly([1, 1], [4]))).toBeUndefined();
    expect(fillBars({ ...bars, wanted: [3, 0], supply: [1, 1, 0, 0] })).toHaveLength(2);
    expect(fillBars({ ...bars, wanted: [4, 0], supply: [1, 1, 0, 0] })).toBeUndefined();
  });
});

describe("shrinkBars", () => {
  it("exchanges each bar for the first that its pieces still fit and that is free, the fullest first", () => {
    const cuts = [
      { kind: 3, pattern: [0, 2] },
      { kind: 3, pattern: [0, 3] },
      { kind: 3, pattern: [1, 0] },
    ];
    expect(shrinkBars(bars, cuts)).toEqual([
      { kind: 1, pattern: [0, 3] },
      { kind: 0, pattern: [0, 2] },
      { kind: 2, pattern: [1, 0] },
    ]);
  });

  it("frees a bar that it exchanges, and leaves one that nothing shorter serves", () => {
    const cuts = [
      { kind: 1, pattern: [1, 0] },
      { kind: 3, pattern: [0, 3] },
    ];
    // 9 of 12 would fit the bar of 10 on hand, but that is taken when its turn comes.
    expect(shrinkBars(bars, cuts)).toEqual([
      { kind: 3, pattern: [0, 3] },
      { kind: 0, pattern: [1, 0] },
    ]);
    const swapped = [
      { kind: 1, pattern: [0, 2] },
      { kind: 2, pattern: [1, 0] },
    ];
    // 6 goes from the bar of 10 to that of 6, and the 5 bought comes from what is then free.
    expect(shrinkBars(bars, swapped)).toEqual([
      { kind: 0, pattern: [0, 2] },
      { kind: 1, pattern: [1, 0] },
    ]);
  });
});

describe("relaxCutting", () => {
  it("finds by hand that two pieces of 5 and two of 3 come from two bars of 8, and proves it", () => {
    const relaxed = relaxCutting(soldOnly([2, 2], [8]));
    expect(relaxed.bound).toBeCloseTo(16, 9);
    expect(relaxed.cuts).toHaveLength(1);
    expect(relaxed.cuts[0]).toMatchObject({ kind: 0, pattern: [1, 1] });
    expect(relaxed.cuts[0]!.times).toBeCloseTo(2, 9);
  });

  it("cuts a fraction of a bar: three pieces of 5 from bars of 10 are one and a half", () => {
    const relaxed = relaxCutting(soldOnly([3, 0], [10]));
    expect(relaxed.bound).toBeCloseTo(15, 9);
    expect(relaxed.cuts[0]!.times).toBeCloseTo(1.5, 9);
  });

  it("uses what is on hand before it buys, each bar of it no more often than it is there", () => {
    const { cuts, bound } = relaxCutting(bars);
    const timesOf = (kind: number) => cuts.reduce((sum, cut) => sum + (cut.kind === kind ? cut.times : 0), 0);
    expect(timesOf(0)).toBeCloseTo(1, 9);
    expect(timesOf(1)).toBeCloseTo(1, 9);
    // 16 on hand for 19 wanted: 3 must be bought, and a bar of 8 at most.
    expect(bound).toBeGreaterThanOrEqual(3);
    expect(bound).toBeLessThanOrEqual(8);
  });

  it("costs what its own worth of the pieces proves, cuts each size as often as wanted, and no bar more often than it is there", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const random = randomFrom(seed);
      const upTo = (least: number, most: number) => least + random.integerBelow(most - least + 1);
      const onHand = Array.from({ length: upTo(0, 3) }, () => upTo(8, 40)).sort((a, b) => a - b);
      const sold = Array.from({ length: upTo(1, 3) }, () => upTo(20, 60)).sort((a, b) => a - b);
      const length = [...onHand, ...sold];
      const size = [...new Set(Array.from({ length: upTo(1, 4) }, () => upTo(4, 20)))].sort((a, b) => b - a);
      const asked: Bars = {
        ...{ size, wanted: size.map(() => upTo(1, 5)), length, capacity: length },
        supply: length.map((_, k) => (k < onHand.length ? upTo(1, 2) : Number.POSITIVE_INFINITY)),
        price: length.map((one, k) => (k < onHand.length ? 0 : one)),
      };
      const { cuts, bound } = relaxCutting(asked);
      const cost = cuts.reduce((sum, { kind, times }) => sum + times * asked.price[kind]!, 0);
      expect([seed, cost.toFixed(6)]).toEqual([seed, bound.toFixed(6)]);
      size.forEach((_, i) => {
        const cut = cuts.reduce((sum, { pattern, times }) => sum + times * pattern[i]!, 0);
        expect(cut).toBeGreaterThanOrEqual(asked.wanted[i]! - 1e-6);
      });
      asked.supply.forEach((supply, kind) => {
        const used = cuts.reduce((sum, cut) => sum + (cut.kind === kind ? cut.times : 0), 0);
        expect(used).toBeLessThanOrEqual(supply + 1e-6);
      });
    }
  });

  it("cuts one bar on hand once, where there is nothing else and all fits it", () => {
    const onHand = { ...bars, wanted: [2, 2], capacity: [16], length: [16], supply: [1], price: [0] };
    const { cuts, bound } = relaxCutting(onHand);
    expect(cuts).toHaveLength(1);
    expect(cuts[0]).toMatchObject({ kind: 0, pattern: [2, 2] });
    expect([cuts[0]!.times, bound]).toEqual([1, 0]);
  });

  it("takes for what nobody can cut a price that no plan would pay", () => {
    const nothing = { ...soldOnly([1, 0], []), supply: [], price: [], capacity: [], length: [] };
    expect(relaxCutting(nothing)).toMatchObject({ cuts: [], yields: [] });
  });
});

describe("proofOf", () => {
  it("scales any worth until no bar sold yields more than its price, and takes off what is on hand", () => {
    const proof = proofOf(bars, [10, -1]);
    // Two pieces of 5 from 12 are worth 20 for 12; the worth of one is then 6, and a piece of 3 is worth nothing.
    expect(proof.worth[0]).toBeCloseTo(6, 12);
    expect(proof.worth[1]).toBe(0);
    expect(proof.yields.map((one) => Math.round(one * 1e9) / 1e9)).toEqual([6, 12, 0, 0]);
    expect(proof.bound).toBe(0);
    expect(proofOf(soldOnly([2, 2], [8]), [5, 3])).toMatchObject({ worth: [5, 3], yields: [0], bound: 16 });
  });
});

describe("roundRelaxed", () => {
  it("cuts all that is wanted, no bar on hand more often than it is there", () => {
    for (const asked of [bars, soldOnly([7, 5], [8, 12]), soldOnly([3, 0], [10])]) {
      const cuts = roundRelaxed(asked)!;
      const cut = asked.wanted.map((_, i) => cuts.reduce((sum, { pattern }) => sum + pattern[i]!, 0));
      expect(cut).toEqual(asked.wanted);
      asked.supply.forEach((supply, kind) => {
        expect(cuts.filter((one) => one.kind === kind).length).toBeLessThanOrEqual(supply);
      });
      for (const { kind, pattern } of cuts)
        expect(5 * pattern[0]! + 3 * pattern[1]!).toBeLessThanOrEqual(asked.capacity[kind]!);
    }
  });

  it("takes whole times of the relaxed plan as they are", () => {
    expect(roundRelaxed(soldOnly([2, 2], [8]))).toEqual([
      { kind: 0, pattern: [1, 1] },
      { kind: 0, pattern: [1, 1] },
    ]);
  });

  it("cuts no bar for nothing, where one before it was filled up with what the plan had for it", () => {
    const asked: Bars = {
      ...{ size: [17, 8], wanted: [2, 4], capacity: [8, 14, 29], length: [8, 14, 29] },
      ...{ supply: [1, 2, Number.POSITIVE_INFINITY], price: [0, 0, 29] },
    };
    for (const { pattern } of roundRelaxed(asked)!) expect(Math.max(...pattern)).toBeGreaterThan(0);
  });

  it("gives nothing where there is nothing to cut it from", () => {
    expect(roundRelaxed(soldOnly([1, 0], []))).toBeUndefined();
  });
});
