import { type ChartFrame, frameWithin, pathThrough } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";

/** A size to be marked on the chart with a letter. */
export interface SizeMark {
  readonly letter: string;
  /** [m³] */
  readonly usable: number;
}

export interface SizeChart extends ChartFrame {
  readonly path: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly sizes: readonly Tick[];
  readonly days: readonly Tick[];
  readonly marks: readonly { readonly letter: string; readonly x: number }[];
}

export interface SizeChartRequest {
  readonly sizes: readonly { readonly usable: number; readonly shortDays: number }[];
  readonly marks: readonly SizeMark[];
  /** Size of the unit of volume on the axis [m³]. */
  readonly unit: number;
  readonly width: number;
  readonly height: number;
}

const MARGIN = { left: 44, right: 14, top: 22, bottom: 36 } as const;

/** Days short against the size of the vessel. */
export function laySizeChart({ sizes, marks, unit, width, height }: SizeChartRequest): SizeChart {
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const largest = sizes.at(-1)?.usable ?? unit;
  const most = Math.max(1, ...sizes.map(({ shortDays }) => shortDays));
  const x = linearScale([0, largest], [plot.left, plot.right]);
  const y = linearScale([0, most], [plot.bottom, plot.top]);
  const points = sizes.map(({ usable, shortDays }) => ({ x: x(usable), y: y(shortDays) }));
  return {
    ...frame,
    points,
    path: pathThrough(points),
    sizes: ticksOf(x, unit, width < 420 ? 4 : 8),
    days: ticksOf(y, 1, 5).filter(({ value }) => Number.isInteger(value)),
    marks: marks
      .filter(({ usable }) => usable <= largest)
      .map(({ letter, usable }) => ({ letter, x: x(usable) }))
      .sort((one, other) => one.x - other.x),
  };
}
