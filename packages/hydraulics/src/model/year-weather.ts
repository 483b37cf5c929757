import type { Plan } from "../document/plan-schema.js";
import { dateOf, dayNumber, MONTHS } from "../units/day.js";
import type { Flock, Weather } from "./flock.js";
import { createTypedValues } from "./typed-values.js";

/** The air of a plan on any day of a year. */
export interface YearWeather {
  /** Whether the plan gives months, or one weather for the whole year. */
  readonly from: "months" | "oneWeather";
  /** The usual air of a day [°C]. */
  on(day: number): Pick<Weather, "high" | "low">;
  /** Air of the hottest days to reckon with at that time [°C]; undefined where none is told. */
  hotOn(day: number): Pick<Weather, "high" | "low"> | undefined;
}

/** One month's usual air [°C]; its number from 1. */
interface MonthAir {
  readonly month: number;
  readonly high: number;
  readonly low: number;
  readonly hot: number | undefined;
}

/** Months are taken to be as told in their middle. */
const MIDDLE = 15;
/** So many of the months given are the hot spell's season, where they name no hottest days of their own. */
const SEASON = 3;

/**
 * The air of the year: straight from the middle of one month given to that of the next; the plan's one weather, hot
 * spell and all, where it gives no months.
 */
export function buildYearWeather(plan: Plan, { weather }: Flock): YearWeather {
  const months = monthsOf(plan);
  if (months.length === 0) {
    const { high, low, hotSpell } = weather;
    return { from: "oneWeather", on: () => ({ high, low }), hotOn: () => hotSpell };
  }
  const warmest = [...months].sort((a, b) => b.high - a.high || a.month - b.month).slice(0, SEASON);
  const namesHottest = months.some(({ hot }) => hot !== undefined);
  return {
    from: "months",
    on: (day) => airOn(months, day),
    hotOn(day) {
      const nearest = nearestTo(months, day);
      const { high, low } = nearest;
      if (nearest.hot !== undefined) return { high: nearest.hot, low: nearest.hot - (high - low) };
      return !namesHottest && warmest.includes(nearest) ? weather.hotSpell : undefined;
    },
  };
}

function monthsOf({ weather }: Plan): MonthAir[] {
  const { si } = createTypedValues();
  return (weather?.months ?? [])
    .map(({ month, high, low, hot }) => ({
      month: MONTHS.indexOf(month) + 1,
      high: si(high, "temperature"),
      low: si(low ?? high, "temperature"),
      hot: hot === undefined ? undefined : si(hot, "temperature"),
    }))
    .sort((a, b) => a.month - b.month);
}

/** The months given around a day, each by the day of its middle. */
function middlesAround(months: readonly MonthAir[], day: number): { at: number; air: MonthAir }[] {
  const { year } = dateOf(day);
  return [year - 1, year, year + 1].flatMap((of) =>
    months.map((air) => ({ at: dayNumber(of, air.month, MIDDLE), air })),
  );
}

function airOn(months: readonly MonthAir[], day: number): Pick<Weather, "high" | "low"> {
  const middles = middlesAround(months, day);
  const after = middles.findIndex(({ at }) => at > day);
  const [from, to] = [middles[after - 1], middles[after]];
  const share = (day - from.at) / (to.at - from.at);
  return {
    high: from.air.high + share * (to.air.high - from.air.high),
    low: from.air.low + share * (to.air.low - from.air.low),
  };
}

function nearestTo(months: readonly MonthAir[], day: number): MonthAir {
  return middlesAround(months, day).reduce((nearest, one) =>
    Math.abs(one.at - day) < Math.abs(nearest.at - day) ? one : nearest,
  ).air;
}
