/**
 * Sparse symmetric positive definite systems: A = L D Lᵀ, with L unit lower triangular and D diagonal.
 *
 * `analyseSymmetric` once for a network, `factorSymmetric` once for each set of conductances, `solveSymmetric`
 * once for each right side.
 */

import { factorTriangle, solveTriangle, subtractRows } from "./panel-kernels.js";
import type { SymmetricPattern } from "./symmetric-pattern.js";

export { analyseSymmetric, type SymmetricPattern } from "./symmetric-pattern.js";

/** `at` is the unknown, in the caller's numbering, whose pivot was not above zero or not finite. */
export type FactorOutcome = { readonly ok: true } | { readonly ok: false; readonly at: number };

const FACTORED: FactorOutcome = Object.freeze({ ok: true });

/**
 * Factors the matrix of a pattern, one row of L at a time (up-looking), columns in panels (see factor-panels.ts).
 *
 *   A[i][i] = diagonal[i],   A[rows[k]][columns[k]] = A[columns[k]][rows[k]] = Σ offDiagonal[k]        (1)
 *   L[0..k-1] D[0..k-1] y = A[0..k-1][k],   L[k][i] = y[i] / D[i],   D[k] = A[k][k] - Σ L[k][i] y[i]   (2)
 *
 * Allocates nothing unless it fails; then only the small outcome. The same numbers give the same bytes.
 *
 * @param pattern      from `analyseSymmetric`; its former factor is overwritten
 * @param diagonal     one number for each unknown
 * @param offDiagonal  one number for each pair given to `analyseSymmetric`, in that order
 * @returns ok, or where the elimination met a pivot that is not above 0 or not finite: A is not positive definite
 * @throws RangeError when an array has the wrong length
 * @source davis-2005-ldl (numeric step), from memory; the panels are ours, common practice, no source
 */
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a kernel; a row passes all phases with its numbers at hand
export function factorSymmetric(
  pattern: SymmetricPattern,
  diagonal: Float64Array,
  offDiagonal: Float64Array,
): FactorOutcome {
  requireLength("factorSymmetric", "diagonal", diagonal, pattern.size);
  requireLength("factorSymmetric", "offDiagonal", offDiagonal, pattern.pairCount);
  const { size, order, workspace } = pattern;
  const { pairStarts, pairIndex, pairColumn, rowStarts, rowPanels } = workspace;
  const { firstColumn, panelRowStarts, panelRows, panelEnds, valueStarts, values, pivots, row } = workspace;
  workspace.isFactored = false;
  for (let s = 0; s < panelEnds.length; s++) {
    panelEnds[s] = panelRowStarts[s] + firstColumn[s + 1] - firstColumn[s] - 1;
  }
  let own = 0;

  for (let k = 0; k < size; k++) {
    // Spread row k of A, left of the diagonal, over the dense row: eq. (1).
    const endPairs = pairStarts[k + 1];
    for (let at = pairStarts[k]; at < endPairs; at++) row[pairColumn[at]] += offDiagonal[pairIndex[at]];
    let pivot = diagonal[order[k]];

    // Solve with the rows above, eq. (2), panel by panel, descendants before ancestors. A panel is filled so far
    // up to panelEnds[s]; its next row is row k.
    const endPanels = rowStarts[k + 1];
    for (let at = rowStarts[k]; at < endPanels; at++) {
      const s = rowPanels[at];
      const first = firstColumn[s];
      const stride = firstColumn[s + 1] - first;
      const begin = panelRowStarts[s];
      const end = panelEnds[s]++;

      if (stride === 1) {
        // One column, as on every branch.
        const y = row[first];
        row[first] = 0;
        const shift = valueStarts[s] - begin;
        for (let t = begin; t < end; t++) row[panelRows[t]] -= values[shift + t] * y;
        const entry = y / pivots[first];
        pivot -= entry * y;
        values[shift + end] = entry;
        continue;
      }

      // A wide panel: its triangle first, then the rows below it that are already there.
      const start = valueStarts[s];
      solveTriangle(values, start, stride, stride, panelRows, begin, row, first);
      const below = stride - 1;
      subtractRows(values, start + below * stride, stride, stride, panelRows, begin + below, end, row, first);
      const write = start + (end - begin) * stride;
      for (let c = 0; c < stride; c++) {
        const y = row[first + c];
        row[first + c] = 0;
        const entry = y / pivots[first + c];
        pivot -= entry * y;
        values[write + c] = entry;
      }
    }
    pivots[k] = pivot;

    // What is left of row k belongs to its own panel: put it there.
    const first = firstColumn[own];
    const stride = firstColumn[own + 1] - first;
    const write = valueStarts[own] + (k - first - 1) * stride - first;
    for (let j = first; j < k; j++) {
      values[write + j] = row[j];
      row[j] = 0;
    }
    if (k + 1 < first + stride) continue;

    // With its last row in, factor the panel's triangle: eq. (2) for the whole block. Every pivot must be positive
    // and finite; NaN is neither.
    if (stride === 1) {
      if (!(pivot > 0 && pivot < Number.POSITIVE_INFINITY)) return { ok: false, at: order[k] };
    } else {
      const failed = factorTriangle(values, valueStarts[own], stride, pivots, first);
      if (failed >= 0) return { ok: false, at: order[first + failed] };
    }
    own++;
  }
  workspace.isFactored = true;
  return FACTORED;
}

