import type { RainSupply } from "../../judge/rain/rain-answer.js";
import type { DayResult } from "../../simulate/day-result.js";
import type { DaysSummary } from "../../simulate/day-summary.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { withPlainLists } from "../plain-lists.js";
import { writeRainAnswer } from "./rain-text.js";

/**
 * One simulated day, as a plain document, SI throughout.
 *
 * @example writeDayDocument("hen house", day).format   // "headfall day"
 */
export function writeDayDocument(name: string, result: DayResult) {
  const { day, ...rest } = result;
  return {
    format: "headfall day",
    version: 1,
    plan: { name },
    ...withPlainLists(rest),
    ...dayEntry(day),
  } as const;
}

/**
 * Many simulated days put together, as a plain document, SI throughout.
 *
 * @example writeDaysDocument("hen house", summariseDays([rowOf(day)])).format   // "headfall days"
 */
export function writeDaysDocument(name: string, summary: DaysSummary) {
  return { format: "headfall days", version: 1, plan: { name }, ...summary } as const;
}

/**
 * A roof and a vessel through a record of rain, as a plain document, SI throughout.
 *
 * @example writeRainDocument("barrel", supply, "metric").format   // "headfall rain"
 */
export function writeRainDocument(name: string, supply: RainSupply, system: UnitSystem) {
  const { firstDay, ...rest } = supply;
  return {
    format: "headfall rain",
    version: 1,
    plan: { name },
    answer: writeRainAnswer(supply, system),
    ...withPlainLists(rest),
    firstDay: writeDay(firstDay),
  } as const;
}
