/**
 * The dense inner loops of the sparse factor. A panel is stored row after row, `stride` values to a row; a vector
 * stands in the dense array `x`, the part that belongs to the panel's columns from `first` on.
 */

/**
 * x[rows[t]] -= Σ values[row t][j] x[first + j], j = 0 .. length - 1, for t = from .. to - 1.
 *
 * Four rows at a time: each x[first + j] is read once for the four, and four sums run side by side.
 *
 * @param at  where in `values` the row of t = from begins
 */
export function subtractRows(
  values: Float64Array,
  at: number,
  stride: number,
  length: number,
  rows: Int32Array,
  from: number,
  to: number,
  x: Float64Array,
  first: number,
): void {
  let t = from;
  let start = at;
  const end = first + length;
  for (; t + 3 < to; t += 4) {
    let a = start;
    let b = a + stride;
    let c = b + stride;
    let d = c + stride;
    start = d + stride;
    let sumA = 0;
    let sumB = 0;
    let sumC = 0;
    let sumD = 0;
    for (let j = first; j < end; j++) {
      const y = x[j];
      sumA += values[a++] * y;
      sumB += values[b++] * y;
      sumC += values[c++] * y;
      sumD += values[d++] * y;
    }
    x[rows[t]] -= sumA;
    x[rows[t + 1]] -= sumB;
    x[rows[t + 2]] -= sumC;
    x[rows[t + 3]] -= sumD;
  }
  for (; t < to; t++) {
    let sum = 0;
    let a = start;
    for (let j = first; j < end; j++) sum += values[a++] * x[j];
    x[rows[t]] -= sum;
    start += stride;
  }
}

/**
 * Solves the unit lower triangle at the head of a panel for x[first] .. x[first + width - 1], in place.
 * The panel's row of t = t0 + c - 1 holds, in its first c places, the triangle's row c.
 *
 * Four columns at a time: first what the finished columns take from the four, then the small triangle they form.
 *
 * @param at  where in `values` the panel begins
 * @param t0  where in `rows` the panel begins
 */
export function solveTriangle(
  values: Float64Array,
  at: number,
  stride: number,
  width: number,
  rows: Int32Array,
  t0: number,
  x: Float64Array,
  first: number,
): void {
  for (let block = 0; block < width; block += 4) {
    const end = Math.min(block + 4, width);
    if (block > 0) {
      const row = block - 1;
      subtractRows(values, at + row * stride, stride, block, rows, t0 + row, t0 + end - 1, x, first);
    }
    for (let c = block + 1; c < end; c++) {
      const row = at + (c - 1) * stride;
      let sum = 0;
      for (let j = block; j < c; j++) sum += values[row + j] * x[first + j];
      x[first + c] -= sum;
    }
  }
}

/**
 * Factors the dense triangle at the head of a panel in place: T = L D Lᵀ.
 *
 * Row i of the triangle, i = 1 .. stride - 1, begins at `at + (i - 1) stride`; its diagonal is pivots[first + i].
 * For each row, with y the row of L D:   y[c] = T[i][c] - Σ L[c][j] y[j],   D[i] = T[i][i] - Σ y[c]² / D[c].
 *
 * @returns the first i whose pivot is not above 0 or not finite, or -1
 */
export function factorTriangle(
  values: Float64Array,
  at: number,
  stride: number,
  pivots: Float64Array,
  first: number,
): number {
  for (let block = 0; block < stride; block += 4) {
    const end = Math.min(block + 4, stride);
    const blockStart = at + (block - 1) * stride;

    // Columns before the block, two at a time, for all four rows at once (fewer in the last block).
    for (let c = 0; c < block; c += 2) {
      const above = at + (c - 1) * stride;
      const link = values[above + stride + c];
      if (end === block + 4) subtractTile(values, blockStart, above, stride, c);
      for (let i = block; i < end; i++) {
        const row = at + (i - 1) * stride;
        if (end < block + 4) {
          if (c > 0) values[row + c] -= dot(values, row, above, c);
          values[row + c + 1] -= dot(values, row, above + stride, c);
        }
        values[row + c + 1] -= link * values[row + c];
      }
    }

    // Columns of the block itself, then the row is whole: y becomes a row of L, and its pivot is known.
    for (let i = block; i < end; i++) {
      const row = at + (i - 1) * stride;
      for (let c = Math.max(block, 1); c < i; c++)
        values[row + c] -= dot(values, row, at + (c - 1) * stride, c);
      let pivot = pivots[first + i];
      for (let c = 0; c < i; c++) {
        const y = values[row + c];
        const entry = y / pivots[first + c];
        pivot -= entry * y;
        values[row + c] = entry;
      }
      if (!(pivot > 0 && pivot < Number.POSITIVE_INFINITY)) return i;
      pivots[first + i] = pivot;
    }
  }
  return -1;
}

/** Entries `length` and `length + 1` of four rows of y, each less its product with one of two rows of L. */
function subtractTile(
  values: Float64Array,
  rows: number,
  above: number,
  stride: number,
  length: number,
): void {
  if (length === 0) return;
  let a = rows;
  let b = a + stride;
  let c = b + stride;
  let d = c + stride;
  let left = above;
  let right = left + stride;
  let a0 = 0;
  let a1 = 0;
  let b0 = 0;
  let b1 = 0;
  let c0 = 0;
  let c1 = 0;
  let d0 = 0;
  let d1 = 0;
  for (const end = left + length; left < end; ) {
    const l0 = values[left++];
    const l1 = values[right++];
    const ya = values[a++];
    a0 += ya * l0;
    a1 += ya * l1;
    const yb = values[b++];
    b0 += yb * l0;
    b1 += yb * l1;
    const yc = values[c++];
    c0 += yc * l0;
    c1 += yc * l1;
    const yd = values[d++];
    d0 += yd * l0;
    d1 += yd * l1;
  }
  values[a] -= a0;
  values[a + 1] -= a1;
  values[b] -= b0;
  values[b + 1] -= b1;
  values[c] -= c0;
  values[c + 1] -= c1;
  values[d] -= d0;
  values[d + 1] -= d1;
}

function dot(values: Float64Array, one: number, other: number, length: number): number {
  let sum = 0;
  for (let j = 0; j < length; j++) sum += values[one + j] * values[other + j];
  return sum;
}
