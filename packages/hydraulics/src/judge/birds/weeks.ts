import type { Plan } from "../../document/plan-schema.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import type { Flock } from "../../model/flock.js";
import { flockAtLine } from "../../model/flock-at-line.js";
import { flockInDays, flockInHeat } from "../../model/flock-on.js";
import type { Line } from "../../model/line.js";
import { raiseLine } from "../../model/raise-line.js";
import type { FrictionLaw } from "../../solve/solution.js";
import { type Certainty, type DrinkerVerdict, VERDICTS } from "../check-result.js";
import { countVerdicts, judgeLine, worstOf } from "../judge-line.js";
import { raisesOf } from "./hung-runs.js";
import { manLine } from "./man-line.js";
import { reportFlock } from "./report-flock.js";
import type { WeekReport, WeeksJudging } from "./week-report.js";

/** How far to look ahead. */
export interface WeeksOptions {
  /** Weeks to look ahead, from 0 to 104; this one comes first. Default 8. */
  readonly weeks?: number;
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
  /** Told after each week how much of all is done, from 0 to 1. */
  readonly progress?: (share: number) => void;
}

const MOST_WEEKS = 104;

/**
 * Judges a plan this week and in each that comes: the birds as old as they then are, hung runs raised to the height
 * their drinkers should then have, everything else as it is.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  how far to look ahead, and from what day
 * @returns a report a week, on days like the plan's and on days of its hot spell; or what in the plan does not fit
 * @throws RangeError when `weeks` is no whole number from 0 to 104
 * @example judgeWeeks(examplePlan("brooder"), { weeks: 1 }).weeks.length   // 2
 */
export function judgeWeeks(plan: Plan, options: WeeksOptions = {}): WeeksJudging {
  const { weeks = 8, day, progress = () => undefined } = options;
  if (!Number.isInteger(weeks) || weeks < 0 || weeks > MOST_WEEKS)
    throw new RangeError(`judgeWeeks: weeks is ${weeks}; it must be a whole number from 0 to ${MOST_WEEKS}`);
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, day);
  if (!flocking.ok) return flocking;
  const flock = flockAtLine(plan, flocking.flock);
  const judge = (week: number, hot: boolean) => {
    const older = flockInDays(flock, 7 * week);
    return judgeWeek(plan, {
      line: built.line,
      flock: hot ? flockInHeat(older) : older,
      now: flock,
      week,
      hot,
    });
  };
  const each = Array.from({ length: weeks + 1 }, (_, week) => week);
  const airs = flock.weather.hotSpell === undefined ? [false] : [false, true];
  const [usual, hot = []] = airs.map((isHot, air) =>
    each.map((week) => {
      const report = judge(week, isHot);
      progress((air * each.length + week + 1) / (airs.length * each.length));
      return report;
    }),
  );
  return { ok: true, weeks: usual, hotWeeks: hot };
}

interface WeekAsked {
  readonly line: Line;
  readonly flock: Flock;
  /** The flock on the plan's day, for which the line hangs as the plan has it. */
  readonly now: Flock;
  readonly week: number;
  readonly hot: boolean;
}

function judgeWeek(plan: Plan, { line, flock, now, week, hot }: WeekAsked): WeekReport {
  const raised = raisesOf(plan, line, now, flock);
  const by = line.runs.map(({ index }) => raised.find((run) => run.index === index)?.raise ?? 0);
  const manned = manLine(plan, raiseLine(line, by), flock);
  const { drinkers } = judgeLine(manned.line);
  const law: FrictionLaw = plan.friction === "darcy-weisbach" ? "darcyWeisbach" : "hazenWilliams";
  return {
    ...reportFlock(manned, drinkers),
    week,
    hot,
    raised,
    idleHead: rangeOf(drinkers.map(({ moments }) => moments.fullIdle[law].staticHead)),
    flowingHead: rangeOf(drinkers.map(({ moments }) => moments.lowestBusiest[law].flowingHead)),
    verdict: worstOf(drinkers),
    counts: countVerdicts(drinkers),
    worst: worstDrinker(drinkers),
  };
}

function rangeOf(heads: readonly number[]): { least: number; most: number } {
  if (heads.length === 0) return { least: 0, most: 0 };
  return heads.reduce(
    ({ least, most }, head) => ({ least: Math.min(least, head), most: Math.max(most, head) }),
    { least: Number.POSITIVE_INFINITY, most: Number.NEGATIVE_INFINITY },
  );
}

const NOT_SAMPLED: Certainty = { kind: "notSampled" };

function worstDrinker(drinkers: readonly Omit<DrinkerVerdict, "certainty">[]): DrinkerVerdict | undefined {
  let worst: Omit<DrinkerVerdict, "certainty"> | undefined;
  const rank = (one: Omit<DrinkerVerdict, "certainty">) => VERDICTS.indexOf(one.verdict);
  for (const one of drinkers) {
    const isWorse =
      worst === undefined ||
      rank(one) > rank(worst) ||
      (rank(one) === rank(worst) && one.margin < worst.margin);
    if (isWorse) worst = one;
  }
  return worst === undefined ? undefined : { ...worst, certainty: NOT_SAMPLED };
}
