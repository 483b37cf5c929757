import { DEFAULTS } from "../../document/defaults.js";
import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import type { Flock } from "../../model/flock.js";
import { flockInDays, flockInHeat } from "../../model/flock-on.js";
import { createTypedValues } from "../../model/typed-values.js";
import { GRAVITY } from "../../physics/constants.js";
import { drawOfPen, type IntakeFigure } from "../../simulate/pen-draw.js";
import { type AskedPlan, askPlan } from "../asked-plan.js";
import { poolsOf } from "./give-out.js";

/** What is carried on one day. */
export interface CarryingDay {
  /** 0: the plan's day; then a week apart. */
  readonly week: number;
  readonly hot: boolean;
  /** Carried in a day, on the figure to size on and on the one to expect [m³]. */
  readonly volume: { readonly expect: number; readonly size: number };
  /** Trips a day, and what each weighs [kg]: the water, without the bucket. */
  readonly trips: { readonly expect: number; readonly size: number };
  readonly massPerTrip: number;
  /** Climbed in a day on the figure to size on [m], and the work of lifting the water [J]. */
  readonly climb: number;
  readonly work: number;
}

/** What is carried to the sources day by day. Masses [kg], climb [m]. */
export interface Carrying {
  readonly day: number | undefined;
  /** In one trip [m³], after the limit on its weight, and whether the limit made it less. */
  readonly each: number;
  readonly isLimited: boolean;
  /** Up each trip [m]; negative downhill. */
  readonly climb: number;
  /** Sources that are filled by hand; those with a hose, a feed or a roof are not carried to. */
  readonly sources: readonly string[];
  readonly days: readonly CarryingDay[];
}

/** What is carried, or what in the plan contradicts itself. */
export type CarryingAnswer =
  | { readonly ok: true; readonly carrying: Carrying }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What is carried to the sources that are filled by hand: kilograms a trip, trips a day, climb; now, on a hot day, and
 * in the coming weeks.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  `weeks` to look ahead (8 unless told); `day` asked about
 * @returns the answer, or what in the plan does not fit
 * @example carryingOf(plan, { weeks: 1 }).carrying.days.length   // 4
 */
export function carryingOf(
  plan: Plan,
  options: { readonly weeks?: number; readonly day?: string | undefined } = {},
): CarryingAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const { density } = asked.judged.line.water;
  const load = loadOf(plan, density);
  const byHand = plan.sources.flatMap(({ refill, feed, roof }, i) =>
    feed === undefined && roof === undefined && !(typeof refill === "object" && "hose" in refill) ? [i] : [],
  );
  const share = sharesByHand(asked, byHand);
  const dayOf = (week: number, hot: boolean): CarryingDay => {
    const older = flockInDays(asked.flock, 7 * week);
    const volume = carriedOn(asked, hot ? flockInHeat(older) : older, share);
    const trips = {
      expect: tripsFor(volume.expect, load.each),
      size: tripsFor(volume.size, load.each),
    };
    return {
      week,
      hot,
      volume,
      trips,
      massPerTrip: load.each * density,
      climb: trips.size * Math.max(0, load.climb),
      work: volume.size * density * GRAVITY * Math.max(0, load.climb),
    };
  };
  const weeks = Array.from({ length: (options.weeks ?? 8) + 1 }, (_, week) => week);
  const isHotGiven = asked.flock.weather.hotSpell !== undefined;
  return {
    ok: true,
    carrying: {
      day: asked.flock.day,
      ...load,
      sources: byHand.map((i) => asked.judged.line.sources[i].id),
      days: [
        ...weeks.map((week) => dayOf(week, false)),
        ...(isHotGiven ? weeks.map((week) => dayOf(week, true)) : []),
      ],
    },
  };
}

/** Whole trips; a thousandth of one is not walked for. */
const tripsFor = (volume: number, each: number): number => Math.max(0, Math.ceil(volume / each - 1e-3));

function loadOf({ carry }: Plan, density: number) {
  const values = createTypedValues();
  const typed = values.si(carry?.each ?? DEFAULTS.carryEach.typed, "volume");
  const most = carry?.most === undefined ? Number.POSITIVE_INFINITY : carry.most / density;
  return {
    each: Math.min(typed, most),
    isLimited: most < typed,
    climb: values.si(carry?.climb ?? DEFAULTS.carryClimb.typed, "length"),
  };
}

/** By pen, the share of its draw that comes from sources filled by hand. */
function sharesByHand(asked: AskedPlan, byHand: readonly number[]): number[] {
  const { judged, flock, refills, fullVolumes } = asked;
  const supply = { refills, start: fullVolumes, failed: new Set<number>(), dripRate: 0 };
  const shares = flock.pens.map(() => 0);
  for (const pool of poolsOf(judged, flock, supply)) {
    const carried = pool.stores.filter(({ source }) => byHand.includes(source)).length / pool.stores.length;
    for (const { pen, share } of pool.pens) shares[pen] += share * carried;
  }
  return shares;
}

function carriedOn({ judged }: AskedPlan, flock: Flock, shares: readonly number[]) {
  const drawn = (figure: IntakeFigure) =>
    flock.pens.reduce((sum, pen, p) => sum + shares[p] * drawOfPen(judged.line, flock, pen, figure).daily, 0);
  return { expect: drawn("expect"), size: drawn("size") };
}
