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
  /** Least head at its point [m above datum]. */
  readonly floor: number;
  /** Highest its valve may hang [m above datum], and the head it needs there [m]. */
  readonly height: number;
  readonly head: number;
}

/**
 * A space seen as trees of runs, each hanging on one source, with what every plan of it that works must at least
 * serve: the fewest drinkers that can be at work, each at its need.
 */
export interface DemandTree {
  readonly line: Line;
  readonly topology: Topology;
  /** Parents before children. */
  readonly chains: readonly Chain[];
  /** By node, the chains that begin there. */
  readonly below: readonly (readonly number[])[];
  /** By node, drinkers certainly at work, and others, which one more bird may come to. */
  readonly atWork: readonly (readonly Ask[])[];
  readonly idle: readonly (readonly Ask[])[];
  /** Least flow one more bird draws [m3/s]. */
  readonly oneMore: number;
  /** By source and option of its stand: whether levels alone allow it, and its head at the lowest level. */
  readonly stands: readonly (readonly StandLevel[])[];
  /** Whether some drinker is joined to no source by any plan of the space. */
  readonly isCutOff: boolean;
}

export interface StandLevel {
  readonly allowed: boolean;
  /** [m above datum] */
  readonly head: number;
}

/** Slack for what the solver rounds [m]: a bound must never cut off a plan that the judge would pass. */
export const SLACK = 5e-6;

/**
 * Builds it for one scene; undefined where some water has two ways to go (rings, sources joined), for which the
 * bounds below do not hold.
 *
 * Fewest at work: by the crowd's own rule they are fewest where every drinker gives most, with no friction anywhere
 * and the highest stands. A stand changes how the pipe from its source hangs, so heights are taken at their least for
 * heads and at their greatest for flows.
 */
export function buildDemandTree(
  lines: CureLines,
  requirement: Requirement,
  scene: Scene,
): DemandTree | undefined {
  const { sources } = lines.space;
  const standing = sources.map(({ options }, s) =>
    options.map((_, k) => {
      const line = lines.withStands(sources.map((__, other) => (other === s ? k : 0)));
      return line === undefined ? undefined : hangInScene(requirement, line, scene);
    }),
  );
  const line = lineInScene(requirement, withoutFriction(highest(lines)), scene);
  const roots = line.sources.map(({ point }) => point);
  const topology = buildTopology(line, buildAdjacency(line), roots, line.segments.shut);
  if (topology.chordCount > 0 || topology.rootCount < line.sources.length) return undefined;
  const drawn = standing.flat().filter((one) => one !== undefined);
  const heights = rangeOfHeights(drawn);
  const { atWork, idle, oneMore } = gatherAsks(line, topology, heights, requirement.margin);
  const chains = gatherChains(line, topology);
  const below: number[][] = Array.from({ length: topology.nodeCount }, () => []);
  for (const [c, { above }] of chains.entries()) below[above].push(c);
  return {
    line,
    topology,
    chains,
    below,
    atWork,
    idle,
    oneMore,
    stands: standing.map((byOption, s) =>
      byOption.map((one) => standLevel(one, topology, s, requirement.margin)),
    ),
    isCutOff: new Set(topology.drinker).size < line.drinkers.count,
  };
}

const FRICTIONLESS_BORE = 1;

function withoutFriction(line: Line): Line {
  const { segments } = line;
  const none = new Float64Array(segments.count);
  return {
    ...line,
    segments: { ...segments, bore: none.slice().fill(FRICTIONLESS_BORE), k1: none, kInfinity: none },
  };
}

/** The line with each source as high as it may stand. */
function highest(lines: CureLines): Line {
  const { sources } = lines.space;
  const none = sources.map(() => 0);
  const tops = sources.map(({ options }, s) => {
    const order = options.map((_, k) => k).sort((a, b) => options[b].height - options[a].height);
    return (
      order.find((k) => lines.withStands(none.map((__, other) => (other === s ? k : 0))) !== undefined) ?? 0
    );
  });
  return lines.withStands(tops) ?? lines.present;
}

interface HeightRange {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** Least and greatest height of each drinker's valve over some lines [m above datum]. */
function rangeOfHeights(lines: readonly Line[]): HeightRange {
  const low = lines[0].drinkers.height.slice();
  const high = low.slice();
  for (const { drinkers } of lines) {
    drinkers.height.forEach((height, d) => {
      low[d] = Math.min(low[d], height);
      high[d] = Math.max(high[d], height);
    });
  }
  return { low, high };
}

function gatherAsks(line: Line, topology: Topology, { low, high }: HeightRange, margin: number) {
  const { drinkers } = line;
  const working = buildMoments(line).named.lowestBusiest.atWork;
  const atWork: Ask[][] = Array.from({ length: topology.nodeCount }, () => []);
  const idle: Ask[][] = Array.from({ length: topology.nodeCount }, () => []);
  let oneMore = Number.POSITIVE_INFINITY;
  topology.drinker.forEach((d, i) => {
    const head = headOfDrinker(drinkers, d, drinkers.need[d]) + margin;
    const ask: Ask = { drinker: d, floor: low[d] + head, height: high[d], head };
    (working[d] === 1 ? atWork : idle)[topology.drinkerNode[i]].push(ask);
    if (working[d] === 0) oneMore = Math.min(oneMore, drinkers.need[d]);
  });
  return { atWork, idle, oneMore: Number.isFinite(oneMore) ? oneMore : 0 };
}

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
function standLevel(line: Line | undefined, topology: Topology, source: number, margin: number): StandLevel {
  if (line === undefined) return { allowed: false, head: 0 };
  const [full, low] = (["fullIdle", "lowestBusiest"] as const).map((name) => sourceHeads(line, name)[source]);
  const { drinkers } = line;
  const { crest, hasDevice, root } = waysOf(line, topology);
  let allowed = true;
  topology.drinker.forEach((d, i) => {
    const node = topology.drinkerNode[i];
    if (root[node] !== source) return;
    const { holdsUpTo, sealsFrom } = drinkers.groups[drinkers.group[d]];
    const height = drinkers.height[d];
    const drips = hasDevice[node] === 0 && full - height > holdsUpTo - margin + SLACK;
    const gapes = sealsFrom > 0 && low - height < sealsFrom + margin - SLACK;
    if (drips || gapes || crest[node] > low + SLACK) allowed = false;
  });
  return { allowed, head: low };
}

/** By node: the highest place on its way, whether a device stands there, and the source. */
function waysOf(line: Line, topology: Topology) {
  const { nodeCount, rootCount, point, parent, segment } = topology;
  const crest = Float64Array.from(point.subarray(0, nodeCount), (p) => line.points.height[p]);
  const hasDevice = new Uint8Array(nodeCount);
  const root = Int32Array.from({ length: nodeCount }, (_, i) => (i < rootCount ? i : -1));
  for (let i = rootCount; i < nodeCount; i += 1) {
    crest[i] = Math.max(crest[i], crest[parent[i]]);
    const isDevice = line.segments.kind[segment[i]] !== SEGMENT_KIND.pipe;
    hasDevice[i] = hasDevice[parent[i]] === 1 || isDevice ? 1 : 0;
    root[i] = root[parent[i]];
  }
  return { crest, hasDevice, root };
}
