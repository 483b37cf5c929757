import type { MomentName, Source, VerdictName } from "@headfall/hydraulics";
import type { ChartFrame } from "./chart-frame.js";
import { cutTo, isWithin } from "./cut-to.js";
import { linearScale, type Tick, ticksOf } from "./linear-scale.js";
import { type LossStrip, layLossStrip } from "./loss-strip.js";
import type { ProfileRequest, Spot } from "./profile-request.js";
import { layVerdictRail, type VerdictRail } from "./verdict-rail.js";

/** The vessel as drawn: its outline, how high the water stands in it, and the two levels the line is judged at. */
export interface DrawnVessel {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly ground: number;
  /** Surface of the water at the chosen moment, when full, and at the lowest usable level [px]. */
  readonly water: number;
  readonly full: number;
  readonly lowest: number;
  readonly outlet: number;
  readonly shape: Source["shape"]["kind"];
}

export interface DrawnDrinker extends Spot {
  readonly index: number;
  readonly verdict: VerdictName;
  /** Where its stem leaves the pipe [px]. */
  readonly pipeY: number;
}

/** The head of one drinker, as the upright distance from it to the grade line. */
export interface HeadArrow {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly head: number;
}

/** The whole drawing, in pixels; nothing in it is a string, so that a view or a test can read it alike. */
export interface ProfileLayout extends ChartFrame {
  readonly ground: readonly Spot[];
  readonly pipe: readonly Spot[];
  readonly grade: {
    readonly chosen: readonly Spot[];
    readonly highest: readonly Spot[];
    readonly lowest: readonly Spot[];
  };
  readonly vessel: DrawnVessel;
  /** Points of the path where air is held back when the line is filled. */
  readonly air: readonly Spot[];
  readonly drinkers: readonly DrawnDrinker[];
  readonly arrow: HeadArrow | undefined;
  readonly rail: VerdictRail & { readonly top: number };
  readonly loss: LossStrip;
  readonly heightTicks: readonly Tick[];
  readonly lengthTicks: readonly Tick[];
  /** Lowest and highest metre of the plot, and the stretch of the path it shows [m]. */
  readonly heights: readonly [number, number];
  readonly window: readonly [number, number];
  /** How many times larger heights are drawn than lengths. */
  readonly exaggeration: number;
}

const VESSEL_WIDTH = 40;
const AXIS_ROOM = 34;
const RAIL_HEIGHT = 66;
const LOSS_HEIGHT = 56;
const LENGTH_AXIS = 22;
/** The height scale moves in steps of this many metres, so that the picture stands still under a drag. */
const HEIGHT_STEP = 0.5;

/** Lays the line out from the side: x is distance along the pipe, y is height, both to a stated scale. */
export function layProfile(request: ProfileRequest): ProfileLayout {
  const { width, height } = request;
  const scaled = scalesOf(request);
  const { plot, x, y } = scaled;
  const drinkers = drawDrinkers(request, x, y).filter((drinker) => isWithin(drinker, x.range));
  const railTop = plot.bottom + LENGTH_AXIS;
  return {
    width,
    height,
    plot,
    ...layLines(request, scaled),
    vessel: drawVessel(request, y),
    air: airSpots(request, x, y).filter((spot) => isWithin(spot, x.range)),
    drinkers,
    arrow: headArrow(request, drinkers, y),
    rail: { ...layVerdictRail(drinkers, 4, width - 4), top: railTop },
    loss: layLossStrip(request, x, railTop + RAIL_HEIGHT, LOSS_HEIGHT),
    heightTicks: ticksOf(y, request.tickUnit, 5),
    lengthTicks: ticksOf(x, request.tickUnit, width < 480 ? 4 : 8),
    heights: y.domain,
    window: x.domain,
    exaggeration: Math.abs(y(1) - y(0)) / (x(1) - x(0)),
  };
}

/** Where the plot lies, and its two scales. */
function scalesOf(request: ProfileRequest) {
  const { path, width, height } = request;
  const left = AXIS_ROOM + VESSEL_WIDTH;
  const plot = { left, right: width - 14, top: 16, bottom: height - RAIL_HEIGHT - LOSS_HEIGHT - LENGTH_AXIS };
  const length = Math.max(path.along[path.along.length - 1] ?? 0, 0.1);
  return {
    plot,
    x: linearScale(request.window ?? [0, length], [plot.left, plot.right]),
    y: linearScale(heightRange(request), [plot.bottom, plot.top]),
  };
}