/**
 * Solves A x = b with the factor last made for the pattern; x takes the place of b.
 *
 *   L z = b,   Lᵀ x = D⁻¹ z                                                                           (3)
 *
 * @param pattern    whose last `factorSymmetric` was ok
 * @param rightSide  b on entry, x on return, one number for each unknown
 * @throws RangeError when rightSide has the wrong length, or the pattern holds no factor
 * @source davis-2005-ldl, from memory
 */
export function solveSymmetric(pattern: SymmetricPattern, rightSide: Float64Array): void {
  requireLength("solveSymmetric", "rightSide", rightSide, pattern.size);
  const { size, order, workspace } = pattern;
  if (!workspace.isFactored) {
    throw new RangeError(
      "solveSymmetric: pattern holds no factor; factorSymmetric must have returned ok for it",
    );
  }
  const { firstColumn, panelRowStarts, panelRows, valueStarts, values, pivots, permuted } = workspace;
  const panelCount = firstColumn.length - 1;
  for (let k = 0; k < size; k++) permuted[k] = rightSide[order[k]];

  // Forward: the unknowns of each panel, once known, are taken out of the rows below.
  for (let s = 0; s < panelCount; s++) {
    const first = firstColumn[s];
    const stride = firstColumn[s + 1] - first;
    const begin = panelRowStarts[s];
    const end = panelRowStarts[s + 1];
    const start = valueStarts[s];
    if (stride === 1) {
      const z = permuted[first];
      for (let t = begin; t < end; t++) permuted[panelRows[t]] -= values[start + t - begin] * z;
      continue;
    }
    solveTriangle(values, start, stride, stride, panelRows, begin, permuted, first);
    const startBelow = start + (stride - 1) * stride;
    subtractRows(values, startBelow, stride, stride, panelRows, begin + stride - 1, end, permuted, first);
  }

  // Backward: every row a panel refers to is known by then, last of its own columns first.
  for (let s = panelCount - 1; s >= 0; s--) {
    const first = firstColumn[s];
    const stride = firstColumn[s + 1] - first;
    const begin = panelRowStarts[s];
    const end = panelRowStarts[s + 1];
    const start = valueStarts[s];
    if (stride === 1) {
      let x = permuted[first] / pivots[first];
      for (let t = begin; t < end; t++) x -= values[start + t - begin] * permuted[panelRows[t]];
      permuted[first] = x;
      continue;
    }
    for (let c = 0; c < stride; c++) permuted[first + c] /= pivots[first + c];
    for (let t = end - 1; t >= begin; t--) {
      const x = permuted[panelRows[t]];
      const at = start + (t - begin) * stride;
      const width = Math.min(stride, panelRows[t] - first);
      for (let c = 0; c < width; c++) permuted[first + c] -= values[at + c] * x;
    }
  }
  for (let k = 0; k < size; k++) rightSide[order[k]] = permuted[k];
}

function requireLength(owner: string, name: string, array: Float64Array, length: number): void {
  if (array.length === length) return;
  throw new RangeError(`${owner}: ${name} has ${array.length} entries; it must have ${length}`);
}
