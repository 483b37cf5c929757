import type { Line } from "../model/line.js";
import type { PreparedLine, Zoning } from "./prepare-line.js";
import type { LineSolution } from "./solution.js";
import { fedSources } from "./with-outlets.js";

const NOT_CHECKED = { continuity: { worst: 0, at: -1 }, energy: { worst: 0, at: -1 } } as const;

const NONE = new Float64Array(0);

/** What the loop has left in the buffers of a zoning, in the numbering of the line; nothing of it is the solver's own. */
export function writeState(
  prepared: PreparedLine,
  zoning: Zoning,
  solved: boolean,
  effort: { steps: number; evaluations: number },
): LineSolution {
  const { line, friction } = prepared;
  const { topology } = zoning.network;
  const { work } = zoning;
  const room = makeRoom(line);
  const { flow, sourceFlow } = room;
  for (let e = topology.rootCount; e < topology.segment.length; e += 1) {
    flow[topology.segment[e]] = topology.sign[e] * work.flow[e];
  }
  spreadOutlets(line, zoning, room);
  for (let r = 0; r < line.sources.length; r += 1) sourceFlow[r] = work.flow[r];
  for (const s of holdingRegulators(zoning)) flow[s] = work.flow[topology.point.indexOf(line.segments.to[s])];
  const { drinkerFlow, feedFlow, leakFlow } = room;
  const { head, reached } = headsByPoint(prepared, zoning, room.head);
  // Written out, since objects poured into one take longer than all the columns.
  return {
    outcome: solved ? "solved" : "stalled",
    friction,
    head,
    reached,
    flow,
    drinkerFlow,
    sourceFlow,
    feedFlow,
    leakFlow,
    checks: NOT_CHECKED,
    effort,
  };
}

/** The columns of a state, all in one piece of memory: asking for each by itself takes longer than to fill it. */
function makeRoom(line: Line) {
  const { segments, drinkers, sources, points, leaks } = line;
  const room = new Float64Array(
    segments.count + drinkers.count + points.count + 2 * sources.length + (leaks?.length ?? 0),
  );
  let end = 0;
  const column = (count: number) => {
    end += count;
    return room.subarray(end - count, end);
  };
  return {
    flow: column(segments.count),
    drinkerFlow: column(drinkers.count),
    head: column(points.count),
    sourceFlow: column(sources.length),
    feedFlow: column(sources.length),
    leakFlow: leaks === undefined ? NONE : column(leaks.length),
  };
}

/** Gives the flow of each outlet to what it is: a drinker, a float valve or a leak, in this order (withOutlets). */
function spreadOutlets(line: Line, zoning: Zoning, room: ReturnType<typeof makeRoom>): void {
  const { drinker } = zoning.network.topology;
  const { drinkerFlow } = zoning.work;
  const fed = fedSources(line);
  for (let d = 0; d < drinker.length; d += 1) {
    const outlet = drinker[d];
    const beyond = outlet - line.drinkers.count;
    if (beyond < 0) room.drinkerFlow[outlet] = drinkerFlow[d];
    else if (beyond < fed.length) room.feedFlow[fed[beyond]] = drinkerFlow[d];
    else room.leakFlow[beyond - fed.length] = drinkerFlow[d];
  }
}

/**
 * Heads by point; points that no open pipe joins to a source carry their own height.
 *
 * @param head  filled and given back, one for each point
 */
export function headsByPoint(
  { line }: PreparedLine,
  { network, work }: Zoning,
  head: Float64Array,
): { head: Float64Array; reached: Uint8Array } {
  const { point, nodeCount } = network.topology;
  const reached = new Uint8Array(head.length);
  head.set(line.points.height);
  for (let i = 0; i < nodeCount; i += 1) {
    head[point[i]] = work.head[i];
    reached[point[i]] = 1;
  }
  return { head, reached };
}

/** Regulators that hold in a zoning, by segment. */
export function holdingRegulators({ set }: Zoning): number[] {
  const holding: number[] = [];
  for (const { segment, setting } of set) if (setting === "holds") holding.push(segment);
  return holding;
}
