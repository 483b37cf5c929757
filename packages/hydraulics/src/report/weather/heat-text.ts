import { DRUNK_LESS_ABOVE, REFUSED_ABOVE } from "../../judge/weather/heat-bodies.js";
import type { Heat } from "../../judge/weather/heat-result.js";
import { writeClock } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeDuration } from "../durations.js";
import { writeTable } from "../text-table.js";
import { writeVolume } from "../words.js";
import {
  writeDegrees,
  writeHeatAnswer,
  writeHeatCautions,
  writeHeatDay,
  writeHeatFlush,
  writeHeatIntake,
  writeHeatLevers,
  writeHeatWaterer,
  writeRenewal,
} from "./heat-sentences.js";

/** A hot day, as text for a terminal. */
export function writeHeatText(title: string, heat: Heat, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: a hot day`;
  const isHot = heat.parts.some(({ drinkers, hottest }) => drinkers > 0 && hottest.less > 0);
  const sections = [
    `${paint(head, "title")}\n${writeHeatDay(heat, system)}\n${paint(writeHeatAnswer(heat, system), isHot ? "starves" : "good")}`,
    writeHeatIntake(heat, system) ?? "",
    partsTable(heat, system),
    hoursTable(heat, system),
    section("To flush", flushLines(heat, system), paint),
    section(
      "Loose waterers",
      heat.parts.flatMap((part) => writeHeatWaterer(part, system) ?? []),
      paint,
    ),
    section(
      "What would change it",
      heat.parts.flatMap((part) => writeHeatLevers(part, system) ?? []),
      paint,
    ),
    section(
      "Not in the plan",
      heat.defaults.map(({ path, value, because }) => `${path} is taken as ${value}: ${because}`),
      paint,
    ),
    section("Cautions", writeHeatCautions(heat, system), paint),
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

function flushLines(heat: Heat, system: UnitSystem): string[] {
  const renewal = writeRenewal(heat, system);
  return [
    ...heat.flushes.map((flush) => writeHeatFlush(flush, system)),
    ...(renewal === undefined ? [] : [renewal]),
  ];
}

const section = (title: string, lines: readonly string[], paint: Paint): string =>
  lines.length === 0 ? "" : `${paint(title, "title")}\n${lines.map((line) => `- ${line}`).join("\n")}`;

function partsTable({ parts }: Heat, system: UnitSystem): string {
  const time = (seconds: number) => (seconds === 0 ? "" : writeDuration(seconds));
  return writeTable({
    columns: [
      ...["part", "drinkers", "holds", "colour", "in shade", "peak", "at worst", "at"],
      `above ${writeDegrees(DRUNK_LESS_ABOVE, system)}`,
      `above ${writeDegrees(REFUSED_ABOVE, system)}`,
    ],
    alignRight: [false, true, true, false, true, true, true, true, true, true],
    rows: parts.map(({ id, drinkers, volume, colour, isColourSaid, shade, expected, hottest }) => [
      id,
      drinkers === 0 ? "" : String(drinkers),
      writeVolume(volume, system),
      isColourSaid ? colour : `${colour}?`,
      `${Math.round(100 * shade)} %`,
      writeDegrees(expected.peak, system),
      writeDegrees(hottest.peak, system),
      writeClock(hottest.at),
      time(hottest.less),
      time(hottest.refused),
    ]),
  });
}

/** Every second hour of the day: air, and the hotter curve of each part. */
function hoursTable({ parts, air, step }: Heat, system: UnitSystem): string {
  const hours = [6, 8, 10, 12, 14, 16, 18, 20];
  const at = (curve: readonly number[]) =>
    hours.map((hour) => writeDegrees(curve[Math.round((hour * 3600) / step)] ?? 0, system));
  return writeTable({
    columns: ["at worst, at", ...hours.map((hour) => writeClock(hour * 3600))],
    alignRight: [false, ...hours.map(() => true)],
    rows: [["air", ...at(air)], ...parts.map(({ id, hottest }) => [id, ...at(hottest.water)])],
  });
}
