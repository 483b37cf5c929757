import type { Heat, HeatPart } from "@headfall/hydraulics";
import { type ChartFrame, frameWithin, type Plot, pathThrough } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";
import { crosses } from "../side/label-rows.js";

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
  readonly limits: readonly HeatLimit[];
}

/** A limit's line, and its words where no curve goes through them, or the fewest [px]. */
export interface HeatLimit {
  readonly y: number;
  readonly words: string;
  readonly wordsX: number;
  readonly wordsY: number;
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
  const spots = (curve: readonly number[]) =>
    [...curve, curve[0] ?? low].map((one, k) => ({ x: x(k * heat.step), y: y(one) }));
  const path = (curve: readonly number[]) => pathThrough(spots(curve));
  const drawn = curves.map(spots);
  return {
    ...frame,
    air: path(heat.air),
    hottest: path(part.hottest.water),
    expected: path(part.expected.water),
    hours: ticksOf(x, HOUR, width < 420 ? 6 : 12),
    degrees: isUs ? inFahrenheit(low, high, y) : ticksOf(y, 1, 6),
    limits: limits.map(({ at, words }) => placeWords(words, y(at), plot, drawn)),
  };
}

/** Width of one letter, and how far letters rise above and hang below their line [px]. */
const LETTER = 6.4;
const RISE = 10;
const HANG = 3;
/** From the limit's line to the line its words stand on, above it and below [px]. */
const ABOVE = -4;
const BELOW = 13;

/** Places are tried at this distance from each other [px]. */
const STEP = 8;
/** How much less the air is missed than the water, where words go over its dots; ours. */
const AIR_WEIGHT = 0.5;

function placeWords(
  words: string,
  y: number,
  { left, right, top, bottom }: Plot,
  [air, ...water]: readonly (readonly { readonly x: number; readonly y: number }[])[],
): HeatLimit {
  const wide = words.length * LETTER;
  const costAt = (x: number, off: number): number => {
    const box = { left: x, right: x + wide, top: y + off - RISE, bottom: y + off + HANG };
    if (box.top < top || box.bottom > bottom) return Number.POSITIVE_INFINITY;
    const crossed = water.filter((curve) => crosses(curve, box)).length;
    return crossed + (air !== undefined && crosses(air, box) ? AIR_WEIGHT : 0);
  };
  let best = { x: left + 4, off: ABOVE, cost: costAt(left + 4, ABOVE) };
  for (let x = left + 4; x + wide <= right - 4; x += STEP)
    for (const off of [ABOVE, BELOW]) {
      const cost = costAt(x, off);
      if (cost < best.cost) best = { x, off, cost };
    }
  return { y, words, wordsX: best.x, wordsY: y + best.off };
}

function inFahrenheit(low: number, high: number, y: (value: number) => number): Tick[] {
  const scale = linearScale([low / FAHRENHEIT + 32, high / FAHRENHEIT + 32], [y(low), y(high)]);
  return ticksOf(scale, 1, 6);
}
