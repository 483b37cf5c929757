import { LIMITS } from "../document/limits.js";
import { drinkerGroupsOf } from "../document/plan-lists.js";
import type { Plan } from "../document/plan-schema.js";
import { type Problem, sortProblems } from "../document/problem.js";
import { waterAt } from "../physics/water.js";
import { buildSources, feedCoefficient, type StandingSource } from "./build-source.js";
import { tooSteep } from "./check-joints.js";
import { resolveGround, resolveHeights } from "./heights.js";
import { gatherJoints, type Joints } from "./joints.js";
import { layOneRun } from "./lay-runs.js";
import type { Laying } from "./laying.js";
import type { Feed, Line, Source } from "./line.js";
import { columnsOfDrinkers, columnsOfSegments, listPoints } from "./line-parts.js";
import { createTypedValues, type DefaultUsed, type TypedValues } from "./typed-values.js";

/** The line of a plan in SI, or what in the plan contradicts itself. */
export type LineBuilding =
  | {
      readonly ok: true;
      readonly line: Line;
      readonly defaults: readonly DefaultUsed[];
      readonly openWater: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Makes the line a plan describes: SI, indexed, every default filled in and listed.
 *
 * @param plan  from `readPlan` or `checkDocument`
 * @returns the line, or what in the plan contradicts itself (heights, connections, levels)
 * @example buildLine(small).line.drinkers.count   // 4
 */
export function buildLine(plan: Plan): LineBuilding {
  const values = createTypedValues();
  const water = waterAt(values.siOr(plan.water, "temperature", "waterTemperature", "water"));
  const { sources, problems } = buildSources(plan, values);
  const joints = gatherJoints(
    plan,
    sources.map((source) => source.base + source.outlet),
    values,
  );
  const heights = resolveHeights(plan, joints, values);
  problems.push(...heights.problems, ...tooManyDrinkers(plan));
  if (problems.length === 0) problems.push(...tooSteep(plan, joints, heights.height, values));
  if (problems.length > 0) return { ok: false, problems: sortProblems(problems) };

  const outletBores = sources.map(({ outletBore }) => outletBore);
  const laying = beginLaying({ plan, joints, outletBores, height: heights.height, values });
  plan.runs.forEach((_, i) => {
    layOneRun(laying, i);
  });
  const line: Line = {
    name: plan.name ?? "",
    water,
    points: laying.points.finish(),
    segments: columnsOfSegments(laying.segments),
    runs: laying.runs,
    drinkers: { ...columnsOfDrinkers(laying.drinkers), groups: laying.groups },
    sources: sources.map((source, i) => placeSource(plan, joints, source, i, values)),
  };
  return { ok: true, line, defaults: values.used, openWater: laying.openWater };
}

/** A line of joints only, before any run is laid between them. */
function beginLaying(told: Pick<Laying, "plan" | "joints" | "outletBores" | "height" | "values">): Laying {
  const { joints, height } = told;
  const ground = resolveGround(joints, height);
  const points = listPoints();
  joints.id.forEach((id, j) => {
    points.add({ id, height: height[j], ground: ground[j], bleed: joints.bleed[j], measured: true });
  });
  return { ...told, ground, points, segments: [], drinkers: [], groups: [], runs: [], openWater: [] };
}

function tooManyDrinkers(plan: Plan): Problem[] {
  const count = plan.runs.reduce(
    (sum, run) => sum + drinkerGroupsOf(run).reduce((n, group) => n + (group.count ?? 1), 0),
    0,
  );
  if (count <= LIMITS.drinkers) return [];
  return [
    {
      code: "tooMany",
      path: "runs",
      found: `${count} drinkers`,
      allowed: `A plan has at most ${LIMITS.drinkers} drinkers.`,
      mend: "Split it into several plans.",
    },
  ];
}

function placeSource(
  plan: Plan,
  joints: Joints,
  source: StandingSource,
  index: number,
  values: TypedValues,
): Source {
  const { feed } = plan.sources[index];
  const built: Feed | undefined =
    feed === undefined
      ? undefined
      : {
          point: joints.id.indexOf(feed.from),
          height: source.base + source.levels.full,
          coefficient: feedCoefficient(
            feed.opening === undefined ? undefined : values.si(feed.opening, "length"),
          ),
        };
  return { ...source, point: joints.source.indexOf(index), feed: built };
}
