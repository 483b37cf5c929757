import type { Cost } from "../../search/cost.js";
import type {
  Change,
  Close,
  Cure,
  CureAnswer,
  CureKind,
  Relaxation,
  SearchReport,
} from "../../search/cure-answer.js";
import { drinkerById } from "../../tables/drinkers.js";
import { pipeById } from "../../tables/pipes.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeFlow, writeHead } from "../words.js";

/** What each kind of remedy is called. */
export const CURE_WORDS: Readonly<Record<CureKind, string>> = {
  stand: "another height of the stand",
  pipe: "other pipe",
  standAndPipe: "stand and pipe",
  tap: "an open tap",
  vent: "an open vent",
  bleed: "a bleed for the air",
  drinkers: "other drinkers",
  fewerDrinkers: "fewer drinkers",
  outlet: "a wider outlet",
  secondFeed: "a second feed to the far end",
  feedMiddle: "a feed to the middle",
  split: "the line split in two",
  regulator: "a regulator",
  headerTank: "a header tank",
  moveSource: "the source at another place",
  two: "two remedies together",
};

const length = (metres: number, system: UnitSystem) => writeQuantity(metres, "length", system, 3);
const quoted = (name: string) => `"${name}"`;
const pipeName = (id: string) => (id === "own" ? "its pipe" : quoted(pipeById(id)?.name ?? id));
const drinkerName = (id: string) => quoted(drinkerById(id)?.name ?? id);

/**
 * One thing to do, as a sentence.
 *
 * @example writeChange({ code: "stand", source: "bucket", from: 0.2, to: 0.5 }, "metric")   // "Raise the stand of \"bucket\" by 30 cm, to 50 cm."
 */
export function writeChange(change: Change, system: UnitSystem): string {
  switch (change.code) {
    case "stand": {
      const up = change.to - change.from;
      return `${up > 0 ? "Raise" : "Lower"} the stand of ${quoted(change.source)} by ${length(Math.abs(up), system)}, to ${length(change.to, system)}.`;
    }
    case "pipe":
      return `Lay ${pipeName(change.to)} in ${quoted(change.run)} (${length(change.length, system)}) in place of ${pipeName(change.from)}.`;
    case "openTap":
      return `Open the tap of ${quoted(change.run)}, which is ${change.was === "half" ? "half open" : "shut"}.`;
    case "openVent":
      return `Give ${quoted(change.source)} an air hole of ${length(change.opening, system)}, or open its lid.`;
    case "bleed":
      return `Let the air out at the hump ${change.along === undefined ? quoted(change.point) : `${length(change.along, system)} along ${quoted(change.run ?? "")}`}: a bleed or a riser vent there.`;
    case "drinkers":
      return `Put ${drinkerName(change.to)} in place of ${drinkerName(change.from)} in ${quoted(change.group)} (${change.count}).`;
    case "leaveOff":
      return writeLeftOff(change);
    case "outlet":
      return `Give ${quoted(change.source)} an outlet and tap as wide as its pipe, in place of ${length(change.from, system)}.`;
    case "newRun":
      if (change.isCut && change.into !== undefined && change.along !== undefined)
        return `Cut ${quoted(change.into)} ${length(change.along, system)} from its start, and feed what lies beyond by a run of its own: ${length(change.length, system)} of ${pipeName(change.pipe)} from ${quoted(change.from)} to ${quoted(change.to)}.`;
      return `Lay a new run of ${length(change.length, system)} of ${pipeName(change.pipe)} from ${quoted(change.from)} to ${quoted(change.to)}${change.into === undefined || change.along === undefined ? "" : `, joined into ${quoted(change.into)} ${length(change.along, system)} from its start`}.`;
    case "regulator":
      return `Put a low-pressure regulator that holds ${writeHead(change.sets, system)} at the start of ${quoted(change.run)}.`;
    case "headerTank":
      return `Let a header tank with a float valve, ${length(change.stand, system)} above the ground at ${quoted(change.at)}, feed ${quoted(change.run)}.`;
    case "moveSource":
      return `Put ${quoted(change.source)} at ${quoted(change.to)}.`;
  }
}

/** What is left off, and what that costs the birds. */
function writeLeftOff({
  group,
  off,
  of,
  end,
  pen,
  birds,
  has,
  needed,
}: Extract<Change, { readonly code: "leaveOff" }>): string {
  const which = `${end === "far" ? "last" : "first"} ${off === 1 ? "drinker" : `${off} drinkers`}`;
  const each = (drinkers: number) => Number((birds / drinkers).toPrecision(2));
  return `Put ${off === 1 ? "a plug" : "plugs"} in place of the ${which} of ${quoted(group)} (${of - off} of ${of} stay): ${quoted(pen)} then has ${has} for ${birds} birds, ${each(has)} to each in place of ${each(has + off)}; ${needed} are enough.`;
}

/**
 * What a cure costs, in a few words; money first where it has a price.
 *
 * @example writeCost({ money: 0, unpriced: 0, parts: 2, pipe: 0, runs: 0, stand: 0.3 }, undefined, "metric")   // "2 new parts, 30 cm of stand"
 */
