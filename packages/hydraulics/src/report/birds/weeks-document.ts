import type { Plan } from "../../document/plan-schema.js";
import type { WeekReport } from "../../judge/birds/week-report.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { writeJudgement } from "../sentences.js";
import { flockEntry } from "./flock-entry.js";

const WEEKS_FORMAT = { format: "headfall weeks", version: 1 } as const;

/**
 * The coming weeks as a plain document, SI throughout; described in docs/reference/check-result.md.
 *
 * @example writeWeeksDocument(small, { weeks: [], hotWeeks: [] }, "metric").format   // "headfall weeks"
 */
export function writeWeeksDocument(
  plan: Plan,
  judged: { readonly weeks: readonly WeekReport[]; readonly hotWeeks: readonly WeekReport[] },
  system: UnitSystem,
) {
  return {
    ...WEEKS_FORMAT,
    plan: { name: plan.name ?? "" },
    weeks: judged.weeks.map((week) => weekEntry(week, system)),
    hotWeeks: judged.hotWeeks.map((week) => weekEntry(week, system)),
  };
}

function weekEntry(report: WeekReport, system: UnitSystem) {
  const { week, hot, raised, idleHead, flowingHead, verdict, counts, worst, day, ...flock } = report;
  return {
    week,
    hot,
    ...dayEntry(day),
    verdict,
    counts,
    raised: raised.map(({ index: _, ...run }) => run),
    idleHead,
    flowingHead,
    ...(worst === undefined
      ? {}
      : {
          worst: {
            drinker: worst.drinker,
            verdict: worst.verdict,
            margin: worst.margin,
            because: worst.because,
            sentence: `${worst.drinker} ${writeJudgement(worst, system)}`,
          },
        }),
    ...flockEntry(flock, system),
  };
}
