import type { HandlesRequest } from "./handles-request.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import type { SideHandle } from "./side-handle.js";

/** The ground under each listed point of the path that says how high it is; the pipe over it comes along. */
export function groundHandles({ checked, path, plan, reach }: HandlesRequest): SideHandle[] {
  const { line } = checked;
  const joints = jointsOn(line, stretchesOf(line, path));
  const listed = new Map((plan.points ?? []).map((point, index) => [point.id, { point, index }]));
  return path.points.flatMap((point, i): SideHandle[] => {
    const joint = joints.get(point);
    const entry = joint === undefined ? undefined : listed.get(joint);
    if (joint === undefined || entry === undefined) return [];
    const { ground, above } = entry.point;
    if (ground === undefined && above === undefined) return [];
    const height = line.points.ground[point]!;
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
        low: Math.min(reach[0], height),
        high: Math.max(reach[1], height),
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
