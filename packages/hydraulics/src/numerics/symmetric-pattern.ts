/**
 * What of a sparse symmetric system depends only on where its entries are: elimination order, elimination tree,
 * panels of the factor, and for each entry given, where it goes. Done once for a network; every Newton step then
 * only puts in new numbers (see symmetric-solve.ts).
 */

import { orderElimination } from "./elimination-order.js";
import {
  buildEliminationTree,
  countColumnEntries,
  invertOrder,
  orderChildrenFirst,
} from "./elimination-tree.js";
import { buildPanels, type FactorPanels } from "./factor-panels.js";
import type { AdjacencyLists } from "./quotient-graph.js";

/** The analysed pattern of a symmetric matrix. One factor at a time lives in it: not to be shared by two solves. */
export interface SymmetricPattern {
  readonly size: number;
  /** Number of pairs given. */
  readonly pairCount: number;
  /** Entries below the diagonal of the factor: as many as distinct pairs, plus fill. */
  readonly factorEntries: number;
  /** Entries below the diagonal of the matrix: the distinct pairs. */
  readonly matrixEntries: number;
  /** Connected pieces of the graph of the matrix. */
  readonly pieces: number;
  /** No loops: the factor has no fill. */
  readonly isForest: boolean;
  /** order[k] is the unknown eliminated k-th. */
  readonly order: Int32Array;
  /** Private to `factorSymmetric` and `solveSymmetric`: neither read nor written elsewhere. */
  readonly workspace: SymmetricWorkspace;
}

/** Index arrays made by the analysis and number arrays rewritten by each factor. In elimination order. */
export interface SymmetricWorkspace extends FactorPanels {
  /** Pairs whose later end is row k: pairStarts[k] .. pairStarts[k + 1] - 1. */
  readonly pairStarts: Int32Array;
  /** Which of the pairs given. */
  readonly pairIndex: Int32Array;
  /** Its earlier end. */
  readonly pairColumn: Int32Array;
  /** Entries of the unit lower factor L, by panels. */
  readonly values: Float64Array;
  /** The diagonal D. */
  readonly pivots: Float64Array;
  /** Which place of `panelRows` each panel is filled up to while factoring. */
  readonly panelEnds: Int32Array;
  /** One dense row, zero between calls of `factorSymmetric`. */
  readonly row: Float64Array;
  /** The right side in elimination order. */
  readonly permuted: Float64Array;
  /** Whether `values` and `pivots` hold a whole factor. */
  isFactored: boolean;
}

/**
 * Analyses where a sparse symmetric matrix has entries, and makes room for its factor.
 *
 * @param size     number of unknowns, an integer >= 0
 * @param rows     one end of each off-diagonal entry, 0 .. size - 1
 * @param columns  the other end; each pair given once, in either triangle. A pair given again is added to the first
 * @returns the pattern, for `factorSymmetric` and `solveSymmetric`; both then allocate nothing
 * @throws RangeError when size is not such an integer, the arrays differ in length, or a pair lies outside the
 *         matrix or on its diagonal
 * @source davis-2005-ldl (symbolic step), from memory
 * @example analyseSymmetric(3, Int32Array.of(0, 1), Int32Array.of(1, 2)).factorEntries   // 2
 */
