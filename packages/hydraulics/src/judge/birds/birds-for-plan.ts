import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import type { Batch, Pen, Weather } from "../../model/flock.js";
import { flockAtLine } from "../../model/flock-at-line.js";
import { type BatchIntake, type FlockIntake, intakeOfBatch } from "../../model/flock-intake.js";
import { flockInAir, flockInDays, HOT_DAY } from "../../model/flock-on.js";
import { deviceOf, groupOf } from "../../simulate/crowd-want.js";
import { type SpilledShare, spilledShareOf } from "../../tables/spilled-share.js";
import { drinkersOfPens } from "./drinkers-for-plan.js";
import type { Device, PenDrinkers, Region } from "./drinkers-needed.js";
import { type HangRange, hangAtForBirds } from "./hang-range.js";
import { type MannedLine, manLine } from "./man-line.js";
import { spilledAtPen } from "./report-flock.js";
import { takenByFlock, takenByPen } from "./taken-by-flock.js";

/** One batch on the day asked about. Volumes are a bird's, what is spilled not counted. */
export interface BatchDay {
  readonly kind: string;
  readonly kindName: string;
  readonly count: number;
  /** Below 0 they have not come yet. */
  readonly ageDays: number;
  readonly intake: BatchIntake;
  /** On the hot day. */
  readonly hot: BatchIntake;
  /** Days until it no longer drowns in open water; 0 when it does not. */
  readonly drownsFor: number;
}

/** One pen: its water, with what is spilled [m³/day]; its drinkers; how high they should hang. */
export interface PenBirds {
  readonly pen: string;
  readonly index: number;
  readonly birds: number;
  readonly batches: readonly BatchDay[];
  readonly now: FlockIntake;
  readonly hot: FlockIntake;
  /** Over what is drunk; and by device where it is from. */
  readonly spilled: number;
  readonly spilledFrom: readonly SpilledShare[];
  readonly drinkers: PenDrinkers;
  /** By device, this week and each that comes; undefined where no table has these birds. */
  readonly hangs: readonly { readonly device: Device; readonly weeks: readonly (HangRange | undefined)[] }[];
}

/** All pens in one week, with what is spilled [m³/day]. */
export interface BirdsWeek {
  /** 0: the day asked about. */
  readonly week: number;
  readonly day: number | undefined;
  readonly ages: readonly { readonly kindName: string; readonly ageDays: number }[];
  readonly now: FlockIntake;
  readonly hot: FlockIntake;
}

/** What the birds of a plan drink and need. */
export interface BirdsOfPlan {
  readonly day: number | undefined;
  readonly region: Region;
  readonly weather: Weather;
  /** The hot day [°C]: the plan's hot spell, or one taken because it names none. */
  readonly hotDay: { readonly high: number; readonly low: number; readonly isTaken: boolean };
  readonly pens: readonly PenBirds[];
  readonly weeks: readonly BirdsWeek[];
}

/** What the birds drink and need, or what in the plan contradicts itself. */
export type BirdsAnswer =
  | { readonly ok: true; readonly birds: BirdsOfPlan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What the birds of a plan drink, now, on a hot day and each coming week, and what drinkers they need.
 *
 * @param options.day    the day it is asked on, "2026-07-04"; counts where the plan names none
 * @param options.weeks  how many to look ahead; 8 if left out
 * @example birdsForPlan(plan).birds.pens[0].birds   // 40
 */
export function birdsForPlan(
  plan: Plan,
  { day, weeks = 8 }: { readonly day?: string; readonly weeks?: number } = {},
): BirdsAnswer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, day);
  if (!flocking.ok) return flocking;
  const { flock } = flocking;
  const manned = manLine(plan, built.line, flockAtLine(plan, flock));
  // Every bird drinks, those at loose waterers too; the line serves only its own.
  const all = { ...manned, flock };
  const hotDay = hotDayOf(flock.weather);
  const drinkers = drinkersOfPens(manned);
  return {
    ok: true,
    birds: {
      day: flock.day,
      region: manned.region,
      weather: flock.weather,
      hotDay,
      pens: flock.pens.map((pen, p) => penBirds(all, pen, drinkers[p], { hotDay, weeks })),
      weeks: Array.from({ length: weeks + 1 }, (_, week) => weekOf(all, week, hotDay)),
    },
  };
}

function hotDayOf({ high, low, hotSpell }: Weather): BirdsOfPlan["hotDay"] {
  if (hotSpell !== undefined) return { high: hotSpell.high, low: hotSpell.low, isTaken: false };
  const hottest = Math.max(high, HOT_DAY);
  return { high: hottest, low: hottest - (high - low), isTaken: true };
}

function penBirds(
  { line, flock }: MannedLine,
  pen: Pen,
  drinkers: PenDrinkers,
  { hotDay, weeks }: { readonly hotDay: BirdsOfPlan["hotDay"]; readonly weeks: number },
): PenBirds {
  const heat = flockInAir(flock, hotDay).weather;
  const devices = [...new Set(pen.drinkers.map((d) => deviceOf(groupOf(line, d))))];
  return {
    pen: pen.id,
    index: pen.index,
    birds: pen.batches.reduce((sum, { ageDays, count }) => sum + (ageDays < 0 ? 0 : count), 0),
    batches: pen.batches.map((batch) => batchDay(batch, flock.weather, heat)),
    now: takenByPen(line, pen, flock.weather),
    hot: takenByPen(line, pen, heat),
    spilled: spilledAtPen(line, pen),
    spilledFrom: devices.map(spilledShareOf),
    drinkers,
    hangs: drinkers.devices.map(({ device }) => ({
      device,
      weeks: Array.from({ length: weeks + 1 }, (_, week) =>
        hangAtForBirds(flockInDays(flock, 7 * week).pens[pen.index], device),
      ),
    })),
  };
}

function batchDay(batch: Batch, weather: Weather, heat: Weather): BatchDay {
  const { kind, count, ageDays } = batch;
  return {
    kind: kind.id,
    kindName: kind.name,
    count,
    ageDays,
    intake: intakeOfBatch(batch, weather),
    hot: intakeOfBatch(batch, heat),
    drownsFor: count === 0 ? 0 : Math.max(0, kind.drownsUntilDays - Math.max(0, ageDays)),
  };
}

function weekOf({ line, flock }: MannedLine, week: number, hotDay: BirdsOfPlan["hotDay"]): BirdsWeek {
  const then = flockInDays(flock, 7 * week);
  return {
    week,
    day: then.day,
    ages: then.pens.flatMap(({ batches }) =>
      batches.filter(({ count }) => count > 0).map(({ kind, ageDays }) => ({ kindName: kind.name, ageDays })),
    ),
    now: takenByFlock(line, then),
    hot: takenByFlock(line, flockInAir(then, hotDay)),
  };
}