/** All that runs along the path: the ground from the vessel on, the pipe, and the grade lines. */
function layLines(
  { checked, path, moment }: ProfileRequest,
  { plot, x, y }: ReturnType<typeof scalesOf>,
): Pick<ProfileLayout, "ground" | "pipe" | "grade"> {
  const { points, sources } = checked.line;
  const spots = (heightAt: (point: number) => number): Spot[] =>
    cutTo(
      path.points.map((point, i) => ({ x: x(path.along[i]!), y: y(heightAt(point)) })),
      x.range,
    );
  const gradeLine = (name: MomentName) => {
    const { head } = checked.solutions[name][checked.friction];
    return spots((point) => head[point]!);
  };
  const ground = y(sources[path.source]!.ground);
  return {
    ground: [{ x: 0, y: ground }, { x: plot.left, y: ground }, ...spots((point) => points.ground[point]!)],
    pipe: spots((point) => points.height[point]!),
    grade: {
      chosen: gradeLine(moment),
      highest: gradeLine("fullIdle"),
      lowest: gradeLine("lowestBusiest"),
    },
  };
}

type Scale = (value: number) => number;

/** Lowest and highest metre on the drawing, over everything that is drawn. */
function heightRange(request: ProfileRequest): [number, number] {
  const { checked, path } = request;
  const { line } = checked;
  const source = line.sources[path.source]!;
  let low = source.ground;
  let high = source.base + innerHeight(source);
  const include = (height: number) => {
    low = Math.min(low, height);
    high = Math.max(high, height);
  };
  for (const point of path.points) {
    include(line.points.height[point]!);
    include(checked.line.points.ground[point]!);
  }
  for (const drinker of path.drinkers) include(line.drinkers.height[drinker]!);
  for (const surface of Object.values(checked.sources[path.source]!.surface)) include(surface);
  const [heldLow, heldHigh] = request.heldHeights ?? [low, high];
  return [
    Math.min(heldLow, Math.floor((low - 0.1) / HEIGHT_STEP) * HEIGHT_STEP),
    Math.max(heldHigh, Math.ceil((high + 0.05) / HEIGHT_STEP) * HEIGHT_STEP),
  ];
}

/** Inside height of a source's vessel [m]. */
export function innerHeight(source: Pick<Source, "shape">): number {
  const { shape } = source;
  if (shape.kind === "lying") return shape.diameter;
  if (shape.kind === "table") return shape.levels[shape.levels.length - 1] ?? 0;
  return shape.height;
}

function drawVessel({ checked, path, moment }: ProfileRequest, y: Scale): DrawnVessel {
  const source = checked.line.sources[path.source]!;
  const level: Record<MomentName, number> = {
    fullIdle: source.levels.full,
    fullBusiest: source.levels.full,
    lowestBusiest: source.levels.lowest,
    ordinary: source.levels.ordinary,
  };
  return {
    left: AXIS_ROOM,
    right: AXIS_ROOM + VESSEL_WIDTH,
    top: y(source.base + innerHeight(source)),
    bottom: y(source.base),
    ground: y(source.ground),
    water: y(source.base + level[moment]),
    full: y(source.base + source.levels.full),
    lowest: y(source.base + source.levels.lowest),
    outlet: y(source.base + source.outlet),
    shape: source.shape.kind,
  };
}

function drawDrinkers({ checked, path }: ProfileRequest, x: Scale, y: Scale): DrawnDrinker[] {
  const alongAt = new Map(path.points.map((point, i) => [point, path.along[i]!]));
  return path.drinkers.map((index) => {
    const point = checked.line.drinkers.point[index]!;
    return {
      index,
      x: x(alongAt.get(point)!),
      y: y(checked.line.drinkers.height[index]!),
      pipeY: y(checked.line.points.height[point]!),
      verdict: checked.drinkers[index]!.verdict,
    };
  });
}

/** Suction moves no air; every other finding of the filling is a place where air stays. */
function airSpots({ checked, path }: ProfileRequest, x: Scale, y: Scale): Spot[] {
  const held = new Set(
    checked.filling.filter(({ code }) => code !== "suction").map(({ pointIndex }) => pointIndex),
  );
  return path.points.flatMap((point, i) =>
    held.has(point) ? [{ x: x(path.along[i]!), y: y(checked.line.points.height[point]!) }] : [],
  );
}

function headArrow(
  request: ProfileRequest,
  drinkers: readonly DrawnDrinker[],
  y: Scale,
): HeadArrow | undefined {
  const { checked, drinker, moment } = request;
  const drawn = drinkers.find((candidate) => candidate.index === drinker);
  if (drawn === undefined) return undefined;
  const head = checked.drinkers[drinker]!.moments[moment][checked.friction].flowingHead;
  return { x: drawn.x, from: drawn.y, to: y(checked.line.drinkers.height[drinker]! + head), head };
}
