import { expect, test } from "vitest";
import type { Input } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import type { Sampler } from "../../../../packages/hydraulics/src/judge/sureness/sample-verdicts.js";
import { findMovers, findSpares } from "../../../../packages/hydraulics/src/judge/sureness/spares.js";

/** A sampler whose spare head is straight in its inputs: so much for one deviation of each. */
function straight(slopes: readonly number[]): Sampler {
  const inputs = slopes.map((slope) => ({ input: { kind: "level", source: `${slope}` }, doubt: 0.02 }));
  return {
    inputs,
    drinkers: 1,
    judge: ({ inputs: off }: { inputs: Float64Array }) => ({
      spare: () => ({ below: slopes.reduce((sum, slope, i) => sum + slope * off[i]!, 0.1), above: 1 }),
    }),
  } as unknown as Sampler;
}
const moversOf = (slopes: readonly number[], clear: readonly number[] = []) => {
  const sampler = straight(slopes);
  const ranked = sampler.inputs.map((input: Input, k: number) => ({ input, isClear: clear.includes(k) }));
  const [movers] = findMovers(sampler, [{ drinker: 0, ranked, side: "below" } as never]);
  return movers!.map(({ sway }) => Number(sway.head!.toFixed(9)));
};

test("findMovers tells by how much the whole doubt of each moves the head, the farthest first", () => {
  expect(moversOf([0.01, -0.03, 0.02, 0.005])).toEqual([0.06, 0.04, 0.02, 0.01]);
  expect(moversOf([0.04, 0.03, 0.02])).toEqual([0.08, 0.06, 0.04]);
});

test("findMovers puts first what clearly decides though it hardly moves the head: under a quarter of the most", () => {
  expect(moversOf([0.01, -0.03, 0.007], [2])).toEqual([0.014, 0.06, 0.02]);
  expect(moversOf([0.01, -0.03, 0.008], [2])).toEqual([0.06, 0.02, 0.016]);
});

test("findSpares tells what is missing in all but the worst one in twenty", () => {
  const sampler = {
    take: (k: number) => ({ spare: () => ({ below: -(((7 * k) % 20) + 1) / 100, above: k < 3 ? -1 : 0.2 }) }),
  } as unknown as Sampler;
  const [{ moreHead, lessHead }] = findSpares(sampler, [0], 20) as [ReturnType<typeof findSpares>[0]];
  // From 1 to 20 cm are missing: in all but the one worst plan 19 cm are enough.
  expect(moreHead).toBeCloseTo(0.19, 12);
  expect(lessHead).toBe(1);
});
