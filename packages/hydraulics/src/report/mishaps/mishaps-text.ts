import type { GuardResult } from "../../judge/mishaps/guard.js";
import type { MishapRow } from "../../judge/mishaps/mishap-result.js";
import type { Mishaps } from "../../judge/mishaps/mishaps-of-plan.js";
import { writeClock, writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeDuration } from "../durations.js";
import { writeTable } from "../text-table.js";
import { LEFT_OUT_WORDS } from "../time/lasting-text.js";
import { writeVolume } from "../words.js";
import {
  toldGuards,
  writeGuards,
  writeHarm,
  writeLoss,
  writeNothing,
  writeRowName,
} from "./mishap-sentences.js";

import { WATERER_MISHAP_CAUTIONS } from "./waterer-mishap-words.js";
import { writeWatererMishaps } from "./waterer-mishaps-text.js";

/** What any one mishap does, as text for a terminal. */
export function writeMishapsText(
  title: string,
  mishaps: Mishaps,
  { system, paint, most }: { readonly system: UnitSystem; readonly paint: Paint; readonly most: number },
): string {
  const shown = mishaps.rows.slice(0, most);
  const head = `${title === "" ? "This plan" : title}: what any one mishap does`;
  const more = mishaps.rows.length - shown.length;
  const hasLine = mishaps.rows.length > 0 || mishaps.waterers.length === 0;
  const sections = [
    `${paint(head, "title")}\n${beginning(mishaps, hasLine)}`,
    ...(hasLine
      ? [
          `${mishapTable(mishaps, shown, system)}${more > 0 ? `\n${more} more that do less: headfall mishaps --all` : ""}`,
        ]
      : []),
    ...(shown.length === 0
      ? []
      : [
          `${paint("What each does, and what guards against it", "title")}\n${guardLines(mishaps, shown, system)}`,
        ]),
    ...(mishaps.waterers.length === 0
      ? []
      : [`${paint("Loose waterers", "title")}\n${writeWatererMishaps(mishaps.waterers, { system, most })}`]),
    `${paint("Cautions", "title")}\n${[
      ...writeMishapCautions(shown.flatMap(toldGuards)),
      ...(mishaps.waterers.length === 0 ? [] : WATERER_MISHAP_CAUTIONS),
    ]
      .map((line) => `- ${line}`)
      .join("\n")}`,
  ];
  return `${sections.join("\n\n")}\n`;
}

function beginning(mishaps: Mishaps, hasLine: boolean): string {
  const on = mishaps.day === undefined ? "" : ` on ${writeDay(mishaps.day)}`;
  return [
    `Everything is full${on} at ${writeClock(mishaps.begins)} when it happens; nobody looks and nobody fills by hand.`,
    ...(hasLine ? [writeNothing(mishaps)] : []),
    ...mishaps.leavesOut.filter((code) => code !== "nobodyDrinks").map((code) => LEFT_OUT_WORDS[code]),
  ].join("\n");
}

function mishapTable(mishaps: Mishaps, rows: readonly MishapRow[], system: UnitSystem): string {
  const count = (all: readonly number[]) => (all.length === 0 ? "" : String(all.length));
  return writeTable({
    columns: [
      "",
      "what goes wrong",
      mishaps.nothing.hasBirds ? "a bird, without" : "half, dry",
      "to the, ground",
      "empty, after",
      "dry",
      "starve",
      "drip",
    ],
    alignRight: [true, false, true, true, true, true, true, true],
    rows: rows.map((row, k) => [
      String(k + 1),
      writeRowName(row, mishaps),
      writeHarm(row.worst),
      row.worst.balance.lost < 1e-6 ? "" : writeVolume(row.worst.balance.lost, system),
      row.worst.empty === undefined || row.worst.balance.lost < 1e-6 ? "" : writeDuration(row.worst.empty),
      count(row.worst.dry),
      count(row.worst.starve),
      count(row.worst.drip),
    ]),
  });
}

function guardLines(mishaps: Mishaps, rows: readonly MishapRow[], system: UnitSystem): string {
  return rows
    .map((row, k) =>
      [
        `${k + 1}. ${upper(writeRowName(row, mishaps))}.`,
        ...writeLoss(row.worst, mishaps, system),
        writeGuards(row, mishaps, system),
      ].join(" "),
    )
    .join("\n");
}

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * What the guards themselves ask for, and what no figure replaces.
 *
 * @example writeMishapCautions([])[0]   // "Look at the birds and their water every day: no computed ..."
 */
export function writeMishapCautions(told: readonly GuardResult[]): string[] {
  const kinds = new Set(told.map(({ guard }) => guard.kind));
  return [
    "Look at the birds and their water every day: no computed figure replaces that.",
    ...(kinds.has("limiter")
      ? [
          "A small hole clogs where a bore does not: put a strainer before it, and see each week that the last drinker still gives.",
        ]
      : []),
    ...(kinds.has("secondBarrel") || kinds.has("secondStation")
      ? [
          "A second vessel is as heavy as the first: its stand has to bear it. Local codes and licensed practice decide.",
        ]
      : []),
    ...(kinds.has("secondVent") ? ["Put a fine screen over every opening for air."] : []),
    ...(kinds.has("alarm") ? ["An alarm is tried each month, and does not stand for a look."] : []),
  ];
}
