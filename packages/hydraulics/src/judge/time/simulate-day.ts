import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { flockInHeat } from "../../model/flock-on.js";
import { runDay } from "../../simulate/day.js";
import type { DayResult } from "../../simulate/day-result.js";
import { buildDaySetting, type DaySetting } from "../../simulate/day-setting.js";
import { askPlan } from "../asked-plan.js";
import { poolsOf } from "./give-out.js";

/** How a day is simulated. */
export interface SimulateOptions {
  /** The same seed gives the same day, to the bit. Default 1. */
  readonly seed?: number;
  /** Which figure of intake birds want: to expect (default), or to size on. */
  readonly figure?: "expect" | "size";
  /** A day of the plan's hot spell. */
  readonly hot?: boolean;
  /** Whether every event is kept, for playing. */
  readonly record?: boolean;
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
}

/** All that a simulated day needs, or what in the plan contradicts itself. */
export type SettingDay =
  | { readonly ok: true; readonly setting: DaySetting }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A simulated day, or what in the plan contradicts itself. */
export type Simulating =
  | { readonly ok: true; readonly result: DayResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * All that a plan's days have in common, to be run with `runDay` for many seeds.
 *
 * @example settingOfPlan(plan).setting.pens.length   // 1
 */
export function settingOfPlan(
  plan: Plan,
  options: Omit<SimulateOptions, "seed" | "record"> = {},
): SettingDay {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { judged, flock, refills, fullVolumes: start } = asking.asked;
  const { line, filling } = judged;
  const on = options.hot === true ? flockInHeat(flock) : flock;
  const pools = poolsOf(judged, on, { refills, start, failed: new Set(), dripRate: 0 });
  const airHead = Array.from(line.drinkers.point, (point) => filling.airHead[point]);
  return { ok: true, setting: buildDaySetting(line, on, pools, options.figure ?? "expect", airHead) };
}

/**
 * One simulated day of a plan's birds at its drinkers, with the line solved for every set of drinkers at work.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  seed, figure, weather, day, and whether to keep every event
 * @returns the day, or what in the plan does not fit; the same plan and options give the same day to the bit
 * @example simulateDay(plan, { seed: 1 }).result.pens[0].drunk   // 0.00887
 */
export function simulateDay(plan: Plan, options: SimulateOptions = {}): Simulating {
  const set = settingOfPlan(plan, options);
  if (!set.ok) return set;
  const { seed = 1, figure = "expect", record = false } = options;
  return { ok: true, result: runDay(set.setting, { seed, figure, record }) };
}
