import type {
  Frost,
  FrostBand,
  FrostPart,
  FrostPartKind,
  FrostRefills,
} from "../../judge/weather/frost-result.js";
import { writeClock } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeDuration } from "../durations.js";
import { writeFlow, writeVolume } from "../words.js";

/** Longer than this is said to be no matter of the night [s]. */
const LONG = 30 * 86_400;

/** Kinds of part that freeze, in words. */
export const FROST_PART_WORDS: Readonly<Record<FrostPartKind, string>> = {
  pin: "drinker pins",
  bowl: "open water of drinkers",
  pipe: "pipe",
  vessel: "vessel",
  fount: "fount or bell",
  pan: "pan or trough",
  bucket: "nipple bucket",
};

const degrees = (air: number, system: UnitSystem) => writeQuantity(air, "temperature", system, 3);
const length = (metres: number, system: UnitSystem) => writeQuantity(metres, "length", system, 2);

/**
 * A time of a frost: "2 h 10 min", "never".
 *
 * @example writeFrostTime(12600)   // "3 h 30 min"
 */
export const writeFrostTime = (seconds: number): string =>
  seconds === Number.POSITIVE_INFINITY ? "never" : seconds > LONG ? "over a month" : writeDuration(seconds);

/**
 * A band: "1 h 10 min to 2 h 40 min", or one time where both ends read alike.
 *
 * @example writeFrostBand({ soonest: 7200, latest: 14400 })   // "2 h to 4 h"
 */
export function writeFrostBand({ soonest, latest }: FrostBand): string {
  const [first, last] = [writeFrostTime(soonest), writeFrostTime(latest)];
  return first === last ? first : `${first} to ${last}`;
}

/** Whether a part lasts the night, in words. */
export const FROST_LASTS_WORDS: Readonly<Record<FrostPart["lasts"], string>> = {
  yes: "lasts the night",
  perhaps: "may last",
  no: "stops",
};

/**
 * The night in words.
 *
 * @example writeFrostNight(frost, "metric")   // "-8 °C for 13 h from dusk (18:00), wind 3 m/s, water at 10 ..."
 */
export const writeFrostNight = ({ night, waterTemperature, dusk }: Frost, system: UnitSystem): string =>
  `${degrees(night.low, system)} for ${writeDuration(night.hours)} from dusk (${writeClock(dusk)}), wind ${writeQuantity(night.wind, "speed", system, 2)}, water at ${degrees(waterTemperature, system)} when it begins`;

/**
 * The answer in one or two sentences.
 *
 * @example writeFrostAnswer(frost)   // "hen line (drinker pins) stops first, 18 min after dusk; ..."
 */
export function writeFrostAnswer(frost: Frost): string {
  const { parts, first, night } = frost;
  if (night.low >= 0) return "Nothing freezes: the night does not go below freezing.";
  const stopping = parts.filter(({ lasts, blocked }) => blocked !== undefined && lasts === "no").length;
  const giving = parts.filter(({ blocked }) => blocked !== undefined).length;
  if (first === undefined) return "There is nothing in this plan that a night of frost could stop.";
  const { id, kind, blocked } = parts[first];
  const when = blocked === undefined ? "" : writeFrostTime(blocked.soonest);
  const rest =
    stopping === 0
      ? "still air and full vessels may bring everything through"
      : stopping === giving
        ? "nothing that birds drink from lasts the night"
        : `${stopping} of ${giving} that birds drink from, and the pipe to them, stop for sure`;
  if (blocked !== undefined && blocked.soonest >= night.hours)
    return `Everything gives water until the night is over; the first to stop would be ${id} (${FROST_PART_WORDS[kind]}), after ${when}.`;
  return `${id} (${FROST_PART_WORDS[kind]}) stops first, ${when} after dusk; ${rest}.`;
}

/**
 * What to do before the night, a sentence each.
 *
 * @example writeFrostTodo(frost, "metric")[0]   // "Shut the tap of every vessel and drain the pipe, 767 mL in ..."
 */
export function writeFrostTodo(frost: Frost, system: UnitSystem): string[] {
  if (frost.night.low >= 0) return [];
  return [
    ...drainLines(frost, system),
    ...frost.headSpace.map(
      ({ source, takeOut }) =>
        `${source} is fuller than nine tenths: let ${writeVolume(takeOut, system)} out, for ice takes 9 % more room and splits a closed vessel.`,
    ),
    ...frost.brittle.map(
      ({ material, parts }) =>
        `${upper(material.name)} grows brittle below ${degrees(material.brittleBelow ?? 0, system)} (${material.citation.seen}): do not knock, bend or lean on ${listed(parts)}; bring in what can be.`,
    ),
    ...thawLines(frost, system),
  ];
}

