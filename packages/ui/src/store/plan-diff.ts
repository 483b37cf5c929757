import type { Plan } from "@headfall/hydraulics";
import { isSameValue, listedEntries, type Path, valueIn, withValue } from "./plan-values.js";

/** One place of the plan and what stood there before and after; undefined is nothing at all. */
export interface PlanDifference {
  readonly path: Path;
  readonly before: unknown;
  readonly after: unknown;
}

/** All that makes one plan of another, as data; the places named in it lie apart from each other. */
export type PlanDiff = readonly PlanDifference[];

/**
 * What changed between two plans. Whatever both share is passed over unread, so that the cost is that of the edit and
 * not of the plan. A list that has become longer or shorter is told whole.
 */
export function diffPlans(before: Plan, after: Plan): PlanDiff {
  return differences(before, after, []);
}

function differences(before: unknown, after: unknown, path: Path): PlanDifference[] {
  if (before === after) return [];
  const keys = sharedKeys(before, after);
  if (keys === undefined) return isSameValue(before, after) ? [] : [{ path, before, after }];
  return keys.flatMap((key) => differences(valueIn(before, key), valueIn(after, key), [...path, key]));
}

/** The keys to compare one by one; undefined when the two can only be told whole. */
function sharedKeys(before: unknown, after: unknown): (string | number)[] | undefined {
  if (Array.isArray(before) && Array.isArray(after))
    return before.length === after.length ? before.map((_, index) => index) : undefined;
  const [one, other] = [listedEntries(before), listedEntries(after)];
  if (one === undefined || other === undefined) return undefined;
  return [...new Set([...one, ...other].map(([key]) => key))];
}

/**
 * The plan with a change brought in that was made on another copy of it. Undefined when a place does not hold what the
 * change expects to find: both copies have then changed it, and one must be chosen whole.
 */
export function applyDiff(plan: Plan, diff: PlanDiff): Plan | undefined {
  let whole: unknown = plan;
  for (const { path, before, after } of diff) {
    if (!isReachable(whole, path)) return undefined;
    if (!isSameValue(path.reduce(valueIn, whole), before)) return undefined;
    whole = withValue(whole, path, after);
  }
  return whole as Plan;
}

/** Whether all that a place lies in is there; only the place itself may be empty. */
function isReachable(whole: unknown, path: Path): boolean {
  let at = whole;
  for (const step of path) {
    const isPlace =
      typeof step === "number" ? Array.isArray(at) && step < at.length : listedEntries(at) !== undefined;
    if (!isPlace) return false;
    at = valueIn(at, step);
  }
  return true;
}

/** The change that takes back this one. */
export function reverseDiff(diff: PlanDiff): PlanDiff {
  return diff.map(({ path, before, after }) => ({ path, before: after, after: before })).reverse();
}
