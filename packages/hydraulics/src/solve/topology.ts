import type { Line } from "../model/line.js";
import { analyseSymmetric, type SymmetricPattern } from "../numerics/symmetric-solve.js";

/**
 * The part of a line that one solve sees, numbered for it: every point joined by open pipe to one of `roots`.
 *
 * Nodes are numbered so that a parent comes before its children (depth first, so that a plain run is contiguous in
 * memory). Edge `i < nodeCount` is the pipe from node `parent[i]` to node `i`; roots have none. Edges from
 * `nodeCount` on are chords: the pipes that close rings or join two roots. A tree has no chord.
 */
export interface Topology {
  readonly nodeCount: number;
  readonly rootCount: number;
  /** Nodes `0 .. rootCount-1` are the roots, in the order asked. */
  readonly point: Int32Array;
  readonly parent: Int32Array;
  readonly chordCount: number;
  readonly chordFrom: Int32Array;
  readonly chordTo: Int32Array;
  /** Segment of each edge (-1 for a root), and +1 where the segment runs the same way as the edge, else -1. */
  readonly segment: Int32Array;
  readonly sign: Int8Array;
  /** Drinkers of these nodes, by node: index in the line, and the node. */
  readonly drinker: Int32Array;
  readonly drinkerNode: Int32Array;
  /** Only with chords: the pattern of the equations for the nodes that are no roots. */
  readonly pattern: SymmetricPattern | undefined;
}

/** For each point, the segments that meet there, in compressed rows. */
export interface Adjacency {
  readonly start: Int32Array;
  readonly segment: Int32Array;
}

export function buildAdjacency(line: Line): Adjacency {
  const { segments, points } = line;
  const start = new Int32Array(points.count + 1);
  for (let s = 0; s < segments.count; s += 1) {
    start[segments.from[s] + 1] += 1;
    start[segments.to[s] + 1] += 1;
  }
  for (let p = 0; p < points.count; p += 1) start[p + 1] += start[p];
  const next = start.slice();
  const segment = new Int32Array(2 * segments.count);
  for (let s = 0; s < segments.count; s += 1) {
    segment[next[segments.from[s]]++] = s;
    segment[next[segments.to[s]]++] = s;
  }
  return { start, segment };
}

/**
 * Numbers what `roots` feed.
 *
 * @param cut  1 for segments that carry nothing here: shut taps, and regulators that are holding (their outlet is a
 *             root of its own)
 */
export function buildTopology(
  line: Line,
  adjacency: Adjacency,
  roots: readonly number[],
  cut: Uint8Array,
): Topology {
  const { points, segments } = line;
  const nodeOf = new Int32Array(points.count).fill(-1);
  const point = new Int32Array(points.count);
  const parent = new Int32Array(points.count).fill(-1);
  const treeSegment = new Int32Array(points.count).fill(-1);
  const { closing: chords, isChord: used } = findChords(line, roots, cut);
  let nodeCount = 0;
  const enter = (p: number, parentNode: number, segment: number): number => {
    nodeOf[p] = nodeCount;
    point[nodeCount] = p;
    parent[nodeCount] = parentNode;
    treeSegment[nodeCount] = segment;
    nodeCount += 1;
    return nodeCount - 1;
  };
  for (const root of roots) if (nodeOf[root] < 0) enter(root, -1, -1);
  const rootCount = nodeCount;

  // Depth first without recursion: a line of 100,000 drinkers is as deep as it is long.
  const cursor = adjacency.start.slice(0, points.count);
  const stack: number[] = [];
  for (let root = 0; root < rootCount; root += 1) {
    stack.push(root);
    while (stack.length > 0) {
      const node = stack[stack.length - 1];
      const p = point[node];
      if (cursor[p] === adjacency.start[p + 1]) {
        stack.pop();
        continue;
      }
      const s = adjacency.segment[cursor[p]++];
      if (used[s] === 1 || cut[s] === 1) continue;
      used[s] = 1;
      const other = segments.from[s] === p ? segments.to[s] : segments.from[s];
      stack.push(enter(other, node, s));
    }
  }
  const reachedChords = chords.filter(
    (s) => nodeOf[segments.from[s]] >= 0 && segments.from[s] !== segments.to[s],
  );
  return assemble(line, { nodeOf, nodeCount, rootCount, point, parent, treeSegment, chords: reachedChords });
}

/**
 * The segments that close rings or join roots: those outside the spanning tree of least resistance (Kruskal, with
 * the roots as one point). Flows on the tree are sums, flows on chords follow from heads; so the pipes in which a
 * small flow costs much head are the ones to leave out of the sums.
 */
