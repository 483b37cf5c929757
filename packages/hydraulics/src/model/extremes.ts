import type { Plan } from "../document/plan-schema.js";
import type { Weather } from "./flock.js";
import { HOT_DAY } from "./flock-on.js";
import type { TypedValues } from "./typed-values.js";

/** A night of frost. Temperatures [°C], hours [s], wind [m/s]. */
export interface FrostNight {
  /** Taken for the whole of it: the cautious side. */
  readonly low: number;
  /** The highest of the day after. */
  readonly high: number;
  /** How long it freezes, from dusk. */
  readonly hours: number;
  readonly wind: number;
}

/** What a question says in place of the plan. */
export type FrostAsked = Partial<FrostNight>;

/** The night of a plan; what is asked goes first. */
export function frostNightOf(plan: Plan, asked: FrostAsked, values: TypedValues): FrostNight {
  const frost = plan.weather?.frost;
  const low = asked.low ?? values.siOr(frost?.low, "temperature", "frostLow", "weather.frost.low");
  const high = frost?.high === undefined ? undefined : values.si(frost.high, "temperature");
  return {
    low,
    high: Math.max(low, asked.high ?? high ?? low),
    hours: asked.hours ?? values.siOr(frost?.hours, "time", "frostHours", "weather.frost.hours"),
    wind: asked.wind ?? values.siOr(frost?.wind, "speed", "frostWind", "weather.frost.wind"),
  };
}

/** A hot, clear day. Temperatures [°C], times [s], sun [W/m²], wind [m/s]. */
export interface HotDay {
  readonly high: number;
  readonly low: number;
  readonly dawn: number;
  readonly light: number;
  readonly sun: number;
  readonly wind: number;
}

/** A hot day to ask about: its highest air [°C] and sun at noon [W/m²]; the plan's own where left out. */
export interface HeatAsked {
  readonly high?: number;
  readonly sun?: number;
}

/** Between a clear day and its night where the plan names one temperature for both [K]; see DEFAULTS.hotNight. */
const CLEAR_SWING = 12;

/**
 * The hottest day to reckon with: of the plan's hot spell, or where it names none a hot day. A day asked for by its
 * highest has the plan's own swing between day and night.
 */
export function hotDayOf(plan: Plan, weather: Weather, asked: HeatAsked, values: TypedValues): HotDay {
  const { hotSpell, dawn, light } = weather;
  const planned = hotSpell?.high ?? Math.max(weather.high, HOT_DAY);
  const said = hotSpell === undefined ? weather.high - weather.low : hotSpell.high - hotSpell.low;
  if (said === 0) values.note("hotNight", "weather.low");
  const swing = said === 0 ? CLEAR_SWING : said;
  const high = asked.high ?? planned;
  return {
    high,
    low: high - swing,
    dawn,
    light,
    sun: asked.sun ?? values.siOr(plan.weather?.sun, "sunshine", "sun", "weather.sun"),
    wind: values.siOr(plan.weather?.wind, "speed", "wind", "weather.wind"),
  };
}
