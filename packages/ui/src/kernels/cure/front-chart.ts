import { COST_MEASURES, type Cost, type CostMeasure, type FrontPoint } from "@headfall/hydraulics";
import { type ChartFrame, frameWithin } from "../chart-frame.js";
import { linearScale, type Tick, ticksOf } from "../linear-scale.js";

/** Which figure of a cost is drawn. */
export type CostTerm = "money" | "parts" | "pipe" | "stand";

/** What decides first where a measure counts, and what then. */
const TERMS: Readonly<Record<CostMeasure, readonly CostTerm[]>> = {
  money: ["money", "parts", "pipe", "stand"],
  parts: ["parts", "pipe", "stand", "money"],
  stand: ["stand", "parts", "pipe", "money"],
};

/** The first figure of cost in which points differ: where none does, the first of the measure itself. */
export function termOf(points: readonly FrontPoint[], by: CostMeasure, isWithoutStand = false): CostTerm {
  const terms = TERMS[by].filter((term) => !(isWithoutStand && term === "stand"));
  return terms.find((term) => spreadOf(points, term) > 1e-6) ?? terms[0] ?? COST_MEASURES[0];
}

const spreadOf = (points: readonly FrontPoint[], term: keyof Cost): number =>
  Math.max(...points.map(({ cost }) => cost[term])) - Math.min(...points.map(({ cost }) => cost[term]));

export interface FrontChartRequest {
  /** Value of each point to the right, and upwards. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Sizes of the units on both axes. */
  readonly unitX: number;
  readonly unitY: number;
  readonly width: number;
  readonly height: number;
}

export interface FrontChart extends ChartFrame {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** From point to point in steps: between two of them there is nothing but the dearer one. */
  readonly path: string;
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

const MARGIN = { left: 46, right: 22, top: 20, bottom: 40 } as const;
/** Of its own span, so much is left free on either side of the points. */
const AIR = 0.06;

/** A trade-off as points and steps; upwards costs more. */
export function layFrontChart({ points, unitX, unitY, width, height }: FrontChartRequest): FrontChart {
  const frame = frameWithin(width, height, MARGIN);
  const { plot } = frame;
  const x = linearScale(
    domainOf(
      points.map((point) => point.x),
      unitX,
      false,
    ),
    [plot.left, plot.right],
  );
  const y = linearScale(
    domainOf(
      points.map((point) => point.y),
      unitY,
      true,
    ),
    [plot.bottom, plot.top],
  );
  const laid = points.map((point) => ({ x: x(point.x), y: y(point.y) }));
  const path = stepsThrough(laid);
  return {
    ...frame,
    points: laid,
    path,
    across: ticksOf(x, unitX, width < 420 ? 4 : 8),
    up: ticksOf(y, unitY, 5),
  };
}

/** A dearer point is paid for as soon as one wants more than the last gives; a cheaper one is had only when it is reached. */
function stepsThrough(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points
    .map(({ x, y }, k) => {
      const before = points[k - 1];
      if (before === undefined) return `M${x.toFixed(1)} ${y.toFixed(1)}`;
      return y < before.y ? `V${y.toFixed(1)}H${x.toFixed(1)}` : `H${x.toFixed(1)}V${y.toFixed(1)}`;
    })
    .join("");
}

/** From the least to the most, with a little air; never without a span, and from nothing where it is cost. */
function domainOf(values: readonly number[], unit: number, fromNothing: boolean): [number, number] {
  const low = fromNothing ? 0 : Math.min(...values);
  const high = Math.max(...values);
  const span = Math.max(high - low, unit);
  return [fromNothing ? 0 : low - AIR * span, Math.max(high, low + unit) + AIR * span];
}

/** The point nearest to a place on the drawing. */
export function nearestPoint({ points }: FrontChart, x: number, y: number): number {
  let nearest = 0;
  points.forEach((point, k) => {
    const best = points[nearest]!;
    if (Math.hypot(point.x - x, point.y - y) < Math.hypot(best.x - x, best.y - y)) nearest = k;
  });
  return nearest;
}
