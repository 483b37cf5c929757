import { describe, expect, it } from "vitest";
import type { Sampler } from "../../../../packages/hydraulics/src/judge/sureness/sample-verdicts.js";
import {
  agreementOf,
  type TallyOptions,
  tallyVerdicts,
} from "../../../../packages/hydraulics/src/judge/sureness/tally.js";

/** One drinker that is good but in the samples told, where it starves, or is dry. */
function samplerOf(bad: (k: number) => boolean, { inputs = ["level", "roughness"], worse = 2 } = {}) {
  const taken: number[] = [];
  const made = inputs.map((kind) => ({ input: { kind, source: kind }, doubt: 0.02 }));
  const sampler = {
    inputs: made,
    take: (k: number) => {
      taken.push(k);
      const off = { inputs: Float64Array.from(inputs, (_, i) => (bad(k) ? -2 - i : 0.1)) };
      return { verdicts: [bad(k) ? worse : 0], off };
    },
  } as unknown as Sampler;
  return { sampler, taken };
}
const tallyOf = (made: ReturnType<typeof samplerOf>, options: Partial<TallyOptions> = {}) =>
  tallyVerdicts(made.sampler, [0], { samples: 50, most: 1000, among: [0], ...options })[0]!;

describe("tallyVerdicts", () => {
  it("stops as soon as it is decided: after so many, 200, 400, 1,000 or the most", () => {
    // 0.95^n is under a hundredth from 90 on.
    const always = samplerOf(() => false);
    expect(tallyOf(always).agreement).toEqual({ share: 1, samples: 200, isDecided: true });
    expect(always.taken).toHaveLength(200);
    expect(
      tallyOf(
        samplerOf(() => false),
        { samples: 100 },
      ).agreement.samples,
    ).toBe(100);
    expect(
      tallyOf(
        samplerOf(() => false),
        { most: 150 },
      ).agreement.samples,
    ).toBe(150);
    expect(
      tallyOf(
        samplerOf(() => false),
        { most: 60 },
      ).agreement,
    ).toMatchObject({ samples: 60, isDecided: false });
    expect(tallyOf(samplerOf((k) => k % 5 === 0)).agreement).toEqual({
      share: 0.8,
      samples: 50,
      isDecided: true,
    });
  });

  it("goes on to the most where nineteen in twenty are just met", () => {
    const { agreement, certainty } = tallyOf(samplerOf((k) => k % 20 === 0));
    expect(agreement).toEqual({ share: 0.95, samples: 1000, isDecided: false });
    expect(certainty.kind).toBe("sure");
  });

  it("leaves a drinker with what it was decided with, while others are still open", () => {
    const { sampler } = samplerOf((k) => k % 20 === 0);
    const two = {
      ...sampler,
      take: (k: number) => ({
        ...sampler.take(k),
        verdicts: [k % 20 === 0 ? 2 : 0, k < 50 && k % 5 === 0 ? 2 : 0],
      }),
    } as unknown as Sampler;
    const options = { samples: 50, most: 1000, among: [0, 1] };
    const [open, decided] = tallyVerdicts(two, [0, 0], options).map(({ agreement }) => agreement);
    expect(open).toEqual({ share: 0.95, samples: 1000, isDecided: false });
    expect(decided).toEqual({ share: 0.8, samples: 50, isDecided: true });
  });

  it("names what went with the other verdict and can be measured, and what the verdict would be", () => {
    const { certainty, ranked } = tallyOf(samplerOf((k) => k % 5 === 0));
    expect(certainty).toMatchObject({
      kind: "closeCall",
      measureAgain: { input: { kind: "level" } },
      otherwise: "starves",
    });
    expect(ranked.map(({ input, isClear }) => [input.input.kind, isClear])).toEqual([["level", true]]);
    const dry = tallyOf(samplerOf((k) => k % 5 === 0, { inputs: ["roughness", "fittings"], worse: 3 }));
    expect(dry.certainty).toMatchObject({ kind: "closeCall", measureAgain: undefined, otherwise: "dry" });
    expect(tallyOf(samplerOf((k) => k % 5 === 0, { inputs: [] })).certainty).toMatchObject({
      measureAgain: undefined,
    });
  });

  it("ranks by how far the draws went, the farthest first", () => {
    const { ranked } = tallyOf(samplerOf((k) => k % 5 === 0, { inputs: ["level", "bore", "height"] }));
    expect(ranked.map(({ input }) => input.input.kind)).toEqual(["height", "bore", "level"]);
  });

  it("tells what it says so far, but not after the last", () => {
    const told: [string, number][] = [];
    const soFar = {
      after: [10, 20, 30],
      tell: (certainties: readonly { readonly kind: string }[], samples: number) =>
        void told.push([certainties[0]!.kind, samples]),
    };
    const shares: number[] = [];
    tallyOf(
      samplerOf((k) => k < 2),
      {
        ...{ samples: 30, most: 30, soFar },
        progress: (share) => void shares.push(share),
      },
    );
    expect(told).toEqual([
      ["closeCall", 10],
      ["closeCall", 20],
    ]);
    expect(shares).toHaveLength(30);
    expect(shares[14]).toBeCloseTo(0.5, 12);
  });
});

describe("agreementOf", () => {
  it("is decided when the other side of nineteen in twenty would have it in less than one of a hundred", () => {
    // All of n agree by chance with 0.95^n: 89 of 89 is one in 96, 90 of 90 one in 101.
    expect([89, 90].map((n) => agreementOf(n, n).isDecided)).toEqual([false, true]);
    // Eighteen of twenty or fewer come by chance in a quarter of cases, fifteen in a few of ten thousand.
    expect([18, 15].map((n) => agreementOf(n, 20).isDecided)).toEqual([false, true]);
    expect(agreementOf(19, 20)).toEqual({ share: 0.95, samples: 20, isDecided: false });
  });
});
