import { type Line, STUCK } from "../../model/line.js";
import { pressureSurfaceAt } from "../../model/moment.js";
import { GRAVITY } from "../../physics/constants.js";
import { type PreparedLine, prepareAlike, prepareLine } from "../../solve/prepare-line.js";
import type { LineSolution } from "../../solve/solution.js";
import { reachState } from "../../solve/solve-line.js";
import { DRIP } from "../asked-plan.js";
import { readAsFilled, readDrinker } from "../read-drinker.js";
import { costOfOneMore } from "../solve-moments.js";
import { type Bench, drawnFrom, momentOf } from "./bench.js";
import type { Expectation, ExpectedSource, Leak } from "./expectation.js";
import { fallingLevel } from "./falling-level.js";
import type { Trial } from "./trial.js";

const DAY = 86_400;
/** With less head than this nothing weeps from a seal that is not pressed shut [m]; common practice, no source. */
const LEAST_WEEPING = 0.01;

/** A trial solved: with nobody drinking, and in an ordinary hour. */
interface Solved {
  readonly bench: Bench;
  readonly trial: Trial;
  readonly prepared: PreparedLine;
  readonly levels: readonly number[];
  readonly heads: Float64Array;
  readonly atWork: Uint8Array;
  readonly idle: LineSolution;
  readonly busy: LineSolution;
  readonly flow: Float64Array;
}

/**
 * What a trial would show at every place that can be looked at, through the solver.
 *
 * @param usual  the plan as it should be, solved by the same; undefined for that itself
 */
export function expectTrial(bench: Bench, trial: Trial, usual: Expectation | undefined): Expectation {
  const solved = solveTrial(bench, trial);
  const { line } = trial;
  return {
    flow: solved.flow,
    overSeal: line.drinkers.height.map((_, d) => overSealOf(solved, d)),
    leaks: leaksOf(solved),
    sources: line.sources.map((_, i) => expectedSource(solved, i, usual?.sources[i])),
    endShare: once((run) => endFlow(solved, run) / (usual?.endShare(run) ?? 1)),
    lidGain: once((source) => lidGain(solved, source)),
  };
}

/** Solves only when asked, and only once for each. */
function once(ask: (index: number) => number): (index: number) => number {
  const known = new Map<number, number>();
  return (index) => {
    const value = known.get(index) ?? ask(index);
    known.set(index, value);
    return value;
  };
}

function solveTrial(bench: Bench, trial: Trial): Solved {
  const { line } = trial;
  const prepared = trial.isAlike ? prepareAlike(bench.prepared, line) : prepareLine(line, "darcyWeisbach");
  const levels = trial.levels ?? bench.levels;
  const heads =
    trial.heads ?? Float64Array.from(line.sources, (source, i) => pressureSurfaceAt(line, source, levels[i]));
  const atWork = trial.atWork ?? bench.atWork;
  const idle = reachState(prepared, momentOf(heads, bench.nobody));
  const busy = reachState(prepared, momentOf(heads, atWork));
  const bare = { bench, trial, prepared, levels, heads, atWork, idle, busy };
  return { ...bare, flow: flowsOf(bare) };
}

/** Flow of each drinker worked besides those that are at work anyway. */
function flowsOf({ bench, trial, prepared, atWork, idle, busy }: Omit<Solved, "flow">): Float64Array {
  const { line, airHead } = trial;
  const { moments, filling, solved: asPlanned } = bench.asked.judged;
  const lowest = asPlanned.darcyWeisbach.lowestBusiest.idle;
  const oneMore = costOfOneMore(prepared, atWork, busy);
  const solved = { solution: busy, idle, oneMore };
  const named = { ...moments, named: { ...moments.named, ordinary: { ...moments.named.ordinary, atWork } } };
  return line.drinkers.height.map((_, d) => {
    const stuck = line.drinkers.stuck?.[d] ?? STUCK.not;
    if (stuck === STUCK.shut || busy.reached[line.drinkers.point[d]] === 0) return 0;
    if (stuck === STUCK.open) return busy.drinkerFlow[d] * foundAt(trial, d);
    const point = line.drinkers.point[d];
    const reading = readDrinker(line, solved, named, "ordinary", d);
    // A hump that stands above the water lets nothing by, however the line was filled.
    const above = filling.above[point] - (idle.head[point] - lowest.head[point]);
    return readAsFilled(line, d, reading, { airHead: airHead?.[point] ?? 0, above }).flow;
  });
}

