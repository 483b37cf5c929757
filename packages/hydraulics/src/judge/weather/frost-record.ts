import type { AirRecord } from "../../document/air-record.js";
import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import type { FrostAsked } from "../../model/extremes.js";
import { dateOf } from "../../units/day.js";
import { frostOfPlan } from "./frost.js";
import type { Frost, FrostPart } from "./frost-result.js";

/** One winter of a record; where it is warmest in January, one year. Days since 1970-01-01. */
export interface FrostSeason {
  /** The year it begins in. */
  readonly year: number;
  /** Days of it that are known. */
  readonly known: number;
  readonly nights: number;
  readonly first: number | undefined;
  readonly last: number | undefined;
  readonly coldest: number | undefined;
  /** Most nights of frost in a row. */
  readonly longest: number;
}

/** How often a part stops, by the record's lowest temperatures [nights a year]. */
export interface FrostStops {
  readonly id: string;
  readonly kind: FrostPart["kind"];
  readonly path: string;
  /** For sure, and at worst. */
  readonly surely: number;
  readonly atWorst: number;
}

/** What a daily record of lows means for a plan. */
export interface FrostOfRecord {
  readonly name: string;
  readonly firstDay: number;
  readonly days: number;
  readonly known: number;
  readonly nightsAYear: number;
  readonly coldest: { readonly day: number; readonly low: number } | undefined;
  readonly seasons: readonly FrostSeason[];
  readonly stops: readonly FrostStops[];
  /** Refills a year of each loose waterer, each day of frost kept as cold as its lowest: the cautious side. */
  readonly refills: readonly { readonly id: string; readonly path: string; readonly aYear: number }[];
  /** The plan in the record's coldest night. */
  readonly worst: Frost | undefined;
}

/** What a record of nights does, or what in the plan contradicts itself. */
export type FrostRecordAnswer =
  | { readonly ok: true; readonly record: FrostOfRecord }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Nights of frost in a daily record: how many a year, the first and last, and how often each part of a plan stops.
 *
 * @param asked  hours and wind of its nights, where they are not the plan's
 * @example frostOfRecord(plan, readAirRecord("date,low C\n2025-01-01,-4\n2025-01-02,-9").record).record.days   // 2
 */
export function frostOfRecord(
  plan: Plan,
  air: AirRecord,
  asked: Omit<FrostAsked, "low" | "high"> = {},
): FrostRecordAnswer {
  const nights = new Map<number, number>();
  let coldest: FrostOfRecord["coldest"];
  air.low.forEach((low, k) => {
    if (!(low < 0)) return;
    // Whole degrees, the colder one: a plan is reckoned once for each.
    const degree = Math.max(-40, Math.floor(low));
    nights.set(degree, (nights.get(degree) ?? 0) + 1);
    if (coldest === undefined || low < coldest.low) coldest = { day: air.firstDay + k, low };
  });
  const years = air.known / 365.25;
  const tally = new Map<string, { part: FrostPart; surely: number; atWorst: number }>();
  const refills = new Map<string, { id: string; path: string; count: number }>();
  let worst: Frost | undefined;
  for (const [low, count] of [...nights].sort(([a], [b]) => b - a)) {
    const answer = frostOfPlan(plan, { ...asked, low, high: low });
    if (!answer.ok) return answer;
    worst = answer.frost;
    for (const part of answer.frost.parts) countStops(tally, part, count);
    for (const { id, path, thatDay } of answer.frost.refills) {
      const one = refills.get(`${path} ${id}`) ?? { id, path, count: 0 };
      refills.set(`${path} ${id}`, { ...one, count: one.count + count * thatDay });
    }
  }
  return {
    ok: true,
    record: {
      name: air.name,
      firstDay: air.firstDay,
      days: air.low.length,
      known: air.known,
      nightsAYear: [...nights.values()].reduce((sum, one) => sum + one, 0) / years,
      coldest,
      seasons: seasonsOf(air),
      stops: [...tally.values()].map(({ part: { id, kind, path }, surely, atWorst }) => ({
        id,
        kind,
        path,
        surely: surely / years,
        atWorst: atWorst / years,
      })),
      refills: [...refills.values()].map(({ id, path, count }) => ({ id, path, aYear: count / years })),
      worst,
    },
  };
}

function countStops(
  tally: Map<string, { part: FrostPart; surely: number; atWorst: number }>,
  part: FrostPart,
  nights: number,
): void {
  if (part.blocked === undefined) return;
  const key = `${part.path} ${part.kind} ${part.id}`;
  const one = tally.get(key) ?? { part, surely: 0, atWorst: 0 };
  tally.set(key, {
    part,
    surely: one.surely + (part.lasts === "no" ? nights : 0),
    atWorst: one.atWorst + (part.lasts === "yes" ? 0 : nights),
  });
}

const MIDSUMMER = { north: 6, south: 0 } as const;

/** Winters run from July where most frost is from November to February, else years run from January. */
function seasonsOf({ low, firstDay }: AirRecord): FrostSeason[] {
  let northern = 0;
  low.forEach((one, k) => {
    if (!(one < 0)) return;
    const { month } = dateOf(firstDay + k);
    northern += month >= 11 || month <= 3 ? 1 : month >= 5 && month <= 9 ? -1 : 0;
  });
  const begins = northern >= 0 ? MIDSUMMER.north : MIDSUMMER.south;
  const seasons = new Map<number, FrostSeason & { run: number }>();
  low.forEach((one, k) => {
    const day = firstDay + k;
    const { year, month } = dateOf(day);
    const of = month - 1 >= begins ? year : year - 1;
    const before = seasons.get(of) ?? {
      year: of,
      known: 0,
      nights: 0,
      first: undefined,
      last: undefined,
      coldest: undefined,
      longest: 0,
      run: 0,
    };
    if (Number.isNaN(one)) return;
    const isFrost = one < 0;
    const run = isFrost ? before.run + 1 : 0;
    seasons.set(of, {
      year: of,
      known: before.known + 1,
      nights: before.nights + (isFrost ? 1 : 0),
      first: isFrost ? (before.first ?? day) : before.first,
      last: isFrost ? day : before.last,
      coldest: Math.min(before.coldest ?? one, one),
      longest: Math.max(before.longest, run),
      run,
    });
  });
  return [...seasons.values()].map(({ run: _, ...season }) => season);
}
