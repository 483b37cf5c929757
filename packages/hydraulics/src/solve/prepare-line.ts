import { type Line, SEGMENT_KIND } from "../model/line.js";
import { buildLossTable, type LossTable } from "./loss-table.js";
import { buildNetwork, type Network } from "./network.js";
import type { FrictionLaw } from "./solution.js";
import { type Adjacency, buildAdjacency, buildTopology } from "./topology.js";
import { withOutlets } from "./with-outlets.js";
import { createWorkspace, type Workspace } from "./workspace.js";

/** What a device does besides passing water: hold the head at its outlet (regulators only), or let nothing through. */
export type DeviceSetting = "holds" | "shut";

/** A device that is set, by its segment. */
export interface SetDevice {
  readonly segment: number;
  readonly setting: DeviceSetting;
}

/**
 * A line with some of its devices set: the outlet of a regulator that holds is a root of its own, and a device found
 * shut is cut.
 */
export interface Zoning {
  /** Devices that do not simply pass water, by segment, ascending. */
  readonly set: readonly SetDevice[];
  readonly network: Network;
  readonly work: Workspace;
}

/**
 * A line made ready to be solved for many moments with one friction law. Holds the solver's buffers, so one prepared
 * line serves one solve at a time.
 */
export interface PreparedLine {
  readonly line: Line;
  readonly friction: FrictionLaw;
  /** The line with its float valves and leaks as outlets: what is solved. */
  readonly whole: Line;
  readonly adjacency: Adjacency;
  /** For checking; made when first asked for. */
  losses: LossTable | undefined;
  /** Segments that are regulators or one-way valves, and not shut off. */
  readonly devices: readonly number[];
  /** Zonings met so far, by what is set. */
  readonly zonings: Map<string, Zoning>;
  current: Zoning;
}

/**
 * Numbers the line and works out every law; the costly part, done once per topology.
 *
 * @example prepareLine(line, "hazenWilliams").friction   // "hazenWilliams"
 */
export function prepareLine(line: Line, friction: FrictionLaw): PreparedLine {
  const adjacency = buildAdjacency(line);
  const devices: number[] = [];
  for (let s = 0; s < line.segments.count; s += 1) {
    if (line.segments.kind[s] !== SEGMENT_KIND.pipe && line.segments.shut[s] === 0) devices.push(s);
  }
  const whole = withOutlets(line);
  const current = buildZoning(whole, friction, adjacency, []);
  return {
    line,
    friction,
    whole,
    adjacency,
    losses: undefined,
    devices,
    zonings: new Map([["", current]]),
    current,
  };
}

/** Its table of losses for checking, made when first asked for. */
export function lossesOf(prepared: PreparedLine): LossTable {
  prepared.losses ??= buildLossTable(prepared.line, prepared.friction);
  return prepared.losses;
}

/** A line made ready for both friction laws; it is numbered once. */
export function prepareBoth(line: Line): Readonly<Record<FrictionLaw, PreparedLine>> {
  const hazenWilliams = prepareLine(line, "hazenWilliams");
  const { whole, current } = hazenWilliams;
  const network = buildNetwork(whole, current.network.topology, "darcyWeisbach");
  const other: Zoning = { set: [], network, work: createWorkspace(network) };
  const darcyWeisbach: PreparedLine = {
    ...hazenWilliams,
    friction: "darcyWeisbach",
    zonings: new Map([["", other]]),
    current: other,
  };
  return { hazenWilliams, darcyWeisbach };
}

/**
 * Forgets what was solved with a prepared line: the next answer is that of a fresh one, to the last digit.
 *
 * @param prepared  from `prepareLine` or `prepareBoth`
 */
export function startAfresh(prepared: PreparedLine): PreparedLine {
  for (const { work } of prepared.zonings.values()) work.warm = false;
  prepared.current = prepared.zonings.get("") ?? prepared.current;
  return prepared;
}

/**
 * The same line with other figures (heights, bores, laws) but the same points, pipes and taps: keeps the numbering
 * and starts from the last solution.
 *
 * @param into  network of such a line that is wanted no more: where many are solved one after the other
 */
export function prepareAlike(prepared: PreparedLine, line: Line, into?: Network): PreparedLine {
  const { friction } = prepared;
  const whole = withOutlets(line);
  const network = buildNetwork(whole, prepared.current.network.topology, friction, into);
  const current: Zoning = { set: prepared.current.set, network, work: prepared.current.work };
  return {
    ...prepared,
    line,
    whole,
    losses: undefined,
    zonings: new Map([[keyOf(current.set), current]]),
    current,
  };
}

/** Makes the zoning with these devices set the current one, building it if it is new. */
export function useZoning(prepared: PreparedLine, set: readonly SetDevice[]): Zoning {
  const key = keyOf(set);
  const known = prepared.zonings.get(key);
  const zoning = known ?? buildZoning(prepared.whole, prepared.friction, prepared.adjacency, set);
  prepared.zonings.set(key, zoning);
  prepared.current = zoning;
  return zoning;
}

const keyOf = (set: readonly SetDevice[]) =>
  set.map(({ segment, setting }) => `${setting} ${segment}`).join(" ");

function buildZoning(
  line: Line,
  friction: FrictionLaw,
  adjacency: Adjacency,
  set: readonly SetDevice[],
): Zoning {
  const { segments } = line;
  const cut = segments.shut.slice();
  for (const { segment } of set) cut[segment] = 1;
  const outlets = set.filter(({ setting }) => setting === "holds").map(({ segment }) => segments.to[segment]);
  const roots = [...line.sources.map((source) => source.point), ...outlets];
  const network = buildNetwork(line, buildTopology(line, adjacency, roots, cut), friction);
  return { set, network, work: createWorkspace(network) };
}
