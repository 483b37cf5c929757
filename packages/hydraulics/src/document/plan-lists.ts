import type { PlanBirds, PlanDrinkerGroup, PlanPen, PlanRun } from "./plan-schema.js";

/**
 * The batches of a pen as a list, however they were written.
 *
 * @example batchesOf(plan.pens[0]).length   // 1
 */
export function batchesOf(pen: PlanPen): readonly PlanBirds[] {
  return Array.isArray(pen.birds) ? pen.birds : [pen.birds];
}

/**
 * The groups of a run as a list, however they were written.
 *
 * @example drinkerGroupsOf(plan.runs[2]).length   // 1
 */
export function drinkerGroupsOf(run: PlanRun): readonly PlanDrinkerGroup[] {
  if (run.drinkers === undefined) return [];
  return Array.isArray(run.drinkers) ? run.drinkers : [run.drinkers];
}
