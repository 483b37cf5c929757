import { type DayResult, type Plan, simulateDay } from "@headfall/hydraulics";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { penPlan } from "../../../hydraulics/judge/birds/pens.js";

/** Many hens at few nipples. */
export function crowdedPlan(count = 240, drinkers = 3): Plan {
  const reading = checkDocument(
    penPlan({ birds: { kind: "hen", count }, drinkers: { count: drinkers, every: "30 cm" } }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** A day with crowds. */
export function crowdedDay(): DayResult {
  const day = simulateDay(crowdedPlan(), { seed: 1, day: "2026-07-04", record: true });
  if (!day.ok) throw new Error(JSON.stringify(day.problems));
  return day.result;
}
