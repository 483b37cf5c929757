import { requireBetween, requireNotNegative } from "../numerics/require-number.js";

/**
 * Chance that all places are taken when who finds none goes away (Erlang's loss formula).
 *
 *   B(0) = 1,  B(c) = A B(c − 1) / (c + A B(c − 1))                                                       (1)
 *
 * @param places  c, whole, ≥ 0
 * @param load    A, offered: arrivals a second times seconds each stays [erlang], ≥ 0
 * @returns B [-], 0 to 1
 * @valid arrivals at random; how long each stays may be spread in any way
 * @throws RangeError when places are not whole or the load is below 0
 * @source erlang-1917, loss formula, from memory
 * @example erlangB(2, 1)   // 0.2
 */
export function erlangB(places: number, load: number): number {
  requirePlaces("erlangB", places);
  requireNotNegative("erlangB", { load });
  let blocked = 1;
  for (let c = 1; c <= places; c += 1) blocked = (load * blocked) / (c + load * blocked);
  return blocked;
}

/**
 * Chance that a comer has to wait when all wait their turn (Erlang's delay formula).
 *
 *   C = c B / (c − A (1 − B))                                                                             (1)
 *
 * @param places  c, whole, ≥ 1
 * @param load    A [erlang]; from c on the queue never ends and the chance is 1
 * @returns C [-], 0 to 1
 * @valid arrivals at random, stays spread exponentially
 * @throws RangeError when places are not whole or the load is below 0
 * @source erlang-1917, delay formula, from memory
 * @example erlangC(2, 1)   // 0.33333333333333337
 */
export function erlangC(places: number, load: number): number {
  requirePlaces("erlangC", places);
  requireNotNegative("erlangC", { load });
  if (load >= places) return 1;
  const blocked = erlangB(places, load);
  return (places * blocked) / (places - load * (1 - blocked));
}

/**
 * Mean wait of all comers, those who need not wait included.
 *
 *   W = C s / (c − A)                                                                                     (1)
 *
 * @param queue.places       c, whole, ≥ 1
 * @param queue.load         A [erlang], below c
 * @param queue.meanSeconds  s, how long each stays on average [s]
 * @returns W [s]; infinite from A = c on
 * @valid as `erlangC`
 * @throws RangeError when places are not whole or the load is below 0
 * @source erlang-1917, delay formula, from memory
 * @example meanWait({ places: 1, load: 0.5, meanSeconds: 10 })   // 10
 */
export function meanWait(queue: {
  readonly places: number;
  readonly load: number;
  readonly meanSeconds: number;
}): number {
  const { places, load, meanSeconds } = queue;
  if (load >= places) return Number.POSITIVE_INFINITY;
  return (erlangC(places, load) * meanSeconds) / (places - load);
}

/**
 * The least number that is not passed with a given chance when so many each take part by the same chance, each for
 * itself: a quantile of the binomial distribution. Weights are summed from the likeliest number outwards, so that
 * none underflows.
 *
 * @param those.count   n, whole, ≥ 0
 * @param those.chance  p of each, 0 to 1
 * @param those.within  of all moments, the share that must not pass it, 0 to 1
 * @returns the number, whole, 0 to n
 * @throws RangeError when an argument lies outside these
 * @valid n up to 1e7
 * @source closed-form, cumulative sum of the binomial distribution, derived
 * @example binomialQuantile({ count: 50, chance: 0.02, within: 0.99 })   // 4
 */
export function binomialQuantile(those: {
  readonly count: number;
  readonly chance: number;
  readonly within: number;
}): number {
  const { count, chance, within } = those;
  requirePlaces("binomialQuantile", count);
  requireBetween("binomialQuantile", "chance", chance, SHARES);
  requireBetween("binomialQuantile", "within", within, SHARES);
  if (chance === 0) return 0;
  if (chance === 1) return count;
  const likeliest = Math.min(count, Math.floor((count + 1) * chance));
  const odds = chance / (1 - chance);
  const below: number[] = [];
  let weight = 1;
  for (let k = likeliest; k > 0 && weight > 1e-20; k -= 1) {
    weight *= k / ((count - k + 1) * odds);
    below.push(weight);
  }
  const above: number[] = [];
  weight = 1;
  for (let k = likeliest; k < count && weight > 1e-20; k += 1) {
    weight *= ((count - k) * odds) / (k + 1);
    above.push(weight);
  }
  const weights = [...below.reverse(), 1, ...above];
  const target = within * weights.reduce((sum, one) => sum + one, 0);
  let sum = 0;
  const reached = weights.findIndex((one) => {
    sum += one;
    return sum >= target;
  });
  return likeliest - below.length + (reached < 0 ? weights.length - 1 : reached);
}

const SHARES = { least: 0, greatest: 1 } as const;

function requirePlaces(caller: string, places: number): void {
  requireNotNegative(caller, { count: places });
  if (!Number.isInteger(places))
    throw new RangeError(`${caller}: the count is ${places}; it is a whole number.`);
}
