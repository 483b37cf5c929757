import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import { buildYard } from "../../model/build-yard.js";
import { buildYearWeather } from "../../model/year-weather.js";
import { readDay } from "../../units/day.js";
import { kitChangeOvers, ownChangeOvers } from "./change-overs.js";
import { giveKit } from "./kit-given.js";
import { kitOf } from "./kit-shares.js";
import { type JudgedPeriod, judgePeriod, type YearAsked } from "./pen-periods.js";
import { eventsOf, spansOf } from "./year-periods.js";
import type { ChangeOverEvent, KitGiven, YearAnswer } from "./year-result.js";

/** Which weeks, and how long the search for the kit may go on. */
export interface YearOptions {
  /** The first day looked at, "2026-07-04"; the plan's day if left out, else the day asked. */
  readonly from?: string | undefined;
  /** From 1 to 104; 52 if left out. */
  readonly weeks?: number;
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day?: string | undefined;
  /** Parts of all ways to give out the kit that are looked at before what is found must do. */
  readonly mostParts?: number;
  /** Told how much is done, from 0 to 1; false ends the search for a better way to give out the kit. */
  readonly progress?: (done: number) => boolean;
}

const MOST_WEEKS = 104;
/** Of all the work, what the weeks themselves come to; the rest is giving out the kit. */
const WEEKS_SHARE = 0.4;

/**
 * A plan through a year: week by week who is in each pen, what they drink, what serves them and how high it hangs;
 * when
 * batches come, grow, move and leave; and the kit on hand given out to the pens, with what is short and what to buy.
 *
 * @param plan  from `readPlan` or `checkDocument`
 * @throws RangeError when `weeks` is no whole number from 1 to 104
 * @example yearForPlan(examplePlan("yard"), { weeks: 2 }).year.periods.length   // 2
 */
export function yearForPlan(plan: Plan, options: YearOptions = {}): YearAnswer {
  const { weeks = 52, progress = () => true } = options;
  if (!Number.isInteger(weeks) || weeks < 1 || weeks > MOST_WEEKS)
    throw new RangeError(`yearForPlan: weeks is ${weeks}; it must be a whole number from 1 to ${MOST_WEEKS}`);
  const asking = askYear(plan, options);
  if (!asking.ok) return asking;
  const { asked, from } = asking;
  const to = from + 7 * weeks;
  const batchEvents = eventsOf(asked.flock, from, to);
  const spans = spansOf(batchEvents, from, weeks);
  const judged = spans.map((span, k) => {
    progress((WEEKS_SHARE * k) / spans.length);
    return judgePeriod(asked, span);
  });
  const kit = kitThrough(asked, judged, options);
  return {
    ok: true,
    year: {
      from,
      to,
      region: plan.region ?? "EU",
      weatherFrom: asked.weather.from,
      pens: asked.flock.pens.map(({ id, index }) => ({ pen: id, index })),
      periods: judged.map(({ period }) => period),
      events: [...batchEvents, ...changeOvers(asked, judged, kit, to)].sort((a, b) => a.day - b.day),
      kit,
    },
  };
}

type YearAsking =
  | { readonly ok: true; readonly asked: YearAsked; readonly from: number }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** All that is judged through the weeks, and the first day of them; or what in the plan contradicts itself. */
function askYear(plan: Plan, { from: typed, day }: YearOptions): YearAsking {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const { line } = built;
  const flocking = buildFlock(plan, line, day ?? typed);
  if (!flocking.ok) return flocking;
  const yarding = buildYard(plan);
  if (!yarding.ok) return yarding;
  const { flock } = flocking;
  const from = (typed === undefined ? undefined : readDay(typed)) ?? flock.day;
  if (from === undefined) return { ok: false, problems: [NO_DAY] };
  // A plan without a day is taken to be of the day the year begins.
  const onDay = { ...flock, day: flock.day ?? from };
  const weather = buildYearWeather(plan, flock);
  return { ok: true, asked: { plan, line, flock: onDay, yard: yarding.yard, weather }, from };
}

/** The kit on hand given out week by week; undefined where the plan has none, or no pen to give it to. */
function kitThrough(
  { plan, flock }: YearAsked,
  judged: readonly JudgedPeriod[],
  { mostParts, progress = () => true }: YearOptions,
): KitGiven | undefined {
  if (plan.kit === undefined || flock.pens.length === 0) return undefined;
  return giveKit(kitOf(plan), judged, {
    ...(mostParts === undefined ? {} : { mostParts }),
    progress: (done) => progress(WEEKS_SHARE + (1 - WEEKS_SHARE) * done),
  });
}

/** When waterers are changed over: those of the yard as the birds grow, and those of the kit as it is given out. */
function changeOvers(
  { flock, yard }: YearAsked,
  judged: readonly JudgedPeriod[],
  kit: KitGiven | undefined,
  to: number,
): ChangeOverEvent[] {
  const firsts = judged.map(({ first }) => first);
  const own = ownChangeOvers(yard, firsts, to);
  if (kit === undefined) return own;
  const periods = judged.map(({ period }) => period);
  const ids = flock.pens.map(({ id }) => id);
  return [...own, ...kitChangeOvers(periods, ids, kit)];
}

const NO_DAY = {
  code: "missing",
  path: "day",
  found: "nothing",
  allowed: "A year begins on a day.",
  mend: 'Add for instance "day": "2026-07-04", or say from which day.',
} as const;
