import type { Checked, Source } from "@headfall/hydraulics";
import { linearScale, ticksOf } from "../linear-scale.js";
import { innerHeight } from "../profile-layout.js";
import type { Spot } from "../profile-request.js";
import { axisUnit, trimmed, type UnitSystem } from "../typed-quantity.js";
import type { StripRequest } from "./drawing.js";
import { gatherMarks, MARK_RADIUS } from "./gather-marks.js";
import { writeFall, writeGroupCounts, writeMark } from "./part-words.js";
import { cropped, lengthOfText } from "./printed-text.js";
import { onPaper, type SheetScale } from "./scales.js";
import { line as lineOf, rectangle, type Shape } from "./shapes.js";
import { lengthOfWay, type Way } from "./side-ways.js";
import { bandHeight, drawBand } from "./station-band.js";
import { stationsOf, stretchesOf } from "./stations.js";

/** Left of the pipe's beginning: heights, then the vessel, which is not to scale across [mm]. */
const STRIP_LEFT = 31;
const VESSEL = { left: 14, right: 28 };
const STRIP_RIGHT = 8;
const TITLE = 11;
const RUN_WORDS = 9;
/** What stands below the lowest thing drawn, and above the highest [m]. */
const BELOW = 0.1;
const OVER = 0.03;

export interface Strip {
  readonly shapes: readonly Shape[];
  /** Places that had no room under the strip. */
  readonly leftOut: number;
}

/** How wide a strip is, and how high without its drawing [mm]. */
export const widthOfStrip = (way: Way, scale: SheetScale): number =>
  STRIP_LEFT + onPaper(lengthOfWay(way), scale) + STRIP_RIGHT;
export const fixedHeightOf = (checked: Checked, way: Way, system: UnitSystem): number =>
  TITLE + RUN_WORDS + bandHeight(stationsOf(checked.line, way, system));

/** Lowest and highest metre of a way, with everything that is drawn. */
export function heightsOfWay({ line, sources }: Checked, { path }: Way): { low: number; high: number } {
  const source = line.sources[path.source]!;
  const heights = [source.ground, source.base + innerHeight(source)];
  for (const point of path.points) heights.push(line.points.height[point]!, line.points.ground[point]!);
  for (const drinker of path.drinkers) heights.push(line.drinkers.height[drinker]!);
  for (const surface of Object.values(sources[path.source]!.surface)) heights.push(surface);
  const known = heights.filter(Number.isFinite);
  const range = known.reduce(([low, high], each) => [Math.min(low, each), Math.max(high, each)] as const, [
    Infinity,
    -Infinity,
  ] as readonly [number, number]);
  return { low: range[0] - BELOW, high: range[1] + OVER };
}

/** Draws one way from the side: ground, source, pipe and drinkers to scale, and under them what is to be marked. */
export function drawStrip(request: StripRequest): Strip {
  const { checked, way, scale, heightScale } = request;
  const { line } = checked;
  const { path } = way;
  const { low, high } = heightsOfWay(checked, way);
  const bottom = TITLE + onPaper(high - low, heightScale);
  const width = widthOfStrip(way, scale);
  const x = (along: number) => STRIP_LEFT + onPaper(along, scale);
  const y = (height: number) => TITLE + onPaper(high - height, heightScale);
  const spots = (heights: Float64Array): Spot[] =>
    path.points.map((point, i) => ({ x: x(path.along[i]!), y: y(heights[point]!) }));
  const source = line.sources[path.source]!;
  const ground = [
    { x: VESSEL.left - 3, y: y(source.ground) },
    { x: STRIP_LEFT, y: y(source.ground) },
  ];
  const runs = runWords(request, x, bottom);
  const band = drawBand(request, x, bottom + RUN_WORDS, width);
  return {
    leftOut: band.leftOut,
    shapes: [
      ...title(request, runs.short, Math.max(width, LEAST_TITLE)),
      ...heightLines(y, low, high, width - STRIP_RIGHT / 2, request.system),
      ...groundShapes([...ground, ...spots(line.points.ground)]),
      ...vesselShapes(source, y),
      { kind: "path", pen: "pipe", spots: spots(line.points.height) },
      ...drinkerShapes(request, x, y),
      ...runs.shapes,
      ...groupWords(request, x, y),
      ...band.shapes,
    ],
  };
}

/** A title has this much room even over a short strip [mm]. */
const LEAST_TITLE = 110;

function title({ checked, way }: StripRequest, short: readonly string[], width: number): Shape[] {
  const { line } = checked;
  const end = line.runs[way.run]!.id;
  const text = `From ${line.sources[way.path.source]!.id} to the end of ${end}`;
  const words = { kind: "text", x: 0 } as const;
  return [
    { ...words, y: 4, text: cropped(text, 3.2, width, true), size: 3.2, isBold: true },
    ...(short.length === 0
      ? []
      : [{ ...words, y: 8.4, text: cropped(`Short runs: ${short.join("; ")}`, 2.5, width), size: 2.5 }]),
  ];
}

type Scale = (value: number) => number;

function heightLines(y: Scale, low: number, high: number, right: number, system: UnitSystem): Shape[] {
  const unit = axisUnit(system);
  const scale = linearScale([low, high], [y(low), y(high)]);
  const most = Math.max(2, Math.floor((y(low) - y(high)) / 8));
  return ticksOf(scale, unit.length, most).flatMap(({ at, value }): Shape[] => [
    lineOf("rule", [10, at], [right, at]),
    { kind: "text", x: 9, y: at + 0.9, text: `${trimmed(value, 2)} ${unit.sign}`, size: 2.4, anchor: "end" },
  ]);
}

