import { type DayCurve, drunkUpTo } from "./day-curve.js";
import { heatFactor } from "./intake.js";

const DAY = 86_400;

/** The air of a day. Temperatures [°C], times [s]. */
export interface DayAir {
  readonly high: number;
  readonly low: number;
  readonly dawn: number;
  readonly light: number;
}

/**
 * Temperature of the air through the day: from its lowest at dawn by half a sine to its highest at two thirds of the
 * light, and back by another half until the next dawn.
 *
 * @param air   the day
 * @param time  [s after midnight]
 * @returns temperature [°C]
 * @valid clear days; the shape is a common one, no source
 * @source common-practice, not stated, from memory
 * @example airAt({ high: 30, low: 20, dawn: 21600, light: 43200 }, 50400)   // 30
 */
export function airAt(air: DayAir, time: number): number {
  const { high, low, dawn, light } = air;
  const since = (((time - dawn) % DAY) + DAY) % DAY;
  const warmest = (2 / 3) * light;
  const share = since < warmest ? since / warmest : 1 - (since - warmest) / (DAY - warmest);
  return low + ((high - low) * (1 - Math.cos(Math.PI * share))) / 2;
}

/** Pieces the day is cut into for its mean. */
const PIECES = 96;

/**
 * How many times as much birds drink on a day as on a mild one: the factor of each quarter of an hour, weighed by how
 * much is drunk in it.
 *
 * @param air    the day
 * @param curve  when they drink on a mild day
 * @returns factor [-]
 * @valid as `heatFactor`
 * @source may-lott-1992, intake rises in the hot half of the day, seen
 * @example meanHeatFactor({ high: 32, low: 32, dawn: 21600, light: 43200 }, { edges: [0, 86400], drunk: [0, 1] })   // 1.9991514018020298
 */
export function meanHeatFactor(air: DayAir, curve: DayCurve): number {
  if (air.high === air.low) return heatFactor(air.high);
  let mean = 0;
  let before = 0;
  for (let i = 0; i < PIECES; i += 1) {
    const to = (DAY * (i + 1)) / PIECES;
    const drunk = i === PIECES - 1 ? 1 : drunkUpTo(curve, to);
    mean += (drunk - before) * heatFactor(airAt(air, to - DAY / PIECES / 2));
    before = drunk;
  }
  return mean;
}
