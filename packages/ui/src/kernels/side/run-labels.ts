import type { Checked, MomentName } from "@headfall/hydraulics";
import { placeLabels } from "../place-labels.js";
import type { ProfileLayout } from "../profile-layout.js";
import type { ProfilePath } from "../profile-path.js";
import type { ProfileRequest, Spot } from "../profile-request.js";
import { showFlow, showLength } from "../shown.js";
import { typedLength, type UnitSystem } from "../typed-quantity.js";
import { crosses, crowdOf, freeRow, type LabelBox } from "./label-rows.js";
import { stretchesOf } from "./path-stretches.js";
import { scalesOf } from "./side-scales.js";

/** What is written along one run: its length and fall, and its flow at the moment shown. */
export interface RunLabel {
  /** Position in the plan's runs. */
  readonly run: number;
  readonly lines: readonly [string, string];
  /** Middle of the words, and the line the first of them stand on [px]. */
  readonly x: number;
  readonly y: number;
  /** The middle of the run's pipe [px], which the words are tied to. */
  readonly tie: Spot;
  /** The room of the words [px], to be laid under them where there was none clear of pipe and ground. */
  readonly plate: LabelBox | undefined;
}

/** Rise of letters above their line, and distance from one line to the next [px]. */
const RISE = 11;
const LINE = 14;
/** Width of one character [px], on the wide side. */
const LETTER = 6.4;
const GAP = 10;
/** Less flow than this is none [m3/s]: a drop in a minute. */
const STILL = 1e-9;

/** What the words are written from, and what they should leave free. */
export interface RunLabelsRequest {
  readonly layout: ProfileLayout;
  readonly request: Pick<ProfileRequest, "checked" | "path" | "moment">;
  readonly system: UnitSystem;
  readonly grips: readonly Spot[];
  readonly bars?: readonly (readonly Spot[])[] | undefined;
  /** Lines the words stood on before, by run [px]: they stay there while something is in the hand. */
  readonly kept?: ReadonlyMap<number, number> | undefined;
}

/**
 * Words for each run of the path: side by side without overlap, each at the height where it covers the least. Where
 * they cannot all stand, the shortest runs go without.
 */
export function runLabels({ layout, request, system, grips, bars, kept }: RunLabelsRequest): RunLabel[] {
  const wanted = wantedLabels(layout, request, system);
  const placed = placeLabels(
    wanted.map(({ middle, width, room }) => ({ at: middle, size: width, weight: room })),
    layout.plot.left,
    layout.width - 4,
    GAP,
  );
  const crowd = crowdOf(layout, grips, bars);
  const { y, alongAt } = scalesOf(layout);
  const { path, checked } = request;
  return wanted.flatMap(({ run, lines, middle, width }, i) => {
    const x = placed[i];
    if (x === undefined) return [];
    const tie = { x: middle, y: y(heightOnPath(checked.line.points.height, path, alongAt(middle))) };
    const box = { left: x - width / 2, right: x + width / 2, top: -RISE, bottom: LINE + 3 };
    const row = kept?.get(run) ?? freeRow(box, tie.y, layout, crowd);
    const room = { ...box, top: row + box.top, bottom: row + box.bottom };
    const isClear = !crosses(layout.pipe, room) && !crosses(layout.ground, room);
    return [{ run, lines, x, y: row, tie, plate: isClear ? undefined : room }];
  });
}

interface WantedRunLabel extends Pick<RunLabel, "run" | "lines"> {
  readonly middle: number;
  readonly width: number;
  /** Width of the run on the drawing [px]. */
  readonly room: number;
}

function wantedLabels(
  layout: ProfileLayout,
  { checked, path, moment }: RunLabelsRequest["request"],
  system: UnitSystem,
): WantedRunLabel[] {
  const { line } = checked;
  const { x } = scalesOf(layout);
  const { left, right } = layout.plot;
  const heights = line.points.height;
  return stretchesOf(line, path).flatMap((stretch) => {
    const [from, to] = [Math.max(left, x(stretch.from)), Math.min(right, x(stretch.to))];
    if (to <= from) return [];
    const fall = heights[path.points[stretch.first]!]! - heights[path.points[stretch.last]!]!;
    const flow = largestFlow(checked, stretch.run, moment);
    const lines: [string, string] = [
      `${showLength(stretch.to - stretch.from, system)}, ${fallText(fall, system)}`,
      flow < STILL ? "still" : showFlow(flow, system),
    ];
    const { index } = line.runs[stretch.run]!;
    return [{ run: index, lines, middle: (from + to) / 2, width: widthOf(lines), room: to - from }];
  });
}

function heightOnPath(heights: Float64Array, { points, along }: ProfilePath, at: number): number {
  let k = 1;
  while (k < along.length - 1 && along[k]! < at) k++;
  const [a, b] = [heights[points[k - 1]!]!, heights[points[k]!]!];
  const span = along[k]! - along[k - 1]!;
  return span > 0 ? a + ((b - a) * (at - along[k - 1]!)) / span : b;
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
