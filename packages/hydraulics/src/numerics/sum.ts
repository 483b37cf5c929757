/** A running sum that keeps what rounding drops. */
export interface RunningSum {
  add(term: number): void;
  /** The sum so far. */
  total(): number;
}

/**
 * A running sum with Neumaier's compensation: exact to about one rounding, however many terms.
 *
 *   t = s + x;  c += |s| ≥ |x| ? (s − t) + x : (x − t) + s;  sum = s + c    (1)
 *
 * @returns the running sum, at 0
 * @valid finite terms; the error is at most 2 ε |Σ x| + O(n ε²) Σ |x|
 * @source neumaier-1974, from memory
 * @example (() => { const sum = startSum(); [1, 1e100, 1, -1e100].forEach(sum.add); return sum.total(); })()   // 2
 */
export function startSum(): RunningSum {
  let sum = 0;
  let compensation = 0;
  return {
    add(term) {
      const next = sum + term;
      // Beyond the largest double there is nothing left to compensate, only NaN to make.
      if (Number.isFinite(next)) {
        compensation += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
      }
      sum = next;
    },
    total: () => sum + compensation,
  };
}

/**
 * Sum of numbers with Neumaier's compensation.
 *
 *   as startSum                                                             (1)
 *
 * @param terms  the numbers, in any order
 * @returns their sum; 0 for none
 * @valid as startSum
 * @source neumaier-1974, from memory
 * @example sumOf([0.1, 0.2, 0.3, -0.6])   // 2.7756e-17
 */
export function sumOf(terms: Iterable<number>): number {
  const sum = startSum();
  for (const term of terms) sum.add(term);
  return sum.total();
}
