import fc from "fast-check";
import { expect, test } from "vitest";
import { type Plan, readPlan, type WatererReport, yardForPlan } from "../../packages/hydraulics/src/index.js";
import { withRandomWaterers } from "../arbitraries/plan-waterers.js";
import type { PlanData } from "../arbitraries/plans.js";

const EMPTY: PlanData = { headfall: 1, day: "2026-07-04", sources: [], runs: [] };

/** A yard of loose waterers alone, by number; every plan drawn can be read. */
const yards = fc.integer({ min: 0, max: 0x7fff_fffe }).map((seed): Plan => {
  const reading = readPlan(JSON.stringify(withRandomWaterers(EMPTY, seed)));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
});

function reportsOf(plan: Plan): readonly WatererReport[] {
  const answer = yardForPlan(plan, { weeks: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.yard.pens.flatMap(({ waterers }) => waterers);
}

/** The same yard with another slope under every waterer. */
const tilted = (plan: Plan, slope: string): Plan => ({
  ...plan,
  pens: (plan.pens ?? []).map((pen) => ({
    ...pen,
    slope,
    waterers: (pen.waterers ?? []).map((waterer) => ({ ...waterer, slope })),
  })),
});

test("nothing level drains, and a level waterer keeps all it holds", () => {
  fc.assert(
    fc.property(yards, (plan) => {
      for (const { tilt, stays, holds, gives } of reportsOf(tilted(plan, "0 %"))) {
        expect("isDraining" in tilt && tilt.isDraining).toBe(false);
        expect(stays).toBeLessThanOrEqual(holds + 1e-12);
        expect(gives).toBeLessThanOrEqual(stays);
        if (!("share" in tilt)) expect(stays).toBe(holds);
      }
    }),
    { numRuns: 40 },
  );
});

test("tilting more never holds more, gives more or serves more birds, and what drains goes on draining", () => {
  const slopes = [0, 3, 8, 15, 25, 40, 80].map((percent) => `${percent} %`);
  fc.assert(
    fc.property(yards, (plan) => {
      const all = slopes.map((slope) => reportsOf(tilted(plan, slope)));
      for (let k = 1; k < all.length; k += 1)
        all[k]!.forEach((report, w) => {
          const before = all[k - 1]![w]!;
          expect(report.stays).toBeLessThanOrEqual(before.stays + 1e-12);
          expect(report.reach.edge).toBeLessThanOrEqual(before.reach.edge + 1e-12);
          expect(report.reach.atOnce).toBeLessThanOrEqual(before.reach.atOnce);
          if ("isDraining" in before.tilt && before.tilt.isDraining && "isDraining" in report.tilt)
            expect(report.tilt.isDraining).toBe(true);
        });
    }),
    { numRuns: 25 },
  );
});

test("more birds never need fewer refills, and the hot day never fewer than a mild one", () => {
  fc.assert(
    fc.property(yards, fc.integer({ min: 1, max: 30 }), (plan, more) => {
      const crowded = {
        ...plan,
        pens: (plan.pens ?? []).map((pen) => ({
          ...pen,
          birds: [pen.birds].flat().map((batch) => ({ ...batch, count: batch.count + more })),
        })),
      };
      const [few, many] = [reportsOf(plan), reportsOf(crowded)];
      few.forEach(({ weeks: [week] }, w) => {
        expect(many[w]!.weeks[0]!.refills ?? 0).toBeGreaterThanOrEqual((week!.refills ?? 0) - 1e-12);
        expect(week!.hotRefills ?? 0).toBeGreaterThanOrEqual((week!.refills ?? 0) - 1e-12);
      });
    }),
    { numRuns: 40 },
  );
});

test("a shim of the height told leaves a fount that holds, with half of its limit to spare", () => {
  fc.assert(
    fc.property(yards, (plan) => {
      for (const { tilt, waterer } of reportsOf(plan)) {
        if (!("drainsAt" in tilt) || tilt.drainsAt === undefined || tilt.shims.enough === 0) continue;
        const { base } = waterer.kind;
        // What slope a plank has whose lower end stands on the shim: by bisection, not by the formula.
        let [low, high] = [0, Math.atan(tilt.slope)];
        for (let k = 0; k < 60; k += 1) {
          const angle = (low + high) / 2;
          const gap = base * Math.cos(angle) * tilt.slope - base * Math.sin(angle);
          if (gap > tilt.shims.enough) low = angle;
          else high = angle;
        }
        expect(Math.tan(low)).toBeCloseTo(tilt.drainsAt / 2, 6);
      }
    }),
    { numRuns: 40 },
  );
});
