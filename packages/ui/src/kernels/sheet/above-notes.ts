import type { Checked } from "@headfall/hydraulics";
import { type AboveJoint, type AboveLayout, type AboveRun, spotAt } from "../above/lay-above.js";
import type { Ground } from "../above/spot.js";
import type { Spot } from "../profile-request.js";
import type { UnitSystem } from "../typed-quantity.js";
import type { AboveRequest } from "./drawing.js";
import { aboveGround, writeAboveGround, writeFall, writeGroup, writeMark } from "./part-words.js";
import type { Note } from "./place-notes.js";

/** The words on the drawing from above: sources, joints, runs and groups of drinkers with what is to be marked. */
export function notesAbove(
  { checked, system }: AboveRequest,
  layout: AboveLayout,
  toPaper: (ground: Ground) => Spot,
): Note[] {
  const pointOf = new Map(checked?.line.points.id.map((id, index) => [id, index]));
  const runOf = new Map(checked?.line.runs.map(({ id }, index) => [id, index]));
  return [
    ...layout.joints.map((joint) => ({
      at: toPaper(joint),
      weight: joint.source >= 0 ? 4 : 2,
      lines: jointLines(joint, checked, pointOf, system),
    })),
    ...layout.runs.map((run) => ({
      at: toPaper(spotAt(run.spots, 0.5)),
      weight: 3,
      lines: runLines(run, checked, runOf, system),
    })),
    ...(checked === undefined ? [] : groupNotes(checked, layout, system, toPaper)),
  ];
}

type Places = ReadonlyMap<string, number>;

function jointLines(
  { name }: AboveJoint,
  checked: Checked | undefined,
  pointOf: Places,
  system: UnitSystem,
): string[] {
  const source = checked?.line.sources.find(({ id }) => id === name);
  const point = source?.point ?? pointOf.get(name);
  if (checked === undefined || point === undefined) return [name];
  const height = writeAboveGround(aboveGround(checked.line, point), system);
  if (source === undefined) return [name, `pipe ${height}`];
  const outlet = source.base + source.outlet - source.ground;
  return [
    name,
    source.vesselName,
    `stand ${writeMark(source.stand, system)}`,
    `outlet ${writeAboveGround(outlet, system)}`,
  ];
}

function runLines(run: AboveRun, checked: Checked | undefined, runOf: Places, system: UnitSystem): string[] {
  const length = writeMark(run.length, system);
  const scaled = run.isToScale ? [] : [`drawn ${writeMark(run.drawnLength, system)} long: not to scale`];
  const built = checked?.line.runs[runOf.get(run.name) ?? -1];
  if (checked === undefined || built === undefined) return [`${run.name}: ${length}`, ...scaled];
  const { height } = checked.line.points;
  const fall = height[built.points[0]!]! - height[built.points[built.points.length - 1]!]!;
  return [`${run.name}: ${length}, ${writeFall(fall, system)}`, built.pipeName, ...scaled];
}

function groupNotes(
  checked: Checked,
  layout: AboveLayout,
  system: UnitSystem,
  toPaper: (ground: Ground) => Spot,
): Note[] {
  const { line } = checked;
  const byName = new Map(layout.runs.map((run) => [run.name, run]));
  return line.drinkers.groups.flatMap((group) => {
    const run = byName.get(line.runs[group.run]?.id ?? "");
    if (run === undefined || group.count === 0) return [];
    const { along } = line.drinkers;
    // A third along the stretch, so that a run that is all drinkers keeps its middle for its own words.
    const first = along[group.first]!;
    const at = first + (along[group.first + group.count - 1]! - first) / 3;
    const share = run.length > 0 ? Math.min(1, at / run.length) : 0;
    return [{ at: toPaper(spotAt(run.spots, share)), weight: 5, lines: writeGroup(checked, group, system) }];
  });
}
