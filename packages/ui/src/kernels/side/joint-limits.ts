import type { Line, Plan } from "@headfall/hydraulics";
import type { HandlesRequest } from "./handles-request.js";

/** Lowest and highest the pipe may be at a point of the line [m above datum]. */
export type JointLimits = (point: number) => { readonly low: number; readonly high: number };

/** Joints whose height the plan states, by name. */
export function statedJoints({ points }: Plan): Set<string> {
  const stated = (points ?? []).filter(({ ground, above }) => ground !== undefined || above !== undefined);
  return new Set(stated.map(({ id }) => id));
}

/** Within the drawing's reach, and no farther from a neighbour that stays than the pipe between them is long. */
export function jointLimits({ checked, plan, reach }: HandlesRequest): JointLimits {
  const { line } = checked;
  const sources = new Set(line.sources.map(({ point }) => point));
  const stated = statedJoints(plan);
  const isStated = (point: number) => stated.has(line.points.id[point]!);
  const meeting = runsAtPoints(line);
  return (point) => {
    let [low, high] = reach;
    for (const { other, length } of meeting.get(point) ?? []) {
      const stays = sources.has(other) || (isStated(point) && isStated(other));
      if (!stays || other === point) continue;
      low = Math.max(low, line.points.height[other]! - length);
      high = Math.min(high, line.points.height[other]! + length);
    }
    const height = line.points.height[point]!;
    return { low: Math.min(low, height), high: Math.max(high, height) };
  };
}

/** For each joint the joints at the other ends of its runs, and how long those are [m]. */
function runsAtPoints({ runs }: Line): Map<number, { other: number; length: number }[]> {
  const meeting = new Map<number, { other: number; length: number }[]>();
  const add = (point: number, other: number, length: number) => {
    const there = meeting.get(point);
    if (there === undefined) meeting.set(point, [{ other, length }]);
    else there.push({ other, length });
  };
  for (const { points, length } of runs) {
    const [from, to] = [points[0]!, points[points.length - 1]!];
    add(from, to, length);
    add(to, from, length);
  }
  return meeting;
}
