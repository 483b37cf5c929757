import { type ChartFrame, frameWithin } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";
import type { WeekDrinks } from "./week-drinks.js";

/** How a line of the chart looks and what stands at its points: told apart without colour. */
export type SeriesLook = "size" | "expect" | "hot" | "batch1" | "batch2" | "batch3";

export interface ChartSeries {
  readonly look: SeriesLook;
  readonly label: string;
  readonly path: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Where its label stands, beyond the last point. */
  readonly labelY: number;
}

export interface WeekChart extends ChartFrame {
  readonly weeks: readonly { readonly x: number; readonly week: number }[];
  readonly ticks: readonly Tick[];
  readonly series: readonly ChartSeries[];
}

export interface WeekChartRequest {
  readonly drinks: WeekDrinks;
  readonly width: number;
  readonly height: number;
  /** Size of the unit on the axis [m³]. */
  readonly unit: number;
}

const MARGIN = { left: 34, right: 92, top: 12, bottom: 36 } as const;
const LABEL_HEIGHT = 15;
/** Letters that find room beside the drawing. */
const LABEL_LETTERS = 13;
const BATCH_LOOKS = ["batch1", "batch2", "batch3"] as const;

/** Lays out what is drunk week by week: all birds by three lines, and the largest batches by one each. */
export function layWeekChart({ drinks, width, height, unit }: WeekChartRequest): WeekChart {
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const lines = linesOf(drinks);
  const most = Math.max(unit / 100, ...lines.flatMap(({ values }) => values));
  const count = drinks.size.length;
  const x = linearScale([0, Math.max(1, count - 1)], [plot.left, plot.right]);
  const y = linearScale([0, most], [plot.bottom, plot.top]);
  const drawn = lines.map(({ look, label, values }) => {
    const points = values.map((value, week) => ({ x: x(week), y: y(value) }));
    const path = points
      .map((point, i) => `${i === 0 ? "M" : "L"}${round(point.x)} ${round(point.y)}`)
      .join("");
    return { look, label, path, points };
  });
  const labels = placed(
    drawn.map(({ points }) => points.at(-1)?.y ?? plot.bottom),
    plot,
  );
  return {
    ...frame,
    weeks: Array.from({ length: count }, (_, week) => ({ week, x: x(week) })),
    ticks: ticksOf(y, unit, 5),
    series: drawn.map((line, i) => ({ ...line, labelY: labels[i]! })),
  };
}

/** The lines of the chart: one batch alone would only repeat the lines of all. */
function linesOf({ size, expect, hot, batches }: WeekDrinks) {
  const largest = [...batches.keys()].sort(
    (a, b) => Math.max(...batches[b]!.size) - Math.max(...batches[a]!.size),
  );
  const own = batches.length < 2 ? [] : largest.slice(0, BATCH_LOOKS.length);
  return [
    ...(hot.length === 0 ? [] : [{ look: "hot" as const, label: "hot day", values: hot }]),
    { look: "size" as const, label: "to size on", values: size },
    { look: "expect" as const, label: "to expect", values: expect },
    ...own.map((k, i) => ({
      look: BATCH_LOOKS[i]!,
      label: shortened(batches[k]!.label),
      values: batches[k]!.size,
    })),
  ];
}

const shortened = (label: string): string =>
  label.length <= LABEL_LETTERS ? label : `${label.slice(0, LABEL_LETTERS - 1).trimEnd()}…`;

/** Labels at the heights of their lines, moved apart where they would touch. */
function placed(wanted: readonly number[], { top, bottom }: WeekChart["plot"]): number[] {
  const order = [...wanted.keys()].sort((a, b) => wanted[a]! - wanted[b]!);
  const at = [...wanted];
  let least = top;
  for (const i of order) {
    at[i] = Math.max(wanted[i]!, least);
    least = at[i]! + LABEL_HEIGHT;
  }
  let most = bottom;
  for (const i of order.reverse()) {
    at[i] = Math.min(at[i]!, most);
    most = at[i]! - LABEL_HEIGHT;
  }
  return at;
}

const round = (value: number): number => Math.round(value * 10) / 10;
