import { batchesOf, type Plan, type PlanBirds } from "@headfall/hydraulics";
import type { Path } from "./plan-values.js";

/** Where a batch of birds stands in a plan. */
export interface BirdsPlace {
  readonly plan: Plan;
  readonly pen: number;
  readonly batch: number;
}

export const birdsAt = ({ plan, pen, batch }: BirdsPlace): PlanBirds => batchesOf(plan.pens![pen]!)[batch]!;

/** A pen holds one batch, or a list of them. */
export const pathOfBirds = ({ plan, pen, batch }: BirdsPlace): Path =>
  Array.isArray(plan.pens![pen]!.birds) ? ["pens", pen, "birds", batch] : ["pens", pen, "birds"];
