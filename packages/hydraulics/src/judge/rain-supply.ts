import { DEFAULTS } from "../document/defaults.js";
import { findRoofByName } from "../document/find-names.js";
import type { Plan, PlanRoof } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import type { RainRecord } from "../document/rain-record.js";
import { readShare } from "../document/schema-parts.js";
import { flockInAir } from "../model/flock-on.js";
import { createTypedValues } from "../model/typed-values.js";
import { findRoot } from "../numerics/root.js";
import { GRAVITY } from "../physics/constants.js";
import { DISCHARGE_COEFFICIENT } from "../physics/orifice.js";
import { volumeAtLevel } from "../physics/vessel.js";
import { drawOfPen } from "../simulate/pen-draw.js";
import {
  balanceRain,
  type RainBalance,
  type RainConvention,
  type RoofRun,
  runOff,
  sequentPeak,
} from "../simulate/rain.js";
import { dateOf } from "../units/day.js";
import { type AskedPlan, askPlan } from "./asked-plan.js";
import { poolsOf } from "./give-out.js";

/** Share of rain that runs off a roof of which nothing is known, and what wets it on a wet day [m]. */
const ANY_ROOF = { runoff: 0.8, wetting: 0.0005 } as const;

/**
 * A downpour to be ready for [m/s]: 100 mm in an hour; common practice, no source. Local tables of rain decide.
 *
 * @source common-practice, not stated, from memory
 */
export const DOWNPOUR = 0.1 / 3600;

export const RAIN_RUNS = [
  { convention: "drawnFirst", begins: "full" },
  { convention: "drawnFirst", begins: "empty" },
  { convention: "rainFirst", begins: "full" },
  { convention: "rainFirst", begins: "empty" },
] as const satisfies readonly { convention: RainConvention; begins: "full" | "empty" }[];

/** Days short and water missing in a part of the record. */
export interface RainPart {
  readonly days: number;
  readonly shortDays: number;
  readonly missing: number;
  readonly rain: number;
}

export interface RainRun {
  readonly convention: RainConvention;
  readonly begins: "full" | "empty";
  readonly balance: RainBalance;
  /** Share of the days, and of the water wanted, that was there. */
  readonly inTime: number;
  readonly inVolume: number;
  /** Longest run of days with birds short. */
  readonly longestShort: number;
  readonly years: readonly (RainPart & { readonly year: number })[];
  /** December to February, March to May, June to August, September to November. */
  readonly seasons: readonly RainPart[];
}

export interface RainSupply {
  readonly source: string;
  readonly index: number;
  readonly roof: RoofRun;
  readonly figure: "expect" | "size";
  readonly days: number;
  readonly firstDay: number;
  readonly missingDays: number;
  /** Whether heat was taken from the record's own temperatures, or from the plan's weather. */
  readonly heatFrom: "record" | "plan";
  /** By day [m³]. */
  readonly inflow: Float64Array;
  readonly demand: Float64Array;
  /** Full less lowest level [m³]. */
  readonly usable: number;
  /** Drawn on an average day, and on the hottest [m³]. */
  readonly demandMean: number;
  readonly demandMost: number;
  readonly runs: readonly RainRun[];
  /** The size that never fails with this roof (sequent peak, begun full); undefined: no size lasts. */
  readonly neverFails: number | undefined;
  /** The same when each day is drawn before its rain comes in; undefined likewise. */
  readonly neverFailsDrawnFirst: number | undefined;
  /** Least roof with which the vessel as it is never fails, drawn first, begun full [m²]; undefined: none does. */
  readonly roofNeeded: number | undefined;
  /** Usable sizes with the days short, drawn first and begun full, for a picture. */
  readonly sizes: readonly { readonly usable: number; readonly shortDays: number }[];
  readonly overflow: {
    readonly diameter: number;
    /** What the pipe passes with the water standing level with its top [m³/s]. */
    readonly passes: number;
    /** What the roof sheds in a downpour [m³/s]. */
    readonly downpour: number;
    readonly isEnough: boolean;
    /** Least diameter that is [m]. */
    readonly needed: number;
    /** The wettest day of the record [m], and what runs over on it at most [m³]. */
    readonly wettest: number;
    readonly wettestOver: number;
  };
}

export interface RainOptions {
  /** Source by position; the first with a roof unless told. */
  readonly source?: number;
  /** Which figure of intake is drawn; to size on unless told. */
  readonly figure?: "expect" | "size";
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
}

