import fc from "fast-check";
import { expect, test } from "vitest";
import { REGIONS } from "../../packages/hydraulics/src/document/regions.js";
import {
  type DrinkersNeeded,
  drinkersNeeded,
} from "../../packages/hydraulics/src/judge/birds/drinkers-needed.js";
import type { Batch } from "../../packages/hydraulics/src/model/flock.js";
import { intakeOfBatch } from "../../packages/hydraulics/src/model/flock-intake.js";
import { allBirds } from "../../packages/hydraulics/src/tables/birds.js";

const RUNS = { numRuns: 400 };
const batches = fc.record({
  kind: fc.constantFrom(...allBirds),
  index: fc.constant(0),
  count: fc.integer({ min: 0, max: 500 }),
  ageDays: fc.integer({ min: -5, max: 400 }),
  lay: fc.double({ min: 0, max: 1, noNaN: true }),
});
const questions = fc.record({
  pen: fc.array(batches, { minLength: 1, maxLength: 3 }),
  device: fc.constantFrom("nipple", "cup", "bell", "trough"),
  region: fc.constantFrom(...REGIONS),
  atOnce: fc.record({ birds: fc.integer({ min: 0, max: 60 }), places: fc.constantFrom(1, 5, 10) }),
});

type Asking = typeof questions extends fc.Arbitrary<infer T> ? T : never;
const askOf = ({ pen, device, region, atOnce }: Asking, batches: readonly Batch[] = pen): DrinkersNeeded =>
  drinkersNeeded({ id: "pen", index: 0, batches, drinkers: [] }, device, { region, atOnce });

test("more birds never need fewer drinkers, by rule, by advice, or in all", () => {
  fc.assert(
    fc.property(questions, fc.nat({ max: 2 }), fc.integer({ min: 1, max: 400 }), (asking, which, more) => {
      const grown = asking.pen.map((batch, k) =>
        k === which % asking.pen.length ? { ...batch, count: batch.count + more } : batch,
      );
      const [few, many] = [askOf(asking), askOf(asking, grown)];
      expect(many.byRule).toBeGreaterThanOrEqual(few.byRule);
      expect(many.byAdvice).toBeGreaterThanOrEqual(few.byAdvice);
      expect(many.needed).toBeGreaterThanOrEqual(few.needed);
    }),
    RUNS,
  );
});

test("what is needed is the greatest of its parts, no rule asks more than all together, and nobody needs none", () => {
  fc.assert(
    fc.property(questions, (asking) => {
      const need = askOf({ ...asking, atOnce: { birds: 0, places: 1 } });
      expect(need.needed).toBe(Math.max(need.byRule, need.byAdvice, need.inReach, need.byCrowd));
      expect(need.byRule).toBeLessThanOrEqual(need.byAdvice);
      for (const { needed } of need.asked) expect(needed).toBeLessThanOrEqual(need.byAdvice);
      expect(need.because === "nobody").toBe(need.birds === 0);
      expect(need.isSilent).toBe(need.birds > 0 && need.asked.length === 0);
    }),
    RUNS,
  );
});

test("hotter birds never drink less, nor more than three times as much", () => {
  const air = { light: 12 * 3600, dawn: 6 * 3600, hotSpell: undefined };
  fc.assert(
    fc.property(
      batches,
      fc.record({
        low: fc.integer({ min: -10, max: 40 }),
        swing: fc.integer({ min: 0, max: 20 }),
        hotter: fc.double({ min: 0, max: 15, noNaN: true }),
      }),
      (batch, { low, swing, hotter }) => {
        const mild = intakeOfBatch(batch, { ...air, low, high: low + swing });
        const hot = intakeOfBatch(batch, { ...air, low: low + hotter, high: low + swing + hotter });
        for (const figure of ["size", "expect", "low", "high"] as const)
          expect(hot[figure]).toBeGreaterThanOrEqual(mild[figure] * (1 - 1e-12));
        expect(hot.heat).toBeLessThanOrEqual(3 + 1e-12);
        expect(hot.size).toBeGreaterThanOrEqual(hot.expect);
      },
    ),
    RUNS,
  );
});
