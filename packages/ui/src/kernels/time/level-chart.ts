import { type LevelPoint, levelAtVolume, type VesselShape } from "@headfall/hydraulics";
import { type ChartFrame, frameWithin, pathThrough } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";

const DAY = 86_400;

/** What happens on the way down, drawn as a mark with a letter. */
export interface LevelMark {
  readonly letter: string;
  readonly words: string;
  /** After the beginning [s]. */
  readonly after: number;
}

export interface LevelChart extends ChartFrame {
  readonly line: string;
  /** Between the least and the most that may be drunk. */
  readonly band: string;
  readonly days: readonly Tick[];
  readonly levels: readonly Tick[];
  readonly marks: readonly { readonly letter: string; readonly x: number }[];
  /** Where the outlet is: nothing below it can be drawn. */
  readonly outletY: number;
}

export interface LevelChartRequest {
  readonly source: number;
  readonly shape: VesselShape;
  readonly fullLevel: number;
  readonly outlet: number;
  /** Levels in the middle case, and in the two that bound it. */
  readonly expect: readonly LevelPoint[];
  readonly low: readonly LevelPoint[];
  readonly high: readonly LevelPoint[];
  readonly marks: readonly LevelMark[];
  /** Size of the unit of the level axis [m]. */
  readonly unit: number;
  readonly width: number;
  readonly height: number;
}

const MARGIN = { left: 44, right: 12, top: 22, bottom: 36 } as const;
/** Longer than this is not shown: it goes on alike [s]. */
const MOST_SHOWN = 60 * DAY;

/** The level of one source through the days, with the band it may lie in. */
export function layLevelChart(request: LevelChartRequest): LevelChart {
  const { width, height, fullLevel, outlet, unit } = request;
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const begins = request.expect[0]?.time ?? 0;
  const ends = Math.max(
    DAY,
    Math.min(
      MOST_SHOWN,
      ...[Math.max(...[request.low, request.expect, request.high].map((points) => lastOf(points) - begins))],
    ),
  );
  const x = linearScale([0, ends], [plot.left, plot.right]);
  const y = linearScale([0, fullLevel], [plot.bottom, plot.top]);
  const placed = (points: readonly LevelPoint[]) => placedOf(request, points, begins, ends, x, y);
  const [expect, low, high] = [placed(request.expect), placed(request.low), placed(request.high)];
  return {
    ...frame,
    line: pathThrough(expect),
    band:
      low.length === 0 || high.length === 0
        ? ""
        : `${pathThrough(low)}${pathThrough([...high].reverse()).replace(/^M/, "L")}Z`,
    days: ticksOf(x, DAY, width < 420 ? 5 : 9),
    levels: ticksOf(y, unit, 5),
    marks: request.marks
      .filter(({ after }) => after <= ends)
      .map(({ letter, after }) => ({ letter, x: x(after) })),
    outletY: y(outlet),
  };
}

const lastOf = (points: readonly LevelPoint[]): number => points.at(-1)?.time ?? 0;

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Points of the line; the lowest and highest of each pixel's width are enough. */
function placedOf(
  { source, shape }: LevelChartRequest,
  points: readonly LevelPoint[],
  begins: number,
  ends: number,
  x: (value: number) => number,
  y: (value: number) => number,
): Place[] {
  const places: Place[] = [];
  for (const { time, volumes } of points) {
    const after = time - begins;
    if (after > ends) break;
    places.push({ x: x(after), y: y(levelAtVolume(shape, Math.max(0, volumes[source] ?? 0))) });
  }
  const last = places.at(-1);
  // What has been followed no further stays as it is.
  if (last !== undefined && last.x < x(ends) - 0.5) places.push({ x: x(ends), y: last.y });
  return places;
}
