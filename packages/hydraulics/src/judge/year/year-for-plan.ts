import type { Plan } from "../../document/plan-schema.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import { buildYard } from "../../model/build-yard.js";
import { buildYearWeather } from "../../model/year-weather.js";
import { readDay } from "../../units/day.js";
import { kitChangeOvers, ownChangeOvers } from "./change-overs.js";
import { giveKit } from "./kit-given.js";
import { kitOf } from "./kit-shares.js";
import { judgePeriod, type YearAsked } from "./pen-periods.js";
import { eventsOf, spansOf } from "./year-periods.js";
import type { YearAnswer } from "./year-result.js";

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
  const { weeks = 52, day, progress = () => true, mostParts } = options;
  if (!Number.isInteger(weeks) || weeks < 1 || weeks > MOST_WEEKS)
    throw new RangeError(`yearForPlan: weeks is ${weeks}; it must be a whole number from 1 to ${MOST_WEEKS}`);
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, day ?? options.from);
  if (!flocking.ok) return flocking;
  const yarding = buildYard(plan);
  if (!yarding.ok) return yarding;
  const { flock } = flocking;
  const from = (options.from === undefined ? undefined : readDay(options.from)) ?? flock.day;
  if (from === undefined) return { ok: false, problems: [NO_DAY] };
  const { line } = built;
  const { yard } = yarding;
  const asked: YearAsked = {
    plan,
    line,
    // A plan without a day is taken to be of the day the year begins.
    flock: { ...flock, day: flock.day ?? from },
    yard,
    weather: buildYearWeather(plan, flock),
  };
  const to = from + 7 * weeks;
  const batchEvents = eventsOf(asked.flock, from, to);
  const spans = spansOf(batchEvents, from, weeks);
  const judged = spans.map((span, k) => {
    progress((WEEKS_SHARE * k) / spans.length);
    return judgePeriod(asked, span);
  });
  const periods = judged.map(({ period }) => period);
  const ids = flock.pens.map(({ id }) => id);
  const kit =
    plan.kit === undefined || ids.length === 0
      ? undefined
      : giveKit(kitOf(plan), judged, {
          ...(mostParts === undefined ? {} : { mostParts }),
          progress: (done) => progress(WEEKS_SHARE + (1 - WEEKS_SHARE) * done),
        });
  const changes = [
    ...ownChangeOvers(
      yard,
      judged.map(({ first }) => first),
      to,
    ),
    ...(kit === undefined ? [] : kitChangeOvers(periods, ids, kit)),
  ];
  return {
    ok: true,
    year: {
      from,
      to,
      region: plan.region ?? "EU",
      weatherFrom: asked.weather.from,
      pens: flock.pens.map(({ id, index }) => ({ pen: id, index })),
      periods,
      events: [...batchEvents, ...changes].sort((a, b) => a.day - b.day),
      kit,
    },
  };
}

const NO_DAY = {
  code: "missing",
  path: "day",
  found: "nothing",
  allowed: "A year begins on a day.",
  mend: 'Add for instance "day": "2026-07-04", or say from which day.',
} as const;
