import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { type Flock, isThere } from "../../model/flock.js";
import { flockInDays, flockInHeat } from "../../model/flock-on.js";
import { drawDown, type Refill } from "../../simulate/drawdown.js";
import { drawOfPen } from "../../simulate/pen-draw.js";
import { drawnAt, givesAll } from "../../simulate/pool.js";
import { type AskedPlan, askPlan, DRIP, MORNING } from "../asked-plan.js";
import { poolsOf } from "./give-out.js";

const DAY = 86_400;

/** One source, full, before nobody comes for a while [m³]. */
export interface AwaySource {
  readonly source: string;
  /** To be filled to its full level; what it then holds, and what of that reaches the birds. */
  readonly full: number;
}

/** A station that fails at the worst time: when it does, on the hottest day, with everything full. */
export interface StationFailure {
  readonly kind: "source" | "drinkers";
  readonly what: string;
  /** Until some bird goes without [s]; 0: at once, in the busiest hour; undefined: not within the time away. */
  readonly after: number | undefined;
  readonly pen: string | undefined;
}

/** What must stand there while nobody comes. Volumes [m³], times [s]. */
export interface Away {
  readonly days: number;
  readonly day: number | undefined;
  readonly begins: number;
  /** Hot days counted in, at the beginning, where they do most harm. */
  readonly hotDays: number;
  /** Drawn over that time on the cautious figure, spilling and drips counted [m³]. */
  readonly needed: number;
  /** What the full sources can give before some bird goes without [m³]. */
  readonly usable: number;
  /** Missing; 0 when it lasts [m³]. */
  readonly short: number;
  /** Until the first bird goes without [s]; undefined: it lasts. */
  readonly lasts: number | undefined;
  readonly pen: string | undefined;
  readonly sources: readonly AwaySource[];
  readonly failures: readonly StationFailure[];
  /** Somebody should look in at least this often, so that no single failure leaves birds without [s]; undefined: a failure is felt at once. */
  readonly lookEvery: number | undefined;
}

/** How going away goes, or what in the plan contradicts itself. */
export type AwayAnswer =
  | { readonly ok: true; readonly away: Away }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What must be filled and standing so that nobody goes without while nobody comes: on the cautious figure, the plan's
 * hot spell first, nothing refilled; and what becomes of it when one source or one group of drinkers fails.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  `days` away, 1 to 60; `day` asked about
 * @returns the answer, or what in the plan does not fit
 * @throws RangeError when `days` is not from 1 to 60
 * @example goingAway(examplePlan("five-days-away"), { days: 5 }).away.needed   // 0.03095
 */
export function goingAway(
  plan: Plan,
  options: { readonly days: number; readonly day?: string | undefined },
): AwayAnswer {
  const { days, day } = options;
  if (!(days >= 1 && days <= 60)) throw new RangeError(`goingAway: days is ${days}; it must be from 1 to 60`);
  const asking = askPlan(plan, day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const spell = asked.flock.weather.hotSpell;
  const hotDays = spell === undefined ? 0 : Math.min(days, spell.days);
  const whole = standAlone(asked, days, hotDays, new Set());
  const failures = stationsOf(asked).map((station): StationFailure => {
    const { lasts, pen } = standAlone(
      asked,
      days,
      Math.max(hotDays, spell === undefined ? 0 : 1),
      station.drinkers,
    );
    return { kind: station.kind, what: station.what, after: lasts, pen };
  });
  const first = failures.reduce((least, { after }) => Math.min(least, after ?? days * DAY), days * DAY);
  return {
    ok: true,
    away: {
      days,
      day: asked.flock.day,
      begins: MORNING,
      hotDays,
      ...whole,
      sources: asked.judged.line.sources.map(({ id }, i) => ({ source: id, full: asked.fullVolumes[i] })),
      failures,
      lookEvery: first > 0 ? first : undefined,
    },
  };
}

function standAlone(asked: AskedPlan, days: number, hotDays: number, failed: ReadonlySet<number>) {
  const { judged, flock } = asked;
  const refills = asked.refills.map((): Refill => ({ kind: "none" }));
  const flockOn = (day: number): Flock => {
    const older = flockInDays(flock, day);
    return day < hotDays ? flockInHeat(older) : older;
  };
  const supply = { refills, start: asked.fullVolumes, failed, dripRate: DRIP.expect };
  const pools = poolsOf(judged, flockOn(0), supply);
  const lasts = days * DAY;
  const drawdown = drawDown(judged.line, flock, pools, { figure: "size", from: MORNING, lasts, flockOn });
  const short = drawdown.events.find(({ kind }) => kind === "penShort");
  const stranded = strandedPen(
    asked,
    pools.flatMap(({ pens }) => pens.map(({ pen }) => pen)),
  );
  const usable = pools.reduce((sum, pool) => {
    const heights = pool.shortBelow.map(({ surface }) => surface);
    return sum + (heights.length === 0 ? givesAll(pool) : drawnAt(pool, Math.max(...heights)));
  }, 0);
  const drips = pools.reduce((sum, pool) => sum + pool.drips * lasts, 0);
  const needed = drips + drunkOver(asked, flockOn, days);
  const pen = stranded ?? (short?.kind === "penShort" ? asked.flock.pens[short.pen].id : undefined);
  return {
    needed,
    usable,
    short: Math.max(0, needed - usable),
    lasts: stranded !== undefined ? 0 : short === undefined ? undefined : short.time - MORNING,
    pen,
  };
}

/** A pen with birds that no pool serves any more. */
function strandedPen({ flock }: AskedPlan, served: readonly number[]): string | undefined {
  return flock.pens.find(({ batches }, p) => !served.includes(p) && batches.some(isThere))?.id;
}

function drunkOver({ judged, flock }: AskedPlan, flockOn: (day: number) => Flock, days: number): number {
  let sum = 0;
  for (let day = 0; day < days; day += 1) {
    const on = flockOn(day);
    sum += flock.pens.reduce(
      (total, _, p) => total + drawOfPen(judged.line, on, on.pens[p], "size").daily,
      0,
    );
  }
  return sum;
}

interface Station {
  readonly kind: StationFailure["kind"];
  readonly what: string;
  /** Drinkers that give nothing when it fails. */
  readonly drinkers: ReadonlySet<number>;
}

/** Each source with the drinkers it alone feeds, and each group of drinkers that some pen reaches. */
function stationsOf({ judged, flock, refills, fullVolumes }: AskedPlan): Station[] {
  const { line } = judged;
  const supply = { refills, start: fullVolumes, failed: new Set<number>(), dripRate: 0 };
  const pools = poolsOf(judged, flock, supply);
  const sources = pools
    .filter(({ stores }) => stores.length === 1)
    .map(
      ({ stores, dryBelow }): Station => ({
        kind: "source",
        what: line.sources[stores[0].source].id,
        drinkers: new Set(dryBelow.map(({ drinker }) => drinker)),
      }),
    );
  const groups = line.drinkers.groups.map(
    ({ id, first, count }): Station => ({
      kind: "drinkers",
      what: id,
      drinkers: new Set(Array.from({ length: count }, (_, k) => first + k)),
    }),
  );
  return [...sources, ...groups];
}
