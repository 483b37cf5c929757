import { DROP_VOLUME, flowOfDrips } from "@headfall/hydraulics";

const MINUTE = 60;
const DAY = 86_400;

/** Drops fall one by one up to about so many a minute; beyond, it runs. */
export const MOST_DROPS = 300;
/** Drinkers that may be said to drip alike. */
export const MOST_DRINKERS = 1000;

/** What dripping loses in a day [m³]: were the drops small, and large. */
export interface DripLoss {
  readonly small: number;
  readonly large: number;
}

/**
 * @param drips.aMinute   drops in a minute at each, 0 to MOST_DROPS
 * @param drips.drinkers  drinkers that drip so, 0 to MOST_DRINKERS
 */
export function dripLossInDay({
  aMinute,
  drinkers,
}: {
  readonly aMinute: number;
  readonly drinkers: number;
}): DripLoss {
  const inDay = (volume: number) => flowOfDrips({ rate: aMinute / MINUTE, volume }) * drinkers * DAY;
  return { small: inDay(DROP_VOLUME.small), large: inDay(DROP_VOLUME.large) };
}

/** Reads a whole number as typed; undefined where it is none, or outside. */
export function readCount(typed: string, most: number): number | undefined {
  const text = typed.trim();
  if (!/^\d{1,6}$/.test(text)) return undefined;
  const count = Number(text);
  return count <= most ? count : undefined;
}
