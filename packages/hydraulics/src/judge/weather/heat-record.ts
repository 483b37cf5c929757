import type { AirRecord } from "../../document/air-record.js";
import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { dateOf } from "../../units/day.js";
import { heatOfPlan } from "./heat.js";
import type { Heat, HeatPart } from "./heat-result.js";

/**
 * Days as warm as this are counted [°C]: from it on birds drink more by the day.
 *
 * @source common-practice, a summer day of weather services, from memory
 */
export const SUMMER_DAY = 25;
/**
 * Days as hot as this are called hot [°C].
 *
 * @source common-practice, a hot day of weather services, from memory
 */
export const HOT_FROM = 30;

/** The summer of one year of a record; where it is hottest in January, of a year that begins in July. */
export interface HeatSeason {
  /** The year it begins in. */
  readonly year: number;
  /** Days of it whose highest is known. */
  readonly known: number;
  /** From 25 °C on, and from 30 °C on. */
  readonly summer: number;
  readonly hot: number;
  /** First and last of 30 °C, days since 1970-01-01. */
  readonly first: number | undefined;
  readonly last: number | undefined;
  readonly hottest: number | undefined;
  /** Most days of 30 °C in a row. */
  readonly longest: number;
}

/** How often the water of a part is too warm, by the record's highest temperatures [days a year]. */
export interface HeatOften {
  readonly id: string;
  readonly kind: HeatPart["kind"];
  readonly path: string;
  /** Above 30 °C at some hour: to expect, and at worst; refused (above 44 °C) at worst. */
  readonly expected: number;
  readonly atWorst: number;
  readonly refused: number;
}

/** What a daily record of highs means for a plan. */
export interface HeatOfRecord {
  readonly name: string;
  readonly firstDay: number;
  readonly days: number;
  /** Days whose highest is known. */
  readonly known: number;
  readonly hotAYear: number;
  readonly hottest: { readonly day: number; readonly high: number } | undefined;
  readonly seasons: readonly HeatSeason[];
  /** Parts that birds drink from. */
  readonly often: readonly HeatOften[];
  /** The plan on the record's hottest day; undefined where none is as warm as 25 °C. */
  readonly worst: Heat | undefined;
}

/** What a record of hot days does, or what in the plan contradicts itself. */
export type HeatRecordAnswer =
  | { readonly ok: true; readonly record: HeatOfRecord }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Hot days in a daily record: how many a year, the first and last, and on how many the water before birds is too warm.
 * Every day from 25 °C on is taken as clear, with the plan's own sun and the swing of its own nights: the cautious side.
 *
 * @param options.day       the day asked about, for the ages of the plan's birds
 * @param options.progress  told the share done
 * @example heatOfRecord(plan, readAirRecord("date,low C,high C\n2025-07-01,14,31\n2025-07-02,15,27").record).record.seasons[0].hot   // 1
 */
export function heatOfRecord(
  plan: Plan,
  air: AirRecord,
  {
    day,
    progress,
  }: {
    readonly day?: string | undefined;
    readonly progress?: ((share: number) => void) | undefined;
  } = {},
): HeatRecordAnswer {
  const days = new Map<number, number>();
  let hottest: HeatOfRecord["hottest"];
  air.high.forEach((high, k) => {
    if (hottest === undefined ? high > -Infinity : high > hottest.high)
      hottest = { day: air.firstDay + k, high };
    if (!(high >= SUMMER_DAY)) return;
    // Whole degrees, the warmer one: a plan is reckoned once for each.
    const degree = Math.min(55, Math.ceil(high));
    days.set(degree, (days.get(degree) ?? 0) + 1);
  });
  const known = air.high.reduce((sum, high) => sum + (Number.isNaN(high) ? 0 : 1), 0);
  const years = Math.max(known, 1) / 365.25;
  const tally = new Map<string, HeatOften>();
  let worst: Heat | undefined;
  let done = 0;
  for (const [high, count] of [...days].sort(([a], [b]) => a - b)) {
    const answer = heatOfPlan(plan, { high, day });
    if (!answer.ok) return answer;
    worst = answer.heat;
    for (const part of answer.heat.parts) countDays(tally, part, count / years);
    done += 1;
    progress?.(done / days.size);
  }
  const seasons = seasonsOf(air);
  return {
    ok: true,
    record: {
      name: air.name,
      firstDay: air.firstDay,
      days: air.high.length,
      known,
      hotAYear: seasons.reduce((sum, { hot }) => sum + hot, 0) / years,
      hottest,
      seasons,
      often: [...tally.values()],
      worst,
    },
  };
}

function countDays(tally: Map<string, HeatOften>, part: HeatPart, aYear: number): void {
  const { id, kind, path, drinkers, hottest, expected } = part;
  if (drinkers === 0) return;
  const key = `${path} ${kind} ${id}`;
  const one = tally.get(key) ?? { id, kind, path, expected: 0, atWorst: 0, refused: 0 };
  tally.set(key, {
    ...one,
    expected: one.expected + (expected.less > 0 ? aYear : 0),
    atWorst: one.atWorst + (hottest.less > 0 ? aYear : 0),
    refused: one.refused + (hottest.refused > 0 ? aYear : 0),
  });
}

/** Summers run in years from January where most hot days are from May to September, else in years from July. */
function seasonsOf({ high, firstDay }: AirRecord): HeatSeason[] {
  let northern = 0;
  high.forEach((one, k) => {
    if (!(one >= SUMMER_DAY)) return;
    const { month } = dateOf(firstDay + k);
    northern += month >= 5 && month <= 9 ? 1 : month >= 11 || month <= 3 ? -1 : 0;
  });
  const begins = northern >= 0 ? 1 : 7;
  const seasons = new Map<number, HeatSeason & { run: number }>();
  high.forEach((one, k) => {
    if (Number.isNaN(one)) return;
    const day = firstDay + k;
    const { year, month } = dateOf(day);
    const of = month >= begins ? year : year - 1;
    const before = seasons.get(of) ?? { ...EMPTY, year: of };
    const isHot = one >= HOT_FROM;
    const run = isHot ? before.run + 1 : 0;
    seasons.set(of, {
      year: of,
      known: before.known + 1,
      summer: before.summer + (one >= SUMMER_DAY ? 1 : 0),
      hot: before.hot + (isHot ? 1 : 0),
      first: isHot ? (before.first ?? day) : before.first,
      last: isHot ? day : before.last,
      hottest: Math.max(before.hottest ?? one, one),
      longest: Math.max(before.longest, run),
      run,
    });
  });
  return [...seasons.values()].map(({ run: _, ...season }) => season);
}

const EMPTY = {
  known: 0,
  summer: 0,
  hot: 0,
  first: undefined,
  last: undefined,
  hottest: undefined,
  longest: 0,
  run: 0,
} as const;
