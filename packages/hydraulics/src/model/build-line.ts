import { DEFAULTS } from "../document/defaults.js";
import { drinkerGroupsOf, type Plan } from "../document/plan-schema.js";
import { type Problem, sortProblems } from "../document/problem.js";
import { LIMITS, readShare } from "../document/schema-parts.js";
import { waterAt } from "../physics/water.js";
import { buildSources, feedCoefficient, type StandingSource } from "./build-source.js";
import { behaviourOf, type DrinkerBehaviour } from "./drinker-kind.js";
import {
  fallReference,
  gatherJoints,
  type Joints,
  resolveGround,
  resolveHeights,
  tooSteep,
} from "./joints.js";
import { layRun, placeDrinkers, type Station } from "./lay-run.js";
import { type DrinkerGroup, type Feed, type Line, type Run, SEGMENT_KIND, type Source } from "./line.js";
import {
  columnsOfDrinkers,
  columnsOfSegments,
  type DrinkerPart,
  listPoints,
  type PointList,
  type SegmentPart,
} from "./line-parts.js";
import { type PipeBehaviour, pipeOf, sumFittings } from "./pipe-kind.js";
import { createTypedValues, type DefaultUsed, type TypedValues } from "./typed-values.js";

export type LineBuilding =
  | {
      readonly ok: true;
      readonly line: Line;
      readonly defaults: readonly DefaultUsed[];
      readonly openWater: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A run of no length still joins two places: it counts as this much pipe [m]. */
const LEAST_LENGTH = 0.001;
/** Loss of a regulator that is wide open, and of a one-way valve besides what opens it [velocity heads]; common practice, no source. */
const REGULATOR_K = 10;
const ONE_WAY_K = 2;

/** What is gathered while the runs are laid one after another. */
interface Laying {
  readonly plan: Plan;
  readonly joints: Joints;
  readonly height: Float64Array;
  readonly ground: Float64Array;
  readonly values: TypedValues;
  readonly points: PointList;
  readonly segments: SegmentPart[];
  readonly drinkers: DrinkerPart[];
  readonly groups: DrinkerGroup[];
  readonly runs: Run[];
  readonly openWater: string[];
}

/**
 * Makes the line a plan describes: SI, indexed, every default filled in and listed.
 *
 * @param plan  from `readPlan` or `checkDocument`
 * @returns the line, or what in the plan contradicts itself (heights, connections, levels)
 */
export function buildLine(plan: Plan): LineBuilding {
  const values = createTypedValues();
  const water = waterAt(values.siOr(plan.water, "temperature", "waterTemperature", "water"));
  const { sources, problems } = buildSources(plan, values);
  const joints = gatherJoints(
    plan,
    sources.map((source) => source.base + source.outlet),
    values,
  );
  const heights = resolveHeights(plan, joints, values);
  problems.push(...heights.problems, ...tooManyDrinkers(plan));
  if (problems.length === 0) problems.push(...tooSteep(plan, joints, heights.height, values));
  if (problems.length > 0) return { ok: false, problems: sortProblems(problems) };

  const ground = resolveGround(joints, heights.height);
  const points = listPoints();
  joints.id.forEach((id, j) => {
    const height = heights.height[j];
    points.add({
      id,
      height,
      ground: ground[j],
      bleed: joints.bleed[j],
      measured: true,
    });
  });
  const laying: Laying = {
    plan,
    joints,
    height: heights.height,
    ground,
    values,
    points,
    segments: [],
    drinkers: [],
    groups: [],
    runs: [],
    openWater: [],
  };
  plan.runs.forEach((_, i) => {
    layOneRun(laying, i);
  });
  const line: Line = {
    name: plan.name ?? "",
    water,
    points: points.finish(),
    segments: columnsOfSegments(laying.segments),
    runs: laying.runs,
    drinkers: { ...columnsOfDrinkers(laying.drinkers), groups: laying.groups },
    sources: sources.map((source, i) => placeSource(plan, joints, source, i, values)),
  };
  return { ok: true, line, defaults: values.used, openWater: laying.openWater };
}

function tooManyDrinkers(plan: Plan): Problem[] {
  const count = plan.runs.reduce(
    (sum, run) => sum + drinkerGroupsOf(run).reduce((n, group) => n + (group.count ?? 1), 0),
    0,
  );
  if (count <= LIMITS.drinkers) return [];
  return [
    {
      code: "tooMany",
      path: "runs",
      found: `${count} drinkers`,
      allowed: `A plan has at most ${LIMITS.drinkers} drinkers.`,
      mend: "Split it into several plans.",
    },
  ];
}

function layOneRun(laying: Laying, index: number): void {
  const { plan, joints, height, values, segments } = laying;
  const run = plan.runs[index];
  const path = `runs[${index}]`;
  const [from, to] = [joints.runFrom[index], joints.runTo[index]];
  const length = values.si(run.length, "length");
  const pipe = pipeOf(run.pipe, `${path}.pipe`, values);
  const groups = drinkerGroupsOf(run).map((group) =>
    placeDrinkers({
      count: group.count ?? 1,
      runLength: length,
      first: group.first === undefined ? undefined : values.si(group.first, "length"),
      every: group.every === undefined ? undefined : values.si(group.every, "length"),
    }),
  );
  const stations = layRun({
    length,
    startHeight: height[from],
    surveyedFrom: fallReference(joints, index, height[from]),
    endHeight: height[to],
    survey: (run.survey ?? []).map((reading) => ({
      along: values.si(reading.along, "length"),
      fall: values.si(reading.fall, "length"),
      bleed: reading.bleed ?? false,
    })),
    drinkersAt: groups.flat().sort((a, b) => a - b),
  });
  const firstSegment = segments.length;
  const start = layDevices(laying, index, pipe);
  const runPoints = [from, ...stations.map((station) => addStation(laying, index, station, length)), to];
  const along = [0, ...stations.map((station) => station.along), length];
  const startsAtSource = joints.source[from] >= 0;
  const fittings = sumFittings(run, pipe.bore, startsAtSource);
  for (let k = 1; k < runPoints.length; k += 1) {
    segments.push({
      ...segmentOf(pipe, index),
      from: k === 1 ? start : runPoints[k - 1],
      to: runPoints[k],
      length: Math.max(LEAST_LENGTH, along[k] - along[k - 1]),
      // Fittings sit where the whole flow of the run still passes: the cautious end.
      ...(k === 1 ? { ...fittings, shut: run.tap === "shut" } : {}),
    });
  }
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
  hangDrinkers(laying, index, groups, runPoints, along);
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

function hangDrinkers(
  laying: Laying,
  index: number,
  places: readonly (readonly number[])[],
  runPoints: readonly number[],
  along: readonly number[],
): void {
  const { plan, joints, points, drinkers, groups, values } = laying;
  drinkerGroupsOf(plan.runs[index]).forEach((group, g) => {
    const list = drinkerGroupsOf(plan.runs[index]);
    const path = Array.isArray(plan.runs[index].drinkers)
      ? `runs[${index}].drinkers[${g}]`
      : `runs[${index}].drinkers`;
    const kind = behaviourOf(plan, group.kind, values);
    const id =
      group.id ?? (list.length === 1 ? joints.runId[index] : `${joints.runId[index]} group ${g + 1}`);
    const need = group.need === undefined ? kind.need : values.si(group.need, "flow");
    const drop = values.siOr(group.drop, "length", "drop", `${path}.drop`);
    const count = places[g].length;
    if (kind.isOpenWater) laying.openWater.push(id);
    groups.push({
      ...groupOf(kind),
      id,
      run: index,
      first: drinkers.length,
      count,
      need,
      busiest: atWork(group.busiest, count, "busiest", `${path}.busiest`, values),
      ordinary: atWork(group.ordinary, count, "ordinary", `${path}.ordinary`, values),
    });
    places[g].forEach((place, k) => {
      const at = nearestIndex(along, place);
      const pipeHeight = points.heightOf(runPoints[at]);
      drinkers.push({
        id: count === 1 ? id : `${id} ${k + 1}`,
        group: groups.length - 1,
        run: index,
        point: runPoints[at],
        along: place,
        height: pipeHeight - drop,
        coefficient: kind.law.coefficient,
        exponent: kind.law.exponent,
        openingHead: kind.law.openingHead,
        need,
      });
    });
  });
}

function groupOf(kind: DrinkerBehaviour) {
  const { kindId, kindName, workedBy, sealsFrom, holdsUpTo, flowLow, flowHigh } = kind;
  return { kindId, kindName, workedBy, sealsFrom, holdsUpTo, flowLow, flowHigh };
}

/** A count, or a share rounded up, so that a group with drinkers has at least one at work unless it says none. */
function atWork(
  typed: number | string | undefined,
  count: number,
  name: "busiest" | "ordinary",
  path: string,
  values: TypedValues,
): number {
  if (typed === undefined) values.note(name, path);
  const given = typed ?? DEFAULTS[name].typed;
  if (typeof given === "number") return Math.min(given, count);
  return Math.min(count, Math.max(0, Math.ceil((readShare(given) ?? 1) * count - 1e-9)));
}

function nearestIndex(along: readonly number[], place: number): number {
  let low = 0;
  let high = along.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (along[middle] <= place) low = middle;
    else high = middle;
  }
  return place - along[low] <= along[high] - place ? low : high;
}

function placeSource(
  plan: Plan,
  joints: Joints,
  source: StandingSource,
  index: number,
  values: TypedValues,
): Source {
  const { feed } = plan.sources[index];
  const built: Feed | undefined =
    feed === undefined
      ? undefined
      : {
          point: joints.id.indexOf(feed.from),
          height: source.base + source.levels.full,
          coefficient: feedCoefficient(
            feed.opening === undefined ? undefined : values.si(feed.opening, "length"),
          ),
        };
  return { ...source, point: joints.source.indexOf(index), feed: built };
}
