/**
 * Shares that add up to 1, from logarithms of weights that need not; the greatest is taken out first, so that nothing
 * overflows.
 *
 *   w_i = exp(a_i - max a) / sum_j exp(a_j - max a)                           (1)
 *
 * @param logWeights  a, natural logarithms of the weights; -Infinity for none
 * @returns w; all 0 where no weight is above 0
 * @valid any finite a, and -Infinity
 * @example sharesOfLogs([Math.log(1), Math.log(3)])[1]   // 0.75
 */
export function sharesOfLogs(logWeights: readonly number[]): number[] {
  const most = logWeights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (most === Number.NEGATIVE_INFINITY) return logWeights.map(() => 0);
  const weights = logWeights.map((a) => Math.exp(a - most));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((w) => w / sum);
}

/** Logarithm of a sum of weights given by their logarithms; -Infinity for none. */
export function logOfSum(logWeights: readonly number[]): number {
  const most = logWeights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (most === Number.NEGATIVE_INFINITY) return most;
  return most + Math.log(logWeights.reduce((sum, a) => sum + Math.exp(a - most), 0));
}

/**
 * How much an answer not yet given tells, on average, about which of several states holds.
 *
 *   I = H(sum_i w_i p_i) - sum_i w_i H(p_i),   H(p) = -sum_k p_k log2 p_k       (1)
 *
 * @param shares   w, of the states, adding up to 1
 * @param chances  p, by state: the chance of each answer, adding up to 1; as many answers for each
 * @returns I [bit]; 0 where every state answers alike, at most log2 of the number of answers
 * @valid any shares and chances
 * @source shannon-1948, mutual information, from memory
 * @example expectedInformation([0.5, 0.5], [[1, 0], [0, 1]])   // 1
 */
export function expectedInformation(
  shares: readonly number[],
  chances: readonly (readonly number[])[],
): number {
  const mixed = new Array<number>(chances[0]?.length ?? 0).fill(0);
  let within = 0;
  chances.forEach((chance, i) => {
    for (let k = 0; k < mixed.length; k += 1) mixed[k] += shares[i] * chance[k];
    within += shares[i] * uncertaintyOf(chance);
  });
  return Math.max(0, uncertaintyOf(mixed) - within);
}

/** H of chances that add up to 1 [bit]. */
function uncertaintyOf(chances: readonly number[]): number {
  return chances.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
}

/** The rising curve from 0 to 1 through a half at 0: 1 / (1 + exp(-x)). */
export const chanceAbove = (x: number): number => 1 / (1 + Math.exp(-x));
