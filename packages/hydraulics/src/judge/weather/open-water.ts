import { airAt } from "../../birds/air.js";
import type { HotDay } from "../../model/extremes.js";
import { filmOfWind, HEAT_OF_WATER } from "../../physics/cooling.js";
import { depthDried, heatOfDrying } from "../../physics/drying.js";
import { sunAt } from "../../physics/sun.js";
import { HEAT_STEP } from "./heat-bodies.js";

const DAY = 86_400;
/** Step in which open water is followed [s], and days until one ends as it began, at most. */
const STEP = 180;
const MOST_DAYS = 20;
const ENDS_ALIKE = 0.01;

/**
 * Share of the sun on open water that the water itself keeps, a few centimetres to a hand deep; the rest falls on what it
 * stands in, and that keeps by its colour.
 *
 * @source common-practice, the infrared part of sunlight, from memory
 */
const WATER_KEEPS = 0.4;
/** Share of the sun on level ground that an upright side sees through a day; as of vessels. */
const SIDE_SEES = 0.5;

/** Water that stands open, or in what stands in the sun. Areas [m²]. */
export interface OpenBody {
  readonly volume: number;
  /** Open to the sky and to the air. */
  readonly open: number;
  /** Covered from above by a wall with the water under it. */
  readonly flat: number;
  /** Walls to the air, `flat` counted. */
  readonly wall: number;
  readonly silhouette: number;
}

/** What of it the sun finds. */
export interface Skin {
  readonly absorptance: number;
  /** Share of the sun kept off. */
  readonly shade: number;
}

/** The air and sun of a day, step by step. */
export interface SunnyAir {
  readonly air: readonly number[];
  readonly sun: readonly number[];
  readonly film: number;
  /** Its dew point [°C]. */
  readonly dew: number;
}

const within = (temperature: number) => Math.min(50, Math.max(0, temperature));

/**
 * The air's dew point is its lowest of the day, as in nights clear enough for dew.
 *
 * @param film  of still air [W/(m² K)]; that of the day's wind where undefined
 * @source common-practice, dew point at the night's lowest, from memory
 */
export function sunnyAir(day: HotDay, film: number | undefined): SunnyAir {
  const times = Array.from({ length: DAY / STEP }, (_, k) => (k + 0.5) * STEP);
  const { sun, dawn, light } = day;
  return {
    air: times.map((time) => airAt(day, time)),
    sun: times.map((time) => sunAt({ peak: sun, dawn, light }, time)),
    film: film ?? filmOfWind(day.wind),
    dew: within(day.low),
  };
}

/**
 * One step further: what the sun gives, what the air gives or takes, what drying takes.
 *
 *   ρ c V T′ = (1 − s) G [a_o A_o + a (A_f + A_s/2)] + h (A_o + A_w)(t_a − T) − q(T) A_o                     (1)
 *   a_o = k + (1 − k) a: what the water keeps itself, and the floor of the rest                             (2)
 */
function next(
  body: OpenBody,
  { absorptance, shade }: Skin,
  { air, sun, film, dew }: SunnyAir,
  at: number,
  water: number,
) {
  const k = at % air.length;
  const taken = (WATER_KEEPS + (1 - WATER_KEEPS) * absorptance) * body.open;
  const sides = absorptance * (body.flat + SIDE_SEES * body.silhouette);
  const drying = body.open > 0 ? heatOfDrying({ film, dew }, within(water)) : 0;
  const gained =
    (1 - shade) * sun[k] * (taken + sides) +
    film * (body.open + body.wall) * (air[k] - water) -
    drying * body.open;
  return { water: water + (gained * STEP) / (HEAT_OF_WATER * body.volume), drying };
}

/** Well-mixed water through a day that follows a day like it: at the steps of all curves [°C], and what dries of it [m³]. */
export function throughOpenDay(
  body: OpenBody,
  skin: Skin,
  weather: SunnyAir,
): { readonly water: readonly number[]; readonly dried: number } {
  const count = weather.air.length;
  const every = HEAT_STEP / STEP;
  let water = weather.air.reduce((sum, one) => sum + one, 0) / count;
  for (let day = 0; ; day += 1) {
    const began = water;
    const curve: number[] = [];
    let dried = 0;
    for (let at = 0; at < count; at += 1) {
      if (at % every === 0) curve.push(water);
      const step = next(body, skin, weather, at, water);
      dried += depthDried(step.drying) * body.open * STEP;
      water = step.water;
    }
    if (Math.abs(water - began) < ENDS_ALIKE || day === MOST_DAYS) return { water: curve, dried };
  }
}

/** How long after it was filled it has come to a temperature [s]; undefined where it does not before midnight. */
export function warmFrom(
  body: OpenBody,
  skin: Skin,
  weather: SunnyAir,
  filled: { readonly from: number; readonly water: number; readonly to: number },
): number | undefined {
  let { water } = filled;
  const first = Math.floor(filled.from / STEP);
  for (let at = first; at < weather.air.length; at += 1) {
    water = next(body, skin, weather, at, water).water;
    if (water > filled.to) return (at + 1 - first) * STEP;
  }
  return undefined;
}
