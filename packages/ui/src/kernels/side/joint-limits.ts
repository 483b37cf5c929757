import type { Line, Plan } from "@headfall/hydraulics";
import type { HandlesRequest } from "./handles-request.js";

/** Lowest and highest the pipe may be at a joint [m above datum]. */
export type JointLimits = (point: number) => { readonly low: number; readonly high: number };

/** Another joint at the end of a run, and how long the run is [m]. */
interface FarEnd {
  readonly other: number;
  readonly length: number;
  /** Whether the plan says how much the run falls. */
  readonly hasFall: boolean;
}

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
  const meeting = farEnds(line, plan);
  /** Falls from a source are counted from its ground, so that their ends stay when its outlet is moved. */
  const stays = (point: number, { other, hasFall }: FarEnd) =>
    sources.has(other) ||
    (sources.has(point) && hasFall) ||
    ((sources.has(point) || isStated(point)) && isStated(other));
  return (point) => {
    let [low, high] = reach;
    for (const end of meeting.get(point) ?? []) {
      if (end.other === point || !stays(point, end)) continue;
      low = Math.max(low, line.points.height[end.other]! - end.length);
      high = Math.min(high, line.points.height[end.other]! + end.length);
    }
    const height = line.points.height[point]!;
    return { low: Math.min(low, height), high: Math.max(high, height) };
  };
}

/** For each joint the joints at the other ends of its runs. */
function farEnds({ runs }: Line, plan: Plan): Map<number, FarEnd[]> {
  const meeting = new Map<number, FarEnd[]>();
  const add = (point: number, end: FarEnd) => {
    const there = meeting.get(point);
    if (there === undefined) meeting.set(point, [end]);
    else there.push(end);
  };
  for (const { index, points, length } of runs) {
    const [from, to] = [points[0]!, points[points.length - 1]!];
    const { fall, survey } = plan.runs[index] ?? {};
    const hasFall = fall !== undefined || survey !== undefined;
    add(from, { other: to, length, hasFall });
    add(to, { other: from, length, hasFall });
  }
  return meeting;
}
