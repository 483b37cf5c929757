import type { Heat, HeatPart } from "@headfall/hydraulics";
import { type ChartFrame, frameWithin, pathThrough } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";

const HOUR = 3600;
const DAY = 86_400;
const FAHRENHEIT = 5 / 9;

export interface HeatChart extends ChartFrame {
  readonly air: string;
  readonly hottest: string;
  readonly expected: string;
  readonly hours: readonly Tick[];
  /** In the unit shown. */
  readonly degrees: readonly Tick[];
  readonly limits: readonly { readonly y: number; readonly words: string }[];
}

export interface HeatChartRequest {
  readonly heat: Heat;
  readonly part: HeatPart;
  /** Where birds drink less, and refuse [°C], with their words. */
  readonly limits: readonly { readonly at: number; readonly words: string }[];
  readonly isUs: boolean;
  readonly width: number;
  readonly height: number;
}

const MARGIN = { left: 36, right: 10, top: 12, bottom: 36 } as const;

/** Water of one part by the hour, beside the air and the two limits. */
export function layHeatChart({ heat, part, limits, isUs, width, height }: HeatChartRequest): HeatChart {
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const curves = [heat.air, part.hottest.water, part.expected.water];
  const all = [...curves.flat(), ...limits.map(({ at }) => at)];
  const [low, high] = [Math.min(...all) - 1, Math.max(...all) + 2];
  const x = linearScale([0, DAY], [plot.left, plot.right]);
  const y = linearScale([low, high], [plot.bottom, plot.top]);
  const path = (curve: readonly number[]) =>
    pathThrough([...curve, curve[0] ?? low].map((one, k) => ({ x: x(k * heat.step), y: y(one) })));
  return {
    ...frame,
    air: path(heat.air),
    hottest: path(part.hottest.water),
    expected: path(part.expected.water),
    hours: ticksOf(x, HOUR, width < 420 ? 6 : 12),
    degrees: isUs ? inFahrenheit(low, high, y) : ticksOf(y, 1, 6),
    limits: limits.map(({ at, words }) => ({ y: y(at), words })),
  };
}

function inFahrenheit(low: number, high: number, y: (value: number) => number): Tick[] {
  const scale = linearScale([low / FAHRENHEIT + 32, high / FAHRENHEIT + 32], [y(low), y(high)]);
  return ticksOf(scale, 1, 6);
}
