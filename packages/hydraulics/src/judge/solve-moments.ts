import { flowOfDrinker } from "../model/drinker-flow.js";
import type { Line } from "../model/line.js";
import { MOMENTS, type MomentName, type Moments } from "../model/moment.js";
import { headTakenByOneMore } from "../solve/one-more.js";
import { type PreparedLine, prepareBoth } from "../solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { solveLine } from "../solve/solve-line.js";

/**
 * By drinker: fall of the head at its point if it drew its need, or the most any of its like could draw, besides
 * those at work [m]; 0 for those that are at work.
 */
export interface OneMore {
  readonly atNeed: Float64Array;
  readonly atMost: Float64Array;
  /** That most [m3/s]. */
  readonly most: Float64Array;
}

/** One moment solved with one law: as it is, with nobody drinking, and what one more drinker would cost. */
export interface SolvedMoment {
  readonly solution: LineSolution;
  readonly idle: LineSolution;
  readonly oneMore: OneMore;
}

export type SolvedMoments = Readonly<Record<FrictionLaw, Readonly<Record<MomentName, SolvedMoment>>>>;

/** Solves a line for its four moments with both friction laws, each from the last one's state. */
export function solveMoments(line: Line, moments: Moments): SolvedMoments {
  const prepared = prepareBoth(line);
  return Object.fromEntries(
    FRICTION_LAWS.map((friction) => [
      friction,
      Object.fromEntries(MOMENTS.map((name) => [name, solveMoment(prepared[friction], moments, name)])),
    ]),
  ) as unknown as SolvedMoments;
}

function solveMoment(prepared: PreparedLine, moments: Moments, name: MomentName): SolvedMoment {
  const idle = solveLine(prepared, moments.idle[name]);
  if (name === "fullIdle")
    return { solution: idle, idle, oneMore: nothingTaken(prepared.line.drinkers.count) };
  const solution = solveLine(prepared, moments.named[name]);
  return { solution, idle, oneMore: costOfOneMore(prepared, moments.named[name].atWork, solution) };
}

/** What verdicts hang on: no ordinary moment, and what one more drinker takes only at its need. */
export type WeighedMoments = Readonly<
  Record<FrictionLaw, Readonly<Record<"fullIdle" | "lowestBusiest", SolvedMoment>>>
> & {
  /** The greatest flow is only asked about air, by one law. */
  readonly darcyWeisbach: { readonly busy: LineSolution };
};

/** Solves only the moments that verdicts hang on. */
export function solveForVerdicts(line: Line, moments: Moments): WeighedMoments {
  const { hazenWilliams, darcyWeisbach } = prepareBoth(line);
  return {
    hazenWilliams: {
      fullIdle: weighMoment(hazenWilliams, moments, "fullIdle"),
      lowestBusiest: weighMoment(hazenWilliams, moments, "lowestBusiest"),
    },
    darcyWeisbach: {
      fullIdle: weighMoment(darcyWeisbach, moments, "fullIdle"),
      busy: solveLine(darcyWeisbach, moments.named.fullBusiest),
      lowestBusiest: weighMoment(darcyWeisbach, moments, "lowestBusiest"),
    },
  };
}

function weighMoment(
  prepared: PreparedLine,
  moments: Moments,
  name: "fullIdle" | "lowestBusiest",
): SolvedMoment {
  const idle = solveLine(prepared, moments.idle[name]);
  if (name === "fullIdle") return { solution: idle, idle, oneMore: nothingTaken(0) };
  const { atWork } = moments.named[name];
  const solution = solveLine(prepared, moments.named[name]);
  return { solution, idle, oneMore: { ...nothingTaken(0), atNeed: costAtNeed(prepared, atWork) } };
}

/** By drinker: what it costs if one that is not at work draws its need [m]. To be asked right after the solve. */
export function costAtNeed(prepared: PreparedLine, atWork: Uint8Array): Float64Array {
  const { count, need, point } = prepared.line.drinkers;
  const atNeed = new Float64Array(count);
  const byNeed = new Map<number, Float64Array>();
  for (let d = 0; d < count; d += 1) {
    if (atWork[d] === 1 || need[d] === 0) continue;
    const taken = byNeed.get(need[d]) ?? headTakenByOneMore(prepared, need[d]);
    byNeed.set(need[d], taken);
    atNeed[d] = taken[point[d]];
  }
  return atNeed;
}

const nothingTaken = (count: number): OneMore => ({
  atNeed: new Float64Array(count),
  atMost: new Float64Array(count),
  most: new Float64Array(count),
});

/** Idle drinkers that are alike: of one kind, with one need. */
interface AlikeDrinkers {
  readonly idle: number[];
  readonly need: number;
  /** The most any of them could draw by its law at the head it has [m3/s]. */
  most: number;
}

/** Two passes over the pipes for each kind of drinker some of which are not at work. */
export function costOfOneMore(prepared: PreparedLine, atWork: Uint8Array, solution: LineSolution): OneMore {
  const { drinkers } = prepared.line;
  const cost = nothingTaken(drinkers.count);
  for (const { idle, need, most } of alikeAndIdle(prepared.line, atWork, solution)) {
    if (most === 0) continue;
    const takenAtNeed = need === 0 ? undefined : headTakenByOneMore(prepared, need);
    const takenAtMost = headTakenByOneMore(prepared, most);
    for (const d of idle) {
      cost.atNeed[d] = takenAtNeed === undefined ? 0 : takenAtNeed[drinkers.point[d]];
      cost.atMost[d] = takenAtMost[drinkers.point[d]];
      cost.most[d] = most;
    }
  }
  return cost;
}

function alikeAndIdle(line: Line, atWork: Uint8Array, solution: LineSolution): AlikeDrinkers[] {
  const { drinkers } = line;
  const alike = new Map<string, AlikeDrinkers>();
  for (const group of drinkers.groups) {
    const key = `${group.need} ${group.kindId}`;
    const kin = alike.get(key) ?? { idle: [], need: group.need, most: group.need };
    alike.set(key, kin);
    for (let d = group.first; d < group.first + group.count; d += 1) {
      if (atWork[d] === 1) continue;
      kin.idle.push(d);
      const head = solution.head[drinkers.point[d]] - drinkers.height[d];
      kin.most = Math.max(kin.most, flowOfDrinker(drinkers, d, head));
    }
  }
  return [...alike.values()].filter(({ idle }) => idle.length > 0);
}
