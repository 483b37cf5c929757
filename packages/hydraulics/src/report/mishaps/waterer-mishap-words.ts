import type { WatererGuard, WatererGuardResult } from "../../judge/mishaps/waterers/waterer-guard.js";
import type {
  WatererMishapResult,
  WatererMishapRow,
} from "../../judge/mishaps/waterers/waterer-mishap-result.js";
import { EDGE_SINKS, HELD_ASIDE, type WatererMishapKind } from "../../model/waterer-mishap.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writePercent } from "../birds/bird-sentences.js";
import { writeDuration } from "../durations.js";
import { writeMass, writeVolume } from "../words.js";
import { HOLE_WORDS, writeMark, writeSlope } from "../yard/yard-words.js";

const HOUR = 3600;

/**
 * A mishap of a loose waterer in a few words, with its place.
 *
 * @example writeWatererMishap({ mishap: { kind: "kickedOver", pen: 0, waterer: 0 }, waterer: "yard pan", pen: "hens", count: 1 }, "metric")   // "yard pan in hens kicked over"
 */
export function writeWatererMishap(
  { mishap, waterer, pen, count }: Pick<WatererMishapResult, "mishap" | "waterer" | "pen" | "count">,
  system: UnitSystem,
): string {
  const one = count > 1 ? `one of ${count} ${waterer}` : waterer;
  return `${one}${waterer.includes(pen) ? "" : ` in ${pen}`} ${stateWords(mishap.kind, system)}`;
}

function stateWords(kind: WatererMishapKind, system: UnitSystem): string {
  switch (kind) {
    case "offLevel":
      return `off level, its lower edge sunk by ${writeMark(EDGE_SINKS, system)}`;
    case "holeUphill":
      return "put back with its hole uphill";
    case "capOff":
      return "with its cap off, or its seal gone";
    case "lidLoose":
      return "with its lid not airtight";
    case "jarCracked":
      return "with a crack in its jar";
    case "ventShut":
      return "with its lid airtight";
    case "kickedOver":
      return "kicked over";
    case "heldAside":
      return `held ${writeMark(HELD_ASIDE, system)} aside`;
    case "refillMissed":
      return "not filled at its hour";
  }
}

/**
 * Until a bird goes without, in words.
 *
 * @example writeWatererHarm({ harmAfter: 3600 })   // "1 h"
 */
export function writeWatererHarm({ harmAfter }: Pick<WatererMishapResult, "harmAfter">): string {
  if (harmAfter === undefined) return "not";
  return harmAfter <= 0 ? "at once" : writeDuration(harmAfter);
}

/**
 * What a mishap of a loose waterer does: to its water, to the birds of its pen, to the places they have.
 *
 * @example writeWatererEffects(loose[0], "metric")[0]   // "4.09 L run out, nothing of it stays to drink."
 */
export function writeWatererEffects(row: WatererMishapRow, system: UnitSystem): string[] {
  const { worst, nothing } = row;
  const covered =
    worst.covered.after < Math.min(1, worst.covered.before) - 1e-9
      ? [`The pen then has ${writePercent(worst.covered.after)} of the places that rules and advice ask.`]
      : [];
  return [
    ...waterWords(worst, system),
    ...(worst.birds === 0 ? [] : [birdWords(worst, nothing)]),
    ...covered,
  ];
}

function waterWords(worst: WatererMishapResult, system: UnitSystem): string[] {
  const { mishap, lost, gives, gave, slope, drainsAt } = worst;
  const volume = (cubic: number) => writeVolume(cubic, system);
  if (mishap.kind === "ventShut") return [`It gives ${volume(gives)} of ${volume(gave)}, and stops.`];
  const runs =
    lost < 1e-6
      ? []
      : [
          `${volume(lost)} run out, ${gives < 1e-6 ? "nothing of it stays" : `${volume(gives)} stay`} to drink.`,
        ];
  const isLeaning = mishap.kind === "offLevel" || mishap.kind === "holeUphill" || mishap.kind === "heldAside";
  if (!isLeaning || drainsAt === undefined) return runs;
  const leans = mishap.kind === "heldAside" ? "It leans" : "It stands";
  return [
    ...runs,
    `${leans} on ${writeSlope(slope)} then, and ${slope >= drainsAt ? "drains" : "would drain"} from ${writeSlope(drainsAt)} on${slope >= drainsAt ? "" : ": it holds"}.`,
  ];
}

