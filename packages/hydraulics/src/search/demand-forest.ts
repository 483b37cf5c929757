import { headOfDrinker } from "../model/drinker-flow.js";
import { type Line, SEGMENT_KIND } from "../model/line.js";
import { buildMoments, sourceHeads } from "../model/moment.js";
import { buildAdjacency, buildTopology, type Topology } from "../solve/topology.js";
import type { CureLines } from "./cure-lines.js";
import { hangInScene, lineInScene, type Requirement, type Scene } from "./requirement.js";

/** The pieces of one run that water passes one after another, from the side of the source. */
export interface Chain {
  readonly run: number;
  /** Nodes at the far end of each piece, the nearest to the source first. */
  readonly nodes: Int32Array;
  /** Node the first piece hangs on. */
  readonly above: number;
}

/** What one drinker asks of the line at least, in any plan of the space that works. */
export interface Ask {
  readonly drinker: number;
  /** Height of its valve [m above datum], and least head there [m]. */
  readonly height: number;
  readonly head: number;
}

/** What the drinkers ask: the fewest that can be at work, each at its need. */
export interface Asks {
  /** By node, drinkers certainly at work, and others, which one more bird may come to. */
  readonly atWork: readonly (readonly Ask[])[];
  readonly idle: readonly (readonly Ask[])[];
  /** Least flow one more bird draws [m3/s]. */
  readonly oneMore: number;
  /** By node, the surface that a regulator right before it holds [m above datum]; infinite where there is none. */
  readonly held: readonly number[];
  /** The option of the source's stand: all that hangs on it asks the same wherever this is the same. */
  readonly stand: number;
  /** Where the water of the source stands at its lowest [m above datum]. */
  readonly most: number;
}

/** One source at one height of its stand. */
export interface StandDemand {
  /** Whether levels alone allow it. */
  readonly allowed: boolean;
  /** Height of its pressure surface at the lowest level [m above datum]. */
  readonly head: number;
  readonly asks: Asks;
}

/** A space seen as trees of runs, each hanging on one source. */
export interface DemandForest {
  readonly line: Line;
  readonly topology: Topology;
  /** Parents before children. */
  readonly chains: readonly Chain[];
  /** By node, the chains that begin there. */
  readonly below: readonly (readonly number[])[];
  /** Whether some drinker is joined to no source by any plan of the space. */
  readonly isCutOff: boolean;
  /** What is asked of a source with an option of its stand, and whether that may be; each found when first asked for. */
  standAt(source: number, option: number): StandDemand;
}

/** Slack for what the solver rounds [m]: a bound must never cut off a plan that the judge would pass. */
export const SLACK = 5e-6;

/**
 * Builds it for one scene; undefined where some water has two ways to go (rings, sources joined), for which the
 * bounds below do not hold.
 */
export function buildDemandForest(
  lines: CureLines,
  requirement: Requirement,
  scene: Scene,
): DemandForest | undefined {
  const line = lines.present;
  const roots = line.sources.map(({ point }) => point);
  const topology = buildTopology(line, buildAdjacency(line), roots, line.segments.shut);
  if (topology.chordCount > 0 || topology.rootCount < line.sources.length) return undefined;
  const chains = gatherChains(line, topology);
  const below: number[][] = Array.from({ length: topology.nodeCount }, () => []);
  for (const [c, { above }] of chains.entries()) below[above].push(c);
  const isCutOff = topology.drinker.length < line.drinkers.count;
  const trees = { line, topology, chains, below, isCutOff };
  return { ...trees, standAt: demandByStand(lines, requirement, scene, topology) };
}

const NO_ASKS: Asks = { atWork: [], idle: [], oneMore: 0, held: [], stand: 0, most: 0 };

/**
 * Fewest at work: by the crowd's own rule they are fewest where every drinker gives most, so with no friction anywhere
 * and the other sources as high as they may stand.
 */
function demandByStand(
  lines: CureLines,
  requirement: Requirement,
  scene: Scene,
  topology: Topology,
): DemandForest["standAt"] {
  const tops = highestStands(lines);
  const known = new Map<string, StandDemand>();
  const findDemand = (source: number, option: number): StandDemand => {
    const withOthers = (others: readonly number[]) =>
      lines.withStands(others.map((other, s) => (s === source ? option : other)));
    const [alone, best] = [withOthers(tops.map(() => 0)), withOthers(tops)];
    if (alone === undefined || best === undefined) return { allowed: false, head: 0, asks: NO_ASKS };
    const hung = hangInScene(requirement, alone, scene);
    const level = standLevel(hung, topology, source, requirement.margin);
    if (!level.allowed) return { ...level, asks: NO_ASKS };
    const gathered = gatherAsks(
      lineInScene(requirement, withoutFriction(best), scene),
      topology,
      requirement.margin,
    );
    return { ...level, asks: { ...gathered, held: heldAt(hung, topology), stand: option, most: level.head } };
  };
  return (source, option) => {
    const key = `${source} ${option}`;
    const demand = known.get(key) ?? findDemand(source, option);
    known.set(key, demand);
    return demand;
  };
}

const FRICTIONLESS_BORE = 1;

/** The line as if nothing were lost on the way. */
export function withoutFriction(line: Line): Line {
  const { segments } = line;
  const none = new Float64Array(segments.count);
  return {
    ...line,
    segments: { ...segments, bore: none.slice().fill(FRICTIONLESS_BORE), k1: none, kInfinity: none },
  };
}

