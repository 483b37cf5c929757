import fc from "fast-check";
import { expect, it } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import type { Judgement } from "../../packages/hydraulics/src/judge/check-result.js";

const cm = (metres: number) => `${(100 * metres).toFixed(3)} cm`;

/** Yards of one barrel: places with heights of their own, so that only the barrel rises with its stand. */
const yards = fc
  .array(
    fc.record({
      parent: fc.nat(),
      length: fc.double({ min: 4, max: 30, noNaN: true }),
      above: fc.double({ min: -0.5, max: 0.8, noNaN: true }),
      pipe: fc.constantFrom("pvc-sch40-1/2", "pvc-sch40-3/4", "pe-metric-sdr11-20"),
      kind: fc.constantFrom("nipple-side-action", "cup-trigger", "cup-float"),
      count: fc.integer({ min: 1, max: 12 }),
      busiest: fc.integer({ min: 0, max: 12 }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((runs) => (stand: number) => ({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: cm(stand), level: { full: "70 cm", lowest: "8 cm" } }],
    points: runs.map(({ above }, i) => ({ id: `place ${i}`, ground: cm(above) })),
    runs: runs.map(({ parent, length, pipe, kind, count, busiest }, i) => ({
      from: parent % (i + 1) === 0 ? "barrel" : `place ${(parent % (i + 1)) - 1}`,
      to: `place ${i}`,
      length: `${length.toFixed(3)} m`,
      pipe,
      drinkers: { kind, count, busiest: Math.min(count, busiest) },
    })),
  }));

function supplyByDrinker(data: unknown): Judgement[] {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked.drinkers.map(
    (drinker) =>
      [drinker, ...drinker.also].find(({ verdict }) => verdict === "starves" || verdict === "dry") ?? drinker,
  );
}

const RANK = { good: 0, drips: 0, starves: 1, dry: 2 } as const;

it("checkPlan with a higher stand never makes a drinker starve or run dry, nor a starving one dry", () => {
  fc.assert(
    fc.property(
      yards,
      fc.double({ min: 0, max: 1.2, noNaN: true }),
      fc.double({ min: 0.001, max: 1, noNaN: true }),
      (yard, stand, by) => {
        const [low, high] = [supplyByDrinker(yard(stand)), supplyByDrinker(yard(stand + by))];
        high.forEach((after, d) => {
          expect({ drinker: d, rank: Math.max(RANK[after.verdict], RANK[low[d]!.verdict]) }).toEqual({
            drinker: d,
            rank: RANK[low[d]!.verdict],
          });
        });
      },
    ),
    { numRuns: 150 },
  );
});
