import fc from "fast-check";

/** A sparse symmetric system as a caller gives it: pairs in either triangle, repeats allowed. */
export interface SymmetricSystem {
  readonly size: number;
  readonly rows: Int32Array;
  readonly columns: Int32Array;
  readonly diagonal: Float64Array;
  readonly offDiagonal: Float64Array;
  readonly rightSide: Float64Array;
}

/** Pairs of two different numbers below `size`; none when size is below 2. */
export const pairsBelow = (size: number, maxLength: number, minLength = 0) =>
  size < 2
    ? fc.constant<[number, number][]>([])
    : fc.array(
        fc
          .tuple(fc.nat(size - 1), fc.nat(size - 2))
          .map(([i, j]): [number, number] => [i, j < i ? j : j + 1]),
        { minLength, maxLength },
      );

/** Numbers far from the smallest a double can hold, where rounding is no longer a share of the number. */
const inflow = fc.integer({ min: -5000, max: 5000 }).map((n) => n / 1000);

/**
 * Well-conditioned positive definite systems: off-diagonal entries of either sign, each diagonal the sum of the
 * sizes in its row plus 0.1 to 10 (a strictly dominant diagonal makes A positive definite, by Gershgorin).
 */
export const dominantSystem: fc.Arbitrary<SymmetricSystem> = systemOf(
  fc.integer({ min: 0, max: 24 }),
  fc.double({ min: -3, max: 3, noNaN: true }),
  fc.double({ min: 0.1, max: 10, noNaN: true }),
);

/**
 * Conductance networks: each pair a conductance over 12 orders of magnitude, entered with a minus sign; each
 * unknown with its own conductance to ground over the same range.
 */
export const conductanceSystem: fc.Arbitrary<SymmetricSystem> = systemOf(
  fc.integer({ min: 1, max: 30 }),
  fc.double({ min: -6, max: 6, noNaN: true }).map((power) => -(10 ** power)),
  fc.double({ min: -6, max: 6, noNaN: true }).map((power) => 10 ** power),
);

function systemOf(
  sizes: fc.Arbitrary<number>,
  entry: fc.Arbitrary<number>,
  excess: fc.Arbitrary<number>,
): fc.Arbitrary<SymmetricSystem> {
  const listOf = (one: fc.Arbitrary<number>, length: number) =>
    fc.array(one, { minLength: length, maxLength: length }).map((list) => Float64Array.from(list));
  return sizes
    .chain((size) => fc.tuple(fc.constant(size), pairsBelow(size, 4 * size)))
    .chain(([size, pairs]) =>
      fc
        .tuple(listOf(entry, pairs.length), listOf(excess, size), listOf(inflow, size))
        .map(([off, own, right]) => buildDominant(size, pairs, off, own, right)),
    );
}

function buildDominant(
  size: number,
  pairs: readonly (readonly [number, number])[],
  offDiagonal: Float64Array,
  excess: Float64Array,
  rightSide: Float64Array,
): SymmetricSystem {
  const diagonal = excess.slice();
  for (const [k, [i, j]] of pairs.entries()) {
    diagonal[i]! += Math.abs(offDiagonal[k]!);
    diagonal[j]! += Math.abs(offDiagonal[k]!);
  }
  const rows = Int32Array.from(pairs, ([i]) => i);
  const columns = Int32Array.from(pairs, ([, j]) => j);
  return { size, rows, columns, diagonal, offDiagonal, rightSide };
}

/** A tree on `size` vertices: each after the first joined to an earlier one, then all labels shuffled. */
export const treePairs = (size: number): fc.Arbitrary<[number, number][]> =>
  fc
    .record({
      above: fc.tuple(...Array.from({ length: Math.max(0, size - 1) }, (_, k) => fc.nat(k))),
      label: fc.shuffledSubarray(
        Array.from({ length: size }, (_, v) => v),
        { minLength: size, maxLength: size },
      ),
    })
    .map(({ above, label }) => above.map((up, k): [number, number] => [label[k + 1]!, label[up]!]));
