import type { AirQuestion } from "../../document/air-record.js";
import type { FrostOfRecord } from "../../judge/weather/frost-record.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { FROST_CAUTIONS, FROST_PART_WORDS } from "./frost-sentences.js";

const degrees = (air: number, system: UnitSystem) => writeQuantity(air, "temperature", system, 3);
const count = (a: number) => (a >= 10 ? String(Math.round(a)) : String(Number(a.toPrecision(2))));

/**
 * What has to be asked of a record of temperatures, as a question.
 *
 * @example writeAirQuestion({ ask: "place", choices: ["Alder Bank", "Mill"] })   // "Which place: Alder Bank, Mill? The text is of several."
 */
export function writeAirQuestion(question: AirQuestion): string {
  switch (question.ask) {
    case "degrees":
      return `Which unit are the temperatures in: ${question.choices.join(", ")}? The text does not say. One line: ${question.example}`;
    case "dates":
      return `Is ${question.example} written day first or month first? The text does not say.`;
    case "place":
      return `Which place: ${question.choices.slice(0, 8).join(", ")}${question.choices.length > 8 ? " ..." : ""}? The text is of several.`;
  }
}

/**
 * The answer in one or two sentences.
 *
 * @example writeFrostRecordAnswer(frostOfRecord(plan, readAirRecord("date,low C\n2025-01-01,-4\n2025-01-02,9").record).record, "metric")   // "183 nights of frost a year, the coldest -4 °C on ..."
 */
export function writeFrostRecordAnswer(record: FrostOfRecord, system: UnitSystem): string {
  const { nightsAYear, coldest, seasons } = record;
  if (coldest === undefined) return "No night of the record goes below freezing.";
  const firsts = seasons.flatMap(({ first }) => first ?? []);
  const lasts = seasons.flatMap(({ last }) => last ?? []);
  const calendar = (days: readonly number[]) => days.map((day) => writeDay(day)).join(", ");
  const nights = count(nightsAYear);
  return `${nights} ${nights === "1" ? "night" : "nights"} of frost a year, the coldest ${degrees(coldest.low, system)} on ${writeDay(coldest.day)}. First frost: ${calendar(firsts)}; last: ${calendar(lasts)}.`;
}

/** Nights of frost in a daily record, as text for a terminal. */
export function writeFrostRecordText(
  title: string,
  record: FrostOfRecord,
  system: UnitSystem,
  paint: Paint,
): string {
  const head = `${title === "" ? "This plan" : title}: frost by a daily record${record.name === "" ? "" : ` of ${record.name}`}`;
  const last = writeDay(record.firstDay + record.days - 1);
  const sections = [
    `${paint(head, "title")}\n${writeDay(record.firstDay)} to ${last}, ${record.known} of ${record.days} days known\n${writeFrostRecordAnswer(record, system)}`,
    seasonsTable(record, system),
    stopsTable(record),
    record.refills.length === 0
      ? ""
      : `${paint("Refills for frost", "title")}\n${record.refills.map(({ id, aYear }) => `- ${id}: ${count(aYear)} a year beyond the first of each day, were each such day as cold as its night`).join("\n")}`,
    `${paint("Cautions", "title")}\n${["A past record is no promise, and a hollow is colder than a station.", ...FROST_CAUTIONS].map((line) => `- ${line}`).join("\n")}`,
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

function seasonsTable({ seasons }: FrostOfRecord, system: UnitSystem): string {
  const day = (one: number | undefined) => (one === undefined ? "" : writeDay(one));
  return writeTable({
    columns: [
      "winter that begins in",
      "days known",
      "nights of frost",
      "most in a row",
      "first",
      "last",
      "coldest",
    ],
    alignRight: [false, true, true, true, true, true, true],
    rows: seasons.map(({ year, known, nights, longest, first, last, coldest }) => [
      String(year),
      String(known),
      String(nights),
      String(longest),
      day(first),
      day(last),
      coldest === undefined ? "" : degrees(coldest, system),
    ]),
  });
}

function stopsTable({ stops }: FrostOfRecord): string {
  return writeTable({
    columns: ["part", "what", "stops for sure, nights a year", "at worst, nights a year"],
    alignRight: [false, false, true, true],
    rows: stops.map(({ id, kind, surely, atWorst }) => [
      id,
      FROST_PART_WORDS[kind],
      count(surely),
      count(atWorst),
    ]),
  });
}
