import type { YearOfPlan } from "../../judge/year/year-result.js";
import { digestOf } from "../../numerics/digest.js";
import { writeDay } from "../../units/day.js";
import { writeHandedOut, writeShortage, writeYearEvent } from "./year-sentences.js";

/** What stands on one day of the calendar, and on how many days. */
interface Entry {
  readonly day: number;
  readonly days: number;
  readonly title: string;
}

/**
 * The year's days as a calendar file: batches, change-overs, what to put out, and where a pen goes short. Each is a
 * whole day, or from one day to another, and holds no alarm.
 *
 * @source rfc-5545, sections 3.1, 3.3.11, 3.6.1, from memory
 * @example writeYearCalendar(year, "The yard").split("\r\n")[0]   // "BEGIN:VCALENDAR"
 */
export function writeYearCalendar(year: YearOfPlan, title: string): string {
  const entries: Entry[] = [
    ...year.events.map((event) => ({
      day: event.day,
      days: event.code === "changeOver" ? Math.max(1, event.until - event.day) : 1,
      title: writeYearEvent(event),
    })),
    ...writeHandedOut(year.kit?.handed ?? []).map(({ day, sentence }) => ({ day, days: 1, title: sentence })),
    ...(year.kit?.shortages ?? []).map((shortage) => ({
      day: shortage.from,
      days: shortage.to - shortage.from,
      title: `Short: ${writeShortage(shortage)}`,
    })),
  ].sort((a, b) => a.day - b.day);
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Headfall//Year of a flock//EN",
    ...(title === "" ? [] : [`X-WR-CALNAME:${escaped(title)}`]),
    ...entries.flatMap((entry, k) => eventOf(entry, { title, number: k, stamp: year.from })),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

/** The stamp is the year's first day, not the clock: the same plan gives the same file. */
function eventOf(
  entry: Entry,
  { title, number, stamp }: { readonly title: string; readonly number: number; readonly stamp: number },
): string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${digestOf(`${title} ${number} ${entry.day} ${entry.title}`)}@headfall.invalid`,
    `DTSTAMP:${dateOf(stamp)}T000000Z`,
    `DTSTART;VALUE=DATE:${dateOf(entry.day)}`,
    `DTEND;VALUE=DATE:${dateOf(entry.day + entry.days)}`,
    `SUMMARY:${escaped(entry.title)}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

const dateOf = (day: number): string => writeDay(day).replaceAll("-", "");

const escaped = (text: string): string =>
  text.replaceAll("\\", "\\\\").replaceAll(";", "\\;").replaceAll(",", "\\,").replaceAll(/\r?\n/g, "\\n");

/** Lines of at most 75 octets, the rest on lines that begin with a blank; no character is cut. */
function folded(line: string): string {
  const MOST = 75;
  let [text, octets] = ["", 0];
  for (const sign of line) {
    const size = octetsOf(sign);
    if (octets + size > MOST) {
      text += "\r\n ";
      octets = 1;
    }
    text += sign;
    octets += size;
  }
  return text;
}

function octetsOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
