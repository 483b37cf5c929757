import { expect, it } from "vitest";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { compareBy } from "../../packages/hydraulics/src/search/cost.js";
import { buildCureLines } from "../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace, planOf } from "../../packages/hydraulics/src/search/cure-space.js";
import { findFront } from "../../packages/hydraulics/src/search/find-front.js";
import { buildRequirement } from "../../packages/hydraulics/src/search/requirement.js";
import { solveSpace } from "../../packages/hydraulics/src/search/solve-space.js";
import { type CureCase, cureCase } from "../arbitraries/cure-plans.js";
import { unbounded } from "../arbitraries/searched-case.js";

const SEEDS = Array.from({ length: 14 }, (_, k) => 700 + k);

/** The cheapest sizes and stands for a case, told as its plan and cost; undefined where nothing works. */
function cheapest({ plan, options }: CureCase) {
  const building = buildCureLines(buildCureSpace(plan, options, { pipes: true, stands: true }));
  if (!building.ok) return undefined;
  const { lines } = building;
  const required = buildRequirement(plan, lines.present, { ...options, weeks: 0 });
  if (!required.ok) return undefined;
  const compare = compareBy(options.by);
  const { found } = solveSpace(lines, required.requirement, { compare, effort: unbounded() });
  return found && { cost: found.cost, plan: planOf(lines.space, found.picks) };
}

it("a cure is a cure by the check of its plan", () => {
  const verdicts = SEEDS.flatMap((seed) => {
    const cure = cheapest(cureCase(seed));
    if (cure === undefined) return [];
    const checking = checkPlan(cure.plan, { samples: 0 });
    return [checking.ok && checking.checked.verdict];
  });
  expect(verdicts.length).toBeGreaterThan(3);
  expect(new Set(verdicts)).toEqual(new Set(["good"]));
});

it("a higher stand allowed never makes the cheapest cure dearer, nor more margin asked for cheaper", () => {
  for (const seed of SEEDS) {
    const one = cureCase(seed);
    const { options } = one;
    const cure = cheapest(one);
    const higher = cheapest({ ...one, options: { ...options, standMost: (options.standMost ?? 0) * 2 } });
    const wider = cheapest({ ...one, options: { ...options, margin: (options.margin ?? 0) + 0.05 } });
    const compare = compareBy(options.by);
    if (cure !== undefined) {
      expect([seed, higher !== undefined]).toEqual([seed, true]);
      expect([seed, compare(higher!.cost, cure.cost) <= 0]).toEqual([seed, true]);
    }
    if (wider !== undefined) {
      expect([seed, cure !== undefined]).toEqual([seed, true]);
      expect([seed, compare(wider.cost, cure!.cost) >= 0]).toEqual([seed, true]);
    }
  }
});

it("along a trade-off every point costs more and spares more than the one before", () => {
  let points = 0;
  for (const seed of SEEDS.slice(0, 5)) {
    const { plan, options } = cureCase(seed);
    const finding = findFront(plan, { ...options, weeks: 0, margin: 0 });
    if (!finding.ok) continue;
    const front = finding.front.costAgainstMargin;
    points += front.length;
    front.slice(1).forEach((point, k) => {
      const before = front[k]!;
      expect([seed, compareBy(options.by)(point.cost, before.cost) > 0]).toEqual([seed, true]);
      expect([seed, point.margin > before.margin]).toEqual([seed, true]);
    });
  }
  expect(points).toBeGreaterThan(3);
});
