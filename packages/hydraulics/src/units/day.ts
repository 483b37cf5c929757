/** Days and times of day as typed; a day is a whole number of days since 1970-01-01, so that ages are differences. */

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const CLOCK = /^(\d{1,2}):(\d{2})$/;
const [FIRST_YEAR, LAST_YEAR] = [1800, 2200];

/** The months as plans name them, in order. */
export const MONTHS = [
  ...(["january", "february", "march", "april", "may", "june"] as const),
  ...(["july", "august", "september", "october", "november", "december"] as const),
] as const;

/**
 * "2026-07-04" as a number of days since 1970-01-01 (proleptic Gregorian calendar); undefined when there is no such
 * day.
 *
 * @example readDay("1970-01-02")   // 1
 */
export function readDay(typed: string): number | undefined {
  const match = DAY.exec(typed.trim());
  if (match === null) return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (year < FIRST_YEAR || year > LAST_YEAR) return undefined;
  const days = dayNumber(year, month, day);
  return writeDay(days) === typed.trim() ? days : undefined;
}

/**
 * A number of days since 1970-01-01 as "2026-07-04".
 *
 * @example writeDay(1)   // "1970-01-02"
 */
export function writeDay(days: number): string {
  const { year, month, day } = dateOf(days);
  const padded = (value: number, width: number) => String(value).padStart(width, "0");
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
}

/**
 * The calendar is reckoned from 1 March of year 0, so that the leap day comes last, in turns of 400 years
 * (146,097 days).
 */
const [DAYS_IN_TURN, DAYS_TO_1970] = [146_097, 719_468];

/**
 * Days from 1970-01-01 to a date, its parts in the order in which it is typed ("1970-01-02"); days
 * past the end of a month run on into the next.
 *
 * @example dayNumber(1970, 1, 2)   // 1
 */
export function dayNumber(year: number, month: number, day: number): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const turn = Math.floor(marchYear / 400);
  const yearOfTurn = marchYear - 400 * turn;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfTurn = 365 * yearOfTurn + Math.floor(yearOfTurn / 4) - Math.floor(yearOfTurn / 100) + dayOfYear;
  return DAYS_IN_TURN * turn + dayOfTurn - DAYS_TO_1970;
}

/**
 * The date of a number of days since 1970-01-01; months and days count from 1.
 *
 * @example dateOf(0)   // { year: 1970, month: 1, day: 1 }
 */
export function dateOf(days: number): { year: number; month: number; day: number } {
  const since = Math.floor(days) + DAYS_TO_1970;
  const turn = Math.floor(since / DAYS_IN_TURN);
  const dayOfTurn = since - DAYS_IN_TURN * turn;
  const leaps =
    Math.floor(dayOfTurn / 1460) - Math.floor(dayOfTurn / 36_524) + Math.floor(dayOfTurn / 146_096);
  const yearOfTurn = Math.floor((dayOfTurn - leaps) / 365);
  const dayOfYear =
    dayOfTurn - (365 * yearOfTurn + Math.floor(yearOfTurn / 4) - Math.floor(yearOfTurn / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: yearOfTurn + 400 * turn + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

/**
 * "06:30" as seconds after midnight; undefined when there is no such time.
 *
 * @example readClock("6:30")   // 23400
 */
export function readClock(typed: string): number | undefined {
  const match = CLOCK.exec(typed.trim());
  if (match === null) return undefined;
  const [hours, minutes] = [Number(match[1]), Number(match[2])];
  return hours < 24 && minutes < 60 ? hours * 3600 + minutes * 60 : undefined;
}

/**
 * Seconds after midnight as "06:30", to the minute; times past midnight run on into the next day.
 *
 * @example writeClock(23400)   // "06:30"
 */
export function writeClock(seconds: number): string {
  const minutes = Math.round(seconds / 60) % 1440;
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
