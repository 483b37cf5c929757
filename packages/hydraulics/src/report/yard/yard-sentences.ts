import type { YardFinding } from "../../judge/yard/yard-finding.js";
import type { ChangeOver, Opening, PenYard, WatererReport } from "../../judge/yard/yard-result.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeAge, writePercent } from "../birds/bird-sentences.js";
import { birdsCalled } from "../birds/birds-called.js";
import { writeDuration } from "../durations.js";
import { writeMass, writeVolume } from "../words.js";
import { HOLE_WORDS, writeMark, writeMarks, writeRefills, writeSlope } from "./yard-words.js";

/**
 * What is amiss with a loose waterer or a pen, in words, with what to do.
 *
 * @example writeYardFinding({ code: "noWater", pen: "hens", birds: 12 }, "metric")   // "hens: its 12 birds have nothing to drink from."
 */
export function writeYardFinding(finding: YardFinding, system: UnitSystem): string {
  const mark = (metres: number) => writeMark(metres, system);
  switch (finding.code) {
    case "drains":
      return `${finding.waterer}: on ${writeSlope(finding.slope)} it runs out; it drains from ${writeSlope(finding.drainsAt)} on. ${turnWords(finding)}shim the lower edge by ${mark(finding.shimEnough)} at least, ${mark(finding.shimLevel)} to make it level.`;
    case "nearlyDrains":
      return `${finding.waterer}: on ${writeSlope(finding.slope)} it holds, but only just: it drains from ${writeSlope(finding.drainsAt)} on, and a bump takes that. Shim the lower edge by ${mark(finding.shimEnough)}.`;
    case "holdsLess":
      return `${finding.waterer}: of a full one only ${writePercent(finding.share)} stays on this slope.${finding.across === undefined ? "" : ` Turned across the slope ${writePercent(finding.across)} stays.`} ${mark(finding.shimLevel)} under the lower ${finding.across === undefined ? "edge" : "end"} makes it level.`;
    case "dryUphill":
      return `${finding.waterer}: its upper side falls dry; birds find water on ${writePercent(finding.wetShare)} of its lip.`;
    case "noWater":
      return `${finding.pen}: ${finding.birds === 1 ? "its bird has" : `its ${finding.birds} birds have`} nothing to drink from.`;
    case "tooFewPlaces":
      return `${finding.pen}: its places to drink are ${writePercent(finding.covered)} of what rules and advice ask for these birds.`;
    case "noRule":
      return `${finding.pen}: no rule and no advice of the table speaks of such waterers for these birds; two in reach of each bird, so that none can guard the only one, is common practice.`;
    case "emptyBetween":
      return `${finding.waterer}: filled every ${writeDuration(finding.every).replace(/^1 (day|h)$/, "$1")}, it lasts ${writeDuration(finding.lasts)}, and ${writeDuration(finding.hotLasts)} on a hot day.`;
    case "oftenEmpty":
      return `${finding.waterer}: it wants filling ${writeRefills(finding.refills)}, and ${writeRefills(finding.hotRefills)} in heat. A larger one, or another beside it, saves the walk.`;
    case "tooYoung":
      return `${finding.waterer}: ${birdsCalled(finding.kindName)} of ${writeAge(finding.ageDays)} are too young for it; it suits them from ${writeAge(finding.fromDays)} on.${otherWords(finding)}`;
    case "tooOld":
      return `${finding.waterer}: ${birdsCalled(finding.kindName)} of ${writeAge(finding.ageDays)} have outgrown it; it served until ${writeAge(finding.toDays)}.${otherWords(finding)}`;
    case "notForThem":
      return `${finding.waterer}: it is not for ${birdsCalled(finding.kindName)}.${otherWords(finding)}`;
    case "mayDrown":
      return `${finding.waterer}: ${mark(finding.depth)} of open water, and ${birdsCalled(finding.kindName)} of ${writeAge(finding.ageDays)} drown in it, or wet themselves and chill (until ${writeAge(finding.untilDays)}). Put pebbles in, so that only a few millimetres stand open.`;
    case "hangsHigh":
    case "standsHigh":
      return `${finding.waterer}: at ${mark(finding.height)} it ${finding.code === "hangsHigh" ? "hangs" : "stands"} too high for the smallest birds there: ${writeMarks(finding.low, finding.high, system)} is right.`;
    case "hangsLow":
      return `${finding.waterer}: at ${mark(finding.height)} it hangs low, and gets litter and droppings in: ${writeMarks(finding.low, finding.high, system)} is right.`;
    case "standsLow":
      return `${finding.waterer}: its lip is ${mark(finding.height)} over the ground: raised by ${mark(finding.best - finding.height)} it stays cleaner (${writeMarks(finding.low, finding.high, system)} is right).`;
    case "warmthSpills":
      return `${finding.waterer}: when it is nearly empty, a hot day's air pushes ${writeVolume(finding.lost, system)} over its lip. Shade it, or fill it in the morning.`;
    case "tooHeavy":
      return `${finding.waterer}: full it weighs ${writeMass(finding.mass, system)} and is turned over by hand; the plan's most is ${writeMass(finding.most, system)}.`;
  }
}

