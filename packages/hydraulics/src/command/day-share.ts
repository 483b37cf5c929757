import type { Plan } from "../document/plan-schema.js";
import { type SimulateOptions, settingOfPlan } from "../judge/time/simulate-day.js";
import { runDay } from "../simulate/day.js";
import { type DayRow, rowOf } from "../simulate/day-summary.js";

/** What each worker is given: some of the seeds. */
export interface DayShare {
  readonly plan: Plan;
  readonly options: Omit<SimulateOptions, "seed" | "record">;
  readonly seeds: readonly number[];
}

/** The days of some seeds; undefined when the plan cannot be run. */
export function rowsOf({ plan, options, seeds }: DayShare): DayRow[] | undefined {
  const set = settingOfPlan(plan, options);
  if (!set.ok) return undefined;
  return seeds.map((seed) =>
    rowOf(runDay(set.setting, { seed, figure: options.figure ?? "expect", record: false })),
  );
}
