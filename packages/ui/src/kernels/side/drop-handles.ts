import type { HandlesRequest } from "./handles-request.js";
import type { SideHandle } from "./side-handle.js";

/** Longest drop the plan file knows, up or down [m]. */
const LONGEST_DROP = 10;

/** How far the drinkers of each group on the path hang below the pipe: one handle a group, at its middle drinker. */
export function dropHandles({ checked, path, plan, reach }: HandlesRequest): SideHandle[] {
  const { line } = checked;
  const alongAt = new Map(path.points.map((point, i) => [point, path.along[i]!]));
  return drinkersByGroup(path.drinkers, line.drinkers.group).flatMap(([group, drinkers]): SideHandle[] => {
    const { id, run: runIndex } = line.drinkers.groups[group]!;
    const run = line.runs[runIndex]!.index;
    const place = placeInRun(line.drinkers.groups, group);
    const typed = plan.runs[run]?.drinkers;
    const typedGroup = Array.isArray(typed) ? typed[place] : typed;
    if (typedGroup === undefined) return [];
    const drinker = drinkers[(drinkers.length - 1) >> 1]!;
    const point = line.drinkers.point[drinker]!;
    const pipe = line.points.height[point]!;
    const height = line.drinkers.height[drinker]!;
    return [
      {
        key: `drop ${run} ${place}`,
        kind: "drop",
        part: { kind: "drinkers", run, group: place },
        name: `drop of ${id}`,
        along: alongAt.get(point)!,
        height,
        from: pipe,
        counts: "down",
        fromWords: "the pipe",
        low: Math.max(Math.min(reach[0], height), pipe - LONGEST_DROP),
        high: Math.min(Math.max(reach[1], height), pipe + LONGEST_DROP),
        isFirm: false,
        target: {
          kind: "typed",
          path: ["runs", run, "drinkers", ...(Array.isArray(typed) ? [place] : []), "drop"],
          what: `drop of ${id}`,
        },
      },
    ];
  });
}

/** Place of a group in the list of its run, as the plan counts it. */
export function placeInRun(groups: readonly { readonly run: number }[], group: number): number {
  let place = 0;
  while (group - place > 0 && groups[group - place - 1]!.run === groups[group]!.run) place++;
  return place;
}

function drinkersByGroup(drinkers: readonly number[], groupOf: Int32Array): [number, number[]][] {
  const found = new Map<number, number[]>();
  for (const drinker of drinkers) {
    const group = groupOf[drinker]!;
    const list = found.get(group);
    if (list === undefined) found.set(group, [drinker]);
    else list.push(drinker);
  }
  return [...found];
}
