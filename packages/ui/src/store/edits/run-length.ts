import { type Plan, type PlanRun, runEnds, runNames } from "@headfall/hydraulics";
import { type AboveLayout, layAbove } from "../../kernels/above/lay-above.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { rowOf, withRow } from "../drinker-places.js";
import { endReading, heightsOf, type PlanHeights } from "../plan-heights.js";
import { roundLength } from "../typed-length.js";
import { tidyRun } from "./part-keys.js";
import { groupsOf, withGroups, withRun } from "./plan-parts.js";

/** A run of another length, and what had to give way for it, in words. */
export interface Measured {
  readonly run: PlanRun;
  readonly words: readonly string[];
}

/**
 * The run with another length. A reading at its end stays at its end; readings beyond it are dropped, and drinkers
 * that would hang beyond it are put closer together.
 */
export function withLength(run: PlanRun, typed: string, system: UnitSystem): Measured {
  if (typed === run.length) return { run, words: [] };
  const length = metresOf(typed);
  const { survey, words: dropped } = surveyWithin(run, typed);
  let squeezed = false;
  const groups = groupsOf(run).map((group) => {
    const row = rowOf(group, metresOf(run.length));
    const isLoose = group.first === undefined && group.every === undefined;
    const last = row.first + (row.count - 1) * row.every;
    if (isLoose || (group.every !== undefined && last <= length)) return group;
    if (group.every === undefined && row.first <= length) return group;
    squeezed = true;
    const share = last === 0 ? 0 : length / last;
    return withRow(group, { ...row, first: row.first * share, every: row.every * share }, length, system);
  });
  const changed = squeezed ? withGroups(run, groups) : run;
  return {
    run: tidyRun({ ...changed, length: typed, survey }),
    words: squeezed ? [...dropped, "drinkers closer together"] : dropped,
  };
}

function surveyWithin(run: PlanRun, typed: string) {
  const { survey } = run;
  if (survey === undefined) return { survey, words: [] };
  const length = metresOf(typed);
  const end = endReading(run);
  const kept = survey.flatMap((reading, index) => {
    if (index === end) return [{ ...reading, along: typed }];
    return metresOf(reading.along) < length - 1e-6 ? [reading] : [];
  });
  const gone = survey.length - kept.length;
  const words = gone === 0 ? [] : [`${gone} ${gone === 1 ? "reading" : "readings"} beyond its end dropped`];
  return { survey: kept.length === 0 ? undefined : kept, words };
}

/**
 * The plan with those runs measured anew that were drawn to scale before their drawing changed; the others keep their
 * length. No run becomes shorter than its ends are apart in height.
 */
export function measureRuns(
  plan: Plan,
  runs: readonly number[],
  before: AboveLayout,
  system: UnitSystem,
): { readonly plan: Plan; readonly words: readonly string[] } {
  const drawn = layAbove(plan);
  const heights = heightsOf(plan);
  const names = runNames(plan);
  const words: string[] = [];
  let measured = plan;
  for (const index of runs) {
    if (before.runs[index]?.isToScale !== true) continue;
    const least = heightBetween(plan, index, heights);
    const typed = lengthAtLeast(drawn.runs[index]!.drawnLength, least, system);
    const next = withLength(plan.runs[index]!, typed, system);
    words.push(...next.words.map((word) => `${names[index]}: ${word}`));
    measured = withRun(measured, index, next.run);
  }
  return { plan: measured, words };
}

/** How far the ends of a run are apart in height [m]. */
function heightBetween(plan: Plan, index: number, { joints }: PlanHeights): number {
  const { from, to } = runEnds(plan)[index]!;
  return Math.abs((joints.get(from)?.height ?? 0) - (joints.get(to)?.height ?? 0));
}

/** A length measured off a drawing, but no less than its ends are apart in height. */
export function lengthAtLeast(drawn: number, apart: number, system: UnitSystem): string {
  const typed = roundLength(drawn, system);
  if (metresOf(typed) >= apart) return typed;
  // A centimetre more, so that rounding never takes it below.
  return roundLength(apart + 0.01, system);
}