/** Share of what a drinker passes that stands in it to be drunk. */
const foundAt = ({ spilt }: Trial, d: number): number => (spilt?.drinker === d ? spilt.left : 1);

/** How far the head with nobody drinking is outside what a drinker holds, as a share; Infinity where water runs. */
function overSealOf({ trial, idle }: Solved, d: number): number {
  const { drinkers } = trial.line;
  const point = drinkers.point[d];
  const stuck = drinkers.stuck?.[d] ?? STUCK.not;
  if (stuck === STUCK.open && idle.drinkerFlow[d] > 0) return Number.POSITIVE_INFINITY;
  const head = idle.head[point] - drinkers.height[d];
  if (stuck === STUCK.shut || idle.reached[point] === 0 || head <= 0) return -1;
  const { holdsUpTo, sealsFrom } = drinkers.groups[drinkers.group[d]];
  const onSeal = head - (trial.airHead?.[point] ?? 0);
  const over = head / holdsUpTo - 1;
  // Too little head to press a seal shut makes it weep or not: never more likely than not.
  return onSeal > LEAST_WEEPING && sealsFrom > 0 ? Math.max(over, Math.min(0, 1 - onSeal / sealsFrom)) : over;
}

function leaksOf(solved: Solved): Leak[] {
  const { line } = solved.trial;
  const { drinkers } = line;
  const leaks: Leak[] = [];
  for (let d = 0; d < drinkers.count; d += 1) {
    const flow = solved.idle.drinkerFlow[d];
    const drips = flow === 0 && overSealOf(solved, d) > 0 ? DRIP.expect : 0;
    if (flow + drips > 0) leaks.push({ at: "drinker", index: d, run: drinkers.run[d], flow: flow + drips });
  }
  line.leaks?.forEach(({ point }, k) => {
    const flow = solved.idle.leakFlow[k];
    if (flow > 0) leaks.push(...placesOfPoint(line, point).map((place) => ({ ...place, flow })));
  });
  line.sources.forEach(({ feed }, index) => {
    const flow = solved.idle.feedFlow[index];
    if (feed?.isStuckOpen && flow > 0) leaks.push({ at: "source", index, run: -1, flow });
  });
  return leaks;
}

/** Where a keeper would say that water at a point is: along each run that meets there, and at a source. */
function placesOfPoint(line: Line, point: number): Omit<Leak, "flow">[] {
  const { segments, runs, sources } = line;
  const meeting = new Set<number>();
  for (let s = 0; s < segments.count; s += 1)
    if (segments.from[s] === point || segments.to[s] === point) meeting.add(segments.run[s]);
  // Ends of their own that a joint apart was given stand at the same place as the joint.
  runs.forEach(({ points }, r) => {
    if (points.some((p) => line.points.id[p] === line.points.id[point])) meeting.add(r);
  });
  return [
    ...[...meeting].map((index) => ({ at: "run" as const, index, run: index })),
    ...sources.flatMap((source, index) =>
      source.point === point ? [{ at: "source" as const, index, run: -1 }] : [],
    ),
  ];
}

