import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { frostOfPlan } from "../../packages/hydraulics/src/judge/weather/frost.js";
import type { Frost } from "../../packages/hydraulics/src/judge/weather/frost-result.js";
import { heatOfPlan } from "../../packages/hydraulics/src/judge/weather/heat.js";
import type { Heat } from "../../packages/hydraulics/src/judge/weather/heat-result.js";
import { buildLine } from "../../packages/hydraulics/src/model/build-line.js";
import { drainOf } from "../../packages/hydraulics/src/model/drain.js";
import type { FrostAsked } from "../../packages/hydraulics/src/model/extremes.js";
import { withRandomFlock } from "../arbitraries/plan-flock.js";
import { plans } from "../arbitraries/plans.js";

/** Few plans, each with many parts. */
const RUNS = { numRuns: 6 };

/** Random plans that read and can be built, with birds, waterers and weather. */
const builtPlans = fc
  .tuple(plans(), fc.integer({ min: 0, max: 0x7fffffff }))
  .map(([plan, seed]) => checkDocument(withRandomFlock(plan, seed)))
  .filter((reading) => reading.ok)
  .map((reading) => (reading as { readonly plan: Plan }).plan)
  .filter((plan) => frostOfPlan(plan).ok && heatOfPlan(plan, { day: "2026-07-04" }).ok);

function frostOf(plan: Plan, asked: FrostAsked): Frost {
  const answer = frostOfPlan(plan, asked);
  if (!answer.ok) throw new Error("the plan has no frost");
  return answer.frost;
}

function heatOf(plan: Plan): Heat {
  const answer = heatOfPlan(plan, { day: "2026-07-04" });
  if (!answer.ok) throw new Error("the plan has no heat");
  return answer.heat;
}

/** Every time of every part of one is at or before that of the other. */
function expectSooner(one: Frost, other: Frost): void {
  one.parts.forEach((part, k) => {
    const late = other.parts[k]!;
    for (const what of ["cold", "blocked", "solid"] as const)
      for (const end of ["soonest", "latest"] as const) {
        const [a, b] = [part[what]?.[end], late[what]?.[end]];
        if (a !== undefined && b !== undefined) expect(a).toBeLessThanOrEqual(b * (1 + 1e-9));
      }
  });
}

const everywhere = (plan: Plan, more: object, list: "runs" | "sources" = "runs"): Plan =>
  ({ ...plan, [list]: plan[list].map((one) => ({ ...one, ...more })) }) as Plan;

const airs = fc.double({ min: -38, max: -0.2, noNaN: true });

describe("a night of frost", () => {
  it("colder, or windier, never stops anything later; parts are told in one order", () => {
    fc.assert(
      fc.property(builtPlans, airs, fc.double({ min: 0.1, max: 2, noNaN: true }), (plan, low, more) => {
        const night = { low, hours: 43_200, wind: 2 };
        const one = frostOf(plan, night);
        expectSooner(frostOf(plan, { ...night, low: low - more }), one);
        expectSooner(frostOf(plan, { ...night, wind: 2 + more }), one);
        for (const { cold, blocked, solid } of one.parts) {
          expect(cold.soonest).toBeLessThanOrEqual(cold.latest);
          expect(solid.soonest).toBeGreaterThanOrEqual(cold.soonest);
          if (blocked !== undefined) expect(blocked.soonest).toBeGreaterThanOrEqual(cold.soonest);
        }
      }),
      RUNS,
    );
  });

  it("more lagging, and earth over it, never stop a run sooner", () => {
    fc.assert(
      fc.property(builtPlans, airs, (plan, low) => {
        const night = { low, hours: 43_200, wind: 5 };
        // From 2 cm on: around thin pipe in still air the first of it makes more surface than it keeps warm.
        const thin = frostOf(everywhere(plan, { buried: "0 m", lagging: "2 cm" }), night);
        expectSooner(thin, frostOf(everywhere(plan, { buried: "0 m", lagging: "5 cm" }), night));
        const shallow = frostOf(everywhere(plan, { buried: "30 cm" }), night);
        expectSooner(shallow, frostOf(everywhere(plan, { buried: "60 cm" }), night));
      }),
      RUNS,
    );
  });

  it("fuller waterers never freeze sooner", () => {
    const holding = (litres: number): Plan =>
      ({
        headfall: 1,
        sources: [],
        runs: [],
        pens: [
          {
            birds: { kind: "hen", count: 3 },
            drinkers: [],
            waterers: ["rubber-pan-3gal", "fount-1gal", "nipple-bucket-5gal", "trough-90cm"].map((kind) => ({
              kind,
              holds: `${litres} L`,
            })),
          },
        ],
      }) as Plan;
    fc.assert(
      fc.property(airs, fc.double({ min: 0.2, max: 6, noNaN: true }), (low, litres) => {
        const night = { low, hours: 43_200, wind: 1 };
        expectSooner(frostOf(holding(litres), night), frostOf(holding(1.2 * litres), night));
      }),
      { numRuns: 20 },
    );
  });

  it("what drains and what stays in sags is what the pipe holds", () => {
    fc.assert(
      fc.property(builtPlans, (plan) => {
        const built = buildLine(plan);
        if (!built.ok) throw new Error("no line");
        const { volume, ends, sags } = drainOf(built.line);
        const out = [...ends, ...sags].reduce((sum, one) => sum + one.volume, 0);
        expect(Math.abs(out - volume)).toBeLessThanOrEqual(1e-9 * Math.max(1, volume));
        for (const { depth } of sags) {
          expect(depth).toBeGreaterThan(0);
          expect(depth).toBeLessThan(500);
        }
      }),
      RUNS,
    );
  });
});

describe("a hot day", () => {
  const peaks = (heat: Heat) => heat.parts.map(({ hottest }) => hottest.peak);
  const expectCooler = (one: readonly number[], other: readonly number[]) => {
    one.forEach((peak, k) => {
      expect(peak).toBeLessThanOrEqual(other[k]! + 1e-9);
    });
  };

  it("more shade, and white in place of black, is never warmer; at worst never cooler than to expect", () => {
    fc.assert(
      fc.property(builtPlans, (plan) => {
        const shaded = (shade: string) =>
          peaks(heatOf(everywhere(everywhere(plan, { shade }), { shade }, "sources")));
        expectCooler(shaded("60 %"), shaded("20 %"));
        const coloured = (colour: string) =>
          peaks(heatOf(everywhere(everywhere(plan, { colour }), { colour }, "sources")));
        expectCooler(coloured("white"), coloured("black"));
        const { parts, day, air } = heatOf(plan);
        for (const { hottest, expected, kind } of parts) {
          if (kind === "pipe") expect(hottest.peak).toBeGreaterThanOrEqual(expected.peak - 0.5);
          expect(Math.min(...hottest.water)).toBeGreaterThanOrEqual(day.low - 1e-6);
        }
        expect(Math.max(...air)).toBeLessThanOrEqual(day.high + 1e-9);
      }),
      RUNS,
    );
  });
});
