import type { Guard } from "../../judge/mishaps/guard.js";
import type { MishapRow } from "../../judge/mishaps/mishap-result.js";
import type { Mishaps } from "../../judge/mishaps/mishaps-of-plan.js";
import type { WatererMishapRow } from "../../judge/mishaps/waterers/waterer-mishap-result.js";
import type { Mishap } from "../../model/mishap.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { writeLoss, writeRowName } from "./mishap-sentences.js";
import { writeGain, writeGuard } from "./mishap-words.js";
import { writeMishapCautions } from "./mishaps-text.js";
import {
  WATERER_MISHAP_CAUTIONS,
  writeWatererEffects,
  writeWatererGain,
  writeWatererGuard,
  writeWatererMishap,
} from "./waterer-mishap-words.js";

/**
 * What any one mishap does, as a plain document, SI throughout: m³, m³/s, m, s.
 *
 * @example writeMishapsDocument("a bucket", mishaps, "metric").mishaps[0].rank   // 1
 */
export function writeMishapsDocument(name: string, mishaps: Mishaps, system: UnitSystem) {
  const { day, begins, nothing, rows, waterers, leavesOut } = mishaps;
  return {
    format: "headfall mishaps",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    begins,
    nothing,
    leavesOut,
    mishaps: rows.map((row, k) => ({ rank: k + 1, ...rowDocument(row, mishaps, system) })),
    waterers: waterers.map((row, k) => ({ rank: k + 1, ...watererDocument(row, system) })),
    cautions: [
      ...writeMishapCautions(rows.flatMap(({ guards }) => guards ?? [])),
      ...(waterers.length === 0 ? [] : WATERER_MISHAP_CAUTIONS),
    ],
  };
}

function rowDocument(row: MishapRow, mishaps: Mishaps, system: UnitSystem) {
  const { worst, kinds, count, run, lost, guards, cheapest } = row;
  const { line } = mishaps;
  const { mishap, dry, starve, drip, night, ...result } = worst;
  const names = (all: readonly number[]) => all.map((d) => line.drinkers.id[d]);
  return {
    what: writeRowName(row, mishaps),
    kinds,
    at: placeOf(mishap, mishaps),
    count,
    run,
    lost,
    ...result,
    dry: names(dry),
    starve: names(starve),
    drip: names(drip),
    night: {
      lost: night.lost,
      falls: night.falls.map((fall, i) => ({ source: line.sources[i].id, fall })),
    },
    sentences: writeLoss(worst, mishaps, system),
    ...(guards === undefined
      ? {}
      : {
          guards: guards.map((one) => {
            const { guard, ...gains } = one;
            return {
              ...guardPlace(guard, mishaps),
              ...gains,
              isCheapest: one === cheapest,
              sentence: `${writeGuard(guard, mishaps, system)}${writeGain(one, worst.leakRate, system, worst.hasBirds)}.`,
            };
          }),
        }),
  };
}

function watererDocument(row: WatererMishapRow, system: UnitSystem) {
  const { worst, nothing, guards, cheapest } = row;
  const { mishap, pen, waterer, ...result } = worst;
  return {
    what: writeWatererMishap(worst, system),
    kind: mishap.kind,
    at: { pen, waterer },
    ...result,
    nothing,
    sentences: writeWatererEffects(row, system),
    guards: guards.map((one) => {
      const { guard, ...gains } = one;
      return {
        ...guard,
        ...gains,
        isCheapest: one === cheapest,
        sentence: `${writeWatererGuard(guard, system)}${writeWatererGain(one, system)}.`,
      };
    }),
  };
}

/** Names instead of places in lists. */
function placeOf(mishap: Mishap, { line, flock }: Mishaps) {
  if ("source" in mishap) return { source: line.sources[mishap.source].id };
  if ("drinker" in mishap) return { drinker: line.drinkers.id[mishap.drinker] };
  if ("run" in mishap) return { run: line.runs[mishap.run].id };
  if ("point" in mishap) return { point: line.points.id[mishap.point] };
  if ("pen" in mishap) return { pen: flock.pens[mishap.pen].id, batch: mishap.batch };
  return {};
}

function guardPlace(guard: Guard, { line }: Mishaps) {
  if ("source" in guard) return { ...guard, source: line.sources[guard.source].id };
  if ("run" in guard) return { ...guard, run: line.runs[guard.run].id };
  if (guard.kind === "spareDrinker") return { kind: guard.kind, group: line.drinkers.groups[guard.group].id };
  return guard;
}
