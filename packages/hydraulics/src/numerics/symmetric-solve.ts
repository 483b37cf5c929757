/**
 * Sparse symmetric positive definite systems: A = L D Lᵀ, with L unit lower triangular and D diagonal.
 *
 * `analyseSymmetric` once for a network, `factorSymmetric` once for each set of conductances, `solveSymmetric`
 * once for each right side.
 */

import type { SymmetricPattern } from "./symmetric-pattern.js";

export { analyseSymmetric, type SymmetricPattern } from "./symmetric-pattern.js";

/** `at` is the unknown, in the caller's numbering, whose pivot was not above zero or not finite. */
export type FactorOutcome = { readonly ok: true } | { readonly ok: false; readonly at: number };

const FACTORED: FactorOutcome = Object.freeze({ ok: true });

/**
 * Factors the matrix of a pattern, one row of L at a time (up-looking).
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
 * @source davis-2005-ldl (numeric step), from memory
 */
export function factorSymmetric(
  pattern: SymmetricPattern,
  diagonal: Float64Array,
  offDiagonal: Float64Array,
): FactorOutcome {
  requireLength("factorSymmetric", "diagonal", diagonal, pattern.size);
  requireLength("factorSymmetric", "offDiagonal", offDiagonal, pattern.pairCount);
  const { size, order, workspace } = pattern;
  const { pairStarts, pairIndex, pairColumn, rowStarts, rowColumns } = workspace;
  const { columnStarts, columnRows, columnEnds, values, pivots, row } = workspace;
  workspace.isFactored = false;

  for (let k = 0; k < size; k++) {
    // Spread row k of A, left of the diagonal, over the dense row: eq. (1).
    const endPairs = pairStarts[k + 1];
    for (let at = pairStarts[k]; at < endPairs; at++) row[pairColumn[at]] += offDiagonal[pairIndex[at]];
    columnEnds[k] = columnStarts[k];
    let pivot = diagonal[order[k]];

    // Solve with the rows above, descendants before ancestors: eq. (2). Column i so far ends at columnEnds[i];
    // its next entry is L[k][i].
    const endColumns = rowStarts[k + 1];
    for (let at = rowStarts[k]; at < endColumns; at++) {
      const i = rowColumns[at];
      const y = row[i];
      row[i] = 0;
      const end = columnEnds[i];
      for (let p = columnStarts[i]; p < end; p++) row[columnRows[p]] -= values[p] * y;
      const entry = y / pivots[i];
      pivot -= entry * y;
      values[end] = entry;
      columnEnds[i] = end + 1;
    }

    // The pivot must be positive and finite; NaN is neither.
    if (!(pivot > 0 && pivot < Number.POSITIVE_INFINITY)) return { ok: false, at: order[k] };
    pivots[k] = pivot;
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
  const { columnStarts, columnRows, values, pivots, permuted } = workspace;
  for (let k = 0; k < size; k++) permuted[k] = rightSide[order[k]];

  // Forward: each z, once known, is taken out of the rows below.
  for (let j = 0; j < size; j++) {
    const z = permuted[j];
    const end = columnStarts[j + 1];
    for (let p = columnStarts[j]; p < end; p++) permuted[columnRows[p]] -= values[p] * z;
  }

  // Backward: every unknown a column refers to is known by then.
  for (let j = size - 1; j >= 0; j--) {
    let x = permuted[j] / pivots[j];
    const end = columnStarts[j + 1];
    for (let p = columnStarts[j]; p < end; p++) x -= values[p] * permuted[columnRows[p]];
    permuted[j] = x;
    rightSide[order[j]] = x;
  }
}

function requireLength(owner: string, name: string, array: Float64Array, length: number): void {
  if (array.length === length) return;
  throw new RangeError(`${owner}: ${name} has ${array.length} entries; it must have ${length}`);
}