export function analyseSymmetric(size: number, rows: Int32Array, columns: Int32Array): SymmetricPattern {
  requirePairs(size, rows, columns);
  const graph = buildAdjacency(size, rows, columns);

  // Order for little fill, then renumber children first along the elimination tree: same fill, nearer in memory.
  const sparse = orderElimination(graph);
  const order = orderChildrenFirst(buildEliminationTree(graph, sparse)).map((k) => sparse[k]);
  const parent = buildEliminationTree(graph, order);
  const counts = countColumnEntries(graph, order, parent);
  const panels = buildPanels(graph, order, parent, counts);

  const matrixEntries = graph.neighbours.length / 2;
  const pieces = parent.reduce((count, above) => (above < 0 ? count + 1 : count), 0);
  return {
    size,
    pairCount: rows.length,
    factorEntries: counts.reduce((sum, count) => sum + count, 0),
    matrixEntries,
    pieces,
    isForest: matrixEntries === size - pieces,
    order,
    workspace: {
      ...panels,
      ...sortPairsByRow(invertOrder(order), rows, columns),
      values: new Float64Array(panels.valueStarts[panels.valueStarts.length - 1]),
      pivots: new Float64Array(size),
      panelEnds: new Int32Array(panels.firstColumn.length - 1),
      row: new Float64Array(size),
      permuted: new Float64Array(size),
      isFactored: false,
    },
  };
}

function requirePairs(size: number, rows: Int32Array, columns: Int32Array): void {
  if (!(Number.isInteger(size) && size >= 0)) {
    throw new RangeError(`analyseSymmetric: size is ${size}; it must be a whole number from 0 up`);
  }
  if (rows.length !== columns.length) {
    throw new RangeError(
      `analyseSymmetric: columns has ${columns.length} entries; it must have as many as rows, ${rows.length}`,
    );
  }
  for (let k = 0; k < rows.length; k++) {
    const isInside = rows[k] >= 0 && rows[k] < size && columns[k] >= 0 && columns[k] < size;
    if (isInside && rows[k] !== columns[k]) continue;
    throw new RangeError(
      `analyseSymmetric: pair ${k} is (${rows[k]}, ${columns[k]}); it must be two different numbers from 0 to ${size - 1}`,
    );
  }
}

/** Neighbours of each unknown, both directions, repeated pairs once. */
function buildAdjacency(size: number, rows: Int32Array, columns: Int32Array): AdjacencyLists {
  // Sort the pairs by either end (counting sort).
  const sortedStarts = new Int32Array(size + 1);
  for (let k = 0; k < rows.length; k++) {
    sortedStarts[rows[k] + 1]++;
    sortedStarts[columns[k] + 1]++;
  }
  for (let v = 0; v < size; v++) sortedStarts[v + 1] += sortedStarts[v];
  const sorted = new Int32Array(2 * rows.length);
  const free = sortedStarts.slice(0, size);
  for (let k = 0; k < rows.length; k++) {
    sorted[free[rows[k]]++] = columns[k];
    sorted[free[columns[k]]++] = rows[k];
  }

  // Keep each neighbour once.
  const starts = new Int32Array(size + 1);
  const lastSeenBy = new Int32Array(size).fill(-1);
  let kept = 0;
  for (let v = 0; v < size; v++) {
    for (let at = sortedStarts[v]; at < sortedStarts[v + 1]; at++) {
      const other = sorted[at];
      if (lastSeenBy[other] === v) continue;
      lastSeenBy[other] = v;
      sorted[kept++] = other;
    }
    starts[v + 1] = kept;
  }
  return { size, starts, neighbours: sorted.subarray(0, kept) };
}

/** The pairs given, gathered by the row of the lower triangle each falls into, so that factoring never searches. */
function sortPairsByRow(place: Int32Array, rows: Int32Array, columns: Int32Array) {
  const pairStarts = new Int32Array(place.length + 1);
  for (let k = 0; k < rows.length; k++) pairStarts[Math.max(place[rows[k]], place[columns[k]]) + 1]++;
  for (let v = 0; v < place.length; v++) pairStarts[v + 1] += pairStarts[v];
  const free = pairStarts.slice(0, place.length);
  const pairIndex = new Int32Array(rows.length);
  const pairColumn = new Int32Array(rows.length);
  for (let k = 0; k < rows.length; k++) {
    const at = free[Math.max(place[rows[k]], place[columns[k]])]++;
    pairIndex[at] = k;
    pairColumn[at] = Math.min(place[rows[k]], place[columns[k]]);
  }
  return { pairStarts, pairIndex, pairColumn };
}