function turnWords({ turn }: Extract<YardFinding, { code: "drains" }>): string {
  return turn === undefined ? "Turning it does not help: " : `Turn ${HOLE_WORDS[turn]}, or `;
}

const otherWords = ({ othersSuit }: { readonly othersSuit: boolean }): string =>
  othersSuit ? " Another in the pen serves them." : " Nothing else in the pen serves them.";

const onSlope = (slope: number): string => (slope === 0 ? "level" : `on ${writeSlope(slope)}`);

/**
 * How far off level a waterer may stand, and what its slope does to it.
 *
 * @example writeTilt(yard.pens[0].waterers[0], "metric")   // "chick jars: drains from 7.1 % (4.0°) with its hole uphill, ..."
 */
export function writeTilt({ id, tilt, stays, holds, waterer }: WatererReport, system: UnitSystem): string {
  switch (tilt.works) {
    case "nipples":
      return `${id}: hangs plumb on any ground.`;
    case "bell":
      return `${id}: runs over from ${writeSlope(tilt.drainsAt)} on, and then until what feeds it is empty${tilt.swing === undefined ? `; it stands ${onSlope(tilt.slope)}` : `; hung by ${writeMark(waterer.cord, system)} of cord, it may be held ${writeMark(tilt.swing, system)} aside before it spills`}.`;
    case "pan":
    case "trough":
      return `${id}: ${onSlope(tilt.slope)} it keeps ${writeVolume(stays, system)} of ${writeVolume(holds, system)}${tilt.shareAcross === undefined || tilt.slope === 0 ? "" : ` (across the slope ${writePercent(tilt.shareAcross)})`}; half of a full one stays on ${writeSlope(tilt.halfAt)}${tilt.slope === 0 ? "" : `; ${writeMark(tilt.shims.level, system)} of shim makes it level`}.`;
    case "vacuum": {
      const limits = (["uphill", "sideways", "downhill"] as const)
        .map((way) => {
          const limit = tilt.byHole[way];
          return `${limit === undefined ? "no slope" : writeSlope(limit)} with ${HOLE_WORDS[way]}`;
        })
        .join(", ");
      return `${id}: drains from ${limits}. It stands ${onSlope(tilt.slope)}, ${HOLE_WORDS[waterer.hole]}: ${tilt.isDraining ? "it runs out" : "it holds"}${tilt.slope === 0 ? "" : `; ${writeMark(tilt.shims.level, system)} of shim under its lower edge makes it level`}.`;
    }
  }
}

/**
 * What happens when it is opened or shut wrongly, or its air warms.
 *
 * @example writeOpenings(yard.pens[0].waterers[0], "metric")[0]   // "chick jars: a crack or a thread that lets air in above, and ..."
 */
