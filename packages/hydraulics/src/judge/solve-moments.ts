import type { Line } from "../model/line.js";
import { MOMENTS, type MomentName, type Moments } from "../model/moment.js";
import { headTakenByOneMore } from "../solve/one-more.js";
import { type PreparedLine, prepareLine } from "../solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { solveLine } from "../solve/solve-line.js";

/** One moment solved with one law: as it is, with nobody drinking, and what one more drinker would cost. */
export interface SolvedMoment {
  readonly solution: LineSolution;
  readonly idle: LineSolution;
  /** By drinker: fall of the head at its point if it drew its need besides those at work [m]; 0 for those at work. */
  readonly takenByOneMore: Float64Array;
}

export type SolvedMoments = Readonly<Record<FrictionLaw, Readonly<Record<MomentName, SolvedMoment>>>>;

/** Solves a line for its four moments with both friction laws, each from the last one's state. */
export function solveMoments(line: Line, moments: Moments): SolvedMoments {
  return Object.fromEntries(
    FRICTION_LAWS.map((friction) => {
      const prepared = prepareLine(line, friction);
      return [friction, Object.fromEntries(MOMENTS.map((name) => [name, solveMoment(prepared, moments, name)]))];
    }),
  ) as unknown as SolvedMoments;
}

export function solveMoment(prepared: PreparedLine, moments: Moments, name: MomentName): SolvedMoment {
  const idle = solveLine(prepared, moments.idle[name]);
  if (name === "fullIdle") return { solution: idle, idle, takenByOneMore: new Float64Array(prepared.line.drinkers.count) };
  const solution = solveLine(prepared, moments.named[name]);
  return { solution, idle, takenByOneMore: costOfOneMore(prepared, moments.named[name].atWork) };
}

/** One pass over the pipes for each different need among the drinkers that are not at work. */
function costOfOneMore(prepared: PreparedLine, atWork: Uint8Array): Float64Array {
  const { drinkers } = prepared.line;
  const taken = new Float64Array(drinkers.count);
  const byNeed = new Map<number, Float64Array>();
  for (let d = 0; d < drinkers.count; d += 1) {
    if (atWork[d] === 1 || drinkers.need[d] === 0) continue;
    const need = drinkers.need[d];
    const cost = byNeed.get(need) ?? headTakenByOneMore(prepared, need);
    byNeed.set(need, cost);
    taken[d] = cost[drinkers.point[d]];
  }
  return taken;
}
