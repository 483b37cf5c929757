import { type Plan, type PlanRun, runEnds } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { heightKeyOf } from "../measure-height.js";
import type { Edited } from "../plan-change.js";
import {
  endReading,
  type HeightOrigin,
  heightsOf,
  outletInVessel,
  type PlanHeights,
  toldFall,
} from "../plan-heights.js";
import { exactLength, roundHeight } from "../typed-length.js";
import { holdJoints, keepHeights, tellHeight } from "./keep-heights.js";
import { tidyRun, tidySource } from "./part-keys.js";
import { meetingRuns, refuse, withPoint, withRun, withSource } from "./plan-parts.js";
import { contradictionsIn } from "./settle-edit.js";

/**
 * Puts the pipe at a joint at a height, by the key that decides it; what hangs on it by falls moves along. Where that
 * would contradict what else is told (in a ring), the joint alone moves, and the falls of its runs with it.
 */
export function setHeight(plan: Plan, joint: string, height: number, system: UnitSystem): Edited {
  const heights = heightsOf(plan);
  const by = heights.joints.get(joint)?.by;
  if (by === undefined) return refuse("Nothing leads to this joint: its height is that of nothing yet.");
  const whole = byItsKey(plan, joint, by, heights, height, system);
  const isFine = by.kind === "source" || isSound(plan, whole);
  const moved = isFine ? whole : onItsOwn(plan, joint, heights, height, system);
  const { typed, what } = heightKeyOf(moved, joint);
  return {
    ok: true,
    plan: moved,
    words: typed === undefined ? what : `${what} ${typed}`,
    selected: by.kind === "source" ? { kind: "source", source: by.source } : { kind: "joint", joint },
  };
}

const isSound = (before: Plan, after: Plan) =>
  contradictionsIn(before).length > 0 || contradictionsIn(after).length === 0;

function byItsKey(
  plan: Plan,
  joint: string,
  by: HeightOrigin,
  heights: PlanHeights,
  height: number,
  system: UnitSystem,
): Plan {
  switch (by.kind) {
    case "source":
      return withStand(plan, by.source, height, system);
    case "point": {
      const ground = metresOf(plan.points?.[by.point]?.ground);
      return withPoint(plan, joint, { above: roundHeight(height - ground, system) });
    }
    case "run": {
      const { to } = runEnds(plan)[by.run]!;
      const fall = by.isStart ? height - heights.joints.get(to)!.height : heights.reference[by.run]! - height;
      return withRun(plan, by.run, withFall(plan.runs[by.run]!, roundHeight(fall, system)));
    }
  }
}

/** A vessel stands on the ground at the lowest. */
function withStand(plan: Plan, index: number, height: number, system: UnitSystem): Plan {
  const source = plan.sources[index]!;
  const stand = Math.max(0, height - metresOf(source.ground) - outletInVessel(source));
  return withSource(plan, index, tidySource({ ...source, stand: roundHeight(stand, system) }));
}

/** The run with another fall, told where it told it before: by its own key, by the last reading, or by both. */
function withFall(run: PlanRun, fall: string): PlanRun {
  const end = endReading(run);
  const survey = run.survey?.map((each, i) => (i === end ? { ...each, fall } : each));
  return tidyRun({ ...run, fall: end >= 0 && run.fall === undefined ? undefined : fall, survey });
}

/** The joint at a height of its own, its runs falling more or less for it, and every other joint where it was. */
function onItsOwn(plan: Plan, joint: string, heights: PlanHeights, height: number, system: UnitSystem): Plan {
  const rise = height - heights.joints.get(joint)!.height;
  const runs = runEnds(plan);
  const tilted = (meetingRuns(plan).get(joint) ?? []).reduce((each, index) => {
    const { from, to } = runs[index]!;
    if (from === to) return each;
    return withRun(each, index, tilt(each.runs[index]!, from === joint, rise, system));
  }, plan);
  const told = tellHeight(tilted, joint, height, system);
  const joints = new Map(heights.joints);
  joints.set(joint, { height, by: joints.get(joint)!.by });
  const level = (meetingRuns(plan).get(joint) ?? []).filter((i) => toldFall(plan.runs[i]!) === undefined);
  const ends = level.flatMap((index) => [runs[index]!.from, runs[index]!.to]);
  const held = holdJoints(
    told,
    ends.filter((name) => name !== joint),
    heights,
    system,
  );
  return keepHeights({ ...heights, joints }, held, system);
}

/** A run one end of which has risen: falls from its start grow by it, the fall to its end becomes less. */
function tilt(run: PlanRun, isStart: boolean, rise: number, system: UnitSystem): PlanRun {
  const by = (typed: string) => exactLength(metresOf(typed) + (isStart ? rise : -rise), system);
  const end = endReading(run);
  const isMoved = (index: number) => (isStart ? metresOf(run.survey![index]!.along) > 0 : index === end);
  return tidyRun({
    ...run,
    fall: run.fall === undefined ? undefined : by(run.fall),
    survey: run.survey?.map((each, i) => (isMoved(i) ? { ...each, fall: by(each.fall) } : each)),
  });
}
