import type { Carrying } from "../../judge/time/carrying.js";
import type { Mark } from "../../judge/time/daily-mark.js";
import type { Away } from "../../judge/time/going-away.js";
import type { Lasting } from "../../judge/time/lasting.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { writeAwayAnswer, writeFailure } from "./away-text.js";
import { writeMarkLines } from "./mark-text.js";

/**
 * How long it lasts, as a plain document, SI throughout: m³, m, s, kg, J.
 *
 * @example writeLastingDocument("hens", lasting, carryingOf(plan, { weeks: 1 }).carrying).format   // "headfall lasts"
 */
export function writeLastingDocument(name: string, lasting: Lasting, carrying: Carrying) {
  const { day, ...rest } = lasting;
  const { day: carriedOn, ...carried } = carrying;
  return {
    format: "headfall lasts",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    ...rest,
    carrying: { ...dayEntry(carriedOn), ...carried },
  };
}

/**
 * Going away, as a plain document, SI throughout.
 *
 * @example writeAwayDocument("hens", away, "metric").format   // "headfall away"
 */
export function writeAwayDocument(name: string, away: Away, system: UnitSystem) {
  const failures = away.failures.map((failure) => ({ ...failure, sentence: writeFailure(failure) }));
  const sentence = writeAwayAnswer(away, system);
  const { day, ...rest } = away;
  return {
    format: "headfall away",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    ...rest,
    failures,
    sentence,
  };
}

/**
 * The daily mark, as a plain document, SI throughout.
 *
 * @example writeMarkDocument("hens", mark, "metric").format   // "headfall mark"
 */
export function writeMarkDocument(name: string, mark: Mark, system: UnitSystem) {
  const { day, ...rest } = mark;
  return {
    format: "headfall mark",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    ...rest,
    sentences: writeMarkLines(mark, system),
  };
}
