import { drinkerGroupsOf } from "../../document/plan-lists.js";
import type { Plan } from "../../document/plan-schema.js";

/** What a plan states of one group of drinkers, in the order of `line.drinkers.groups`. */
export interface StatedNumbers {
  /** Where the plan has the group, as in `DefaultUsed.path`. */
  readonly path: string;
  readonly busiest: boolean;
  readonly ordinary: boolean;
  /** The group's own need, or that of a drinker the user measured. */
  readonly need: boolean;
}

/** For each group of the plan which of its numbers the plan states; the birds or defaults give the others. */
export function statedNumbers(plan: Plan): StatedNumbers[] {
  return plan.runs.flatMap((run, r) =>
    drinkerGroupsOf(run).map((group, g) => ({
      path: Array.isArray(run.drinkers) ? `runs[${r}].drinkers[${g}]` : `runs[${r}].drinkers`,
      busiest: group.busiest !== undefined,
      ordinary: group.ordinary !== undefined,
      need:
        group.need !== undefined ||
        (plan.ownDrinkers !== undefined && Object.hasOwn(plan.ownDrinkers, group.kind)),
    })),
  );
}
