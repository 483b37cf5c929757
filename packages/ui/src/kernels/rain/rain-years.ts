import { dateOf, dayNumber } from "@headfall/hydraulics";

/** One calendar year of a record: its days by their place in the record, the last one not included. */
export interface RainYear {
  readonly year: number;
  readonly from: number;
  readonly to: number;
}

/** The calendar years a record goes through, the first and last perhaps in part. */
export function yearsOf(firstDay: number, days: number): readonly RainYear[] {
  if (days <= 0) return [];
  const [first, last] = [dateOf(firstDay).year, dateOf(firstDay + days - 1).year];
  return Array.from({ length: last - first + 1 }, (_, k) => ({
    year: first + k,
    from: Math.max(0, dayNumber(first + k, 1, 1) - firstDay),
    to: Math.min(days, dayNumber(first + k + 1, 1, 1) - firstDay),
  }));
}

/** One month of a record, likewise. */
export interface RainMonth {
  /** From 1. */
  readonly month: number;
  readonly from: number;
  readonly to: number;
}

/** The months of a year that a record has days of. */
export function monthsOf(firstDay: number, { year, from, to }: RainYear): readonly RainMonth[] {
  return Array.from({ length: 12 }, (_, k) => ({
    month: k + 1,
    from: Math.max(from, dayNumber(year, k + 1, 1) - firstDay),
    to: Math.min(to, dayNumber(k === 11 ? year + 1 : year, k === 11 ? 1 : k + 2, 1) - firstDay),
  })).filter((month) => month.to > month.from);
}
