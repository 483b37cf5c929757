import type { Line } from "../../model/line.js";
import { DISCHARGE_COEFFICIENT } from "../../physics/orifice.js";
import { VERDICTS } from "../check-result.js";
import { type WeighedLine, weighLine } from "../weigh-line.js";

/** Steps in which holes are bored [m]. */
const STEP = 0.0005;

/** The hole of a disc that bounds what a run can pour out, and the line judged with it. */
export interface Limiter {
  readonly run: number;
  readonly hole: number;
  readonly judged: WeighedLine;
}

/**
 * The smallest hole, in half millimetres, in a disc at the start of a run with which no drinker fares worse than
 * without it, and no header tank falls behind: with everything at its busiest and the water at its lowest as well.
 *
 *   h = (Q / (C_d a))² / 2g,   so in velocity heads of the bore K = (A / (C_d a))²                    (1)
 *
 * @returns undefined where every hole smaller than the bore does harm
 * @source unwin-1911, article Hydraulics, seen
 */
export function findLimiter(judged: WeighedLine, run: number): Limiter | undefined {
  const { line } = judged;
  const bore = line.runs[run].bore;
  const most = Math.ceil(bore / STEP) - 1;
  const at = (steps: number): Limiter => {
    const hole = steps * STEP;
    return { run, hole, judged: weighLine(withDisc(line, run, hole)) };
  };
  let large = most < 1 ? undefined : at(most);
  if (large === undefined || isWorse(judged, large.judged)) return undefined;
  let [low, high] = [0, most];
  // A smaller hole never serves better, so halving finds the smallest that serves.
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const tried = at(middle);
    if (isWorse(judged, tried.judged)) low = middle;
    else {
      high = middle;
      large = tried;
    }
  }
  return large;
}

/** The line with a disc in the first piece of a run. */
export function withDisc(line: Line, run: number, hole: number): Line {
  const { firstSegment } = line.runs[run];
  const bore = line.segments.bore[firstSegment];
  const share = (bore * bore) / (DISCHARGE_COEFFICIENT.sharp * hole * hole);
  const kInfinity = line.segments.kInfinity.slice();
  kInfinity[firstSegment] += share * share;
  return { ...line, segments: { ...line.segments, kInfinity } };
}

function isWorse(before: WeighedLine, after: WeighedLine): boolean {
  const rank = (one: WeighedLine, d: number) => VERDICTS.indexOf(one.drinkers[d].verdict);
  return (
    before.drinkers.some((_, d) => rank(after, d) > rank(before, d)) ||
    before.line.sources.some((_, i) => keepsUp(before, i) && !keepsUp(after, i))
  );
}

/** Whether the float valve of a header tank lets in what its drinkers take at the busiest. */
function keepsUp({ solved }: WeighedLine, source: number): boolean {
  const { feedFlow, sourceFlow } = solved.darcyWeisbach.lowestBusiest.solution;
  return feedFlow[source] >= sourceFlow[source];
}
