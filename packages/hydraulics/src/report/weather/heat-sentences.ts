import { DRUNK_LESS_ABOVE, REFUSED_ABOVE, TRIED } from "../../judge/weather/heat-bodies.js";
import type { Heat, HeatChange, HeatFlush, HeatPart, HeatRefresh } from "../../judge/weather/heat-result.js";
import { writeClock } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeDuration } from "../durations.js";
import { writeVolume } from "../words.js";

/**
 * A temperature, to a degree: more would be guessed.
 *
 * @example writeDegrees(31.6, "metric")   // "32 °C"
 */
export const writeDegrees = (temperature: number, system: UnitSystem): string =>
  writeQuantity(
    system === "us" ? (Math.round(temperature * 1.8 + 32) - 32) / 1.8 : Math.round(temperature),
    "temperature",
    system,
    3,
  );

const DAY = 86_400;
const clock = (seconds: number) => writeClock(seconds % DAY);

/** In inches to one figure: 25 mm of foam is sold as an inch. */
const roundLength = (metres: number, system: UnitSystem) =>
  writeQuantity(metres, "length", system, system === "us" ? 1 : 2);

/** Changes against heat, in words. */
export const HEAT_CHANGE_WORDS: Readonly<Record<HeatChange, (system: UnitSystem) => string>> = {
  white: () => "white, and kept clean",
  shade: () => "wholly in shade",
  lagging: (system) => `lagged with ${roundLength(TRIED.lagging, system)} of foam`,
  buriedShallow: (system) => `${roundLength(TRIED.shallow, system)} under ground`,
  buriedDeep: (system) => `${roundLength(TRIED.deep, system)} under ground`,
};

/**
 * The day in words.
 *
 * @example writeHeatDay(heat, "metric")   // "24 °C to 35 °C, clear sun of 900 W/m² at noon, wind 1.5 ..."
 */
export function writeHeatDay({ day }: Heat, system: UnitSystem): string {
  const { high, low, sun, wind, dawn, light } = day;
  return `${writeDegrees(low, system)} to ${writeDegrees(high, system)}, clear sun of ${writeQuantity(sun, "sunshine", system, 2)} at noon, wind ${writeQuantity(wind, "speed", system, 2)}, light from ${clock(dawn)} to ${clock(dawn + light)}`;
}

/**
 * The answer in one or two sentences.
 *
 * @example writeHeatAnswer(heat, "metric")   // "Water standing in hen line comes to 56 °C, at worst 61 °C, ..."
 */
export function writeHeatAnswer({ parts }: Heat, system: UnitSystem): string {
  const drunk = parts.filter(({ drinkers }) => drinkers > 0);
  const worst = drunk.reduce<HeatPart | undefined>(
    (most, one) => (most === undefined || one.hottest.peak > most.hottest.peak ? one : most),
    undefined,
  );
  if (worst === undefined) return "Nothing of this plan is drunk from: no water stands hot before birds.";
  const { id, hottest, expected } = worst;
  const peak = `${writeDegrees(expected.peak, system)}, at worst ${writeDegrees(hottest.peak, system)}`;
  if (hottest.less === 0) return `No: the warmest water before birds is in ${id}, ${peak}.`;
  const warm = `Water standing in ${id} comes to ${peak}, at ${clock(hottest.at)}`;
  if (hottest.refused > 0)
    return `${warm}; for ${writeDuration(hottest.refused)} birds may refuse it (above ${writeDegrees(REFUSED_ABOVE, system)}), for ${writeDuration(hottest.less)} they drink less (above ${writeDegrees(DRUNK_LESS_ABOVE, system)}).`;
  return `${warm}; for ${writeDuration(hottest.less)} birds may drink less (above ${writeDegrees(DRUNK_LESS_ABOVE, system)}).`;
}

/**
 * What the birds drink on such a day; undefined where the plan tells of none.
 *
 * @example writeHeatIntake(heat, "metric")   // "The birds drink 21.8 L that day to size on, ..."
 */
export function writeHeatIntake({ intake }: Heat, system: UnitSystem): string | undefined {
  if (intake === undefined) return undefined;
  return `The birds drink ${writeVolume(intake.size, system)} that day to size on, ${writeVolume(intake.expect, system)} to expect.`;
}

/** More often than this nobody goes and flushes. */
const MOST_FLUSHES = 12;

/**
 * What to let run away, of one run.
 *
 * @example writeHeatFlush(heat.flushes[0], "metric")   // "hen line: 3.3 L of hot water stand in the pipe up to its ..."
 */
export function writeHeatFlush(flush: HeatFlush, system: UnitSystem): string {
  const { run, volume, from, to, times, againAfter } = flush;
  const what = `${run}: ${writeVolume(volume, system)} of hot water stand in the pipe up to its end ${from === 0 && to === DAY ? "all day" : `from ${clock(from)} to ${clock(to)}`}`;
  if (times === undefined || againAfter === undefined)
    return `${what}; the vessel's own water is then above ${writeDegrees(DRUNK_LESS_ABOVE, system)} or the pipe is as warm as the ground: flushing does not help.`;
  if (times > MOST_FLUSHES)
    return `${what}. No flushing keeps up with it: at its hottest it is too warm again within ${writeDuration(againAfter)}.`;
  return `${what}. Let that much run away before each look: ${times} ${times === 1 ? "time keeps" : "times keep"} it under ${writeDegrees(DRUNK_LESS_ABOVE, system)}, for after a flush it is too warm again within ${writeDuration(againAfter)} at its hottest.`;
}

