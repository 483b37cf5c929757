import type {
  ChangeOverEvent,
  HandedOut,
  KitGiven,
  LeastToBuy,
  Shortage,
  YearEvent,
  YearOfPlan,
} from "../../judge/year/year-result.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeAge, writePercent } from "../birds/bird-sentences.js";
import { countedBirds } from "../birds/birds-called.js";

/**
 * "2 × Jar fount, 1 US quart".
 *
 * @example writePieces(2, "Jar fount")   // "2 × Jar fount"
 */
export const writePieces = (count: number, name: string): string => `${count} × ${name}`;

/**
 * What happens on a day, its date left to the caller.
 *
 * @example writeYearEvent(year.events[0])   // "brooder three: change over to poult fount; leave poult dish ..."
 */
export function writeYearEvent(event: YearEvent): string {
  if (event.code === "changeOver") return writeYearChangeOver(event);
  const birds = countedBirds(event.count, event.kindName);
  switch (event.code) {
    case "arrives":
      return `${event.pen}: ${birds} arrive, ${writeAge(event.ageDays)} old`;
    case "hatches":
      return `${event.pen}: ${birds} hatch`;
    case "moves":
      return `${event.pen}: ${birds} move to ${event.to}, ${writeAge(event.ageDays)} old`;
    case "leaves":
      return `${event.pen}: ${birds} leave, ${writeAge(event.ageDays)} old`;
  }
}

function writeYearChangeOver({ pen, from, to, until, by, wantedElsewhere }: ChangeOverEvent): string {
  const old = from.join(" and ");
  if (to.length === 0)
    return `${pen}: the birds grow out of ${old} by ${writeDay(until)}, and nothing in the pen comes after it`;
  const stay = `leave ${old} beside it until ${writeDay(until)}`;
  const wanted =
    wantedElsewhere.length === 0
      ? ""
      : `; but another pen wants ${wantedElsewhere.join(" and ")} at once, so that they cannot stay side by side: watch that the birds drink`;
  return `${pen}: change over to ${to.join(" and ")}${by === "kit" ? " from the kit" : ""}; ${stay}${wanted}`;
}

/**
 * What to put out, day by day and pen by pen: a sentence for each pen of a day.
 *
 * @example writeHandedOut(year.kit.handed)[0].sentence   // "brooder two: put out 1 × Vacuum fount, 1 US gal"
 */
export function writeHandedOut(handed: readonly HandedOut[]): { day: number; sentence: string }[] {
  const groups = new Map<string, HandedOut[]>();
  for (const one of handed) {
    const key = `${one.day} ${one.pen}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map((group) => ({
    day: group[0].day,
    sentence: `${group[0].pen}: put out ${group.map(({ count, kindName }) => writePieces(count, kindName)).join(" and ")}`,
  }));
}

/**
 * A pen that goes short, from when till when, and why.
 *
 * @example writeShortage({ pen: "hens", from: 20585, to: 20592, met: 0.5, birds: 12, because: { code: "noneSuits" } })   // "hens, 2026-05-12 to 2026-05-18: 12 birds are without a ..."
 */
export function writeShortage({ pen, from, to, met, birds, because }: Shortage): string {
  const head = `${pen}, ${writeDay(from)} to ${writeDay(to - 1)}: ${birds} ${birds === 1 ? "bird is" : "birds are"} without a place (${writePercent(met)} of the need is met)`;
  switch (because.code) {
    case "noneSuits":
      return `${head}. Nothing in the kit suits birds of this kind and age.`;
    case "tooFewOfAll":
      return `${head}. All of the kit that suits them would not be enough in this pen alone.`;
    case "inOtherPens":
      return `${head}. What suits them is out in ${because.pens.join(" and ")}.`;
    case "keptBack":
      return `${head}. What is kept back would help: ${because.kinds.join(", ")}.`;
  }
}

/**
 * What to buy, once.
 *
 * @example writeLeastToBuy({ items: [{ id: "jar", name: "Jar fount", count: 2 }], by: "pieces", cost: 2, bound: 2, never: [] }, undefined)[0]   // "Buy 2 × Jar fount: 2 pieces, and no pen goes short for want ..."
 */
export function writeLeastToBuy(buy: LeastToBuy, money: string | undefined): string[] {
  const unit = buy.by === "money" ? (money ?? "of the plan's money") : "pieces";
  const amount = `${Number(buy.cost.toFixed(2))} ${buy.by === "pieces" && buy.cost === 1 ? "piece" : unit}`;
  const items = buy.items.map(({ count, name }) => writePieces(count, name)).join(", ");
  return [
    ...(buy.items.length === 0
      ? []
      : [
          `Buy ${items}: ${amount}, and no pen goes short for want of kit. Nothing cheaper does that${buy.by === "pieces" ? ", counted in pieces" : ""}.`,
        ]),
    ...buy.never.map(
      ({ pen, from }) =>
        `${pen} goes short from ${writeDay(from)} whatever is bought: nothing on offer suits its birds then.`,
    ),
  ];
}

/**
 * How far what was found is proven, in the order of what counts first.
 *
 * @example writeKitProof(year.kit, "metric")   // "Proven: no way to give it out leaves less short (what a pen ..."
 */
export function writeKitProof(kit: KitGiven, system: UnitSystem): string {
  const { cost, bound, isHeldDown, parts } = kit;
  if (cost.short === 0 && cost.handed === 0)
    return "None of it is needed: the line and the pens' own waterers are enough.";
  const water = (tenths: number) => writeQuantity(tenths / 10_000, "volume", system, 3);
  const short =
    bound.short < cost.short
      ? "Whether less could be short is not proven"
      : "Proven: no way to give it out leaves less short (what a pen lacks beyond half of its need counts four times, so that none stands without)";
  const handed =
    bound.handed < cost.handed
      ? `; of those this one puts out ${cost.handed} pieces, and none can do with fewer than ${bound.handed}`
      : `; of those none puts out fewer than ${cost.handed} pieces`;
  const isLeastWater = bound.handed === cost.handed && bound.upkeep === cost.upkeep;
  const filled = isLeastWater
    ? `; and of those none has less to fill in, each once a day, than ${water(cost.upkeep)} in all`
    : bound.handed < cost.handed
      ? `; ${water(cost.upkeep)} are filled in in all, each once a day`
      : `; ${water(cost.upkeep)} are filled in in all, each once a day, and none of those can do with less than ${water(bound.upkeep)}`;
  const held = isHeldDown ? " Ways in which many pieces wait unused in a pen were left aside." : "";
  return `${short}${handed}${filled}. ${parts} ${parts === 1 ? "part" : "parts"} of all ways ${parts === 1 ? "was" : "were"} looked at.${held}`;
}

/**
 * Which weather the figures are for.
 *
 * @example writeYearWeather({ weatherFrom: "months" })   // "The air of each day lies between those the plan gives for ..."
 */
export const writeYearWeather = ({ weatherFrom }: Pick<YearOfPlan, "weatherFrom">): string =>
  weatherFrom === "months"
    ? "The air of each day lies between those the plan gives for its months; hot days come in their season."
    : "One weather stands for the whole year, its hot spell too; for seasons, write the air of its months into the plan file (`months` of `weather`).";

/** What is always said beside a year. */
export const YEAR_CAUTIONS: readonly string[] = [
  "Look at the birds and their water every day: no calendar replaces that.",
  "When you change over, leave the old beside the new until every bird has been seen to drink from the new one.",
  "Wash what goes from one pen to another, and let it dry: kit carries disease from older birds to chicks.",
  "Put pebbles or marbles into the ring of a fount for birds of under two weeks: they drown in a few centimetres.",
];
