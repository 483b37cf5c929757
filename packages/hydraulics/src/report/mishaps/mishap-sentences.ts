import { DRIP } from "../../judge/asked-plan.js";
import type { GuardResult } from "../../judge/mishaps/guard.js";
import type { MishapEnd, MishapResult, MishapRow } from "../../judge/mishaps/mishap-result.js";
import type { Mishaps } from "../../judge/mishaps/mishaps-of-plan.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeDuration } from "../durations.js";
import { writeFlow, writeVolume } from "../words.js";
import { type Named, writeGain, writeGuard, writeKinds, writeMishap } from "./mishap-words.js";

const DAY = 86_400;

/**
 * A row's mishap in words: what, where, one of how many, and what else does the same.
 *
 * @example writeRowName(mishaps.rows[0], mishaps)   // "joint apart at bucket"
 */
export function writeRowName({ worst, count, kinds }: MishapRow, named: Named): string {
  const one = count > 1 ? ` (the worst of ${count})` : "";
  return `${writeMishap(worst.mishap, named)}${writeKinds(kinds)}${one}`;
}

/**
 * Until some bird goes without, in words; in a plan without birds, until half of the drinkers are dry.
 *
 * @example writeHarm({ hasBirds: true, firstWithout: { after: 3600, pen: "hens" }, firstDry: undefined, halfDry: undefined, empty: undefined })   // "1 h"
 */
export function writeHarm({ hasBirds, firstWithout, halfDry }: MishapEnd): string {
  const after = hasBirds ? firstWithout?.after : halfDry;
  return after === undefined ? "not" : writeDuration(after);
}

/**
 * What pours, what is lost by morning, what drips; nothing where nothing is lost.
 *
 * @example writeLoss(mishaps.rows[0].worst, mishaps, "metric")[0]   // "24 L/min pour out when full."
 */
export function writeLoss(result: MishapResult, named: Named, system: UnitSystem): string[] {
  const sentences: string[] = [];
  if (result.leakRate > 0) {
    const falls = result.night.falls.flatMap((fall, i) =>
      fall >= 0.001
        ? [`the level of ${named.line.sources[i].id} falls ${writeQuantity(fall, "length", system)}`]
        : [],
    );
    const night = `In a night it loses ${writeVolume(result.night.lost, system)}${falls.length === 0 ? "" : `: ${falls.join(", ")} by morning`}.`;
    sentences.push(`${writeFlow(result.leakRate, system)} pour out when full.`, night);
  }
  const count = result.drip.length;
  if (count > 0) {
    const [least, most] = [DRIP.expect, DRIP.worst].map((rate) => writeVolume(count * rate * DAY, system));
    sentences.push(
      `${count === 1 ? "One drinker drips" : `${count} drinkers drip`}: ${least} a day at ten small drops a minute${count === 1 ? "" : " each"}, ${most} at a large drop a second.`,
    );
  }
  return sentences;
}

/** The guard told first, with what it buys; or that none was found. */
function writeCheapest(row: MishapRow, named: Named, system: UnitSystem): string {
  const { cheapest, guards } = row;
  if (guards === undefined) return "";
  if (cheapest === undefined)
    return "No guard was found but a second vessel and line: it harms sooner than anybody looks.";
  const isLate = !cheapest.isEnough && cheapest.guard.kind !== "look";
  return `${guardSentence(row, cheapest, named, system)}${isLate ? " Even so a look every day may come too late." : ""}`;
}

/** The same, and others that do something too. */
export function writeGuards(row: MishapRow, named: Named, system: UnitSystem): string {
  const others = toldGuards(row)
    .slice(1)
    .map((one) => ` Or: ${lower(guardSentence(row, one, named, system))}`);
  return `${writeCheapest(row, named, system)}${others.join("")}`;
}

function guardSentence({ worst }: MishapRow, one: GuardResult, named: Named, system: UnitSystem): string {
  return `${writeGuard(one.guard, named, system)}${writeGain(one, worst.leakRate, system, worst.hasBirds)}.`;
}

/** The cheapest guard, and at most two more; a second station guards against all and is told only where it comes first. */
export function toldGuards({ cheapest, guards }: MishapRow): GuardResult[] {
  if (cheapest === undefined) return [];
  const others = (guards ?? []).filter((one) => one !== cheapest && one.guard.kind !== "secondStation");
  return [cheapest, ...others.slice(0, 2)];
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/**
 * If nothing goes wrong: what all of it is held against.
 *
 * @example writeNothing(mishaps)   // "The plan has no birds: nobody drinks. Harm is told by its ..."
 */
export function writeNothing({ nothing }: Mishaps): string {
  const { hasBirds, firstWithout, halfDry } = nothing;
  if (!hasBirds)
    return halfDry === undefined
      ? "The plan has no birds: nobody drinks. Harm is told by its drinkers: when half of them are dry."
      : `The plan has no birds; even so half of its drinkers are dry after ${writeDuration(halfDry)}.`;
  return firstWithout === undefined
    ? "If nothing goes wrong, nobody goes without in 60 days."
    : `If nothing goes wrong, the first bird goes without ${firstWithout.after <= 0 ? "at once" : `after ${writeDuration(firstWithout.after)}`}.`;
}
