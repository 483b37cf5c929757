import type { BirdFinding, CrowdOrigin, GroupCrowd, PenReport } from "../../judge/birds/flock-report.js";
import { type UnitSystem, writeQuantity, writeRange } from "../../units/quantity.js";
import { writeFlow, writeVolume } from "../words.js";
import { birdsCalled } from "./birds-called.js";

const DAY = 86_400;

/**
 * An age as a keeper says it: days up to two weeks, then weeks, then years.
 *
 * @example writeAge(37)   // "5 weeks"
 */
export function writeAge(days: number): string {
  const plural = (count: number, unit: string) => `${count} ${unit}${count === 1 ? "" : "s"}`;
  if (days < 14) return plural(Math.round(days), "day");
  if (days < 730) return plural(Math.round(days / 7), "week");
  return plural(Number((days / 365.25).toFixed(1)), "year");
}

/** A share in whole percent, never 0 for what is more than nothing. */
export function writePercent(share: number): string {
  if (share > 0 && share < 0.01) return "under 1 %";
  return `${Math.round(share * 100)} %`;
}

/**
 * A finding on birds and drinkers as sentences, with its numbers and what to do.
 *
 * @example writeBirdFinding({ code: "noDrinkers", pen: "hens", birds: 12 }, "metric")   // "hens: its 12 birds reach no drinker of this line."
 */
export function writeBirdFinding(finding: BirdFinding, system: UnitSystem): string {
  const length = (metres: number) => writeQuantity(metres, "length", system, 2);
  const flow = (q: number) => writeFlow(q, system);
  switch (finding.code) {
    case "noDrinkers":
      return `${finding.pen}: its ${finding.birds} birds reach no drinker of this line.`;
    case "notYetCome":
      return `${finding.pen}: the ${birdsCalled(finding.kind)} come in ${writeAge(finding.days)}; until then they count for nothing.`;
    case "tooFewDrinkers":
      return `${finding.pen}: ${counted(finding.drinkers, finding.device)} for ${finding.birds} birds; ${finding.needed} are ${finding.binding ? "required by law" : "advised"} (${writeAllowance(finding, system)}).`;
    case "oneInReach":
      return `${finding.pen}: ${finding.birds} birds have one drinker in reach. One bird can guard it, and when it fails they are dry: give them a second.`;
    case "crowdSaturates":
      return `${finding.pen}: in its busiest hour the birds want ${flow(finding.demand)} and can take in ${flow(finding.capacity)} at most with every place taken; ${writePercent(finding.short)} of it is left wanting then. More drinkers, more head, or wider pipe.`;
    case "hangsTooHigh":
      return `${finding.pen}: ${finding.group} hangs ${length(finding.height)} above the ground, too high for birds of ${writeAge(finding.ageDays)}: ${writeRange(finding.low, finding.high, "length", system, 2)} lets them drink without straining.`;
    case "hangsTooLow":
      return `${finding.pen}: ${finding.group} hangs ${length(finding.height)} above the ground, low for birds of ${writeAge(finding.ageDays)}: ${writeRange(finding.low, finding.high, "length", system, 2)} spills less and keeps it cleaner.`;
    case "flowUnderNeed":
      return `${finding.pen}: ${finding.drinker} gives ${flow(finding.flow)}, and birds of ${writeAge(finding.ageDays)} should have ${flow(finding.need)}; the plan asks for less.`;
    case "flowAboveBenefit":
      return `${finding.pen}: ${finding.drinker} gives ${flow(finding.flow)} when full. Beyond ${flow(finding.most)} no trial found birds better off, and litter gets wetter.`;
    case "lowFlowInHeat":
      return `${finding.pen}: ${finding.drinker} gives ${flow(finding.flow)} on days of ${writeQuantity(finding.high, "temperature", system)}. In a summer trial with meat chickens nearly twice as many died at ${flow(finding.triedLow)} as at ${flow(finding.triedHigh)}: give them more flow, shade and cool water, and look often; a vet decides on birds that pant.`;
    case "mayDrown":
      return `${finding.pen}: ${finding.group} is open water, and ${birdsCalled(finding.kind)} of ${writeAge(finding.ageDays)} drown in it (until ${writeAge(finding.untilDays)}). Give them nipples or cups, or fill it with pebbles so that only a few millimetres stand open.`;
  }
}

