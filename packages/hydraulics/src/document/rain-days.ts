import { dateOf } from "../units/day.js";
import {
  RAIN_UNITS,
  type RainDay,
  type RainFinding,
  type RainReading,
  type RainRecord,
  type RainUnit,
  refuseRecord,
} from "./rain-record.js";

/** A record longer than this is cut by its reader's own choice of years. */
const MOST_DAYS = 200 * 366;
/** More rain in a day than this is hardly ever right [m]. */
const SUSPICIOUS = 0.4;
/** A year with less of its days known than this is told. */
const COMPLETE = 0.9;

/** Puts the days of a text in order, finds gaps and doubles, and makes the record of them. */
export function recordOfDays(
  days: readonly RainDay[],
  about: {
    readonly name: string;
    readonly format: RainRecord["format"];
    readonly unit: RainUnit;
    readonly flagged: number;
  },
): RainReading {
  if (days.length === 0)
    return refuseRecord({
      code: "tooFew",
      found: "no day with rain",
      allowed: "A record has a line for each day, with its date and its rain.",
      mend: "Check that this is the file of a station that measures rain.",
    });
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { day } of days) {
    first = Math.min(first, day);
    last = Math.max(last, day);
  }
  const count = last - first + 1;
  if (count > MOST_DAYS)
    return refuseRecord({
      code: "tooMany",
      found: `${count} days`,
      allowed: `A record has at most ${MOST_DAYS} days.`,
      mend: "Check its dates, or cut it.",
    });
  const { doubles, ...columns } = columnsOf(days, { first, count, metres: RAIN_UNITS[about.unit] });
  const { name, format, unit, flagged } = about;
  const record: Omit<RainRecord, "findings"> = { name, format, unit, firstDay: first, ...columns };
  return { ok: true, record: { ...record, findings: findingsOf(record, flagged, doubles) } };
}

function columnsOf(
  days: readonly RainDay[],
  { first, count, metres }: { readonly first: number; readonly count: number; readonly metres: number },
) {
  const rain = new Float64Array(count);
  const missing = new Uint8Array(count).fill(1);
  const [high, low, known] = [new Float64Array(count), new Float64Array(count), new Uint8Array(count)];
  let doubles = 0;
  for (const one of days) {
    const at = one.day - first;
    if (one.rain !== undefined) {
      if (missing[at] === 0) doubles += 1;
      rain[at] = one.rain * metres;
      missing[at] = 0;
    }
    if (one.high !== undefined && one.low !== undefined) {
      [high[at], low[at], known[at]] = [one.high, one.low, 1];
    }
  }
  const air = known.some((one) => one === 1) ? { high, low, known } : undefined;
  return { rain, missing, air, doubles };
}

function findingsOf(
  { rain, missing, firstDay }: Omit<RainRecord, "findings">,
  flagged: number,
  doubles: number,
): RainFinding[] {
  const unknown = missing.reduce((sum, one) => sum + one, 0);
  const findings: RainFinding[] = [];
  if (unknown > 0) findings.push({ code: "daysMissing", days: unknown, share: unknown / missing.length });
  findings.push(...incompleteYears(missing, firstDay));
  if (flagged > 0) findings.push({ code: "flagged", days: flagged });
  if (doubles > 0) findings.push({ code: "dayTwice", days: doubles });
  rain.forEach((one, k) => {
    if (one > SUSPICIOUS) findings.push({ code: "suspicious", day: firstDay + k, rain: one });
  });
  return findings;
}

/** Years of which too little is known, a first or last part of a year not counted against it. */
function incompleteYears(missing: Uint8Array, firstDay: number): RainFinding[] {
  const years = new Map<number, { days: number; known: number }>();
  missing.forEach((one, k) => {
    const { year } = dateOf(firstDay + k);
    const tally = years.get(year) ?? { days: 0, known: 0 };
    tally.days += 1;
    tally.known += 1 - one;
    years.set(year, tally);
  });
  return [...years.entries()]
    .filter(([, { days, known }]) => known / days < COMPLETE)
    .map(([year, { days, known }]) => ({ code: "yearIncomplete", year, share: known / days }));
}
