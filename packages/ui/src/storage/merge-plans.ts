import { checkDocument, type Plan } from "@headfall/hydraulics";
import { applyDiff, diffPlans, type PlanDifference } from "../store/plan-diff.js";
import { isSameValue, valueIn } from "../store/plan-values.js";

/**
 * One plan of two that were changed apart: what was done to `mine` since `base`, done to `theirs`.
 *
 * @returns undefined when both changed the same place, each in its own way, or when the two together make no plan
 */
export function mergePlans(base: Plan, mine: Plan, theirs: Plan): Plan | undefined {
  if (isSameValue(mine, theirs)) return theirs;
  const own = diffPlans(base, mine).filter((difference) => !isDoneIn(theirs, difference));
  if (own.length === 0) return theirs;
  const merged = applyDiff(theirs, own);
  return merged !== undefined && checkDocument(merged).ok ? merged : undefined;
}

/** Both may have done the same. */
function isDoneIn(plan: Plan, { path, after }: PlanDifference): boolean {
  return isSameValue(path.reduce<unknown>(valueIn, plan), after);
}