export function writeCost(cost: Cost, money: string | undefined, system: UnitSystem): string {
  const parts = [
    cost.money > 0 ? `${cost.money.toFixed(2)}${money === undefined ? "" : ` ${money}`}` : "",
    cost.pipe > 1e-6 ? `${length(cost.pipe, system)} of pipe to buy` : "",
    cost.runs > 0 && cost.pipe <= 1e-6 ? "pipe from what is on hand" : "",
    cost.parts > 0 ? `${cost.parts} new ${cost.parts === 1 ? "part" : "parts"}${unpriced(cost)}` : "",
    cost.stand > 1e-6 ? `${length(cost.stand, system)} of stand` : "",
  ].filter((text) => text !== "");
  return parts.length === 0 ? "nothing to buy" : parts.join(", ");
}

function unpriced({ money, unpriced: without, parts }: Cost): string {
  if (money === 0 || without === 0) return "";
  return without === parts ? " (no price given)" : ` (${without} without a price)`;
}

const AGAINST: Readonly<Record<Close["against"], string>> = {
  starving: "before it starves",
  dripping: "before it drips",
  notSealing: "before the head no longer presses its seal shut",
};

/**
 * When: the plan's own day, or a day of a coming week.
 *
 * @example writeScene({ week: 2, hot: true })   // "in 2 weeks, in the hot spell"
 */
export function writeScene({ week, hot }: { readonly week: number; readonly hot: boolean }): string {
  const day = week === 0 ? "on the plan's day" : week === 1 ? "in a week" : `in ${week} weeks`;
  return hot ? `${day}, in the hot spell` : day;
}

/** Head that a height measured with a hose or a string may be off by [m]; common practice, no source. */
const LITTLE = 0.02;

/**
 * Where a cure leaves least to spare, and what to make of it where that is less than a height may be off by.
 *
 * @example writeClose({ drinker: "line 4", spare: 0.01, week: 0, hot: false, against: "starving" }, "metric")   // "Closest is line 4, with 10 mm to spare before it starves. ..."
 */
export function writeClose(close: Close, system: UnitSystem): string {
  const when = close.week === 0 && !close.hot ? "" : `, ${writeScene(close)}`;
  const advice = close.spare < LITTLE ? " That is a close call: ask for more head to spare." : "";
  return `Closest is ${close.drinker}, with ${writeHead(Math.max(0, close.spare), system)} to spare ${AGAINST[close.against]}${when}.${advice}`;
}

/**
 * What was searched for one kind, and what that proves.
 *
 * @example writeSearch(cures.searches[0], undefined, "metric")   // "another height of the stand: 31 plans, 1 of them judged one ..."
 */
export function writeSearch(search: SearchReport, money: string | undefined, system: UnitSystem): string {
  const plans = search.plans === 1 ? "1 plan" : `${writeCount(search.plans)} plans`;
  const how = `${plans}, ${search.judged} of them judged one by one`;
  const outcome = search.proven
    ? search.found
      ? "nothing cheaper in this space works"
      : "none works"
    : `not searched to the end; ${search.bound === undefined ? "" : `whatever works costs at least ${writeCost(search.bound, money, system)}`}`;
  return `${CURE_WORDS[search.kind]}: ${how}; ${outcome}.`;
}

/** A number of plans: in full as long as it can be read. */
const writeCount = (count: number): string =>
  count < 1e7
    ? String(count)
    : `${Number((count / 10 ** Math.floor(Math.log10(count))).toPrecision(2))}e${Math.floor(Math.log10(count))}`;

/**
 * What would have to give where nothing works.
 *
 * @example writeRelaxation({ give: "standMost", needed: 1.8, allowed: 1.5, cost: { money: 0, unpriced: 0, parts: 0, pipe: 0, runs: 0, stand: 1.6 }, plan: small }, "metric")   // "Allow a stand of 1.8 m (1.5 m was the most): then it works."
 */
export function writeRelaxation(relaxation: Relaxation, system: UnitSystem): string {
  switch (relaxation.give) {
    case "standMost":
      return `Allow a stand of ${length(relaxation.needed, system)} (${length(relaxation.allowed, system)} was the most): then it works.`;
    case "margin":
      return relaxation.best >= 0
        ? `Be content with ${writeHead(relaxation.best, system)} to spare in place of ${writeHead(relaxation.asked, system)}: then it works.`
        : `At best the worst drinker is ${writeHead(-relaxation.best, system)} of head short.`;
    case "drinkers":
      return `${relaxation.lost} of ${relaxation.of} drinkers cannot be had: ${relaxation.names.slice(0, 6).join(", ")}${relaxation.names.length > 6 ? " ..." : ""}${relaxation.flow === undefined || relaxation.need === undefined ? "" : `; the worst of them gives ${writeFlow(relaxation.flow, system)} of the ${writeFlow(relaxation.need, system)} it needs`}.`;
  }
}

/**
 * The first sentence of an answer.
 *
 * @example writeCureHeadline(cures)   // "The smallest change that makes it work, and others; nothing ..."
 */
export function writeCureHeadline(answer: CureAnswer): string {
  const [best] = answer.cures;
  if (answer.before.meets) return "Nothing to cure: every drinker is good in all that was asked.";
  if (best === undefined)
    return answer.proven
      ? "Nothing that was searched makes it work."
      : "Nothing found that makes it work, but the search did not come to its end.";
  return answer.proven
    ? "The smallest change that makes it work, and others; nothing cheaper in what was searched works."
    : "Changes that make it work; whether there is a cheaper one is not proven.";
}

/** All that is to be done for a cure. */
export const writeChanges = ({ changes }: Pick<Cure, "changes">, system: UnitSystem): string =>
  changes.map((change) => writeChange(change, system)).join(" ");