/** Of each source the option by which it stands highest. */
export function highestStands(lines: CureLines): number[] {
  const { sources } = lines.space;
  return sources.map(({ options }, s) => {
    const order = options.map((_, k) => k).sort((a, b) => options[b].height - options[a].height);
    const stands = (k: number) => lines.withStands(sources.map((_, other) => (other === s ? k : 0)));
    return order.find((k) => stands(k) !== undefined) ?? 0;
  });
}

function gatherAsks(line: Line, topology: Topology, margin: number): Omit<Asks, "stand" | "held" | "most"> {
  const { drinkers } = line;
  const working = buildMoments(line).named.lowestBusiest.atWork;
  const atWork: Ask[][] = Array.from({ length: topology.nodeCount }, () => []);
  const idle: Ask[][] = Array.from({ length: topology.nodeCount }, () => []);
  let oneMore = Number.POSITIVE_INFINITY;
  topology.drinker.forEach((d, i) => {
    const head = headOfDrinker(drinkers, d, drinkers.need[d]) + margin;
    const ask: Ask = { drinker: d, height: drinkers.height[d], head };
    (working[d] === 1 ? atWork : idle)[topology.drinkerNode[i]].push(ask);
    if (working[d] === 0) oneMore = Math.min(oneMore, drinkers.need[d]);
  });
  return { atWork, idle, oneMore: Number.isFinite(oneMore) ? oneMore : 0 };
}

/** Where a regulator sits at a source, its height goes with the stand. */
const heldAt = ({ segments, points }: Line, { nodeCount, segment, point }: Topology): number[] =>
  Array.from({ length: nodeCount }, (_, i) => {
    const s = segment[i];
    const isRegulator = s >= 0 && segments.kind[s] === SEGMENT_KIND.regulator;
    return isRegulator ? points.height[point[i]] + segments.setting[s] : Number.POSITIVE_INFINITY;
  });

function gatherChains(line: Line, topology: Topology): Chain[] {
  const { parent, segment, rootCount, nodeCount } = topology;
  const chains: { run: number; nodes: number[]; above: number }[] = [];
  const chainOf = new Int32Array(nodeCount).fill(-1);
  for (let i = rootCount; i < nodeCount; i += 1) {
    const run = line.segments.run[segment[i]];
    const before = chainOf[parent[i]];
    const goesOn = before >= 0 && chains[before].run === run && chains[before].nodes.at(-1) === parent[i];
    chainOf[i] = goesOn ? before : chains.push({ run, nodes: [], above: parent[i] }) - 1;
    chains[chainOf[i]].nodes.push(i);
  }
  return chains.map(({ run, nodes, above }) => ({ run, above, nodes: Int32Array.from(nodes) }));
}

/** What levels alone say of a source at one height: humps under the water, seals pressed and not forced. */
function standLevel(
  line: Line,
  topology: Topology,
  source: number,
  margin: number,
): Pick<StandDemand, "allowed" | "head"> {
  const heads = (["fullIdle", "lowestBusiest"] as const).map((name) => sourceHeads(line, name));
  const [full, low] = heads.map((head) => idleHeads(line, topology, head));
  const { drinkers } = line;
  const { crest, root } = waysOf(line, topology, low);
  let allowed = true;
  topology.drinker.forEach((d, i) => {
    const node = topology.drinkerNode[i];
    if (root[node] !== source) return;
    const { holdsUpTo, sealsFrom } = drinkers.groups[drinkers.group[d]];
    const height = drinkers.height[d];
    const drips = full[node] - height > holdsUpTo - margin + SLACK;
    const gapes = sealsFrom > 0 && low[node] - height < sealsFrom + margin - SLACK;
    if (drips || gapes || crest[node] > SLACK) allowed = false;
  });
  return { allowed, head: heads[1][source] };
}

/** Heads by node with nobody drinking [m above datum]: an open valve takes what opens it, a regulator all above its setting. */
function idleHeads(line: Line, topology: Topology, sourceHead: Float64Array): Float64Array {
  const { nodeCount, rootCount, point, parent, segment } = topology;
  const { kind, setting } = line.segments;
  const head = new Float64Array(nodeCount);
  for (let i = 0; i < nodeCount; i += 1) {
    if (i < rootCount) {
      head[i] = sourceHead[i];
      continue;
    }
    const [above, s] = [head[parent[i]], segment[i]];
    if (kind[s] === SEGMENT_KIND.oneWay) head[i] = above - setting[s];
    else if (kind[s] === SEGMENT_KIND.regulator)
      head[i] = Math.min(above, line.points.height[point[i]] + setting[s]);
    else head[i] = above;
  }
  return head;
}

/** By node: how far the pipe on its way stands above the water at most [m], and its source. */
function waysOf(line: Line, topology: Topology, low: Float64Array) {
  const { nodeCount, rootCount, point, parent } = topology;
  const crest = Float64Array.from({ length: nodeCount }, (_, i) => line.points.height[point[i]] - low[i]);
  const root = Int32Array.from({ length: nodeCount }, (_, i) => i);
  for (let i = rootCount; i < nodeCount; i += 1) {
    crest[i] = Math.max(crest[i], crest[parent[i]]);
    root[i] = root[parent[i]];
  }
  return { crest, root };
}
