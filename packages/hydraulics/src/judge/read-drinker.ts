import { flowOfDrinker } from "../model/drinker-flow.js";
import type { Line } from "../model/line.js";
import type { MomentName, Moments } from "../model/moment.js";
import type { DrinkerReading } from "./check-result.js";
import type { OneMore, SolvedMoment } from "./solve-moments.js";

/** Head and flow of one drinker at one moment, while worked; with nobody drinking, as it stands. */
export function readDrinker(
  line: Line,
  solved: SolvedMoment,
  moments: Moments,
  name: MomentName,
  d: number,
): DrinkerReading {
  const { drinkers } = line;
  const point = drinkers.point[d];
  const staticHead = solved.idle.head[point] - drinkers.height[d];
  const { head, drinkerFlow } = solved.solution;
  const flowingHead = head[point] - drinkers.height[d];
  if (name === "fullIdle") return { staticHead, flowingHead, flow: 0 };
  if (moments.named[name].atWork[d] === 1) return { staticHead, flowingHead, flow: drinkerFlow[d] };
  return { staticHead, ...workedBesides(line, d, flowingHead, solved.oneMore) };
}

/**
 * The same for a line filled from empty: air left in it takes its height from the head, and past a hump that stands
 * above the water nothing comes.
 *
 * @param filled.airHead  height of the columns of air on the way [m]
 * @param filled.above    how far the highest hump on the way stands above the water at this level [m]
 */
export function readAsFilled(
  line: Line,
  d: number,
  reading: DrinkerReading,
  { airHead, above }: { readonly airHead: number; readonly above: number },
): DrinkerReading {
  const { drinkers } = line;
  if (above > 0 && reading.staticHead > 0) return { ...reading, flowingHead: 0, flow: 0 };
  if (airHead === 0) return reading;
  const flowingHead = reading.flowingHead - airHead;
  const flow = reading.flow === 0 ? 0 : flowOfDrinker(drinkers, d, flowingHead);
  return { ...reading, flowingHead, flow };
}

/**
 * Flow of a drinker worked besides those that are at work already, and the head then left at it. What it takes from
 * the line is known at its need and at the most it could draw; between it is put on straight lines, which on a convex
 * loss never lie below it. The flow is where law and line agree.
 */
function workedBesides(
  line: Line,
  d: number,
  head: number,
  oneMore: OneMore,
): { flowingHead: number; flow: number } {
  const { drinkers } = line;
  const need = drinkers.need[d];
  const [atNeed, atMost, greatest] = [oneMore.atNeed[d], oneMore.atMost[d], oneMore.most[d]];
  const flowAt = (h: number) => flowOfDrinker(drinkers, d, h);
  const takenAt = (q: number) => {
    if (q <= need || greatest <= need) return need === 0 ? 0 : (atNeed * q) / need;
    return atNeed + ((atMost - atNeed) * (q - need)) / (greatest - need);
  };
  const most = flowAt(head);
  if (most === 0 || atMost === 0) return { flowingHead: head, flow: most };
  const flow = meet((q) => flowAt(head - takenAt(q)), most);
  return { flowingHead: head - takenAt(flow), flow };
}

/** Flow in [0, most] that equals what a falling function of it gives: regula falsi (Illinois), a little low if cut short. */
function meet(given: (q: number) => number, most: number): number {
  let [low, high] = [0, most];
  let [overLow, overHigh] = [given(0), given(most) - most];
  for (let step = 0; step < 60 && high - low > 1e-9 * most; step += 1) {
    const middle = Math.min(high, Math.max(low, low + ((high - low) * overLow) / (overLow - overHigh)));
    const over = given(middle) - middle;
    if (Math.abs(over) <= 1e-9 * most) return middle;
    if (over > 0) {
      [low, overLow] = [middle, over];
      overHigh /= 2;
    } else {
      [high, overHigh] = [middle, over];
      overLow /= 2;
    }
  }
  return low;
}
