/**
 * The elimination tree of a symmetric matrix in a given order, and what follows from it. The parent of column i is the row of the first entry below its diagonal in the factor; row k of the
 * factor has entries exactly on the tree's paths from the entries of row k of the matrix up towards k.
 *
 * @source davis-2005-ldl (tree and row patterns), from memory
 */

import type { AdjacencyLists } from "./quotient-graph.js";

/** A parent of -1 marks a root: one for each connected piece of the graph. */
export function buildEliminationTree(graph: AdjacencyLists, order: Int32Array): Int32Array {
  const { size, starts, neighbours } = graph;
  const place = invertOrder(order);
  const parent = new Int32Array(size).fill(-1);
  const ancestor = new Int32Array(size).fill(-1);
  for (let k = 0; k < size; k++) {
    const v = order[k];
    for (let at = starts[v]; at < starts[v + 1]; at++) {
      // Climb from each earlier neighbour to the top of its subtree so far, which k then takes as a child.
      // Every climb leaves short cuts straight to k, so that later climbs are brief.
      let i = place[neighbours[at]];
      while (i >= 0 && i < k) {
        const next = ancestor[i];
        ancestor[i] = k;
        if (next < 0) parent[i] = k;
        i = next;
      }
    }
  }
  return parent;
}

/**
 * The columns of an elimination tree, children before parents and every subtree in one stretch.
 * Renumbering so changes no entry of the factor, but brings what is used together close together in memory.
 */
export function orderChildrenFirst(parent: Int32Array): Int32Array {
  const size = parent.length;
  const firstChild = new Int32Array(size).fill(-1);
  const nextSibling = new Int32Array(size).fill(-1);
  const result = new Int32Array(size);
  const stack = new Int32Array(size);
  for (let i = size - 1; i >= 0; i--) {
    if (parent[i] < 0) continue;
    nextSibling[i] = firstChild[parent[i]];
    firstChild[parent[i]] = i;
  }
  let placed = 0;
  for (let root = 0; root < size; root++) {
    if (parent[root] >= 0) continue;
    let depth = 0;
    stack[0] = root;
    while (depth >= 0) {
      const i = stack[depth];
      const child = firstChild[i];
      if (child >= 0) {
        firstChild[i] = nextSibling[child];
        stack[++depth] = child;
      } else {
        result[placed++] = i;
        depth--;
      }
    }
  }
  return result;
}

/**
 * How many entries each column of the factor has below its diagonal.
 *
 * Row k has an entry in every column on the paths from its earlier neighbours up to k.
 */
export function countColumnEntries(graph: AdjacencyLists, order: Int32Array, parent: Int32Array): Int32Array {
  const { size, starts, neighbours } = graph;
  const place = invertOrder(order);
  const visited = new Int32Array(size).fill(-1);
  const counts = new Int32Array(size);
  for (let k = 0; k < size; k++) {
    visited[k] = k;
    for (let at = starts[order[k]]; at < starts[order[k] + 1]; at++) {
      let i = place[neighbours[at]];
      if (i > k) continue;
      for (; visited[i] !== k; i = parent[i]) {
        visited[i] = k;
        counts[i]++;
      }
    }
  }
  return counts;
}

/** place, with place[order[k]] = k. */
export function invertOrder(order: Int32Array): Int32Array {
  const place = new Int32Array(order.length);
  for (let k = 0; k < order.length; k++) place[order[k]] = k;
  return place;
}
