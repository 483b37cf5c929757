import { DEFAULTS } from "../document/defaults.js";
import type { Plan, PlanSource } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { buildFlock } from "../model/build-flock.js";
import { buildLine } from "../model/build-line.js";
import type { Flock } from "../model/flock.js";
import { flockAtLine } from "../model/flock-at-line.js";
import { createTypedValues } from "../model/typed-values.js";
import { DROP_VOLUME, flowOfDrips } from "../physics/drips.js";
import { volumeAtLevel } from "../physics/vessel.js";
import type { Refill } from "../simulate/drawdown.js";
import { readClock } from "../units/day.js";
import { manLine } from "./birds/man-line.js";
import { type JudgedLine, judgeLine } from "./judge-line.js";
import type { WeighedLine } from "./weigh-line.js";

/** A plan read for questions of time: its line weighed with its birds at it, and how each source is filled. */
export interface WeighedPlan {
  readonly plan: Plan;
  readonly judged: WeighedLine;
  readonly flock: Flock;
  /** By source. */
  readonly refills: readonly Refill[];
  readonly fullVolumes: readonly number[];
}

/** The same with the line judged in full. */
export interface AskedPlan extends WeighedPlan {
  readonly judged: JudgedLine;
}

export type AskingPlan =
  | { readonly ok: true; readonly asked: AskedPlan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** @param day  the day asked about, "2026-07-04"; counts where the plan names none */
export function askPlan(plan: Plan, day?: string): AskingPlan {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, day);
  if (!flocking.ok) return flocking;
  const flock = flockAtLine(plan, flocking.flock);
  const line = flock.pens.length === 0 ? built.line : manLine(plan, built.line, flock).line;
  const asked: AskedPlan = {
    plan,
    judged: judgeLine(line),
    flock,
    refills: plan.sources.map(refillOf),
    fullVolumes: line.sources.map(({ shape, levels }) => volumeAtLevel(shape, levels.full)),
  };
  return { ok: true, asked };
}

/** Where a plan is asked about without a time, the day begins with the morning round [s after midnight]. */
export const MORNING = readClock(DEFAULTS.refillAt.typed) ?? 0;

function refillOf({ refill }: PlanSource): Refill {
  const values = createTypedValues();
  if (refill === undefined || refill === "none") return { kind: "none" };
  if ("hose" in refill) return { kind: "hose", flow: values.si(refill.hose, "flow") };
  const every = values.si(refill.every, "time");
  const at = readClock(refill.at ?? DEFAULTS.refillAt.typed) ?? MORNING;
  // The vessels are full when the question begins; the next round comes one interval later.
  const first = at + every - (at > MORNING ? Math.min(every, 86_400) : 0);
  return { kind: "byHand", every, first: first > MORNING ? first : first + every };
}

/**
 * Water lost by a drinker that drips [m³/s]: ten small drops a minute to expect, at worst a large one each second; how
 * often is common practice, no source.
 *
 * @source hydrology-drops, laboratory drop of 0.05 mL, seen
 */
export const DRIP = {
  expect: (10 * DROP_VOLUME.small) / 60,
  worst: flowOfDrips({ rate: 1, volume: DROP_VOLUME.large }),
} as const;
