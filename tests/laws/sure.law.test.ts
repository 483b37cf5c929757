import { describe, expect, it } from "vitest";
import { agreementOf } from "../../packages/hydraulics/src/judge/sureness/tally.js";
import { chanceOfAtMost } from "../../packages/hydraulics/src/numerics/binomial.js";
import { randomPlan } from "../arbitraries/plans.js";
import { plainDraws, type Sampled, sampledOf, sharesOf } from "../hydraulics/judge/sureness/sampling.js";
import { checkOf, yard } from "../hydraulics/judge/yard/yard.js";

/** Random plans by number, those that have drinkers and hold together. */
function sampledPlans(count: number, most: number): { seed: number; sampled: Sampled }[] {
  const found: { seed: number; sampled: Sampled }[] = [];
  for (let seed = 1; found.length < count; seed += 1) {
    const sampled = sampledOf(randomPlan(seed));
    if (sampled !== undefined && sampled.drinkers.length > 0 && sampled.drinkers.length <= most)
      found.push({ seed, sampled });
  }
  return found;
}

describe("how sure a verdict is", () => {
  it("is all the way where nothing is in doubt: every sample is the plan as written", () => {
    for (const { seed, sampled } of sampledPlans(15, 40)) {
      const inputs = sampled.sampler({ seed: 1 }).inputs;
      const keeping = { inputs: new Float64Array(inputs.length), rest: 0 };
      const shares = sharesOf(sampled, 2, { seed }, keeping);
      expect({ seed, shares }).toEqual({ seed, shares: shares.map(() => 1) });
    }
  });

  it("is the same whatever the order of runs and points in the plan", () => {
    const runs = [
      { id: "feed", from: "barrel", length: "6 m", fall: "0 cm" },
      { id: "left", from: "feed end", length: "9 m", fall: "2 cm", drinkers: { kind: "plain", count: 3 } },
      { id: "right", from: "feed end", length: "7 m", fall: "-3 cm", drinkers: { kind: "plain", count: 4 } },
      { id: "far", from: "right end", length: "12 m", fall: "4 cm", drinkers: { kind: "plain", count: 2 } },
    ];
    const certainties = (order: readonly number[]) =>
      new Map(
        checkOf(yard({ stand: "10 cm", runs: order.map((r) => runs[r]) }), { samples: 200 }).drinkers.map(
          ({ drinker, certainty }) => [drinker, certainty],
        ),
      );
    const written = certainties([0, 1, 2, 3]);
    expect([...written.values()].some(({ kind }) => kind === "closeCall")).toBe(true);
    for (const order of [
      [0, 2, 1, 3],
      [0, 3, 2, 1],
      [2, 0, 3, 1],
    ])
      for (const [drinker, certainty] of certainties(order))
        expect({ drinker, certainty }).toEqual({ drinker, certainty: written.get(drinker) });
  });

  // What agrees with the plan at some distance from it in one direction does so nearer by: true where the verdict hangs
  // on heads that all fall or all rise that way, as in yards without birds or humps.
  it("never falls on the same samples when all doubts are smaller", () => {
    for (let k = 0; k < 12; k += 1) {
      const runs = [
        {
          length: "12 m",
          fall: `${k - 6} cm`,
          pipe: { bore: "13 mm" },
          drinkers: { kind: "plain", count: 6 },
        },
      ];
      const sampled = sampledOf(yard({ stand: `${8 + k} cm`, runs }))!;
      const { length } = sampled.sampler({ seed: 1 }).inputs;
      const at = (kept: number) =>
        sharesOf(sampled, 100, { seed: 3 }, { inputs: new Float64Array(length).fill(kept), rest: kept });
      const [whole, half, tenth] = [at(1), at(0.5), at(0.1)];
      whole.forEach((share, d) => {
        expect(half[d]).toBeGreaterThanOrEqual(share);
        expect(tenth[d]).toBeGreaterThanOrEqual(half[d]!);
      });
    }
  });
});

describe("even draws", () => {
  it("have little more than half the error of plain ones at 200 samples", () => {
    const runs = [
      { length: "18 m", fall: "0 cm", pipe: { bore: "14 mm" }, drinkers: { kind: "plain", count: 5 } },
    ];
    const sampled = sampledOf(
      yard({ stand: "8 cm", runs, more: { doubts: { level: "5 cm", heights: "2 cm" } } }),
    )!;
    const truth = sharesOf(sampled, 2048, { seed: 77 });
    const near = truth.map((share, d) => ({ share, d })).filter(({ share }) => share < 0.99);
    expect(near.length).toBeGreaterThan(1);
    const error = (draws: Partial<{ draws: typeof plainDraws }>) => {
      const squares = Array.from({ length: 10 }, (_, seed) => {
        const shares = sharesOf(sampled, 200, { seed, ...draws });
        return near.reduce((sum, { share, d }) => sum + (shares[d]! - share) ** 2, 0);
      });
      return Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length / near.length);
    };
    expect(error({}) / error({ draws: plainDraws })).toBeLessThan(0.65);
  });
});

describe("a verdict said to be sure", () => {
  it("holds at the stated rate in fresh plans drawn another way", () => {
    const FRESH = 200;
    let [sure, held] = [0, 0];
    for (const { seed, sampled } of sampledPlans(8, 20)) {
      const said = sharesOf(sampled, 200, { seed: 1 }).map((share) =>
        agreementOf(Math.round(200 * share), 200),
      );
      const fresh = sharesOf(sampled, FRESH, { seed: 1000 + seed, draws: plainDraws });
      said.forEach(({ share, isDecided }, d) => {
        if (share < 0.95 || !isDecided) return;
        const agreeing = Math.round(FRESH * fresh[d]!);
        sure += 1;
        held += agreeing;
        // Less than this is out of the question if 95 of 100 hold.
        const chance = chanceOfAtMost({ count: FRESH, successes: agreeing, chance: 0.95 });
        expect({ seed, drinker: sampled.drinkers[d], isPossible: chance > 1e-4 }).toMatchObject({
          isPossible: true,
        });
      });
    }
    expect(sure).toBeGreaterThan(20);
    expect(held / (sure * FRESH)).toBeGreaterThan(0.95);
  });
});
