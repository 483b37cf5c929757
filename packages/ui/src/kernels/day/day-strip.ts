import { type ChartFrame, frameWithin } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";
import { DAY_SECONDS, type DayIndex, peaksOf } from "./day-index.js";

/** What the charts of a day have in common: midnight to midnight from left to right. */
export interface DayPlot extends ChartFrame {
  /** `value` in hours. */
  readonly hours: readonly Tick[];
  readonly ticks: readonly Tick[];
}

/** Birds of one pen at its drinkers through the day, against its places. */
export interface CrowdStrip extends DayPlot {
  /** Outlines of the areas: those that drink, and on top of them those that wait. */
  readonly drinking: string;
  readonly both: string;
  /** Height of the line of all places [px]; undefined when they are not known. */
  readonly placesY: number | undefined;
}

export interface LevelStrip extends DayPlot {
  readonly line: string;
}

const MARGIN = { left: 40, right: 14, top: 24, bottom: 24 } as const;

function framed(width: number, height: number) {
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const x = linearScale([0, DAY_SECONDS], [plot.left, plot.right]);
  const every = width < 500 ? 6 : 3;
  const hours = Array.from({ length: 24 / every + 1 }, (_, k) => ({
    value: k * every,
    at: x(k * every * 3600),
  }));
  return { frame, x, hours };
}

export interface CrowdRequest {
  readonly index: DayIndex;
  readonly pen: number;
  readonly places: number | undefined;
  readonly width: number;
  readonly height: number;
}

/** The most birds in each column of pixels, so that no crowd falls between two. */
export function layCrowdStrip({ index, pen, places, width, height }: CrowdRequest): CrowdStrip {
  const { frame, hours } = framed(width, height);
  const { plot } = frame;
  const columns = Math.round(plot.right - plot.left);
  const { drinking, both } = peaksOf(index, pen, columns);
  const most = Math.max(1, places ?? 0, ...both);
  const y = linearScale([0, most], [plot.bottom, plot.top]);
  return {
    ...{ ...frame, hours },
    ticks: ticksOf(y, 1, 4).filter(({ value }) => Number.isInteger(value)),
    drinking: areaOf(drinking, plot, y),
    both: areaOf(both, plot, y),
    placesY: places === undefined ? undefined : y(places),
  };
}

/** Steps; columns alike share one piece. */
function areaOf(values: Int32Array, { left, bottom }: DayPlot["plot"], y: (value: number) => number): string {
  const pieces: string[] = [`M${left} ${bottom}`];
  values.forEach((value, k) => {
    if (value === values[k - 1]) return;
    pieces.push(`H${left + k}V${round(y(value))}`);
  });
  return `${pieces.join("")}H${left + values.length}V${bottom}Z`;
}

export interface LevelRequest {
  readonly time: Float64Array;
  readonly level: Float64Array;
  /** The highest level the chart has room for [m]. */
  readonly full: number;
  /** Size of the unit on the axis [m]. */
  readonly unit: number;
  readonly width: number;
  readonly height: number;
}

/** The level of one source through the day. */
export function layLevelStrip({ time, level, full, unit, width, height }: LevelRequest): LevelStrip {
  const { frame, x, hours } = framed(width, height);
  const { plot } = frame;
  const y = linearScale([0, Math.max(full, unit, ...level)], [plot.bottom, plot.top]);
  const points = Array.from(time, (at, k) => `${k === 0 ? "M" : "L"}${round(x(at))} ${round(y(level[k]!))}`);
  return { ...frame, hours, ticks: ticksOf(y, unit, 4), line: points.join("") };
}

/** Where a time is on a chart, and the time at a place on it. */
export const timeToX = ({ plot }: DayPlot, time: number): number =>
  plot.left + ((plot.right - plot.left) * time) / DAY_SECONDS;

export const xToTime = ({ plot }: DayPlot, x: number): number =>
  Math.min(1, Math.max(0, (x - plot.left) / (plot.right - plot.left))) * DAY_SECONDS;

const round = (value: number): number => Math.round(value * 10) / 10;