export function writeOpenings({ id, openings, warming }: WatererReport, system: UnitSystem): string[] {
  const volume = (cubic: number) => writeVolume(cubic, system);
  const warm =
    warming === undefined
      ? []
      : [
          `${id}: as its air warms from ${degrees(warming.from)} to ${degrees(warming.to)}${warming.isTaken ? " (taken: the plan's hot day has no cool night)" : ""}, at worst ${volume(warming.pushed)} is pushed out, of which its ring takes ${volume(Math.min(warming.room, warming.pushed))} and ${warming.lost > 0 ? volume(warming.lost) : "none"} runs over. It happens when ${writePercent(warming.airShare)} of it is air.`,
        ];
  return [...openings.map((opening) => `${id}: ${openingWords(opening, volume)}`), ...warm];

  function degrees(celsius: number): string {
    return system === "us" ? `${Math.round(celsius * 1.8 + 32)} °F` : `${Math.round(celsius)} °C`;
  }
}

function openingWords(opening: Opening, volume: (cubic: number) => string): string {
  switch (opening.code) {
    case "capOff":
      return `cap off or its seal gone, air gets in above and ${volume(opening.lost)} runs out.`;
    case "lidLoose":
      return `lid not airtight, ${volume(opening.lost)} runs out.`;
    case "jarCracked":
      return `a crack or a thread that lets air in above, and ${volume(opening.lost)} runs out.`;
    case "filledOpen":
      return `filled with its outlet not shut first, up to ${volume(opening.lost)} runs out while it is filled.`;
    case "ventShut":
      return `lid airtight (no vent), it gives ${volume(opening.gives)} and stops, with ${volume(opening.stays)} still in it.`;
  }
}

/**
 * From one waterer to the next.
 *
 * @example writeChangeOver(yard.pens[0].changeOvers[0])   // "chick jars to chick fount: growing pullets or cockerels ..."
 */
export function writeChangeOver(change: ChangeOver): string {
  const { from, to, kindName, bothFromDays, untilDays, bothFromDay, untilDay } = change;
  const at = (age: number, day: number | undefined) =>
    day === undefined ? `at ${writeAge(age)}` : `on ${writeDay(day)} (${writeAge(age)})`;
  if (to === undefined)
    return `${from}: ${birdsCalled(kindName)} outgrow it ${at(untilDays, untilDay)}, and nothing else in the pen suits them then.`;
  if (bothFromDays > untilDays)
    return `${from} to ${to}: ${birdsCalled(kindName)} outgrow the first ${at(untilDays, untilDay)}, before the second suits them ${at(bothFromDays, bothFromDay)}.`;
  return `${from} to ${to}: ${birdsCalled(kindName)} have both from ${at(bothFromDays, bothFromDay).replace(/^(on|at) /, "")}, and the first goes ${at(untilDays, untilDay)}.`;
}

/**
 * What of the birds' drinking is taken to come from the loose ones.
 *
 * @example writeShareOfLoose(yard.pens.find((pen) => writeShareOfLoose(pen)))   // "hen house: 56 % of the drinking is taken to be at the loose ..."
 */
export function writeShareOfLoose({ pen, looseShare, linePlaces, loosePlaces }: PenYard): string | undefined {
  if (linePlaces === 0 || loosePlaces === 0) return undefined;
  return `${pen}: ${writePercent(looseShare)} of the drinking is taken to be at the loose waterers, as ${loosePlaces} of ${linePlaces + loosePlaces} places to drink; the line is judged as if they were empty.`;
}

/** What is always said beside figures of loose waterers. */
export const YARD_CAUTIONS = [
  "Look at every waterer every day, in the morning and in heat again: a fount that has drained looks no different from the house.",
  "Chicks and quail drown in a few centimetres. Pebbles in the water, or nipples, until they are two weeks old.",
  "Slopes are reckoned for still water: surface tension holds 2 to 3 mm more, a bump or a bird on the lip takes more than that.",
  "Full buckets and founts are heavy: hang them from what bears several times their weight, and lift with the legs.",
] as const;
