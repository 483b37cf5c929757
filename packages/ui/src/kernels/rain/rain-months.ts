import type { RainRecord, RainRun, RainSupply } from "@headfall/hydraulics";
import { monthsOf, type RainYear } from "./rain-years.js";

/** What became of the water in some days of a record [m³], and their rain [m]. */
export interface RainSums {
  readonly days: number;
  readonly rain: number;
  readonly missing: number;
  readonly shortDays: number;
  readonly cameIn: number;
  readonly wanted: number;
  readonly given: number;
  readonly over: number;
  /** Least that was left at the end of a day, and what was left at the end of the last. */
  readonly least: number;
  readonly left: number;
}

/** What a record and its balance come to from one day to another, the last not included. */
export function sumsOf(
  record: Pick<RainRecord, "rain" | "missing">,
  supply: Pick<RainSupply, "inflow" | "demand">,
  { balance }: Pick<RainRun, "balance">,
  { from, to }: { readonly from: number; readonly to: number },
): RainSums {
  const sum = (values: ArrayLike<number>) => {
    let total = 0;
    for (let t = from; t < to; t += 1) total += values[t]!;
    return total;
  };
  let least = Number.POSITIVE_INFINITY;
  for (let t = from; t < to; t += 1) least = Math.min(least, balance.stored[t]!);
  return {
    days: to - from,
    rain: sum(record.rain),
    missing: sum(record.missing),
    shortDays: sum(balance.short),
    cameIn: sum(supply.inflow),
    wanted: sum(supply.demand),
    given: sum(balance.given),
    over: sum(balance.over),
    least,
    left: balance.stored[to - 1] ?? 0,
  };
}

/** The same for each month of a year. */
export const monthSums = (
  record: Pick<RainRecord, "rain" | "missing" | "firstDay">,
  supply: Pick<RainSupply, "inflow" | "demand">,
  run: Pick<RainRun, "balance">,
  year: RainYear,
): readonly (RainSums & { readonly month: number })[] =>
  monthsOf(record.firstDay, year).map((span) => ({
    month: span.month,
    ...sumsOf(record, supply, run, span),
  }));

/** The next day birds were short after a day, round to the beginning; undefined where none was. */
export function nextShortDay(short: Uint8Array, after: number): number | undefined {
  for (let step = 1; step <= short.length; step += 1) {
    const t = (after + step) % short.length;
    if (short[t] === 1) return t;
  }
  return undefined;
}