export type RainAnswer =
  | { readonly ok: true; readonly supply: RainSupply }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Whether a vessel under a roof would have kept a plan's birds through a record of rain. The flock stays as it is on
 * the plan's day; days whose rain is not known are taken as dry.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param record   from `readRainRecord`
 * @param options  which source, which figure, what day
 * @returns days short by year and season, sizes, overflow; or what is missing in the plan
 */
export function rainSupply(plan: Plan, record: RainRecord, options: RainOptions = {}): RainAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const index = options.source ?? plan.sources.findIndex(({ roof }) => roof !== undefined);
  const typed = plan.sources[index]?.roof;
  if (typed === undefined) return { ok: false, problems: [noRoof(Math.max(0, index))] };
  const figure = options.figure ?? "size";
  const roof = roofOf(typed);
  const source = asked.judged.line.sources[index];
  const usable =
    volumeAtLevel(source.shape, source.levels.full) - volumeAtLevel(source.shape, source.levels.lowest);
  const inflow = runOff(roof, record.rain);
  const demand = demandByDay(asked, index, record, figure);
  const parts = partsOf(record);
  const runs = RAIN_RUNS.map(({ convention, begins }) =>
    runOf(
      record,
      parts,
      balanceRain({ inflow, demand, capacity: usable, start: begins === "full" ? usable : 0 }, convention),
      begins,
    ),
  );
  const neverFails = sequentPeak(inflow, demand);
  return {
    ok: true,
    supply: {
      source: source.id,
      index,
      roof,
      figure,
      days: record.rain.length,
      firstDay: record.firstDay,
      missingDays: record.missing.reduce((sum, one) => sum + one, 0),
      heatFrom: record.air === undefined ? "plan" : "record",
      inflow,
      demand,
      usable,
      demandMean: demand.reduce((sum, one) => sum + one, 0) / demand.length,
      demandMost: demand.reduce((most, one) => Math.max(most, one), 0),
      runs,
      neverFails,
      neverFailsDrawnFirst:
        neverFails === undefined ? undefined : sizeWithoutShortDays(inflow, demand, neverFails),
      roofNeeded: roofWithoutShortDays(roof, record, demand, usable),
      sizes: sizesAround(inflow, demand, usable, neverFails),
      overflow: overflowOf(typed, roof, record),
    },
  };
}

const noRoof = (index: number): Problem => ({
  code: "missing",
  path: `sources[${index}].roof`,
  found: "nothing",
  allowed: "A source that rain fills has a roof.",
  mend: 'Add for instance "roof": {"area": "12 m2", "kind": "metal"}.',
});

function roofOf(typed: PlanRoof): RoofRun {
  const values = createTypedValues();
  const kind = typed.kind === undefined ? undefined : findRoofByName(typed.kind);
  return {
    area: values.si(typed.area, "area"),
    runoff:
      (typed.runoff === undefined ? undefined : readShare(typed.runoff)) ?? kind?.runoff ?? ANY_ROOF.runoff,
    wetting:
      typed.wetting === undefined ? (kind?.wetting ?? ANY_ROOF.wetting) : values.si(typed.wetting, "length"),
    firstFlush: values.si(typed.firstFlush ?? DEFAULTS.firstFlush.typed, "volume"),
  };
}

/** What birds draw from this source each day; in the record's own heat where it has temperatures. */
function demandByDay(
  asked: AskedPlan,
  index: number,
  record: RainRecord,
  figure: "expect" | "size",
): Float64Array {
  const { judged, flock, refills, fullVolumes: start } = asked;
  const pools = poolsOf(judged, flock, { refills, start, failed: new Set(), dripRate: 0 });
  const pool = pools.find(({ stores }) => stores.some(({ source }) => source === index));
  const share = pool === undefined ? 0 : 1 / pool.stores.length;
  const drawnIn = (high: number, low: number) => {
    const on = flockInAir(flock, { high, low });
    return (pool?.pens ?? []).reduce(
      (sum, one) => sum + share * one.share * drawOfPen(judged.line, on, on.pens[one.pen], figure).daily,
      0,
    );
  };
  const usual = drawnIn(flock.weather.high, flock.weather.low);
  const known = new Map<string, number>();
  return Float64Array.from({ length: record.rain.length }, (_, t) => {
    if (record.air === undefined || record.air.known[t] === 0) return usual;
    // To half a degree: the factor changes by 3 % with it.
    const [high, low] = [record.air.high[t], record.air.low[t]].map((one) => Math.round(2 * one) / 2);
    const key = `${high} ${low}`;
    const drawn = known.get(key) ?? drawnIn(high, Math.min(high, low));
    known.set(key, drawn);
    return drawn;
  });
}

