/**
 * In which order to eliminate the unknowns of a sparse symmetric matrix so that its factor stays sparse.
 *
 * Two stages. Ends of branches are peeled first: a vertex with one neighbour left costs no fill, and a tree
 * peels away whole. What remains, the core (every vertex on a loop or between loops), goes to minimum degree.
 */

import { orderByMinimumDegree } from "./minimum-degree.js";
import type { AdjacencyLists } from "./quotient-graph.js";

/**
 * A fill-reducing elimination order of a symmetric graph.
 *
 * @param graph  neighbours of each vertex, both directions, no repeats, no vertex its own neighbour
 * @returns order, in which order[k] is the vertex eliminated k-th; a permutation of 0 .. size - 1.
 *          A forest is ordered with no fill at all
 * @source george-liu-1989 (minimum degree, quotient graph), from memory
 * @source amestoy-davis-duff-1996 (approximate external degree), from memory
 */
export function orderElimination(graph: AdjacencyLists): Int32Array {
  const order = new Int32Array(graph.size);
  const isPeeled = new Uint8Array(graph.size);
  const peeled = peelBranches(graph, order, isPeeled);
  if (peeled === graph.size) return order;
  const core = extractCore(graph, isPeeled, graph.size - peeled);
  const coreOrder = orderByMinimumDegree(core.graph);
  for (let k = 0; k < coreOrder.length; k++) order[peeled + k] = core.vertex[coreOrder[k]];
  return order;
}

/** Writes the peeled vertices to the head of `order`, in the order of peeling; returns how many there are. */
function peelBranches(graph: AdjacencyLists, order: Int32Array, isPeeled: Uint8Array): number {
  const { size, starts, neighbours } = graph;
  const left = new Int32Array(size);
  let found = 0;

  // Ends to begin with. `order` is its own queue: read at `done`, written at `found`.
  for (let v = 0; v < size; v++) {
    left[v] = starts[v + 1] - starts[v];
    if (left[v] <= 1) order[found++] = v;
  }

  // Each end taken away may leave its only neighbour an end. The last of a tree has no neighbour left.
  for (let done = 0; done < found; done++) {
    const v = order[done];
    isPeeled[v] = 1;
    for (let at = starts[v]; at < starts[v + 1]; at++) {
      const other = neighbours[at];
      if (isPeeled[other] === 0 && --left[other] === 1) order[found++] = other;
    }
  }
  return found;
}

/** The graph of the vertices not peeled, numbered afresh so that minimum degree works on dense arrays. */
function extractCore(graph: AdjacencyLists, isPeeled: Uint8Array, size: number) {
  const vertex = new Int32Array(size);
  const place = new Int32Array(graph.size).fill(-1);
  let count = 0;
  let entries = 0;
  for (let v = 0; v < graph.size; v++) {
    if (isPeeled[v] === 1) continue;
    entries += graph.starts[v + 1] - graph.starts[v];
    place[v] = count;
    vertex[count++] = v;
  }

  const starts = new Int32Array(size + 1);
  const neighbours = new Int32Array(entries);
  let free = 0;
  for (let k = 0; k < size; k++) {
    for (let at = graph.starts[vertex[k]]; at < graph.starts[vertex[k] + 1]; at++) {
      const other = place[graph.neighbours[at]];
      if (other >= 0) neighbours[free++] = other;
    }
    starts[k + 1] = free;
  }
  return { vertex, graph: { size, starts, neighbours: neighbours.subarray(0, free) } };
}
