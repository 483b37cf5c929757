import { type Line, SEGMENT_KIND, STUCK } from "../model/line.js";
import type { Moment } from "../model/moment.js";
import { type LossTable, lossByTable } from "./loss-table.js";
import type { LineSolution, Residual } from "./solution.js";

/** Bars a returned solution must meet. Continuity is relative to the largest flow of the line. */
export const CONTINUITY_BAR = 1e-9;
export const ENERGY_BAR = 1e-7;
/** A flow no larger than this is rounding in a ring that stands still, and moves no valve [m3/s]. */
export const STILL_FLOW = 1e-15;

type State = Omit<LineSolution, "outcome" | "checks" | "effort">;

/**
 * Checks a state from scratch: water in = water out at every point, and the head lost on every segment and in every
 * drinker as the published formulas of physics/ have it. Shares no code with the solver's loop.
 */
export function checkSolution(
  line: Line,
  moment: Moment,
  state: State,
  table: LossTable,
): { continuity: Residual; energy: Residual; passed: boolean } {
  const continuity = checkContinuity(line, state);
  const energy = checkEnergy(line, moment, state, table);
  let largest = 0;
  for (let s = 0; s < state.flow.length; s += 1) largest = Math.max(largest, Math.abs(state.flow[s]));
  const passed = continuity.worst <= CONTINUITY_BAR * largest + 1e-18 && energy.worst <= ENERGY_BAR;
  return { continuity, energy, passed };
}

function checkContinuity(line: Line, state: State): Residual {
  const { segments, drinkers } = line;
  const balance = new Float64Array(line.points.count);
  for (let s = 0; s < segments.count; s += 1) {
    balance[segments.from[s]] -= state.flow[s];
    balance[segments.to[s]] += state.flow[s];
  }
  for (let d = 0; d < drinkers.count; d += 1) balance[drinkers.point[d]] -= state.drinkerFlow[d];
  line.sources.forEach((source, i) => {
    balance[source.point] += state.sourceFlow[i];
    if (source.feed !== undefined) balance[source.feed.point] -= state.feedFlow[i];
  });
  line.leaks?.forEach(({ point }, k) => {
    balance[point] -= state.leakFlow[k];
  });
  return worstOf(balance.length, (p) => Math.abs(balance[p]));
}

function checkEnergy(line: Line, moment: Moment, state: State, table: LossTable): Residual {
  const onPipes = worstOf(line.segments.count, (s) => segmentResidual(line, state, table, s));
  const atDrinkers = worstOf(line.drinkers.count, (d) => drinkerResidual(line, moment, state, d));
  const atSources = worstOf(line.sources.length, (i) =>
    Math.abs(state.head[line.sources[i].point] - moment.sourceHead[i]),
  );
  const atFeeds = worstOf(line.sources.length, (i) => feedResidual(line, moment, state, i));
  const atLeaks = worstOf(line.leaks?.length ?? 0, (k) => leakResidual(line, state, k));
  return [onPipes, atDrinkers, atSources, atFeeds, atLeaks].reduce((a, b) => (b.worst > a.worst ? b : a));
}

function segmentResidual(line: Line, state: State, table: LossTable, s: number): number {
  const { segments, points } = line;
  const from = segments.from[s];
  const to = segments.to[s];
  const flow = state.flow[s];
  if (segments.shut[s] === 1) return flow === 0 ? 0 : Number.POSITIVE_INFINITY;
  if (state.reached[from] === 0 || state.reached[to] === 0) return unreachedResidual(line, state, s);
  const drop = state.head[from] - state.head[to];
  const loss = lossByTable(line, table, s, flow);
  if (segments.kind[s] === SEGMENT_KIND.regulator) {
    const setting = points.height[to] + segments.setting[s];
    const holds = Math.abs(state.head[to] - setting) <= ENERGY_BAR && drop >= loss - ENERGY_BAR && flow >= 0;
    if (holds) return 0;
    if (flow < -STILL_FLOW) return Number.POSITIVE_INFINITY;
    // Shut, it bears any head back, and any that stands above its setting.
    const isShut = flow === 0 && state.head[to] >= Math.min(setting, state.head[from]) - ENERGY_BAR;
    return isShut ? 0 : Math.abs(drop - loss);
  }
  if (segments.kind[s] === SEGMENT_KIND.oneWay) {
    if (flow < -STILL_FLOW) return Number.POSITIVE_INFINITY;
    // Shut, a valve bears any head back and up to what opens it.
    const over = drop - loss - segments.setting[s];
    return flow <= STILL_FLOW ? Math.max(0, over) : Math.abs(over);
  }
  return Math.abs(drop - loss);
}

/** Where no source reaches an end, nothing flows; and only a device can keep a reached end from the other. */
function unreachedResidual({ segments }: Line, { reached, flow }: State, s: number): number {
  const atStart = reached[segments.from[s]];
  const isBehindValve = segments.kind[s] !== SEGMENT_KIND.pipe && atStart === 0;
  const isConsistent = atStart === reached[segments.to[s]] || isBehindValve;
  return isConsistent && flow[s] === 0 ? 0 : Number.POSITIVE_INFINITY;
}

function drinkerResidual(line: Line, moment: Moment, state: State, d: number): number {
  const { drinkers } = line;
  const flow = state.drinkerFlow[d];
  const point = drinkers.point[d];
  const working = drinkers.stuck?.[d] ?? STUCK.not;
  const isOpen = working === STUCK.open || (working === STUCK.not && moment.atWork[d] === 1);
  if (!isOpen || state.reached[point] === 0) return flow === 0 ? 0 : Number.POSITIVE_INFINITY;
  const spare = state.head[point] - drinkers.height[d] - drinkers.openingHead[d];
  if (flow === 0) return Math.max(0, spare);
  const share = flow / drinkers.coefficient[d];
  return Math.abs(
    spare - (drinkers.exponent[d] === 0.5 ? share * share : share ** (1 / drinkers.exponent[d])),
  );
}

/** A float valve passes what the head over its mouth drives, or nothing while shut. */
function feedResidual(line: Line, moment: Moment, state: State, i: number): number {
  const { feed } = line.sources[i];
  const flow = state.feedFlow[i];
  const isOpen = feed?.isStuckOpen === true || moment.feeding?.[i] === 1;
  if (feed === undefined || !isOpen || state.reached[feed.point] === 0) {
    return flow === 0 ? 0 : Number.POSITIVE_INFINITY;
  }
  const spare = state.head[feed.point] - feed.height;
  return flow === 0 ? Math.max(0, spare) : Math.abs(spare - (flow / feed.coefficient) ** 2);
}

/** A leak pours out what the head over it drives, and never draws in. */
function leakResidual(line: Line, state: State, k: number): number {
  const leak = line.leaks?.[k];
  if (leak === undefined) return 0;
  const flow = state.leakFlow[k];
  if (state.reached[leak.point] === 0) return flow === 0 ? 0 : Number.POSITIVE_INFINITY;
  const spare = state.head[leak.point] - leak.height;
  return flow === 0 ? Math.max(0, spare) : Math.abs(spare - (flow / leak.coefficient) ** 2);
}

function worstOf(count: number, residual: (index: number) => number): Residual {
  let worst = 0;
  let at = -1;
  for (let i = 0; i < count; i += 1) {
    const here = residual(i);
    if (here > worst || Number.isNaN(here)) {
      worst = Number.isNaN(here) ? Number.POSITIVE_INFINITY : here;
      at = i;
    }
  }
  return { worst, at };
}
