import type { HandlesRequest } from "./handles-request.js";
import { jointLimits } from "./joint-limits.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import type { SideHandle } from "./side-handle.js";

/** The ground under each listed point of the path that says how high it is; the pipe over it comes along. */
export function groundHandles(request: HandlesRequest): SideHandle[] {
  const { checked, path, plan, reach } = request;
  const { line } = checked;
  const joints = jointsOn(line, stretchesOf(line, path));
  const listed = new Map((plan.points ?? []).map((point, index) => [point.id, { point, index }]));
  const limits = jointLimits(request);
  return path.points.flatMap((point, i): SideHandle[] => {
    const joint = joints.get(point);
    const entry = joint === undefined ? undefined : listed.get(joint);
    if (joint === undefined || entry === undefined) return [];
    const { ground, above } = entry.point;
    if (ground === undefined && above === undefined) return [];
    const height = line.points.ground[point]!;
    const pipeOver = line.points.height[point]! - height;
    const { low, high } = limits(point);
    return [
      {
        key: `ground ${joint}`,
        kind: "ground",
        part: { kind: "joint", joint },
        name: `ground under ${joint}`,
        along: path.along[i]!,
        height,
        from: 0,
        counts: "up",
        fromWords: "height zero",
        low: Math.min(height, Math.max(reach[0], low - pipeOver)),
        high: Math.max(height, Math.min(reach[1], high - pipeOver)),
        isFirm: true,
        target: {
          kind: "typed",
          path: ["points", entry.index, "ground"],
          what: `ground under ${joint}`,
        },
      },
    ];
  });
}
