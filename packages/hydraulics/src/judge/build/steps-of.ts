import type { Plan } from "../../document/plan-schema.js";
import { runEnds } from "../../document/run-ends.js";
import { type Line, type Run, SEGMENT_KIND } from "../../model/line.js";
import type { FillingFinding } from "../check-result.js";
import { findLowestWays, type Ways } from "../lowest-ways.js";
import type { BuildStep, JugTest, StandLoad } from "./build-sheet.js";
import type { PipeToCut } from "./part-list.js";
import { fittingsOf } from "./parts-of.js";

interface StepsAsked {
  readonly plan: Plan;
  readonly line: Line;
  readonly filling: readonly FillingFinding[];
  readonly pipes: readonly PipeToCut[];
  readonly loads: readonly StandLoad[];
  readonly jugs: readonly JugTest[];
}

/**
 * What to do and in which order: stands and vessels first, runs from upstream to downstream in the order in which
 * water will reach them, then rinse, fill, let the air out, look for leaks, try drinkers, and only then the birds.
 */
export function stepsOf({ plan, line, filling, pipes, loads, jugs }: StepsAsked): BuildStep[] {
  if (line.sources.length === 0 || line.runs.length === 0) return [];
  const ways = findLowestWays(line);
  const volume = line.segments.length.reduce(
    (sum, length, s) => sum + (length * Math.PI * line.segments.bore[s] ** 2) / 4,
    0,
  );
  return [
    ...line.sources.flatMap((source, i) => sourceSteps(plan, source.id, source.outlet, loads[i])),
    ...runsInOrder(line, ways).flatMap((run) => runSteps(plan, line, run, { ways, pipes })),
    { code: "rinse", ends: deadEnds(line) },
    { code: "fill", sources: line.sources.map(({ id }) => id) },
    ...bleedSteps(line, ways, filling),
    { code: "leakTest", volume },
    ...(jugs.length === 0
      ? []
      : [{ code: "jugTest", drinkers: jugs.map(({ drinker }) => drinker) } as const]),
    { code: "letBirdsIn" },
  ];
}

function sourceSteps(plan: Plan, source: string, outlet: number, load: StandLoad): BuildStep[] {
  const ends = runEnds(plan);
  const outlets = plan.runs.filter((_, r) => ends[r].from === source || ends[r].to === source).length;
  return [
    ...(load.stand > 0 ? [{ code: "setStand", source, stand: load.stand, feet: load.feet } as const] : []),
    { code: "drillVessel", source, outlet, outlets: Math.max(1, outlets) },
  ];
}

/** Runs as water first reaches them; those that it never reaches come last. */
function runsInOrder(line: Line, ways: Ways): Run[] {
  const first = line.runs.map(() => Number.POSITIVE_INFINITY);
  ways.segment.forEach((segment, node) => {
    if (segment >= 0) first[line.segments.run[segment]] = Math.min(first[line.segments.run[segment]], node);
  });
  return [...line.runs].sort((a, b) => first[a.index] - first[b.index] || a.index - b.index);
}

function runSteps(
  plan: Plan,
  line: Line,
  run: Run,
  { ways, pipes }: { readonly ways: Ways; readonly pipes: readonly PipeToCut[] },
): BuildStep[] {
  const typed = plan.runs[run.index];
  const { from, to } = runEnds(plan)[run.index];
  const pieces = pipes
    .flatMap(({ bars, uncut }) => [...bars.flatMap((bar) => bar.pieces), ...uncut])
    .filter((piece) => piece.run === run.id).length;
  const groups = line.drinkers.groups.filter((group) => group.run === run.index);
  return [
    {
      code: "layRun",
      run: run.id,
      from,
      to,
      pipe: run.pipeName,
      length: run.length,
      pieces,
      devices: [
        ...(typed.tap === undefined ? [] : (["tap"] as const)),
        ...(typed.oneWay === undefined || typed.oneWay === false ? [] : (["oneWay"] as const)),
        ...(typed.regulator === undefined ? [] : (["regulator"] as const)),
      ],
      fittings: fittingsOf(typed).map(({ name, count }) => ({ name, count })),
    },
    ...groups.map(({ id, count }): BuildStep => ({ code: "setDrinkers", run: run.id, group: id, count })),
    ...(closesRing(line, run, ways) ? [{ code: "closeRing", run: run.id } as const] : []),
  ];
}

/** Whether some open pipe of a run is on no way from a source: water comes to it from both ends. */
function closesRing({ segments }: Line, { firstSegment, segmentCount }: Run, ways: Ways): boolean {
  const onWay = new Set(ways.segment);
  for (let s = firstSegment; s < firstSegment + segmentCount; s += 1)
    if (segments.kind[s] === SEGMENT_KIND.pipe && segments.shut[s] === 0 && !onWay.has(s)) return true;
  return false;
}

/** Points where one piece of pipe ends and nothing feeds. */
function deadEnds({ segments, points, sources }: Line): string[] {
  const meeting = new Int32Array(points.count);
  for (const ends of [segments.from, segments.to]) for (const p of ends) meeting[p] += 1;
  for (const { point, feed } of sources) {
    meeting[point] += 1;
    if (feed !== undefined) meeting[feed.point] += 1;
  }
  return Array.from(points.id).filter((_, p) => meeting[p] === 1);
}

/** Bleeds that are there, and places that hold air, as water reaches them. */
function bleedSteps(line: Line, ways: Ways, filling: readonly FillingFinding[]): BuildStep[] {
  const found = new Map(
    filling.flatMap((finding) =>
      finding.code === "suction" ? [] : [[finding.pointIndex, finding.code] as const],
    ),
  );
  const { points } = line;
  return Array.from(ways.point).flatMap((point): BuildStep[] => {
    const hasBleed = points.bleed[point] === 1;
    const finding = found.get(point);
    return hasBleed || finding !== undefined
      ? [{ code: "bleed", point: points.id[point], hasBleed, finding }]
      : [];
  });
}