/** The ground as a line with short strokes under it. */
function groundShapes(spots: readonly Spot[]): Shape[] {
  const shapes: Shape[] = [{ kind: "path", pen: "ground", spots }];
  let next = spots[0]!.x + 1;
  for (let i = 1; i < spots.length; i += 1) {
    const [a, b] = [spots[i - 1]!, spots[i]!];
    for (; next <= b.x && b.x > a.x; next += 4) {
      const at = a.y + ((b.y - a.y) * (next - a.x)) / (b.x - a.x);
      shapes.push(lineOf("rule", [next, at], [next - 1.4, at + 1.6]));
    }
  }
  return shapes;
}

function vesselShapes(source: Source, y: Scale): Shape[] {
  const { left, right } = VESSEL;
  const [base, top] = [y(source.base), y(source.base + innerHeight(source))];
  const level = (depth: number) => y(source.base + depth);
  const shapes: Shape[] = [
    rectangle("water", { left, right, top: level(source.levels.full), bottom: base }),
    rectangle("vessel", { left, right, top, bottom: base }),
    lineOf("level", [left, level(source.levels.lowest)], [right, level(source.levels.lowest)]),
    lineOf("pipe", [right, level(source.outlet)], [STRIP_LEFT, level(source.outlet)]),
  ];
  const ground = y(source.ground);
  if (ground - base > 0.5)
    for (const leg of [left + 2, right - 2]) shapes.push(lineOf("vessel", [leg, base], [leg, ground]));
  return shapes;
}

function drinkerShapes({ checked, way }: StripRequest, x: Scale, y: Scale): Shape[] {
  const { line } = checked;
  const { path } = way;
  const alongAt = new Map(path.points.map((point, i) => [point, path.along[i]!]));
  const placed = path.drinkers.map((drinker) => {
    const point = line.drinkers.point[drinker]!;
    return {
      at: x(alongAt.get(point)!),
      pipe: y(line.points.height[point]!),
      valve: y(line.drinkers.height[drinker]!),
      verdict: checked.drinkers[drinker]!.verdict,
    };
  });
  const valveAt = new Map(placed.map(({ at, pipe, valve }) => [at, Math.max(pipe, valve)]));
  return [
    ...placed.map(({ at, pipe, valve }) => lineOf("stem", [at, pipe], [at, valve])),
    ...placed.map(({ at, valve }) => lineOf("stem", [at - 0.7, valve], [at + 0.7, valve])),
    ...gatherMarks(placed).map(
      ({ at, verdict }): Shape => ({
        kind: "mark",
        verdict,
        x: at,
        y: valveAt.get(at)! + MARK_RADIUS + 0.9,
        radius: MARK_RADIUS,
      }),
    ),
  ];
}

/** Name, length, fall and pipe of each run, under its own stretch; what has no room there is told in `short`. */
function runWords({ checked, way, system }: StripRequest, x: Scale, top: number) {
  const shapes: Shape[] = [];
  const short: string[] = [];
  for (const { run, from, to, fall } of stretchesOf(checked.line, way)) {
    const { id, pipeName } = checked.line.runs[run]!;
    const room = x(to) - x(from) - 2;
    const measures = `${writeMark(to - from, system)}, ${writeFall(fall, system)}`;
    const brief = `${id}: ${measures}`;
    const fitting = [[`${brief} · ${pipeName}`], [brief, pipeName], [brief], [id, measures]].find((lines) =>
      lines.every((text) => lengthOfText(text, 2.5) <= room),
    );
    for (const along of [from, to])
      shapes.push(lineOf("leader", [x(along), top], [x(along), top + RUN_WORDS - 1]));
    const at = { kind: "text", x: (x(from) + x(to)) / 2, size: 2.5, anchor: "middle" } as const;
    shapes.push(...(fitting ?? []).map((text, row) => ({ ...at, text, y: top + 3.4 + 3.1 * row })));
    if (fitting === undefined) short.push(brief);
  }
  return { shapes, short };
}

/** How each stretch of drinkers does, in words over its pipe: "24 × nipple: 24 good". */
function groupWords({ checked, way }: StripRequest, x: Scale, y: Scale): Shape[] {
  const { line } = checked;
  const alongAt = new Map(way.path.points.map((point, i) => [point, way.path.along[i]!]));
  const groups = new Set(way.path.drinkers.map((drinker) => line.drinkers.group[drinker]!));
  return [...groups].flatMap((index): Shape[] => {
    const group = line.drinkers.groups[index]!;
    const on = way.path.drinkers.filter((drinker) => line.drinkers.group[drinker] === index);
    const points = on.map((drinker) => line.drinkers.point[drinker]!);
    const ends = [points[0]!, points[points.length - 1]!].map((point) => x(alongAt.get(point)!));
    const counts = writeGroupCounts(checked, group);
    const long = `${group.count === 1 ? "" : `${group.count} × `}${group.kindName}: ${counts}`;
    const text = lengthOfText(long, 2.5) <= Math.abs(ends[1]! - ends[0]!) + 4 ? long : counts;
    const top = Math.min(...points.map((point) => y(line.points.height[point]!)));
    return [{ kind: "text", x: (ends[0]! + ends[1]!) / 2, y: top - 1.6, text, size: 2.5, anchor: "middle" }];
  });
}
