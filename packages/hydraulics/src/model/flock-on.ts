import type { Flock, Weather } from "./flock.js";

/** The same birds some days later, or earlier: each as much older; weather as it was. */
export function flockInDays(flock: Flock, days: number): Flock {
  return {
    ...flock,
    day: flock.day === undefined ? undefined : flock.day + days,
    pens: flock.pens.map((pen) => ({
      ...pen,
      batches: pen.batches.map((batch) => ({ ...batch, ageDays: batch.ageDays + days })),
    })),
  };
}

/** The same birds in other air; light as it was. */
export function flockInAir(flock: Flock, air: Pick<Weather, "high" | "low">): Flock {
  return { ...flock, weather: { ...flock.weather, high: air.high, low: air.low } };
}

/** The same birds on a day of the hot spell; the day as it is where the plan names none. */
export function flockInHeat(flock: Flock): Flock {
  const { hotSpell } = flock.weather;
  return hotSpell === undefined ? flock : flockInAir(flock, hotSpell);
}
