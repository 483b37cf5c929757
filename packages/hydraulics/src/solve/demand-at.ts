import { type Line, STUCK } from "../model/line.js";
import type { Moment } from "../model/moment.js";
import type { Demand } from "./network.js";
import type { PreparedLine, Zoning } from "./prepare-line.js";
import { fedSources } from "./with-outlets.js";
import { holdingRegulators } from "./write-state.js";

/**
 * What a moment asks of a zoning: the heads of its sources and regulators, and the outlets that are open.
 *
 * @param draw  what holding regulators draw from the points before them, by node [m3/s]
 */
export function demandAt(
  { line }: PreparedLine,
  zoning: Zoning,
  moment: Moment,
  draw: Float64Array | undefined,
): Demand {
  const { topology } = zoning.network;
  const rootHead = new Float64Array(topology.rootCount);
  const holding = holdingRegulators(zoning);
  for (let r = 0; r < topology.rootCount; r += 1) {
    const point = topology.point[r];
    const source = sourceAt(line, point);
    const regulator = holding.find((s) => line.segments.to[s] === point);
    if (source >= 0) rootHead[r] = moment.sourceHead[source];
    else if (regulator !== undefined)
      rootHead[r] = line.points.height[point] + line.segments.setting[regulator];
  }
  return { rootHead, working: openOutlets(line, topology.drinker, moment), draw };
}

function sourceAt({ sources }: Line, point: number): number {
  for (let i = 0; i < sources.length; i += 1) if (sources[i].point === point) return i;
  return -1;
}

/** Places in `drinker` of the outlets that are open: drinkers at work or stuck open, float valves that feed, leaks. */
function openOutlets(line: Line, drinker: Int32Array, moment: Moment): Int32Array {
  const open = openByOutlet(line, moment);
  let openCount = 0;
  for (let d = 0; d < drinker.length; d += 1) openCount += open[drinker[d]];
  const working = new Int32Array(openCount);
  for (let d = 0, w = 0; d < drinker.length; d += 1) if (open[drinker[d]] === 1) working[w++] = d;
  return working;
}

/** 1 for each outlet that is open, in the order of `withOutlets`. */
function openByOutlet(line: Line, moment: Moment): Uint8Array {
  const { count, stuck } = line.drinkers;
  const fed = fedSources(line);
  const more = fed.length + (line.leaks?.length ?? 0);
  // Most lines have drinkers alone, and few solves last longer than it takes to write them out.
  if (more === 0 && stuck === undefined && moment.atWork.length === count) return moment.atWork;
  const open = new Uint8Array(count + more).fill(1);
  open.set(moment.atWork);
  stuck?.forEach((state, d) => {
    if (state !== STUCK.not) open[d] = state === STUCK.open ? 1 : 0;
  });
  fed.forEach((i, k) => {
    open[count + k] = line.sources[i].feed?.isStuckOpen ? 1 : (moment.feeding?.[i] ?? 0);
  });
  return open;
}
