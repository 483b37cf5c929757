import { defaultRunId, defaultSourceId, endOfRun } from "./default-names.js";
import type { Plan } from "./plan-schema.js";

/** The two joints of a run, by name: a source, a point, or an end the run makes itself. */
export interface RunEnds {
  readonly from: string;
  readonly to: string;
}

/**
 * Names of the sources, in the order of the plan; those left out are filled in.
 *
 * @example sourceNames(plan)   // ["barrel"]
 */
export const sourceNames = (plan: Plan): readonly string[] =>
  plan.sources.map(({ id }, index) => id ?? defaultSourceId(index));

/**
 * Names of the runs, in the order of the plan; those left out are filled in.
 *
 * @example runNames(plan)   // ["feed", "riser", "hen line"]
 */
export const runNames = (plan: Plan): readonly string[] =>
  plan.runs.map(({ id }, index) => id ?? defaultRunId(index));

/**
 * Where each run starts and ends: what `from` and `to` say, else the end of the run before and an end of its own.
 *
 * @example runEnds(small)[0]   // { from: "bucket", to: "line end" }
 */
export function runEnds(plan: Plan): readonly RunEnds[] {
  let before = plan.sources[0]?.id ?? defaultSourceId(0);
  return plan.runs.map((run, index) => {
    const ends = { from: run.from ?? before, to: run.to ?? endOfRun(run.id, index) };
    before = ends.to;
    return ends;
  });
}
