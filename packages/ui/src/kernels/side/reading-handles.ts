import type { Plan, Run } from "@headfall/hydraulics";
import { readMetres } from "../typed-metres.js";
import { fallReferenceOf } from "./fall-reference.js";
import type { HandlesRequest } from "./handles-request.js";
import { type PathStretch, stretchesOf } from "./path-stretches.js";
import type { SideHandle } from "./side-handle.js";

/** Distances along a run closer than this are one place [m]. */
const SAME_PLACE = 1e-5;

/** Every surveyed place of the path between joints; one at the end of a run is its joint. */
export function readingHandles(request: HandlesRequest): SideHandle[] {
  const { line } = request.checked;
  return stretchesOf(line, request.path).flatMap((stretch) => readingsAlong(request, stretch));
}

function readingsAlong(
  { checked, path, plan, reach }: HandlesRequest,
  { run: index, first, last }: PathStretch,
): SideHandle[] {
  const { line } = checked;
  const run = line.runs[index]!;
  const readings = readingsByPoint(run, plan);
  if (readings.size === 0) return [];
  const { height: from, words: fromWords, isFirm } = fallReferenceOf(line, run);
  const found: SideHandle[] = [];
  for (let i = first; i <= last; i++) {
    const reading = readings.get(path.points[i]!);
    if (reading === undefined) continue;
    const height = line.points.height[path.points[i]!]!;
    found.push({
      key: `reading ${run.index} ${reading}`,
      kind: "reading",
      part: { kind: "run", run: run.index },
      name: `height of ${run.id}, reading ${reading + 1}`,
      along: path.along[i]!,
      height,
      from,
      counts: "up",
      fromWords,
      low: Math.min(reach[0], height),
      high: Math.max(reach[1], height),
      isFirm,
      target: { kind: "reading", run: run.index, reading },
    });
  }
  return found;
}

/** Positions in the plan's survey of a run by the points they made; the run's ends are left out. */
function readingsByPoint(run: Run, plan: Plan): Map<number, number> {
  const survey = plan.runs[run.index]?.survey ?? [];
  const found = new Map<number, number>();
  let k = 1;
  survey.forEach(({ along }, reading) => {
    // One that cannot be read is equal to nothing.
    const metres = readMetres(along) ?? Number.NaN;
    while (k < run.points.length - 1 && run.along[k]! < metres - SAME_PLACE) k++;
    if (k < run.points.length - 1 && Math.abs(run.along[k]! - metres) < SAME_PLACE)
      found.set(run.points[k]!, reading);
  });
  return found;
}
