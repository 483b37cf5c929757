import type { PlanDrinkerGroup, PlanRun } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { rowOf, withRow } from "../drinker-places.js";
import { AT_END, endReading } from "../plan-heights.js";
import { exactLength } from "../typed-length.js";
import { tidyRun } from "./part-keys.js";
import { groupsOf, withGroups } from "./plan-parts.js";

/** What stands in the way of running a run from its other end: things that sit at its start. */
export function fixedAtStart(run: PlanRun): string | undefined {
  if (run.tap !== undefined && run.tap !== "open") return "tap";
  if (run.oneWay !== undefined && run.oneWay !== false) return "one-way valve";
  return run.regulator === undefined ? undefined : "regulator";
}

/**
 * The run told from its other end; the pipe and all on it stay where they are. Its falls are then counted from what
 * was its end, which lies `fall` lower than what they are counted from now [m].
 */
export function turnRun(run: PlanRun, fall: number, isFallTold: boolean, system: UnitSystem): PlanRun {
  const length = metresOf(run.length);
  const turned = tidyRun({
    ...run,
    from: run.to,
    to: run.from,
    fall: isFallTold ? exactLength(-fall, system) : undefined,
    survey: turnedSurvey(run, fall, system),
    corners: run.corners === undefined ? undefined : [...run.corners].reverse(),
  });
  return withGroups(
    turned,
    groupsOf(run).map((group) => turnedGroup(group, length, system)),
  );
}

function turnedSurvey(run: PlanRun, fall: number, system: UnitSystem): PlanRun["survey"] {
  const length = metresOf(run.length);
  const end = endReading(run);
  const inner = (run.survey ?? []).filter((reading, i) => i !== end && metresOf(reading.along) > AT_END);
  if (inner.length === 0) return undefined;
  return inner
    .map((reading) => ({
      ...reading,
      along: exactLength(length - metresOf(reading.along), system),
      fall: exactLength(metresOf(reading.fall) - fall, system),
    }))
    .reverse();
}

function turnedGroup(group: PlanDrinkerGroup, length: number, system: UnitSystem): PlanDrinkerGroup {
  const row = rowOf(group, length);
  const last = Math.min(length, row.first + (row.count - 1) * row.every);
  return withRow(group, { ...row, first: Math.max(0, length - last) }, length, system);
}
