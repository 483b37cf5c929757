/**
 * The chance that of so many tries at most so many succeed.
 *
 *   P(X ≤ k) = Σ_{i ≤ k} C(n, i) pⁱ (1 − p)ⁿ⁻ⁱ                                                         (1)
 *
 * @param trials.count      n, whole, ≥ 0
 * @param trials.successes  k, whole; below 0 the chance is 0
 * @param trials.chance     p of each, above 0 and below 1 [-]
 * @returns P(X ≤ k), from 0 to 1
 * @valid n up to 1e6; the sum takes n steps
 * @throws RangeError when the count is not a whole number or the chance is outside its range
 * @source closed-form
 * @example chanceOfAtMost({ count: 2, successes: 1, chance: 0.5 })   // 0.75
 */
export function chanceOfAtMost(trials: {
  readonly count: number;
  readonly successes: number;
  readonly chance: number;
}): number {
  const { count, successes, chance } = trials;
  if (!Number.isSafeInteger(count) || count < 0)
    throw new RangeError(`chanceOfAtMost: count is ${count}; it must be a whole number from 0`);
  if (!(chance > 0 && chance < 1))
    throw new RangeError(`chanceOfAtMost: chance is ${chance}; it must be above 0 and below 1`);
  if (successes < 0) return 0;
  if (successes >= count) return 1;
  // Each term from the one before, as logarithms: the first alone may be too small for a number.
  let term = count * Math.log(1 - chance);
  let sum = Math.exp(term);
  for (let i = 0; i < successes; i += 1) {
    term += Math.log((count - i) / (i + 1)) + Math.log(chance / (1 - chance));
    sum += Math.exp(term);
  }
  return Math.min(1, sum);
}