/** What each change would make of a part, in one sentence; undefined where it is cool as it is. */
export function writeHeatLevers({ id, hottest, levers }: HeatPart, system: UnitSystem): string | undefined {
  if (hottest.less === 0 || levers.length === 0) return undefined;
  const tried = levers.map(
    ({ change, peak, less }) =>
      `${HEAT_CHANGE_WORDS[change](system)}: ${writeDegrees(peak, system)}${less === 0 ? "" : `, ${writeDuration(less)} too warm`}`,
  );
  return `${id}, ${writeDegrees(hottest.peak, system)} at worst and ${writeDuration(hottest.less)} too warm. ${tried.join("; ")}.`;
}

/**
 * What dries of a loose waterer, and what filling it anew would do; undefined of pipe and vessels.
 *
 * @example writeHeatWaterer({ ...heat.parts[0], id: "pan", volume: 0.01, waterer: { open: 0.1, dried: { hottest: 4e-4, expected: 6e-4 }, refresh: { water: 18, times: 3, againAfter: 7200 } } }, "metric")   // "pan: 600 mL of its 10 L dry away in such a day, 400 mL in ..."
 */
export function writeHeatWaterer({ id, volume, waterer }: HeatPart, system: UnitSystem): string | undefined {
  if (waterer === undefined) return undefined;
  const { open, dried, refresh } = waterer;
  const dries =
    open === 0
      ? ""
      : ` ${writeVolume(dried.expected, system)} of its ${writeVolume(volume, system)} dry away in such a day, ${writeVolume(dried.hottest, system)} in still air.`;
  return `${id}:${dries}${refreshWords(refresh, system)}`;
}

function refreshWords({ water, times, againAfter }: HeatRefresh, system: UnitSystem): string {
  const limit = writeDegrees(DRUNK_LESS_ABOVE, system);
  if (times === 0) return ` It stays under ${limit} all day.`;
  const fresh = writeDegrees(water, system);
  if (times === undefined) return ` Filled with water of ${fresh} it is too warm at once.`;
  const soon = againAfter === undefined ? "" : `, the soonest after ${writeDuration(againAfter)}`;
  if (times > MOST_FLUSHES)
    return ` No filling keeps up with it: with water of ${fresh} it is too warm again within ${writeDuration(againAfter ?? 0)}.`;
  return ` Emptied and filled with water of ${fresh} whenever it is too warm, ${times === 1 ? "once keeps" : `${times} times keep`} it under ${limit}${soon}.`;
}

/**
 * Parts softened by their own water.
 *
 * @example writeSoftening(heat, "metric")[0]   // "feed (polyethylene pipe and drip tube) softens above 60 °C ..."
 */
export function writeSoftening({ parts }: Heat, system: UnitSystem): string[] {
  return parts.flatMap(({ id, material, hottest }) =>
    material?.softensAbove === undefined || hottest.peak < material.softensAbove
      ? []
      : [
          `${id} (${material.name}) softens above ${writeDegrees(material.softensAbove, system)} (${material.citation.seen}): hold it up, and put no weight on it.`,
        ],
  );
}

/**
 * How often drinking renews the water, where birds drink.
 *
 * @example writeRenewal(heat, "metric")   // "The birds draw about 969 mL an hour and so renew the hot ..."
 */
export function writeRenewal({ draw, renewedEvery }: Heat, system: UnitSystem): string | undefined {
  if (renewedEvery === undefined) return undefined;
  return `The birds draw about ${writeVolume(draw * 3600, system)} an hour and so renew the hot pipe every ${writeDuration(renewedEvery)}: busy lines run cooler than these figures for still water, idle ends do not.`;
}

/** What a computed hot day does not know. */
export const HEAT_CAUTIONS: readonly string[] = [
  "These are temperatures of still water on a clear day. The worse figure is for still air and the darker end of the colour; dirt darkens white.",
  "Half a line hot is half the birds short of water: on a hot day look every hour or two, and have a second, shaded vessel.",
  "Water from a sunny hose can scald hands and birds: let it run first.",
  "Lagging only delays: in the sun all day it comes nearly as warm. Shade or earth keeps the sun off.",
  "Ask what lies under ground before digging.",
  "Water kept warm grows germs: clean vessels and lines often, and make no spray of it. A vet decides.",
];

/** What is said besides where a plan has loose waterers. */
const WATERER_HEAT_CAUTIONS: readonly string[] = [
  "Loose waterers are taken as standing in the sun unless the plan says shade; under a roof or in a house they follow its air.",
  "In heat birds drink twice as much: shade every fount, stand a second one beside it, and look again at noon. Birds that pant and spread their wings need water and shade at once; ask a vet.",
  "A pan that dries in the sun leaves salts and slime: rinse it before it is filled.",
];

/**
 * All cautions of a hot day: parts that soften, what is not known, and of loose waterers where there are any.
 *
 * @example writeHeatCautions(heat, "metric").at(-1)   // "Water kept warm grows germs: clean vessels and lines often, ..."
 */
export const writeHeatCautions = (heat: Heat, system: UnitSystem): string[] => [
  ...writeSoftening(heat, system),
  ...HEAT_CAUTIONS,
  ...(heat.parts.some(({ waterer }) => waterer !== undefined) ? WATERER_HEAT_CAUTIONS : []),
];
