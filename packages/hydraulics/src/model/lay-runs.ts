import { drinkerGroupsOf } from "../document/plan-lists.js";
import type { PlanRun } from "../document/plan-schema.js";
import { fallReference } from "./falls.js";
import { hangDrinkers } from "./hang-drinkers.js";
import { layRun, placeDrinkers, type Station } from "./lay-run.js";
import type { Laying } from "./laying.js";
import { SEGMENT_KIND } from "./line.js";
import type { SegmentPart } from "./line-parts.js";
import { type PipeBehaviour, pipeOf, sumFittings, type WayIn } from "./pipe-kind.js";
import type { TypedValues } from "./typed-values.js";

/** A run of no length still joins two places: it counts as this much pipe [m]. */
const LEAST_LENGTH = 0.001;
/** Loss of a regulator that is wide open, and of a one-way valve besides what opens it [velocity heads]; common practice, no source. */
const REGULATOR_K = 10;
const ONE_WAY_K = 2;

/** Lays one run of the plan: its devices, its pieces of pipe from station to station, and what hangs on it. */
export function layOneRun(laying: Laying, index: number): void {
  const { plan, joints, values, segments } = laying;
  const run = plan.runs[index];
  const length = values.si(run.length, "length");
  const pipe = pipeOf(run.pipe, `runs[${index}].pipe`, values);
  const places = drinkerPlaces(run, length, values);
  const stations = stationsOf(laying, index, length, places.flat());
  const firstSegment = segments.length;
  const start = layDevices(laying, index, pipe);
  const between = stations.map((station) => addStation(laying, index, station, length));
  const runPoints = [joints.runFrom[index], ...between, joints.runTo[index]];
  const along = [0, ...stations.map((station) => station.along), length];
  layPieces(laying, index, { pipe, start, runPoints, along });
  laying.runs.push({
    id: joints.runId[index],
    index,
    pipeId: pipe.pipeId,
    pipeName: pipe.pipeName,
    length,
    bore: pipe.bore,
    boreLow: pipe.boreLow,
    boreHigh: pipe.boreHigh,
    firstSegment,
    segmentCount: segments.length - firstSegment,
    points: Int32Array.from(runPoints),
    along: Float64Array.from(along),
  });
  hangDrinkers(laying, index, places, runPoints, along);
}

/** By group, how far along the run each of its drinkers hangs [m]. */
function drinkerPlaces(run: PlanRun, runLength: number, values: TypedValues): number[][] {
  return drinkerGroupsOf(run).map((group) =>
    placeDrinkers({
      count: group.count ?? 1,
      runLength,
      first: group.first === undefined ? undefined : values.si(group.first, "length"),
      every: group.every === undefined ? undefined : values.si(group.every, "length"),
    }),
  );
}

function stationsOf(
  { plan, joints, height, values }: Laying,
  index: number,
  length: number,
  drinkersAt: readonly number[],
): Station[] {
  const startHeight = height[joints.runFrom[index]];
  return layRun({
    length,
    startHeight,
    surveyedFrom: fallReference(joints, index, startHeight),
    endHeight: height[joints.runTo[index]],
    survey: (plan.runs[index].survey ?? []).map((reading) => ({
      along: values.si(reading.along, "length"),
      fall: values.si(reading.fall, "length"),
      bleed: reading.bleed ?? false,
    })),
    drinkersAt: [...drinkersAt].sort((a, b) => a - b),
  });
}

/** The pieces of pipe from point to point. Fittings sit where the whole flow of the run still passes: the cautious end. */
function layPieces(
  laying: Laying,
  index: number,
  way: {
    readonly pipe: PipeBehaviour;
    /** The point after the devices. */
    readonly start: number;
    readonly runPoints: readonly number[];
    readonly along: readonly number[];
  },
): void {
  const { pipe, start, runPoints, along } = way;
  const run = laying.plan.runs[index];
  const { bore, hazenWilliams, roughness } = pipe;
  const fittings = sumFittings(run, bore, wayInOf(laying, runPoints[0]));
  for (let k = 1; k < runPoints.length; k += 1) {
    const isFirst = k === 1;
    laying.segments.push({
      run: index,
      bore,
      hazenWilliams,
      roughness,
      k1: isFirst ? fittings.k1 : 0,
      kInfinity: isFirst ? fittings.kInfinity : 0,
      from: isFirst ? start : runPoints[k - 1],
      to: runPoints[k],
      length: Math.max(LEAST_LENGTH, along[k] - along[k - 1]),
      shut: isFirst && run.tap === "shut",
    });
  }
}

/** The outlet of the source at a joint; undefined where there is none. */
function wayInOf({ joints, outletBores }: Laying, joint: number): WayIn | undefined {
  const source = joints.source[joint];
  return source < 0 ? undefined : { bore: outletBores[source] };
}

const segmentOf = (pipe: PipeBehaviour, run: number) => ({
  run,
  bore: pipe.bore,
  hazenWilliams: pipe.hazenWilliams,
  roughness: pipe.roughness,
  k1: 0,
  kInfinity: 0,
});

/** A one-way valve and a regulator at the start of a run, in that order; gives the point the pipe then starts from. */
function layDevices(laying: Laying, index: number, pipe: PipeBehaviour): number {
  const { plan, joints, height, points, segments, values } = laying;
  const run = plan.runs[index];
  let at = joints.runFrom[index];
  const add = (name: string, part: Partial<SegmentPart>) => {
    const h = height[joints.runFrom[index]];
    const to = points.add({
      id: `${joints.runId[index]} after the ${name}`,
      height: h,
      ground: laying.ground[joints.runFrom[index]],
      bleed: false,
      measured: false,
    });
    segments.push({ ...segmentOf(pipe, index), from: at, to, length: LEAST_LENGTH, ...part });
    at = to;
  };
  if (run.oneWay !== undefined && run.oneWay !== false) {
    const opensAt = run.oneWay === true ? undefined : run.oneWay.opensAt;
    const setting = values.siOr(opensAt, "head", "oneWayOpensAt", `runs[${index}].oneWay`);
    add("one-way valve", { kind: SEGMENT_KIND.oneWay, setting, kInfinity: ONE_WAY_K });
  }
  if (run.regulator !== undefined) {
    const setting = values.si(run.regulator.sets, "head");
    add("regulator", { kind: SEGMENT_KIND.regulator, setting, kInfinity: run.regulator.k ?? REGULATOR_K });
  }
  return at;
}

function addStation(laying: Laying, run: number, station: Station, length: number): number {
  const { points, joints } = laying;
  const [from, to] = [laying.ground[joints.runFrom[run]], laying.ground[joints.runTo[run]]];
  const share = length === 0 ? 0 : station.along / length;
  return points.add({
    id: `${joints.runId[run]} at ${station.along.toFixed(2)} m`,
    height: station.height,
    ground: Math.min(station.height, from + (to - from) * share),
    bleed: station.bleed,
    measured: station.surveyed,
  });
}
