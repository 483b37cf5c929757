import type { WatererMishapRow } from "../../judge/mishaps/waterers/waterer-mishap-result.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeTable } from "../text-table.js";
import { writeVolume } from "../words.js";
import {
  writeWatererEffects,
  writeWatererGuards,
  writeWatererHarm,
  writeWatererMishap,
} from "./waterer-mishap-words.js";

/** Mishaps of loose waterers for a terminal: a table, and what each does with what guards against it. */
export function writeWatererMishaps(
  rows: readonly WatererMishapRow[],
  { system, most }: { readonly system: UnitSystem; readonly most: number },
): string {
  const shown = rows.slice(0, most);
  const more = rows.length - shown.length;
  const table = writeTable({
    columns: [
      "",
      "what goes wrong",
      "birds",
      "a bird, without",
      "bird-hours",
      "to the, ground",
      "stays, to drink",
    ],
    alignRight: [true, false, true, true, true, true, true],
    rows: shown.map(({ worst }, k) => [
      String(k + 1),
      writeWatererMishap(worst, system),
      String(worst.birds),
      writeWatererHarm(worst),
      worst.birdHours < 0.5 ? "" : String(Math.round(worst.birdHours)),
      worst.lost < 1e-6 ? "" : writeVolume(worst.lost, system),
      writeVolume(worst.gives, system),
    ]),
  });
  const told = shown.map((row, k) => {
    const name = writeWatererMishap(row.worst, system);
    const effects = writeWatererEffects(row, system);
    return `${k + 1}. ${name.charAt(0).toUpperCase()}${name.slice(1)}. ${[...effects, writeWatererGuards(row, system)].join(" ")}`;
  });
  return `${table}${more > 0 ? `\n${more} more that do less: headfall mishaps --all` : ""}\n${told.join("\n")}`;
}
