import type { PlanData } from "../arbitraries/plans.js";

/** A plan with every group of drinkers changed the same way, whether a run has one or a list. */
export function drinkerGroupsIn(plan: PlanData, change: (group: PlanData) => PlanData): PlanData {
  const changed = (drinkers: unknown) =>
    Array.isArray(drinkers) ? drinkers.map(change) : change(drinkers as PlanData);
  return {
    ...plan,
    runs: (plan["runs"] as PlanData[]).map((run) =>
      run["drinkers"] === undefined ? run : { ...run, drinkers: changed(run["drinkers"]) },
    ),
  };
}
