import type { HandlesRequest } from "./handles-request.js";
import { jointLimits, statedJoints } from "./joint-limits.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import type { SideHandle } from "./side-handle.js";

/** Every joint of the path that is not a source. */
export function jointHandles(request: HandlesRequest): SideHandle[] {
  const { checked, path, plan } = request;
  const { line } = checked;
  const joints = jointsOn(line, stretchesOf(line, path));
  const sources = new Set(line.sources.map(({ point }) => point));
  const stated = statedJoints(plan);
  const limits = jointLimits(request);
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
        ...limits(point),
        isFirm,
        target: { kind: "jointHeight" as const, joint },
      },
    ];
  });
}
