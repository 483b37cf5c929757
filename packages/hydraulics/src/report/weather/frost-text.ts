import type { Frost } from "../../judge/weather/frost-result.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import {
  FROST_CAUTIONS,
  FROST_LASTS_WORDS,
  FROST_PART_WORDS,
  writeFrostAnswer,
  writeFrostBand,
  writeFrostHolding,
  writeFrostNight,
  writeFrostRefills,
  writeFrostTodo,
} from "./frost-sentences.js";

/** A night of frost, as text for a terminal. */
export function writeFrostText(title: string, frost: Frost, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: a night of frost`;
  const stops = frost.parts.some(({ blocked, lasts }) => blocked !== undefined && lasts === "no");
  const holding = frost.parts.flatMap((part) => writeFrostHolding(part, system) ?? []);
  const sections = [
    `${paint(head, "title")}\n${writeFrostNight(frost, system)}\n${paint(writeFrostAnswer(frost), stops ? "starves" : "good")}`,
    partsTable(frost, system),
    section("Before the night", writeFrostTodo(frost, system), paint),
    section("The day after", frost.refills.map(writeFrostRefills), paint),
    frost.refills.length === 0 ? "" : refillsTable(frost, system),
    section("Or kept open by heat", holding, paint),
    section(
      "Not in the plan",
      frost.defaults.map(({ path, value, because }) => `${path} is taken as ${value}: ${because}`),
      paint,
    ),
    section("Cautions", FROST_CAUTIONS, paint),
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

const section = (title: string, lines: readonly string[], paint: Paint): string =>
  lines.length === 0 ? "" : `${paint(title, "title")}\n${lines.map((line) => `- ${line}`).join("\n")}`;

function partsTable({ parts }: Frost, system: UnitSystem): string {
  const volume = (cubic: number) => (cubic === 0 ? "" : writeQuantity(cubic, "volume", system, 2));
  return writeTable({
    columns: ["part", "what", "count", "holds", "at freezing", "stopped", "frozen through", "this night"],
    alignRight: [false, false, true, true, false, false, false, false],
    rows: parts.map(({ id, kind, count, volume: { full }, cold, blocked, solid, lasts }) => [
      id,
      FROST_PART_WORDS[kind],
      String(count),
      volume(full),
      writeFrostBand(cold),
      blocked === undefined ? "its pipe first" : writeFrostBand(blocked),
      writeFrostBand(solid),
      FROST_LASTS_WORDS[lasts],
    ]),
  });
}

/** Refills a day where the air stays at a temperature all day. */
function refillsTable({ refills }: Frost, system: UnitSystem): string {
  const airs = refills[0]?.byAir.map(({ air }) => writeQuantity(air, "temperature", system, 3)) ?? [];
  return writeTable({
    columns: ["refills in a day's light, at", ...airs],
    alignRight: [false, ...airs.map(() => true)],
    rows: refills.map(({ id, byAir }) => [id, ...byAir.map(({ refills: times }) => String(times))]),
  });
}