function expectedSource(solved: Solved, i: number, usual: ExpectedSource | undefined): ExpectedSource {
  const { bench, trial, levels, idle, busy, flow, prepared } = solved;
  const source = trial.line.sources[i];
  const drips = drippedFrom(solved, i);
  const leak = Math.max(0, idle.sourceFlow[i]) + drips;
  const leakAt = (level: number) => {
    if (level === levels[i]) return leak;
    const heads = solved.heads.slice();
    heads[i] =
      trial.heads === undefined ? pressureSurfaceAt(trial.line, source, level) : heads[i] + level - levels[i];
    return drips + Math.max(0, reachState(prepared, momentOf(heads, bench.nobody)).sourceFlow[i]);
  };
  const falling = fallingLevel(source, levels[i], leakAt);
  const ordinary = busy.sourceFlow[i] - Math.max(0, idle.sourceFlow[i]);
  const drawn = drawnFrom(bench, trial.flock ?? bench.asked.flock, i, { flow, ordinary });
  const isFilled = trial.notFilled !== i;
  const hose = isFilled ? filledBy(bench, i) : 0;
  const { dark } = bench;
  const nightFall = dark > 0 ? falling.fallIn(dark, drawn.night / dark - hose) : 0;
  const dayFall = falling.fallIn(DAY, drawn.day / DAY - hose);
  const isEmpty = levels[i] <= source.outlet + 1e-9;
  return {
    nightFall,
    nightUsual: usual?.nightFall ?? nightFall,
    dayFall,
    dayUsual: usual?.dayFall ?? dayFall,
    timeToEmpty: isEmpty ? 0 : falling.timeToEmpty(drawn.day / DAY - hose),
    below: isEmpty ? Number.POSITIVE_INFINITY : bench.levels[i] - levels[i],
    isKeptFull: hose > 0,
  };
}

/** What drinkers that drip lose, shared by the sources that are not themselves fed by the line [m3/s]. */
function drippedFrom(solved: Solved, i: number): number {
  const { line } = solved.trial;
  if (line.sources[i].feed !== undefined) return 0;
  const roots = line.sources.filter(({ feed }) => feed === undefined).length;
  let dripping = 0;
  for (let d = 0; d < line.drinkers.count; d += 1) {
    const over = overSealOf(solved, d);
    if (over > 0 && over < Number.POSITIVE_INFINITY) dripping += 1;
  }
  return (dripping * DRIP.expect) / roots;
}

/** What flows into a source of itself while it is not full: through a hose, or the float valve of a header tank [m3/s]. */
function filledBy({ asked, line }: Bench, i: number): number {
  const refill = asked.refills[i];
  if (line.sources[i].feed === undefined) return refill.kind === "hose" ? refill.flow : 0;
  return asked.judged.solved.darcyWeisbach.fullBusiest.solution.feedFlow[i];
}

/** What comes out of the far end of a run, opened with nobody drinking [m3/s]; NaN where nothing ever would. */
function endFlow({ bench, trial, heads }: Solved, run: number): number {
  const { line, airHead } = trial;
  const { points, bore } = line.runs[run];
  const point = points[points.length - 1];
  const coefficient = ((Math.PI * bore * bore) / 4) * Math.sqrt(2 * GRAVITY);
  const height = line.points.height[point] + (airHead?.[point] ?? 0);
  const opened = { ...line, leaks: [...(line.leaks ?? []), { point, height, coefficient }] };
  const { leakFlow } = reachState(prepareLine(opened, "darcyWeisbach"), momentOf(heads, bench.nobody));
  return leakFlow[leakFlow.length - 1];
}

/** How much more the drinker that gains most gives with a source's lid off: the water then presses from its own surface. */
function lidGain({ trial, prepared, levels, heads, atWork, busy }: Solved, i: number): number {
  const { line } = trial;
  const surface = line.sources[i].base + levels[i];
  if (surface - heads[i] < 1e-9) return 1;
  const open = heads.slice();
  open[i] = surface;
  const all = new Uint8Array(atWork.length).fill(1);
  const now = reachState(prepared, momentOf(heads, all)).drinkerFlow;
  const then = reachState(prepared, momentOf(open, all)).drinkerFlow;
  const least = 1e-9 + 0.01 * Math.max(...busy.drinkerFlow, 0);
  return then.reduce((most, q, d) => Math.max(most, (q + least) / (now[d] + least)), 1);
}
