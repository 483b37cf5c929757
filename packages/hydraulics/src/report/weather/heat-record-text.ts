import type { HeatOfRecord } from "../../judge/weather/heat-record.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { HEAT_CAUTIONS, writeDegrees } from "./heat-sentences.js";

const count = (a: number) => (a >= 10 ? String(Math.round(a)) : String(Number(a.toPrecision(2))));
const daysOf = (a: number) => (count(a) === "1" ? "1 day" : `${count(a)} days`);

/**
 * The answer in one or two sentences.
 *
 * @example writeHeatRecordAnswer(heatOfRecord(plan, readAirRecord("date,low C,high C\n2025-07-01,14,31").record).record, "metric")   // "365 days a year of 30 °C and more, the hottest 31 °C on ..."
 */
export function writeHeatRecordAnswer(record: HeatOfRecord, system: UnitSystem): string {
  const { hotAYear, hottest, often } = record;
  if (hottest === undefined) return "The record has no highest temperatures.";
  const most = often.reduce<HeatOfRecord["often"][number] | undefined>(
    (one, other) => (one === undefined || other.expected > one.expected ? other : one),
    undefined,
  );
  const warm =
    most === undefined || most.atWorst === 0
      ? ""
      : ` Water standing in ${most.id} is too warm on ${daysOf(most.expected)} a year, at worst on ${count(most.atWorst)}.`;
  return `${daysOf(hotAYear)} a year of ${writeDegrees(30, system)} and more, the hottest ${writeDegrees(hottest.high, system)} on ${writeDay(hottest.day)}.${warm}`;
}

/** Hot days in a daily record, as text for a terminal. */
export function writeHeatRecordText(
  title: string,
  record: HeatOfRecord,
  system: UnitSystem,
  paint: Paint,
): string {
  const head = `${title === "" ? "This plan" : title}: heat by a daily record${record.name === "" ? "" : ` of ${record.name}`}`;
  const last = writeDay(record.firstDay + record.days - 1);
  const sections = [
    `${paint(head, "title")}\n${writeDay(record.firstDay)} to ${last}, ${record.known} of ${record.days} days known\n${writeHeatRecordAnswer(record, system)}`,
    seasonsTable(record, system),
    oftenTable(record, system),
    `${paint("Cautions", "title")}\n${[...HEAT_RECORD_CAUTIONS, ...HEAT_CAUTIONS].map((line) => `- ${line}`).join("\n")}`,
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

/** What is said of hot days in a record. */
export const HEAT_RECORD_CAUTIONS: readonly string[] = [
  "Every day from 25 °C on is taken as clear, the cautious side; a past record is no promise, and a yard of walls is hotter than a station.",
];

function seasonsTable({ seasons }: HeatOfRecord, system: UnitSystem): string {
  const day = (one: number | undefined) => (one === undefined ? "" : writeDay(one));
  return writeTable({
    columns: [
      ...[
        "summer of",
        "days known",
        `days of ${writeDegrees(25, system)}`,
        `days of ${writeDegrees(30, system)}`,
      ],
      ...["most in a row", "first", "last", "hottest"],
    ],
    alignRight: [false, true, true, true, true, true, true, true],
    rows: seasons.map(({ year, known, summer, hot, longest, first, last, hottest }) => [
      String(year),
      String(known),
      String(summer),
      String(hot),
      String(longest),
      day(first),
      day(last),
      hottest === undefined ? "" : writeDegrees(hottest, system),
    ]),
  });
}

function oftenTable({ often }: HeatOfRecord, system: UnitSystem): string {
  if (often.length === 0) return "";
  const limit = (degrees: number) => writeDegrees(degrees, system);
  return writeTable({
    columns: [
      ...["part, days a year", `above ${limit(30)}, to expect`],
      ...[`above ${limit(30)}, at worst`, `above ${limit(44)}, at worst`],
    ],
    alignRight: [false, true, true, true],
    rows: often.map(({ id, expected, atWorst, refused }) => [
      id,
      count(expected),
      count(atWorst),
      count(refused),
    ]),
  });
}
