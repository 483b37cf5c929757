import type { Checked, MomentName } from "@headfall/hydraulics";
import { placeLabels } from "../place-labels.js";
import type { ProfileLayout } from "../profile-layout.js";
import type { ProfilePath } from "../profile-path.js";
import { showFlow, showLength } from "../shown.js";
import { typedLength, type UnitSystem } from "../typed-quantity.js";
import { stretchesOf } from "./path-stretches.js";
import { scalesOf } from "./side-scales.js";

/** What is written along one run: its length and fall, and its flow at the moment shown. */
export interface RunLabel {
  /** Position in the plan's runs. */
  readonly run: number;
  readonly lines: readonly [string, string];
  /** Middle of the words, and the middle of the run [px]. */
  readonly x: number;
  readonly at: number;
  /** Where the run begins and ends on the drawing [px]. */
  readonly from: number;
  readonly to: number;
}

/** Width of one character [px], on the wide side. */
const LETTER = 6.4;
const GAP = 10;

/** Words for each run of the path, side by side without overlap; where they cannot all stand, the shortest runs go without. */
export function runLabels(
  checked: Checked,
  path: ProfilePath,
  layout: ProfileLayout,
  moment: MomentName,
  system: UnitSystem,
): RunLabel[] {
  const { line } = checked;
  const { x } = scalesOf(layout);
  const { left, right } = layout.plot;
  const labels = stretchesOf(line, path).flatMap((stretch) => {
    const [from, to] = [Math.max(left, x(stretch.from)), Math.min(right, x(stretch.to))];
    if (to <= from) return [];
    const fall =
      line.points.height[path.points[stretch.first]!]! - line.points.height[path.points[stretch.last]!]!;
    const flow = largestFlow(checked, stretch.run, moment);
    const lines: [string, string] = [
      `${showLength(stretch.to - stretch.from, system)}, ${fallText(fall, system)}`,
      flow < 1e-9 ? "still" : showFlow(flow, system),
    ];
    return [{ run: line.runs[stretch.run]!.index, lines, at: (from + to) / 2, from, to }];
  });
  const placed = placeLabels(
    labels.map(({ at, lines, from, to }) => ({ at, size: widthOf(lines), weight: to - from })),
    left - 30,
    layout.width - 4,
    GAP,
  );
  return labels.flatMap((label, i) => (placed[i] === undefined ? [] : [{ ...label, x: placed[i] }]));
}

const widthOf = (lines: readonly string[]): number => Math.max(...lines.map(({ length }) => length)) * LETTER;

function fallText(fall: number, system: UnitSystem): string {
  const size = typedLength(Math.abs(fall), system);
  if (Number.parseFloat(size) === 0) return "level";
  return `${fall > 0 ? "falls" : "rises"} ${size}`;
}

function largestFlow({ line, solutions, friction }: Checked, run: number, moment: MomentName): number {
  const { firstSegment, segmentCount } = line.runs[run]!;
  const { flow } = solutions[moment][friction];
  let largest = 0;
  for (let s = firstSegment; s < firstSegment + segmentCount; s++)
    largest = Math.max(largest, Math.abs(flow[s]!));
  return largest;
}
