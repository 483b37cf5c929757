import type { Mark } from "../../judge/time/daily-mark.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeVolume } from "../words.js";

/** A few millimetres more or less do not show on a stick. */
const level = (metres: number, system: UnitSystem) =>
  system === "us" ? writeQuantity(metres, "length", system, 3) : `${Math.round(metres * 1000) / 10} cm`;

/** The daily mark, as text for a terminal. */
export function writeMarkText(title: string, mark: Mark, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: the daily mark of ${mark.source}`;
  const sections = [
    `${paint(head, "title")}\n${writeMarkLines(mark, system).join("\n")}`,
    ...(mark.isKeptFull || mark.marks.length === 0 ? [] : [markTable(mark, system)]),
    `${paint("Cautions", "title")}\n- A level that falls as it should does not show that every drinker works: look at the birds and their water every day.`,
  ];
  return `${sections.join("\n\n")}\n`;
}

/**
 * What the mark is, and what it means when the level does otherwise; a sentence a line.
 *
 * @example writeMarkLines(mark, "metric")[0]   // "From 70 cm it should fall 3.7 cm by tomorrow at the same ..."
 */
export function writeMarkLines(mark: Mark, system: UnitSystem): string[] {
  if (mark.isKeptFull)
    return [
      `${mark.source} is kept full by what fills it: its level tells nothing. Shut the supply for a day to use the mark.`,
    ];
  const { fall, volume } = mark;
  const on = mark.day === undefined ? "" : ` from ${writeDay(mark.day)}`;
  return [
    `From ${level(mark.from, system)} it should fall ${level(fall.expect, system)} by tomorrow at the same hour${on} (${writeVolume(volume.expect, system)}); between ${level(fall.low, system)} and ${level(fall.high, system)} is as it should be.`,
    ...(mark.isTooSmallToRead
      ? ["That is too little to be read off a stick: read it after several days, or use a narrower vessel."]
      : [
          `Between ${level(mark.stuckBelow, system)} and ${level(fall.low, system)}: that may be how it was read. Read it again, and look at every drinker today.`,
          `Less than ${level(mark.stuckBelow, system)}: something is stuck, and birds are thirsty. Look at every drinker now.`,
        ]),
    `Overnight, from dark to light, it ${level(mark.nightFall, system) === level(0, system) ? "stands still" : `falls no more than ${level(mark.nightFall, system)}`}. Up to ${level(mark.leakAbove, system)} may be how it was read; more means it leaks, each centimetre about ${writeVolume(mark.leakPerCentimetre, system)} a day.`,
    `More than ${level(fall.high, system)} in a day: a leak, a drinker stuck open, or more heat or birds than the plan has.`,
  ];
}

function markTable({ marks }: Mark, system: UnitSystem): string {
  return writeTable({
    columns: ["day", "mark", "holds", "from", "to"],
    alignRight: [true, true, true, true, true],
    rows: marks
      .slice(0, 14)
      .map(({ day, level: at, volume, low, high }) => [
        String(day),
        level(at, system),
        writeVolume(volume, system),
        level(low, system),
        level(high, system),
      ]),
  });
}