function birdWords(worst: WatererMishapResult, nothing: WatererMishapRow["nothing"]): string {
  const { harmAfter, birds, birdHours, goesOnAtLine, mishap, comesAfter } = worst;
  const who = birds === 1 ? "The bird of its pen" : `The ${birds} birds of its pen`;
  const goes = birds === 1 ? "goes" : "go";
  if (harmAfter === undefined)
    return goesOnAtLine
      ? `${who} ${goes} on at the line.`
      : mishap.kind === "refillMissed"
        ? `${who} ${birds === 1 ? "does" : "do"} not go without before the round after, in ${writeDuration(comesAfter)}.`
        : `${who} ${birds === 1 ? "does" : "do"} not go without in 60 days.`;
  const isNoSooner =
    mishap.kind !== "refillMissed" &&
    nothing.harmAfter !== undefined &&
    harmAfter >= nothing.harmAfter - 1800;
  const hours =
    birdHours < 0.5
      ? ""
      : `: ${Math.round(birdHours)} bird-hour${Math.round(birdHours) === 1 ? "" : "s"} of light until somebody comes`;
  return `${who} ${goes} without ${harmAfter <= 0 ? "at once" : `after ${writeDuration(harmAfter)}`}${hours}${isNoSooner ? ", hardly sooner than if nothing goes wrong and nobody fills" : ""}.`;
}

/**
 * A guard against a mishap of a loose waterer, with what has to be bought or done.
 *
 * @example writeWatererGuard({ kind: "turnHole", way: "downhill" }, "metric")   // "Turn its hole downhill, and mark the jar"
 */
export function writeWatererGuard(guard: WatererGuard, system: UnitSystem): string {
  const mark = (metres: number) => writeMark(metres, system);
  switch (guard.kind) {
    case "look":
      return `Look ${guard.every >= 86_400 ? "every day" : `every ${writeDuration(guard.every).replace(/^1 h$/, "hour")}`}`;
    case "turnHole":
      return `Turn ${HOLE_WORDS[guard.way]}, and mark the jar`;
    case "shim":
      return `A shim of ${mark(guard.height)} under its lower edge`;
    case "ventHole":
      return "A hole in the lid that lets air in, with a fine screen";
    case "weight":
      return `A brick of ${writeMass(guard.mass, system)} in it: nearly empty, it takes a push ${Number((guard.tippedThenBy / guard.tippedBy).toPrecision(2))} times as hard to tip it`;
    case "longerCord":
      return `A cord of ${mark(guard.cord)} from hook to water`;
    case "board":
      return `A level board of ${mark(guard.across)} under it`;
    case "secondWaterer":
      return "One more like it in the pen";
  }
}

/**
 * What it buys, after its name.
 *
 * @example writeWatererGain({ guard: { kind: "ventHole" }, harmAfter: 14400, birdHours: 0, lost: 0, buysTime: 7200, savesWater: 0, isEnough: false })   // ": 2 h more before a bird goes without"
 */
export function writeWatererGain(result: WatererGuardResult, system: UnitSystem = "metric"): string {
  const { guard, buysTime, savesWater, harmAfter } = result;
  const gains: string[] = [];
  if (guard.kind !== "weight") {
    if (buysTime === undefined || guard.kind === "look") gains.push("no bird goes without");
    else if (buysTime >= HOUR / 60 && harmAfter !== undefined)
      gains.push(`${writeDuration(buysTime)} more before a bird goes without`);
  }
  if (savesWater >= 1e-4) gains.push(`${writeVolume(savesWater, system)} less to the ground`);
  return gains.length === 0 ? "" : `: ${gains.join(", ")}`;
}

/**
 * The guard told first, with what it buys; then at most two others.
 *
 * @example writeWatererGuards(loose[0], "metric")   // "Turn its hole sideways, and mark the jar: 2 days 4 h more ..."
 */
export function writeWatererGuards({ cheapest, guards }: WatererMishapRow, system: UnitSystem): string {
  if (cheapest === undefined)
    return "No guard was found but to look more often: it harms sooner than anybody looks.";
  const sentence = (one: WatererGuardResult) =>
    `${writeWatererGuard(one.guard, system)}${writeWatererGain(one, system)}.`;
  const others = guards.filter((one) => one !== cheapest).slice(0, 2);
  const late =
    cheapest.isEnough || cheapest.guard.kind === "look" ? "" : " Even so a look every day may come too late.";
  const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
  return `${sentence(cheapest)}${late}${others.map((one) => ` Or: ${lower(sentence(one))}`).join("")}`;
}

/** What is always said beside mishaps of loose waterers. */
export const WATERER_MISHAP_CAUTIONS = [
  "From afar a fount that has run out looks like a full one: look into its ring each morning, and in heat again.",
  "Chicks drown and chill in spilled water: dry bedding at once, and stones in every pan that young birds can reach.",
] as const;
