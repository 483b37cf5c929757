import type { Away, StationFailure } from "../../judge/time/going-away.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeDuration } from "../durations.js";
import { writeVolume } from "../words.js";

/** Going away, as text for a terminal. */
export function writeAwayText(title: string, away: Away, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: ${away.days} ${away.days === 1 ? "day" : "days"} away`;
  const sections = [
    `${paint(head, "title")}\n${paint(writeAwayAnswer(away, system), away.lasts === undefined ? "good" : "dry")}`,
    `${paint("Filled and standing", "title")}\n${away.sources.map(({ source, full }) => `- ${source}: ${writeVolume(full, system)}`).join("\n")}`,
    `${paint("One station failed on the hottest day", "title")}\n${away.failures.map((failure) => `- ${writeFailure(failure)}`).join("\n")}\n${writeLookEvery(away)}`,
    `${paint("Cautions", "title")}\n- Somebody should look at the birds and their water every day, also while you are away: no computed figure replaces that.`,
  ];
  return `${sections.join("\n\n")}\n`;
}

/**
 * Whether it lasts, in a sentence with its numbers.
 *
 * @example writeAwayAnswer(away, "metric")   // "It lasts: 31 L are needed on the cautious figure, 3 hot ..."
 */
export function writeAwayAnswer(away: Away, system: UnitSystem): string {
  const { needed, usable, lasts, pen, hotDays } = away;
  const hot =
    hotDays === 0 ? "" : `, ${hotDays === 1 ? "a hot day" : `${hotDays} hot days`} at the beginning`;
  const figures = `${writeVolume(needed, system)} are needed on the cautious figure${hot}; ${writeVolume(usable, system)} of what stands there reach the birds`;
  if (lasts === undefined) return `It lasts: ${figures}.`;
  const missing =
    away.short > 0
      ? ` ${writeVolume(away.short, system)} more must stand there, or somebody must fill it in between.`
      : "";
  const when = lasts <= 0 ? "from the start" : `after ${writeDuration(lasts)}`;
  return `It does not last: ${penWords(pen)} goes without ${when}. ${figures}.${missing}`;
}

/**
 * What one failure does, in a sentence.
 *
 * @example writeFailure(away.failures[0])   // "If drum gives nothing: the pen hens goes without after 2 ..."
 */
export function writeFailure({ kind, what, after, pen }: StationFailure): string {
  const words = kind === "source" ? `${what} gives nothing` : `the drinkers ${what} give nothing`;
  if (after === undefined) return `If ${words}: the rest keeps up while you are away.`;
  const when = after <= 0 ? "at once" : `after ${writeDuration(after)}`;
  return `If ${words}: ${penWords(pen)} goes without ${when}.`;
}

/** A pen that is called one by its name needs no word before it. */
const penWords = (pen: string | undefined): string =>
  pen === undefined ? "some pen" : /\bpen\b/i.test(pen) ? pen : `the pen ${pen}`;

/**
 * How often somebody should look in.
 *
 * @example writeLookEvery(away)   // "So somebody should look in at least every 2 days 13 h."
 */
export function writeLookEvery({ lookEvery, failures, days }: Away): string {
  if (failures.length === 0) return "The plan has no station that could fail.";
  if (lookEvery === undefined)
    return "Some single failure is felt at once: nothing but a second station, or somebody who looks in several times a day, helps.";
  return lookEvery >= days * 86_400
    ? "No single failure leaves birds without in that time."
    : `So somebody should look in at least every ${writeDuration(lookEvery)}.`;
}
