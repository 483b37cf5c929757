import { binomialQuantile, erlangB, meanWait } from "../birds/queue.js";
import { type BatchWant, type DrinkerPlace, rateAt } from "./crowd-want.js";

/**
 * How birds drink together: only one moment in a hundred has more of them at the drinkers. Each for itself they are
 * binomial; as they follow one another, half as many again.
 *
 * @source cautious-defaults, 99th percentile and factor 1.5 for birds that drink together, derived
 */
export const TOGETHER = { share: 0.99, factor: 1.5 } as const;

/** The crowd of one pen at drinkers that give what they give. */
export interface CrowdLoad {
  /** Drunk in the busiest hour, and what could be with every place taken [m3/s]. */
  readonly demand: number;
  readonly capacity: number;
  /** Mean over the water drunk: what a bird takes in while it drinks [m3/s]; 0 where nothing flows. */
  readonly rate: number;
  /** Birds drinking at once on average [erlang]; infinite where nothing flows. */
  readonly load: number;
  readonly atOnceAlone: number;
  readonly atOnce: number;
  readonly saturates: boolean;
}

/**
 * The crowd of a pen at its busiest hour.
 *
 *   A = sum over batches of n v / r,  r = mean over the drinkers that give                                (1)
 *   N = ceil(1.5 N99),  N99 the 99th percentile of Binomial(n, A / n)                                     (2)
 *
 * Birds choose drinkers in proportion to what they give, so that all that give are equally taken; that is where the
 * plain mean in (1) comes from. Batches of several kinds are put into one binomial with their mean share, which has
 * a longer tail than their true sum.
 *
 * @param batches  the birds that are there
 * @param places   the drinkers that give water when nobody drinks; their flow now
 * @returns load and numbers
 * @valid rates at which a bout takes much less than the hour
 * @source cautious-defaults, simultaneity model, derived
 * @example crowdLoad([{ count: 50, demand: 1e-8, fastest: 1e-6, boutVolume: 7e-6 }], [{ flow: 1e-6, workedBy: "trigger", places: 1 }]).load   // 1
 */
export function crowdLoad(batches: readonly BatchWant[], places: readonly DrinkerPlace[]): CrowdLoad {
  const birds = batches.reduce((sum, { count }) => sum + count, 0);
  const demand = batches.reduce((sum, batch) => sum + batch.count * batch.demand, 0);
  if (birds === 0 || demand === 0) return NOBODY;
  let load = 0;
  let unhurried = 0;
  for (const { count, demand: each, fastest } of batches) {
    if (count * each === 0) continue;
    load += (count * each) / meanRate(places, fastest);
    unhurried += (count * each) / fastest;
  }
  const capacity = capacityOf(places, demand / unhurried);
  const { atOnceAlone, atOnce } = numbersAtOnce(birds, load);
  return {
    demand,
    capacity,
    rate: load === Number.POSITIVE_INFINITY ? 0 : demand / load,
    load,
    atOnceAlone,
    atOnce,
    saturates: demand >= capacity,
  };
}

const NOBODY: CrowdLoad = {
  demand: 0,
  capacity: 0,
  rate: 0,
  load: 0,
  atOnceAlone: 0,
  atOnce: 0,
  saturates: false,
};

/** Birds at drinkers at once, of so many that drink so often together. */
export function numbersAtOnce(birds: number, load: number): { atOnceAlone: number; atOnce: number } {
  const share = Math.min(1, load / birds);
  const atOnceAlone =
    share >= 1 ? birds : binomialQuantile({ count: birds, chance: share, within: TOGETHER.share });
  return {
    atOnceAlone,
    atOnce: Math.min(birds, Math.max(0, Math.ceil(TOGETHER.factor * atOnceAlone - 1e-9))),
  };
}

export function meanRate(places: readonly DrinkerPlace[], fastest: number): number {
  if (places.length === 0) return 0;
  return places.reduce((sum, place) => sum + rateAt(place, fastest), 0) / places.length;
}

/** With every place taken: what each drinker passes on, and no more than its birds can swallow. */
function capacityOf(places: readonly DrinkerPlace[], fastest: number): number {
  return places.reduce(
    (sum, place) => sum + Math.min(rateAt(place, Number.POSITIVE_INFINITY), place.places * fastest),
    0,
  );
}

/** Chance that a bird finds every place taken, and mean wait of all birds [s]; undefined for a crowd that never clears. */
export function waitsOf(
  crowd: CrowdLoad,
  places: number,
  boutSeconds: number,
): { chanceAllTaken: number | undefined; meanWait: number | undefined } {
  if (crowd.load === 0) return { chanceAllTaken: 0, meanWait: 0 };
  if (crowd.saturates || crowd.load >= places) return { chanceAllTaken: undefined, meanWait: undefined };
  return {
    chanceAllTaken: erlangB(places, crowd.load),
    meanWait: meanWait({ places, load: crowd.load, meanSeconds: boutSeconds }),
  };
}
