/**
 * Where the factor has entries, gathered into panels.
 *
 * A panel (in the papers a supernode) is a run of columns, each the parent of the one before, with the same rows
 * below: a dense block. A branch of a tree makes panels of one column; where loops meet, panels grow wide, and
 * dense loops over them are several times faster than one column at a time.
 */

import { invertOrder } from "./elimination-tree.js";
import type { AdjacencyLists } from "./quotient-graph.js";

/** Rows and columns count in elimination order. A panel's values are stored row after row. */
export interface FactorPanels {
  /** Columns of panel s are firstColumn[s] .. firstColumn[s + 1] - 1. */
  readonly firstColumn: Int32Array;
  /** Its rows are panelRows[panelRowStarts[s]] .. panelRows[panelRowStarts[s + 1] - 1]. */
  readonly panelRowStarts: Int32Array;
  /** Every row after the panel's first column: the rest of its own columns, then those below; ascending. */
  readonly panelRows: Int32Array;
  /** Its values begin here; the last entry is the length of all values. */
  readonly valueStarts: Int32Array;
  /** Panels before row k's own with entries in row k are rowPanels[rowStarts[k]] .. rowPanels[rowStarts[k + 1] - 1]. */
  readonly rowStarts: Int32Array;
  /** A panel stands before its ancestors in the elimination tree. */
  readonly rowPanels: Int32Array;
}

/** Share of stored zeros up to which columns are gathered all the same: wide panels are worth a few. */
const ZEROS_ALLOWED = 0.1;

/**
 * Gathers the columns of the factor into panels and finds the rows of each.
 *
 * @param graph   of the matrix
 * @param order   children first along the elimination tree
 * @param parent  elimination tree in that order
 * @param counts  entries of each column below the diagonal
 */
export function buildPanels(
  graph: AdjacencyLists,
  order: Int32Array,
  parent: Int32Array,
  counts: Int32Array,
): FactorPanels {
  const firstColumn = chooseFirstColumns(parent, counts);
  const panelCount = firstColumn.length - 1;
  const { panelOf, panelParent } = linkPanels(firstColumn, parent);
  const { panelRowStarts, panelRows, rowStarts, rowPanels } = findRows(
    graph,
    order,
    firstColumn,
    panelOf,
    panelParent,
  );
  const valueStarts = new Int32Array(panelCount + 1);
  for (let s = 0; s < panelCount; s++) {
    const width = firstColumn[s + 1] - firstColumn[s];
    valueStarts[s + 1] = valueStarts[s] + width * (panelRowStarts[s + 1] - panelRowStarts[s]);
  }
  return { firstColumn, panelRowStarts, panelRows, valueStarts, rowStarts, rowPanels };
}

/**
 * Where panels begin; the last entry is the number of columns. A column may join the panel before it when it is the
 * parent of that panel's last column. Every column of the panel then stores zeros in the rows it has not itself.
 */
function chooseFirstColumns(parent: Int32Array, counts: Int32Array): Int32Array {
  const size = parent.length;
  const firstColumn = new Int32Array(size + 1);
  let panels = 0;
  let zeros = 0;
  for (let j = 0; j < size; j++) {
    if (j > 0 && parent[j - 1] === j) {
      const width = j - firstColumn[panels - 1];
      const added = width * (counts[j] + 1 - counts[j - 1]);
      const stored = (width * (width + 1)) / 2 + (width + 1) * counts[j];
      if (zeros + added <= ZEROS_ALLOWED * stored) {
        zeros += added;
        continue;
      }
    }
    firstColumn[panels++] = j;
    zeros = 0;
  }
  firstColumn[panels] = size;
  return firstColumn.slice(0, panels + 1);
}

/** The panel of each column, and the tree of panels: the parent of a panel is that of its last column. */
function linkPanels(firstColumn: Int32Array, parent: Int32Array) {
  const panelCount = firstColumn.length - 1;
  const panelOf = new Int32Array(parent.length);
  const panelParent = new Int32Array(panelCount);
  for (let s = 0; s < panelCount; s++) panelOf.fill(s, firstColumn[s], firstColumn[s + 1]);
  for (let s = 0; s < panelCount; s++) {
    const above = parent[firstColumn[s + 1] - 1];
    panelParent[s] = above < 0 ? -1 : panelOf[above];
  }
  return { panelOf, panelParent };
}

/** The panels of each row and the rows of each panel: the tree of panels walked once to count, once to write. */
function findRows(
  graph: AdjacencyLists,
  order: Int32Array,
  firstColumn: Int32Array,
  panelOf: Int32Array,
  panelParent: Int32Array,
) {
  const { size, starts, neighbours } = graph;
  const panelCount = panelParent.length;
  const place = invertOrder(order);
  const visited = new Int32Array(panelCount).fill(-1);
  const rowStarts = new Int32Array(size + 1);
  const panelRowStarts = new Int32Array(panelCount + 1);

  // Count. Row k meets every panel on the paths from its earlier neighbours up to its own panel. It is a row of its
  // own too, unless the first.
  for (let k = 0; k < size; k++) {
    const own = panelOf[k];
    let count = 0;
    visited[own] = k;
    if (k > firstColumn[own]) panelRowStarts[own + 1]++;
    for (let at = starts[order[k]]; at < starts[order[k] + 1]; at++) {
      const i = place[neighbours[at]];
      if (i > k) continue;
      for (let s = panelOf[i]; visited[s] !== k; s = panelParent[s]) {
        visited[s] = k;
        panelRowStarts[s + 1]++;
        count++;
      }
    }
    rowStarts[k + 1] = rowStarts[k] + count;
  }
  for (let s = 0; s < panelCount; s++) panelRowStarts[s + 1] += panelRowStarts[s];

  // Write. Each later path ends under one met before, so it goes in front of it.
  const panelRows = new Int32Array(panelRowStarts[panelCount]);
  const rowPanels = new Int32Array(rowStarts[size]);
  const free = panelRowStarts.slice(0, panelCount);
  const path = new Int32Array(panelCount);
  visited.fill(-1);
  for (let k = 0; k < size; k++) {
    const own = panelOf[k];
    let front = rowStarts[k + 1];
    visited[own] = k;
    if (k > firstColumn[own]) panelRows[free[own]++] = k;
    for (let at = starts[order[k]]; at < starts[order[k] + 1]; at++) {
      const i = place[neighbours[at]];
      if (i > k) continue;
      let length = 0;
      for (let s = panelOf[i]; visited[s] !== k; s = panelParent[s]) {
        visited[s] = k;
        panelRows[free[s]++] = k;
        path[length++] = s;
      }
      while (length > 0) rowPanels[--front] = path[--length];
    }
  }
  return { panelRowStarts, panelRows, rowStarts, rowPanels };
}
