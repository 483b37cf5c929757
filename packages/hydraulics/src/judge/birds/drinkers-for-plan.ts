import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import type { Batch } from "../../model/flock.js";
import { flockAtLine } from "../../model/flock-at-line.js";
import type { Line } from "../../model/line.js";
import type { PenCrowd } from "../../simulate/crowd.js";
import { crowdLoad } from "../../simulate/crowd-load.js";
import { deviceOf, groupOf, placesOf } from "../../simulate/crowd-want.js";
import {
  type Device,
  type DeviceNeeded,
  drinkersNeeded,
  type PenDrinkers,
  type Region,
} from "./drinkers-needed.js";
import { type MannedLine, manLine, needOfBirds } from "./man-line.js";

/** Drinkers that each pen of a plan needs on a day. */
export interface PlanDrinkers {
  /** Days since 1970-01-01; undefined when the plan names no day and none was asked for. */
  readonly day: number | undefined;
  readonly region: Region;
  readonly pens: readonly PenDrinkers[];
}

/** Drinkers that each pen needs, or what in the plan contradicts itself. */
export type DrinkersAnswer =
  | { readonly ok: true; readonly drinkers: PlanDrinkers }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * How many drinkers each pen of a plan needs, and why.
 *
 * @param options.day  the day it is asked on, "2026-07-04"; counts where the plan names none
 * @example drinkersForPlan(plan).drinkers.pens[0].pen   // "hens"
 */
export function drinkersForPlan(plan: Plan, options: { readonly day?: string } = {}): DrinkersAnswer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, options.day);
  if (!flocking.ok) return flocking;
  const manned = manLine(plan, built.line, flockAtLine(plan, flocking.flock));
  return {
    ok: true,
    drinkers: { day: flocking.flock.day, region: manned.region, pens: drinkersOfPens(manned) },
  };
}

/** The same of a line that has its birds already. */
export function drinkersOfPens(
  manned: Pick<MannedLine, "line" | "flock" | "crowd" | "region">,
): PenDrinkers[] {
  const kept = manned.flock.pens.flatMap(({ batches }) => batches);
  return manned.crowd.pens.map((crowd) => drinkersOfPen(manned.line, crowd, manned.region, kept));
}

function drinkersOfPen(line: Line, crowd: PenCrowd, region: Region, kept: readonly Batch[]): PenDrinkers {
  const { pen } = crowd;
  const has = new Map<Device, { count: number; places: number }>();
  for (const d of pen.drinkers) {
    const group = groupOf(line, d);
    const device = deviceOf(group);
    has.set(device, { count: (has.get(device)?.count ?? 0) + 1, places: placesOf(group) });
  }
  const isSuggestion = has.size === 0;
  if (isSuggestion) has.set("nipple", { count: 0, places: 1 });
  const birds = birdsAtOnce(crowd);
  const devices = [...has].map(
    ([device, { count, places }]): DeviceNeeded => ({
      ...drinkersNeeded(pen, device, { region, atOnce: { birds, places }, kept }),
      has: count,
    }),
  );
  return {
    pen: pen.id,
    index: pen.index,
    ...(pen.isElsewhere === undefined ? {} : { isElsewhere: pen.isElsewhere }),
    devices,
    isSuggestion,
    covered: devices.reduce((sum, { has: count, needed }) => sum + (needed === 0 ? 1 : count / needed), 0),
  };
}

/** As the pen's drinkers give now; where none gives, as nipples would that give what the birds should have. */
export function birdsAtOnce({ pen, want, load, giving }: PenCrowd): number {
  if (giving.length > 0) return load.atOnce;
  const nipple = { flow: needOfBirds(pen), workedBy: "trigger", places: 1 } as const;
  return crowdLoad(want.batches, [nipple]).atOnce;
}
