import type { Flock, Weather } from "./flock.js";
import { pensOfRoster } from "./roster.js";

/**
 * The hot day of a plan that names no hot spell [°C]: at it birds were found to drink twice as much as at 20.
 *
 * @source kentucky-manual-12, Table 12.1, 32 degC, seen
 */
export const HOT_DAY = 32;

/**
 * The flock some days later, or earlier: each bird as much older, where it then is; weather as it was.
 *
 * @example flockInDays(flock, 7).pens[0].batches[0].ageDays - flock.pens[0].batches[0].ageDays   // 7
 */
export function flockInDays(flock: Flock, days: number): Flock {
  if (flock.roster !== undefined && flock.day !== undefined) return rosterInDays(flock, flock.day + days);
  return {
    ...flock,
    day: flock.day === undefined ? undefined : flock.day + days,
    pens: flock.pens.map((pen) => ({
      ...pen,
      batches: pen.batches.map((batch) => ({ ...batch, ageDays: batch.ageDays + days })),
    })),
  };
}

function rosterInDays(flock: Flock, day: number): Flock {
  const roster = (flock.roster ?? []).map(({ batch, stays }) => ({
    batch: { ...batch, ageDays: batch.ageDays + day - (flock.day ?? day) },
    stays,
  }));
  return { ...flock, day, roster, pens: pensOfRoster(flock.pens, roster, day) };
}

/** The same birds in other air; light as it was. */
export function flockInAir(flock: Flock, air: Pick<Weather, "high" | "low">): Flock {
  return { ...flock, weather: { ...flock.weather, high: air.high, low: air.low } };
}

/**
 * The same birds on a day of the hot spell; the day as it is where the plan names none.
 *
 * @example flockInHeat(flock).weather.high   // 35
 */
export function flockInHeat(flock: Flock): Flock {
  const { hotSpell } = flock.weather;
  return hotSpell === undefined ? flock : flockInAir(flock, hotSpell);
}

/** The same birds on the hottest day to reckon with: of the plan's hot spell, or where it names none, a hot day. */
export function flockInHottest(flock: Flock): Flock {
  const { high, low, hotSpell } = flock.weather;
  if (hotSpell !== undefined) return flockInAir(flock, hotSpell);
  const hottest = Math.max(high, HOT_DAY);
  return flockInAir(flock, { high: hottest, low: hottest - (high - low) });
}