function drainLines({ drain, parts }: Frost, system: UnitSystem): string[] {
  const pipes = parts.filter(({ kind, lasts }) => kind === "pipe" && lasts !== "yes");
  if (pipes.length === 0 || drain.volume <= 0) return [];
  const bursting = pipes.some(({ material }) => material?.bursts === true);
  const ends = drain.ends.map(
    ({ point, isSource, volume }) =>
      `${isSource ? `the outlet of ${point}, its own tap shut and the pipe undone,` : point} (${writeVolume(volume, system)})`,
  );
  return [
    `Shut the tap of every vessel and drain the pipe, ${writeVolume(drain.volume, system)} in all, at its low ends: ${listed(ends)}. Let air in at the high ends, and work a few drinkers.${bursting ? " Full pipe of this kind bursts." : ""}`,
    ...untappedLines(drain, system),
    ...drain.devices.map(
      ({ run, kind }) => `${DEVICE_WORDS[kind]} of ${run} keeps water back: open or undo it while draining.`,
    ),
    ...drain.sags.map(
      ({ run, along, volume, depth }) =>
        `${writeVolume(volume, system)} stay in a sag of ${run}, lowest ${length(along, system)} along it and ${length(depth, system)} below its way out: put a drain there, or lift it level.`,
    ),
    ...(drain.sags.length === 0 ? ["No sag keeps water once the low ends are open."] : []),
  ];
}

function untappedLines({ untapped }: Frost["drain"], system: UnitSystem): string[] {
  if (untapped.length === 0) return [];
  const vessels = untapped.map(({ source, volume }) => `${source} (${writeVolume(volume, system)})`);
  return [
    `The plan has no tap at ${listed(vessels)}: fit one at the outlet first, or that water runs out with the pipe's.`,
  ];
}

const DEVICE_WORDS = {
  tap: "The shut tap",
  oneWay: "The one-way valve",
  regulator: "The regulator",
} as const;

function thawLines({ thaw, parts, night }: Frost, system: UnitSystem): string[] {
  const ice = Math.max(0, ...parts.map((part) => part.ice ?? 0));
  if (ice <= 0) return [];
  const grown = `Standing water bears up to ${length(ice, system)} of ice by dawn`;
  if (thaw.from === undefined || thaw.to === undefined)
    return [`${grown}; the day after (${degrees(night.high, system)} at its highest) melts none of it.`];
  return [
    `${grown}; the air is above freezing from ${writeClock(thaw.from)} to ${writeClock(thaw.to)} and melts ${length(thaw.melts, system)}.`,
  ];
}

/**
 * Refills of the day after for one waterer.
 *
 * @example writeFrostRefills({ id: "chick jars", path: "", count: 2, thatDay: 3, isHopeless: false, byAir: [] })   // "each of 2 chick jars: filled at dawn and 3 more times ..."
 */
export function writeFrostRefills({ id, count, thatDay, isHopeless }: FrostRefills): string {
  const each = count === 1 ? id : `each of ${count} ${id}`;
  if (thatDay === 0) return `${each}: filled at dawn, it stays open through the day's light.`;
  if (isHopeless)
    return `${each}: frozen over within the hour all day; no filling keeps it open. Use deeper water, a rubber pan swapped often, or safe heat.`;
  return `${each}: filled at dawn and ${thatDay} more ${thatDay === 1 ? "time" : "times"} before dark.`;
}

/**
 * What it takes to keep a part open through the night by heat, or by flow.
 *
 * @example writeFrostHolding(frost.parts.find((part) => writeFrostHolding(part, "metric")), "metric")   // "46 W of safe heat hold hen line at 2 °C; so would 98 mL/min ..."
 */
export function writeFrostHolding(part: FrostPart, system: UnitSystem): string | undefined {
  if (part.lasts === "yes" || part.watts <= 0) return undefined;
  const heat = `${Math.ceil(part.watts)} W of safe heat hold ${part.id} at ${degrees(2, system)}`;
  return part.holdingFlow === undefined
    ? `${heat}.`
    : `${heat}; so would ${writeFlow(part.holdingFlow, system)} let run to waste.`;
}

/** What a computed night does not know. */
export const FROST_CAUTIONS: readonly string[] = [
  "These hours are for still water and one air temperature all night; a clear sky, damp ground and wind off a hill are worse. The shorter time of each pair is the cautious one.",
  "Lagging delays frost; it never stops it. Birds drinking does not keep a line open: they drink nothing in the dark.",
  "Slush may close a pipe well before it is frozen through.",
  "Heat near water and litter: listed heaters only, on a residual-current device, cords out of reach of beaks, never above an empty vessel. An electrician decides.",
  "Birds need open water every day, frost or not: look twice a day, and have a second vessel indoors to swap.",
  "How deep frost goes in a winter is known locally; one night says nothing of it.",
];

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
