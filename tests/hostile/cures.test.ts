import { expect, it } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import type { Cure } from "../../packages/hydraulics/src/search/cure-answer.js";
import { findCures } from "../../packages/hydraulics/src/search/find-cures.js";
import { randomPlan } from "../arbitraries/plans.js";

const CASES = Number(process.env["HEADFALL_CASES"] ?? 8);

/** What is wrong with a cure, in words; nothing where it is one. */
function faultsOf({ kind, plan, after, cost }: Cure): string[] {
  const reading = checkDocument(JSON.parse(JSON.stringify(plan)));
  return [
    ...(reading.ok ? [] : [`${kind}: its plan has problems: ${JSON.stringify(reading.problems)}`]),
    ...(after.meets ? [] : [`${kind}: does not work`]),
    ...(Object.values(cost).every((one) => Number.isFinite(one) && one >= 0)
      ? []
      : [`${kind}: costs no number`]),
  ];
}

it("findCures answers any plan, and what it proposes can be read and works", () => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    const reading = checkDocument(randomPlan(seed));
    if (!reading.ok) continue;
    const finding = findCures(reading.plan, { mostJudged: 8, weeks: 0, standStep: 0.3, day: "2026-07-04" });
    if (!finding.ok) continue;
    expect([seed, finding.answer.cures.flatMap(faultsOf)]).toEqual([seed, []]);
  }
}, 600_000);
