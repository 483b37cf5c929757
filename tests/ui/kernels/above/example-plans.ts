import { readFileSync } from "node:fs";
import type { Plan } from "@headfall/hydraulics";
import { planOf } from "../../fixtures/placed-plan.js";

export const EXAMPLES = ["hen-house", "rain-barrel", "two-pens"] as const;

/** One of the example plans, as its file reads. */
export function examplePlan(name: (typeof EXAMPLES)[number]): Plan {
  const path = new URL(`../../../../docs/examples/alder-bank-${name}.json`, import.meta.url);
  return planOf(readFileSync(path, "utf8"));
}
