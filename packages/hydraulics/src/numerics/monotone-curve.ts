/** A smooth curve through points that rise, rising everywhere between them. */
export interface MonotoneCurve {
  /** The curve; beyond the points it is held at its end values. */
  at(x: number): number;
  /** Its slope; beyond the points, the slope at the end. */
  slopeAt(x: number): number;
}

/**
 * Piecewise cubic through rising points that never falls between them.
 *
 *   1/d_i = (w₁/δ_{i−1} + w₂/δ_i) / (w₁ + w₂),  w₁ = 2 h_i + h_{i−1},  w₂ = h_i + 2 h_{i−1}      (1)
 *
 * where h are the widths and δ the secant slopes of the neighbouring pieces; the end slopes come from the three
 * nearest points and are kept within 0 to 3 δ, which suffices for a rising cubic.
 *
 * @param x  places, strictly rising, two or more
 * @param y  values there, strictly rising, as many
 * @returns the curve
 * @valid between the first and last place
 * @throws RangeError when the lists differ in length, are shorter than two, or do not rise strictly
 * @source fritsch-butland-1984, weighted harmonic mean of the slopes, from memory
 * @example buildMonotoneCurve([0, 1, 2], [0, 1, 4]).at(1)   // 1
 */
export function buildMonotoneCurve(x: readonly number[], y: readonly number[]): MonotoneCurve {
  requireRising(x, y);
  const pieces = x.length - 1;
  const widths = Array.from({ length: pieces }, (_, i) => x[i + 1]! - x[i]!);
  const secants = widths.map((width, i) => (y[i + 1]! - y[i]!) / width);
  const slopes = slopesThrough(widths, secants);

  const pieceAt = (place: number): number => {
    let low = 0;
    let high = pieces;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (place < x[middle]!) high = middle;
      else low = middle;
    }
    return low;
  };
  return {
    at(place) {
      if (place <= x[0]!) return y[0]!;
      if (place >= x[pieces]!) return y[pieces]!;
      const i = pieceAt(place);
      const width = widths[i]!;
      const s = (place - x[i]!) / width;
      const bend = slopes[i]! + slopes[i + 1]! - 2 * secants[i]!;
      const lean = 3 * secants[i]! - 2 * slopes[i]! - slopes[i + 1]!;
      return y[i]! + width * s * (slopes[i]! + s * (lean + s * bend));
    },
    slopeAt(place) {
      if (place <= x[0]!) return slopes[0]!;
      if (place >= x[pieces]!) return slopes[pieces]!;
      const i = pieceAt(place);
      const s = (place - x[i]!) / widths[i]!;
      const bend = slopes[i]! + slopes[i + 1]! - 2 * secants[i]!;
      const lean = 3 * secants[i]! - 2 * slopes[i]! - slopes[i + 1]!;
      return slopes[i]! + s * (2 * lean + 3 * s * bend);
    },
  };
}

/** The slope at each point: eq. (1), and at both ends that of the outermost piece. */
function slopesThrough(widths: readonly number[], secants: readonly number[]): number[] {
  const pieces = widths.length;
  return Array.from({ length: pieces + 1 }, (_, i) => {
    if (pieces === 1) return secants[0]!;
    if (i === 0) return endSlope(widths, secants, 0, 1);
    if (i === pieces) return endSlope(widths, secants, pieces - 1, pieces - 2);
    const before = 2 * widths[i]! + widths[i - 1]!;
    const after = widths[i]! + 2 * widths[i - 1]!;
    return (before + after) / (before / secants[i - 1]! + after / secants[i]!);
  });
}

/** At the outer end of a piece, from it and the one beside it. */
function endSlope(
  widths: readonly number[],
  secants: readonly number[],
  piece: number,
  beside: number,
): number {
  const [width, next, secant] = [widths[piece]!, widths[beside]!, secants[piece]!];
  const slope = ((2 * width + next) * secant - width * secants[beside]!) / (width + next);
  return Math.min(Math.max(slope, 0), 3 * secant);
}

function requireRising(x: readonly number[], y: readonly number[]): void {
  if (x.length !== y.length || x.length < 2) {
    throw new RangeError(
      `buildMonotoneCurve: ${x.length} places and ${y.length} values; there must be as many, two or more`,
    );
  }
  for (let i = 1; i < x.length; i++) {
    const rises = x[i]! > x[i - 1]! && y[i]! > y[i - 1]!;
    if (!rises || !Number.isFinite(x[i]! - x[i - 1]!) || !Number.isFinite(y[i]! - y[i - 1]!)) {
      throw new RangeError(
        `buildMonotoneCurve: row ${i} does not rise above row ${i - 1}; both columns must`,
      );
    }
  }
}
