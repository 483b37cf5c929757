import { airAt, type DayAir } from "../../birds/air.js";
import type { LooseWaterer } from "../../model/yard.js";
import { filmOfWind, HEAT_OF_WATER, STILL_AIR_FILM } from "../../physics/cooling.js";
import { HEAT_OF_FREEZING, ICE_DENSITY, iceAfter } from "../../physics/freezing.js";
import { type InFrost, STOPPING_ICE } from "./frost-bodies.js";
import type { FrostRefills, FrostThaw } from "./frost-result.js";
import { drunkFrom } from "./frost-waterers.js";

const MINUTE = 60;
const HOUR = 3600;

/** Airs that the refills of a day are told for [°C]. */
const REFILL_AIRS = [0, -2, -5, -10, -15, -20] as const;

/** Open water through a day of frost. Sizes [m³, m²], film [W/(m² K)]. */
export interface OpenInDay {
  readonly volume: number;
  readonly wall: number;
  readonly film: number;
  /** Temperature it is filled at [°C]. */
  readonly water: number;
}

/**
 * How often open water has to be filled anew so that no ice stops a beak: minute by minute, cooling to 0 °C, ice by
 * film and thickness, melting by the film. A fill begins each light; the dark is not counted, for birds do not drink.
 *
 * @param open  the water
 * @param air   temperature at a time of day [s after midnight] [°C]
 * @param light from and to [s after midnight]
 * @returns fills after the first
 */
export function refillsInFrost(
  open: OpenInDay,
  air: (time: number) => number,
  light: { readonly from: number; readonly to: number },
): number {
  const perMinute = (open.film * open.wall * MINUTE) / (HEAT_OF_WATER * open.volume);
  const kept = Math.exp(-perMinute);
  let [water, ice, refills] = [open.water, 0, 0];
  for (let time = light.from; time < light.to; time += MINUTE) {
    const around = air(time);
    if (ice > 0 && around > 0) {
      ice = Math.max(0, ice - (open.film * around * MINUTE) / (ICE_DENSITY * HEAT_OF_FREEZING));
    } else if (ice > 0 || water <= 0) {
      ice = iceAfter({ from: ice, time: MINUTE }, { film: open.film, air: Math.min(0, around) });
      water = around > 0 ? around * (1 - kept) : 0;
    } else water = around + (water - around) * kept;
    if (ice < STOPPING_ICE) continue;
    refills += 1;
    [water, ice] = [open.water, 0];
  }
  return refills;
}

/** Refills of one waterer; undefined where a beak meets pins, which no refill thaws. */
export function frostRefills(
  waterer: LooseWaterer,
  path: string,
  frost: InFrost,
  day: DayAir,
): FrostRefills | undefined {
  const { kind, holds, id, count } = waterer;
  if (kind.works === "nipples") return undefined;
  const { full, wall } = drunkFrom(kind, holds);
  const open = { volume: full, wall, film: filmOfWind(frost.night.wind), water: frost.water };
  const light = { from: day.dawn, to: day.dawn + day.light };
  const thatDay = refillsInFrost(open, (time) => airAt(day, time), light);
  return {
    id,
    path,
    count,
    thatDay,
    isHopeless: thatDay >= day.light / HOUR,
    byAir: REFILL_AIRS.map((air) => ({ air, refills: refillsInFrost(open, () => air, light) })),
  };
}

/** When the air of the day after is above freezing, and what it melts in still air. */
export function thawOf(day: DayAir): FrostThaw {
  let [from, to, warmth]: [number | undefined, number | undefined, number] = [undefined, undefined, 0];
  for (let time = day.dawn; time < day.dawn + day.light; time += MINUTE) {
    const air = airAt(day, time);
    if (air <= 0) continue;
    from ??= time;
    to = time + MINUTE;
    warmth += air * MINUTE;
  }
  return { from, to, melts: (STILL_AIR_FILM * warmth) / (ICE_DENSITY * HEAT_OF_FREEZING) };
}
