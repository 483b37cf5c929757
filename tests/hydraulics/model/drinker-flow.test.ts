import { expect, test } from "vitest";
import { flowOfDrinker, headOfDrinker } from "../../../packages/hydraulics/src/model/drinker-flow.js";
import type { Drinkers } from "../../../packages/hydraulics/src/model/line.js";

/** One drinker of each exponent, which opens at 2 cm and gives 60 mL/min at a metre over that. */
const EXPONENTS = [0.3, 0.5, 0.7, 1];
const drinkers = {
  coefficient: EXPONENTS.map(() => 1e-6),
  exponent: EXPONENTS,
  openingHead: EXPONENTS.map(() => 0.02),
} as unknown as Drinkers;

test("headOfDrinker is the head at which flowOfDrinker gives that flow, by any exponent", () => {
  for (const d of EXPONENTS.keys())
    for (const flow of [1e-8, 3e-7, 1e-6, 4e-6])
      expect(flowOfDrinker(drinkers, d, headOfDrinker(drinkers, d, flow)) / flow).toBeCloseTo(1, 9);
  expect(EXPONENTS.map((_, d) => headOfDrinker(drinkers, d, 0))).toEqual([0.02, 0.02, 0.02, 0.02]);
  // Twice the flow by a law of exponent one takes twice the head, by one of a half four times.
  const over = (d: number) => headOfDrinker(drinkers, d, 2e-6) - 0.02;
  expect([over(3), over(1)]).toEqual([expect.closeTo(2, 9), expect.closeTo(4, 9)]);
});
