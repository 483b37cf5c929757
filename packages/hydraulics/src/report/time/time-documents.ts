import type { Carrying } from "../../judge/time/carrying.js";
import type { Mark } from "../../judge/time/daily-mark.js";
import type { Away } from "../../judge/time/going-away.js";
import type { Lasting } from "../../judge/time/lasting.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeAwayAnswer, writeFailure } from "./away-text.js";
import { writeMarkLines } from "./mark-text.js";

const dayOf = ({ day }: { readonly day: number | undefined }) =>
  day === undefined ? {} : { day: writeDay(day) };

/** How long it lasts, as a plain document, SI throughout: m³, m, s, kg, J. */
export function writeLastingDocument(name: string, lasting: Lasting, carrying: Carrying) {
  return {
    format: "headfall lasts",
    version: 1,
    plan: { name },
    ...lasting,
    ...dayOf(lasting),
    carrying: { ...carrying, ...dayOf(carrying) },
  };
}

export function writeAwayDocument(name: string, away: Away, system: UnitSystem) {
  const failures = away.failures.map((failure) => ({ ...failure, sentence: writeFailure(failure) }));
  const sentence = writeAwayAnswer(away, system);
  return { format: "headfall away", version: 1, plan: { name }, ...away, ...dayOf(away), failures, sentence };
}

export function writeMarkDocument(name: string, mark: Mark, system: UnitSystem) {
  return {
    format: "headfall mark",
    version: 1,
    plan: { name },
    ...mark,
    ...dayOf(mark),
    sentences: writeMarkLines(mark, system),
  };
}
