import { type DayCurve, dayCurve } from "../birds/day-curve.js";
import type { Flock, Pen } from "../model/flock.js";
import { intakeOfBatch } from "../model/flock-intake.js";
import type { Line } from "../model/line.js";
import { spilledShareOf } from "../tables/spilled-share.js";
import { deviceOf, groupOf } from "./crowd-want.js";

/** Which figure of intake is drawn. */
export type IntakeFigure = "low" | "expect" | "size" | "high";

/** What one pen draws through a day, what it spills counted. */
export interface PenDraw {
  /** In a whole day [m³]. */
  readonly daily: number;
  /** [s after midnight], rising from 0 to 86,400; the draw is even between them. */
  readonly edges: readonly number[];
  /** Drawn in each stretch [m³/s]; one fewer than the edges. */
  readonly rates: readonly number[];
}

/** Spilled over drunk at what a pen can reach: the mean of its drinkers. */
export function spilledShareOfPen(line: Line, pen: Pen): number {
  if (pen.drinkers.length === 0) return 0;
  const sum = pen.drinkers.reduce(
    (total, d) => total + spilledShareOf(deviceOf(groupOf(line, d))).spilled,
    0,
  );
  return sum / pen.drinkers.length;
}

/** What a pen draws on the flock's day, by a figure of intake. */
export function drawOfPen(line: Line, flock: Flock, pen: Pen, figure: IntakeFigure): PenDraw {
  const { weather } = flock;
  const taken = 1 + spilledShareOfPen(line, pen);
  const parts = pen.batches.map((batch) => ({
    curve: dayCurve({ shape: batch.kind.dayShape, ...weather, temperature: weather.high }),
    daily: batch.ageDays < 0 ? 0 : batch.count * intakeOfBatch(batch, weather)[figure] * taken,
  }));
  const edges = [...new Set([0, 86_400, ...parts.flatMap(({ curve }) => curve.edges)])].sort((a, b) => a - b);
  const rates = edges.slice(1).map((to, i) => {
    const from = edges[i];
    return parts.reduce((sum, part) => sum + part.daily * rateWithin(part.curve, from, to), 0);
  });
  return { daily: parts.reduce((sum, part) => sum + part.daily, 0), edges, rates };
}

/** Share a second between two neighbouring edges, on one straight piece of the curve. */
function rateWithin({ edges, drunk }: DayCurve, from: number, to: number): number {
  const middle = (from + to) / 2;
  const piece = edges.findIndex((edge) => edge > middle);
  return piece <= 0 ? 0 : (drunk[piece] - drunk[piece - 1]) / (edges[piece] - edges[piece - 1]);
}
