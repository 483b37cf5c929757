import { expect, it } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { findCures } from "../../packages/hydraulics/src/search/find-cures.js";
import { randomPlan } from "../arbitraries/plans.js";
import { faultsOfCure } from "./cure-faults.js";

const CASES = Number(process.env["HEADFALL_CASES"] ?? 8);

it("findCures answers any plan, and what it proposes can be read and works", () => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    const reading = checkDocument(randomPlan(seed));
    if (!reading.ok) continue;
    const finding = findCures(reading.plan, { mostJudged: 8, weeks: 0, standStep: 0.3, day: "2026-07-04" });
    if (!finding.ok) continue;
    expect([seed, finding.answer.cures.flatMap(faultsOfCure)]).toEqual([seed, []]);
  }
}, 600_000);
