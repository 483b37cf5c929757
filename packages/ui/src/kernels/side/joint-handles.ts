import type { Plan } from "@headfall/hydraulics";
import type { HandlesRequest } from "./handles-request.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import type { SideHandle } from "./side-handle.js";

/** Every joint of the path that is not a source. */
export function jointHandles(request: HandlesRequest): SideHandle[] {
  const { checked, path, plan } = request;
  const { line } = checked;
  const joints = jointsOn(line, stretchesOf(line, path));
  const sources = new Set(line.sources.map(({ point }) => point));
  const stated = statedJoints(plan);
  const source = line.sources[path.source]!;
  return path.points.flatMap((point, i) => {
    const joint = joints.get(point);
    if (joint === undefined || sources.has(point)) return [];
    const isFirm = stated.has(joint);
    const height = line.points.height[point]!;
    return [
      {
        key: `joint ${joint}`,
        kind: "joint" as const,
        part: { kind: "joint" as const, joint },
        name: `height of the pipe at ${joint}`,
        along: path.along[i]!,
        height,
        from: isFirm ? line.points.ground[point]! : source.ground,
        counts: "up" as const,
        fromWords: isFirm ? "the ground" : `the ground under ${source.id}`,
        ...jointLimits(request, point, isFirm, stated),
        isFirm,
        target: { kind: "jointHeight" as const, joint },
      },
    ];
  });
}

/** Joints whose height the plan states, by name. */
function statedJoints({ points }: Plan): Set<string> {
  const stated = (points ?? []).filter(({ ground, above }) => ground !== undefined || above !== undefined);
  return new Set(stated.map(({ id }) => id));
}

/** Within the drawing's reach, and no farther from a neighbour that stays than the pipe between them is long. */
function jointLimits(
  { checked, reach }: HandlesRequest,
  point: number,
  isFirm: boolean,
  stated: ReadonlySet<string>,
): { low: number; high: number } {
  const { line } = checked;
  const sources = new Set(line.sources.map((source) => source.point));
  let [low, high] = reach;
  for (const { points, length } of line.runs) {
    const ends = [points[0]!, points[points.length - 1]!];
    if (!ends.includes(point)) continue;
    const other = ends[0] === point ? ends[1]! : ends[0]!;
    const stays = sources.has(other) || (isFirm && stated.has(line.points.id[other]!));
    if (!stays || other === point) continue;
    low = Math.max(low, line.points.height[other]! - length);
    high = Math.min(high, line.points.height[other]! + length);
  }
  const height = line.points.height[point]!;
  return { low: Math.min(low, height), high: Math.max(high, height) };
}
