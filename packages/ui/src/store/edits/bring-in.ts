import type { Plan } from "@headfall/hydraulics";
import type { Edited } from "../plan-change.js";
import { applyDiff, type PlanDiff } from "../plan-diff.js";
import { isSameValue } from "../plan-values.js";
import { refuse } from "./plan-parts.js";

const CHANGED_SINCE = "The plan has changed there since this was found. Look again, then do it.";

/** Brings a change into the plan that was found for it elsewhere: all of it, or nothing where a place is no longer as it was. */
export function bringIn(plan: Plan, diff: PlanDiff, what: string): Edited {
  const brought = applyDiff(plan, diff);
  if (brought === undefined) return refuse(CHANGED_SINCE);
  const sources = shared(plan.sources, brought.sources);
  const runs = shared(plan.runs, brought.runs);
  const points = brought.points && { points: shared(plan.points ?? [], brought.points) };
  return { ok: true, plan: { ...brought, sources, runs, ...points }, words: what };
}

/** A list that has become longer is told whole; what it left alone stays the very same part. */
const shared = <Part>(before: Part[], after: Part[]): Part[] =>
  after === before ? before : after.map((part) => before.find((each) => isSameValue(each, part)) ?? part);