/** What a rule or advice on drinkers asks, in words. */
export function writeAllowance(
  {
    counts,
    figure,
    device,
  }: { readonly counts: "birds" | "edge" | "least"; readonly figure: number; readonly device: string },
  system: UnitSystem,
): string {
  if (counts === "birds") return `one ${device} for ${figure} birds`;
  if (counts === "least") return `at least ${figure} within reach of each bird`;
  return `${writeQuantity(figure, "length", system, 3)} of edge a bird`;
}

const counted = (count: number, device: string) => `${count} ${device}${count === 1 ? "" : "s"}`;

/** How a pen gets on at its busiest hour, in sentences. */
export function writePen(pen: PenReport, system: UnitSystem): string {
  const volume = (v: number) => writeVolume(v, system);
  if (pen.isElsewhere) return `${pen.pen}: its birds drink from loose waterers; see headfall yard.`;
  if (pen.birds === 0) return `${pen.pen}: no bird is there yet.`;
  const day = `${pen.birds} birds take ${volume(pen.intakeSize)} a day to size on (${volume(pen.intakeExpect)} to expect)`;
  if (pen.boutSeconds === undefined || pen.load === undefined)
    return `${pen.pen}: ${day}; none of ${counted(pen.drinkers, "drinker")} gives them any.`;
  const hour = `${writePercent(pen.busiestHour?.share ?? 0)} of what they drink in the busiest hour`;
  const bouts = `${volume(pen.boutVolume)} a bout takes ${writeSeconds(pen.boutSeconds)}`;
  const crowd = `${round(pen.load)} drink at once on average, ${pen.atOnce} at most but once in a hundred; so ${pen.busiest} of ${counted(pen.drinkers, "drinker")} at work in the busiest minutes, ${pen.ordinary} in an ordinary hour`;
  const waits =
    pen.chanceAllTaken === undefined || pen.meanWait === undefined
      ? "more come than can be served"
      : `all taken ${writePercent(pen.chanceAllTaken)} of the time, mean wait ${writeSeconds(pen.meanWait)}`;
  return `${pen.pen}: ${day}, ${hour}; ${bouts}; ${crowd}; ${waits}.`;
}

const round = (value: number) => Number(value.toPrecision(2));

/**
 * Short times: tenths of a second under ten, whole seconds and minutes beyond.
 *
 * @example writeSeconds(95)   // "95 s"
 */
export function writeSeconds(seconds: number): string {
  if (seconds < 0.05) return "0 s";
  if (seconds < 10) return `${seconds.toFixed(1)} s`;
  return writeQuantity(Math.min(seconds, DAY), "time", "metric", 2);
}

const ORIGIN_WORDS: Readonly<Record<CrowdOrigin, string>> = {
  typed: "as the plan says",
  birds: "from its birds",
  default: "default",
};

/**
 * What a group was judged with, and where each figure came from.
 *
 * @example writeGroupCrowd(checked.flock.groups[0], "metric")   // "hen line: at work 5 at the busiest (from its birds), 1 in ..."
 */
export function writeGroupCrowd(group: GroupCrowd, system: UnitSystem): string {
  const { busiest, ordinary, need } = group;
  return `${group.group}: at work ${busiest.count} at the busiest (${ORIGIN_WORDS[busiest.from]}), ${ordinary.count} in an ordinary hour (${ORIGIN_WORDS[ordinary.from]}); needs ${writeFlow(need.flow, system)} each (${ORIGIN_WORDS[need.from]}).`;
}