function findChords(
  line: Line,
  roots: readonly number[],
  cut: Uint8Array,
): { closing: number[]; isChord: Uint8Array } {
  const { segments, points } = line;
  const leader = Int32Array.from({ length: points.count }, (_, p) => p);
  const find = (p: number): number => {
    let top = p;
    while (leader[top] !== top) top = leader[top] = leader[leader[top]];
    return top;
  };
  for (const root of roots) leader[find(root)] = find(roots[0]);
  const isChord = new Uint8Array(segments.count);
  const join = (order: Iterable<number>): number[] => {
    const closing: number[] = [];
    for (const s of order) {
      if (cut[s] === 1) continue;
      const [a, b] = [find(segments.from[s]), find(segments.to[s])];
      if (a === b) closing.push(s);
      else leader[a] = b;
    }
    return closing;
  };
  const asGiven = join(segments.from.keys());
  if (asGiven.length === 0) return { closing: [], isChord };
  leader.forEach((_, p) => {
    leader[p] = p;
  });
  for (const root of roots) leader[find(root)] = find(roots[0]);
  const resistance = Float64Array.from(segments.length, (length, s) => {
    return (
      (0.02 * length) / segments.bore[s] ** 5 +
      (segments.kInfinity[s] + 1e-3 * segments.k1[s]) / segments.bore[s] ** 4
    );
  });
  const closing = join(
    Int32Array.from(segments.from.keys()).sort((a, b) => resistance[a] - resistance[b] || a - b),
  );
  for (const s of closing) isChord[s] = 1;
  return { closing: closing.sort((a, b) => a - b), isChord };
}

interface Numbering {
  readonly nodeOf: Int32Array;
  readonly nodeCount: number;
  readonly rootCount: number;
  readonly point: Int32Array;
  readonly parent: Int32Array;
  readonly treeSegment: Int32Array;
  readonly chords: readonly number[];
}

function assemble(line: Line, numbering: Numbering): Topology {
  const { nodeOf, nodeCount, rootCount, chords } = numbering;
  const { segments } = line;
  const point = numbering.point.slice(0, nodeCount);
  const parent = numbering.parent.slice(0, nodeCount);
  const edgeCount = nodeCount + chords.length;
  const segment = new Int32Array(edgeCount);
  const sign = new Int8Array(edgeCount);
  for (let i = 0; i < nodeCount; i += 1) {
    const s = numbering.treeSegment[i];
    segment[i] = s;
    sign[i] = s >= 0 && segments.to[s] === point[i] ? 1 : -1;
  }
  const chordFrom = new Int32Array(chords.length);
  const chordTo = new Int32Array(chords.length);
  for (let c = 0; c < chords.length; c += 1) {
    segment[nodeCount + c] = chords[c];
    sign[nodeCount + c] = 1;
    chordFrom[c] = nodeOf[segments.from[chords[c]]];
    chordTo[c] = nodeOf[segments.to[chords[c]]];
  }
  const { drinker, drinkerNode } = sortDrinkers(line, nodeOf, nodeCount);
  const pattern =
    chords.length === 0 ? undefined : patternOf(nodeCount, rootCount, parent, chordFrom, chordTo);
  return {
    nodeCount,
    rootCount,
    point,
    parent,
    chordCount: chords.length,
    chordFrom,
    chordTo,
    segment,
    sign,
    drinker,
    drinkerNode,
    pattern,
  };
}

/** Drinkers in the order of their nodes (a counting sort), so that a sweep over nodes meets them in turn. */
function sortDrinkers(
  line: Line,
  nodeOf: Int32Array,
  nodeCount: number,
): { drinker: Int32Array; drinkerNode: Int32Array } {
  const { drinkers } = line;
  const start = new Int32Array(nodeCount + 1);
  for (let d = 0; d < drinkers.count; d += 1) {
    const node = nodeOf[drinkers.point[d]];
    if (node >= 0) start[node + 1] += 1;
  }
  for (let i = 0; i < nodeCount; i += 1) start[i + 1] += start[i];
  const total = start[nodeCount];
  const drinker = new Int32Array(total);
  const drinkerNode = new Int32Array(total);
  for (let d = 0; d < drinkers.count; d += 1) {
    const node = nodeOf[drinkers.point[d]];
    if (node < 0) continue;
    drinker[start[node]] = d;
    drinkerNode[start[node]++] = node;
  }
  return { drinker, drinkerNode };
}

/** Unknown heads are those of nodes `rootCount ..`; one off-diagonal entry for each edge between two of them. */
function patternOf(
  nodeCount: number,
  rootCount: number,
  parent: Int32Array,
  chordFrom: Int32Array,
  chordTo: Int32Array,
): SymmetricPattern {
  const rows: number[] = [];
  const columns: number[] = [];
  const add = (a: number, b: number) => {
    if (a < rootCount || b < rootCount || a === b) return;
    rows.push(a - rootCount);
    columns.push(b - rootCount);
  };
  for (let i = rootCount; i < nodeCount; i += 1) add(i, parent[i]);
  for (let c = 0; c < chordFrom.length; c += 1) add(chordFrom[c], chordTo[c]);
  return analyseSymmetric(nodeCount - rootCount, Int32Array.from(rows), Int32Array.from(columns));
}
