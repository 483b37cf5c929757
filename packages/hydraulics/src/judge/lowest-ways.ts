import type { Line } from "../model/line.js";
import { createHeap } from "../numerics/heap.js";
import { buildAdjacency } from "../solve/topology.js";

/**
 * The ways on which water first reaches each point when the line is filled: a tree, parents before children. The first
 * `rootCount` nodes are the sources.
 */
export interface Ways {
  readonly nodeCount: number;
  readonly rootCount: number;
  readonly point: Int32Array;
  readonly parent: Int32Array;
  /** The segment from the parent; -1 for a source. */
  readonly segment: Int32Array;
}

interface Reach {
  readonly point: number;
  readonly parent: number;
  readonly segment: number;
  /** Highest place of the way so far [m above datum], and its length [m]. */
  readonly crest: number;
  readonly distance: number;
}

/**
 * Of all ways from a source to a point, the one whose highest place is lowest, and of those the shortest: water takes
 * the clear side of a ring first. A shortest-path search in which the longest step counts (Dijkstra 1959).
 */
export function findLowestWays(line: Line): Ways {
  const { points, segments, sources } = line;
  const { start, segment: meeting } = buildAdjacency(line);
  const nodeOf = new Int32Array(points.count).fill(-1);
  const found: Reach[] = [];
  const queue = createHeap<Reach>(
    (a, b) => a.crest < b.crest || (a.crest === b.crest && a.distance < b.distance),
  );
  const settle = (reach: Reach) => {
    const node = found.push(reach) - 1;
    nodeOf[reach.point] = node;
    for (let k = start[reach.point]; k < start[reach.point + 1]; k += 1) {
      const s = meeting[k];
      const other = segments.from[s] === reach.point ? segments.to[s] : segments.from[s];
      if (segments.shut[s] === 1 || nodeOf[other] >= 0) continue;
      const crest = Math.max(reach.crest, points.height[other]);
      queue.push({
        point: other,
        parent: node,
        segment: s,
        crest,
        distance: reach.distance + segments.length[s],
      });
    }
  };
  for (const { point } of sources) {
    settle({ point, parent: -1, segment: -1, crest: points.height[point], distance: 0 });
  }
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (nodeOf[next.point] < 0) settle(next);
  }
  return {
    nodeCount: found.length,
    rootCount: sources.length,
    point: Int32Array.from(found, (reach) => reach.point),
    parent: Int32Array.from(found, (reach) => reach.parent),
    segment: Int32Array.from(found, (reach) => reach.segment),
  };
}
