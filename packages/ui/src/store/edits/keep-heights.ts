import type { Plan } from "@headfall/hydraulics";
import { runEnds } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { heightsOf, type JointHeight, type PlanHeights } from "../plan-heights.js";
import { exactLength } from "../typed-length.js";
import { withPoint } from "./plan-parts.js";

/** Heights that differ less than this are the same [m]. */
const SAME_HEIGHT = 1e-6;
/** Rounds in which only the joints next to unmoved ones are told; then all are. */
const ROUNDS = 4;

/** Names of the joints of both plans that the second puts at another height than the first. */
export function movedJoints(before: PlanHeights, after: PlanHeights): string[] {
  return [...after.joints].flatMap(([name, { height }]) => {
    const was = before.joints.get(name);
    return was !== undefined && Math.abs(was.height - height) > SAME_HEIGHT ? [name] : [];
  });
}

/**
 * The plan with heights told where an edit of its runs would let pipe rise or sink that nobody moved. Where one told
 * joint brings those behind it back to their heights, only that one is told.
 */
export function keepHeights(before: PlanHeights, after: Plan, system: UnitSystem): Plan {
  let plan = after;
  for (let round = 0; round <= ROUNDS; round++) {
    const now = heightsOf(plan);
    const moved = movedJoints(before, now);
    if (moved.length === 0) return plan;
    const known = new Set(moved);
    const nearest = moved.filter((name) => isNextToUnmoved(plan, now.joints.get(name)!, known));
    const told = round === ROUNDS || nearest.length === 0 ? moved : nearest;
    plan = told.reduce((each, name) => tellHeight(each, name, before.joints.get(name)!.height, system), plan);
  }
  return plan;
}

function isNextToUnmoved(plan: Plan, { by }: JointHeight, moved: ReadonlySet<string>): boolean {
  if (by.kind !== "run") return true;
  const { from, to } = runEnds(plan)[by.run]!;
  return !moved.has(by.isStart ? to : from);
}

/** The plan with the height of the pipe at a joint told by the joint itself; a source keeps its own. */
export function tellHeight(plan: Plan, joint: string, height: number, system: UnitSystem): Plan {
  const ground = metresOf(plan.points?.find(({ id }) => id === joint)?.ground);
  return withPoint(plan, joint, { above: exactLength(height - ground, system) });
}

/**
 * The plan with the heights of some joints told that only follow from their runs. A run of which no fall is told would
 * lie level, or be left open in a ring: with the heights at both its ends told, it slopes.
 */
export function holdJoints(
  plan: Plan,
  names: Iterable<string>,
  { joints }: PlanHeights,
  system: UnitSystem,
): Plan {
  return [...new Set(names)].reduce((each, name) => {
    const known = joints.get(name);
    return known?.by.kind === "run" ? tellHeight(each, name, known.height, system) : each;
  }, plan);
}
