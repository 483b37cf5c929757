import type { Plan } from "@headfall/hydraulics";

import type { LevelName } from "./plan-change.js";

export type { LevelName };

/** The edits the page makes, by name; each gives a new plan and leaves the old one as it was. */
export type LineChange =
  | { readonly kind: "setStand"; readonly source: number; readonly typed: string }
  | { readonly kind: "setLevel"; readonly source: number; readonly level: LevelName; readonly typed: string }
  | { readonly kind: "setPipe"; readonly run: number; readonly pipe: string }
  | {
      readonly kind: "setAtWork";
      readonly run: number;
      readonly group: number;
      readonly when: "busiest" | "ordinary";
      readonly count: number;
    };

/** The plan with one edit made. Parts the edit does not touch are shared with the plan before. */
export function applyChange(plan: Plan, change: LineChange): Plan {
  switch (change.kind) {
    case "setStand":
      return withSource(plan, change.source, (source) => ({ ...source, stand: change.typed }));
    case "setLevel":
      return withSource(plan, change.source, (source) => ({
        ...source,
        level: { ...source.level, [change.level]: change.typed },
      }));
    case "setPipe":
      return withRun(plan, change.run, (run) => ({ ...run, pipe: change.pipe }));
    case "setAtWork":
      return withRun(plan, change.run, (run) => withAtWork(run, change.group, change.when, change.count));
  }
}

/** The edit in a few words, as a list of what was done would show it. */
export function nameOfChange(change: LineChange): string {
  switch (change.kind) {
    case "setStand":
      return `stand ${change.typed}`;
    case "setLevel":
      return `${change.level} level ${change.typed}`;
    case "setPipe":
      return `pipe ${change.pipe}`;
    case "setAtWork":
      return `${change.count} at work, ${change.when}`;
  }
}

type PlanSource = Plan["sources"][number];
type PlanRun = Plan["runs"][number];

function withSource(plan: Plan, index: number, edit: (source: PlanSource) => PlanSource): Plan {
  return { ...plan, sources: plan.sources.map((source, i) => (i === index ? edit(source) : source)) };
}

function withRun(plan: Plan, index: number, edit: (run: PlanRun) => PlanRun): Plan {
  return { ...plan, runs: plan.runs.map((run, i) => (i === index ? edit(run) : run)) };
}

/** Drinkers may be written as one group or as a list of groups; the form is kept. */
function withAtWork(run: PlanRun, group: number, when: "busiest" | "ordinary", count: number): PlanRun {
  const { drinkers } = run;
  if (drinkers === undefined) return run;
  if (!Array.isArray(drinkers))
    return group === 0 ? { ...run, drinkers: { ...drinkers, [when]: count } } : run;
  return { ...run, drinkers: drinkers.map((each, i) => (i === group ? { ...each, [when]: count } : each)) };
}