/** Year and season of each day; seasons from December on. */
function partsOf({ rain, firstDay }: RainRecord) {
  return Array.from(rain, (_, t) => {
    const { year, month } = dateOf(firstDay + t);
    return { year, season: Math.floor((month % 12) / 3) };
  });
}

function runOf(
  record: RainRecord,
  parts: readonly { readonly year: number; readonly season: number }[],
  balance: RainBalance,
  begins: "full" | "empty",
): RainRun {
  const { short, shortDays, sums, convention } = balance;
  const years = new Map<number, RainPart>();
  const seasons = new Map<number, RainPart>();
  let [longestShort, inRow] = [0, 0];
  parts.forEach(({ year, season }, t) => {
    inRow = short[t] === 1 ? inRow + 1 : 0;
    longestShort = Math.max(longestShort, inRow);
    for (const [tally, key] of [
      [years, year],
      [seasons, season],
    ] as const) {
      const before = tally.get(key) ?? { days: 0, shortDays: 0, missing: 0, rain: 0 };
      tally.set(key, {
        days: before.days + 1,
        shortDays: before.shortDays + short[t],
        missing: before.missing + record.missing[t],
        rain: before.rain + record.rain[t],
      });
    }
  });
  return {
    convention,
    begins,
    balance,
    inTime: 1 - shortDays / parts.length,
    inVolume: sums.wanted === 0 ? 1 : sums.given / sums.wanted,
    longestShort,
    years: [...years.entries()].map(([year, part]) => ({ year, ...part })),
    seasons: [0, 1, 2, 3].map(
      (season) => seasons.get(season) ?? { days: 0, shortDays: 0, missing: 0, rain: 0 },
    ),
  };
}

const shortDaysWith = (inflow: ArrayLike<number>, demand: ArrayLike<number>, capacity: number) =>
  balanceRain({ inflow, demand, capacity, start: capacity }, "drawnFirst").shortDays;

/** Least size without a short day when each day is drawn before its rain comes in; to a hundredth of a litre. */
function sizeWithoutShortDays(
  inflow: Float64Array,
  demand: Float64Array,
  rainFirst: number,
): number | undefined {
  const most = demand.reduce((one, other) => Math.max(one, other), 0);
  let [low, high] = [0, 2 * (rainFirst + most) + 1e-3];
  if (shortDaysWith(inflow, demand, high) > 0) return undefined;
  while (high - low > 1e-5) {
    const middle = (low + high) / 2;
    if (shortDaysWith(inflow, demand, middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}

/** Least roof with which this vessel has no short day; to a thousandth. */
function roofWithoutShortDays(
  roof: RoofRun,
  record: RainRecord,
  demand: Float64Array,
  usable: number,
): number | undefined {
  const fails = (area: number) => shortDaysWith(runOff({ ...roof, area }, record.rain), demand, usable) > 0;
  let high = Math.max(roof.area, 1);
  while (fails(high)) {
    high *= 2;
    // No roof brings rain in a dry spell that is longer than the vessel lasts.
    if (high > 1e5) return undefined;
  }
  let low = 0;
  while (high - low > 1e-3 * high) {
    const middle = (low + high) / 2;
    if (fails(middle)) low = middle;
    else high = middle;
  }
  return high;
}

function sizesAround(
  inflow: Float64Array,
  demand: Float64Array,
  usable: number,
  neverFails: number | undefined,
) {
  const top = 1.1 * Math.max(usable, neverFails ?? 4 * usable);
  return Array.from({ length: 24 }, (_, k) => {
    const size = (top * (k + 1)) / 24;
    return { usable: size, shortDays: shortDaysWith(inflow, demand, size) };
  });
}

/**
 * What a round overflow passes with the water level with its top: an opening with half its bore of head over its
 * middle.
 */
function overflowOf(typed: PlanRoof, roof: RoofRun, record: RainRecord): RainSupply["overflow"] {
  const diameter = createTypedValues().si(typed.overflow ?? DEFAULTS.overflow.typed, "length");
  const passed = (bore: number) =>
    DISCHARGE_COEFFICIENT.sharp * (Math.PI / 4) * bore ** 2 * Math.sqrt(GRAVITY * bore);
  // In a downpour the whole roof sheds what falls on it.
  const downpour = roof.area * DOWNPOUR;
  const wettest = record.rain.reduce((most, one) => Math.max(most, one), 0);
  return {
    diameter,
    passes: passed(diameter),
    downpour,
    isEnough: passed(diameter) >= downpour,
    needed: findRoot((bore) => passed(bore) - downpour, 0, 2).root,
    wettest,
    wettestOver: Math.max(0, roof.runoff * roof.area * Math.max(0, wettest - roof.wetting) - roof.firstFlush),
  };
}
