import type { DeviceNeeded, DrinkersAsked, PenDrinkers, Region } from "../../judge/birds/drinkers-needed.js";
import { birdById } from "../../tables/birds.js";
import { sourceByKey } from "../../tables/sources.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeAllowance } from "./bird-sentences.js";

const counted = (count: number, device: string) => `${count} ${device}${count === 1 ? "" : "s"}`;

/** How many drinkers a pen needs, why, and what it has: a sentence or more a device. */
export function writePenDrinkers(
  { pen, devices, isSuggestion, covered, isElsewhere }: PenDrinkers,
  region: Region,
  system: UnitSystem,
): string[] {
  if (isElsewhere) return [`${pen}: its birds drink from loose waterers; see headfall yard.`];
  if (devices.every(({ birds }) => birds === 0)) return [`${pen}: no bird is there yet.`];
  const lines = devices.flatMap((device) => writeDevice(pen, device, isSuggestion, region, system));
  if (devices.length < 2) return lines;
  const together =
    covered >= 1 - 1e-9 ? "are enough" : `are ${Math.floor(100 * covered)} % of what is needed`;
  return [
    ...lines,
    `${pen}: each kind is counted as if it were the only one; together its drinkers ${together}.`,
  ];
}

function writeDevice(
  pen: string,
  need: DeviceNeeded,
  isSuggestion: boolean,
  region: Region,
  system: UnitSystem,
): string[] {
  const has = isSuggestion
    ? "it has no drinkers yet; nipples are a suggestion"
    : `it has ${need.has}${need.has >= need.needed ? "" : `, ${need.needed - need.has} too few`}`;
  return [
    `${pen}: ${counted(need.needed, need.device)} for ${need.birds} birds, ${writeNeedReason(need)}; ${has}.`,
    `- in reach: ${need.inReach}, so that none can guard the only one, and one may fail`,
    `- the crowd of the busiest minutes: ${need.byCrowd}`,
    ...need.asked.map((one) => `- ${writeAsked(one, need, system)}`),
    ...writeSilences(need, region).map((line) => `- ${line}`),
  ];
}

/**
 * What makes a pen need so many.
 *
 * @example writeNeedReason({ because: "crowd" })   // "for the crowd of the busiest minutes"
 */
export function writeNeedReason({ because }: Pick<DeviceNeeded, "because">): string {
  switch (because) {
    case "rule":
      return "by a rule that binds";
    case "advice":
      return "by advice";
    case "inReach":
      return "so that each bird has two in reach";
    case "crowd":
      return "for the crowd of the busiest minutes";
    case "nobody":
      return "as nobody is there";
  }
}

function writeAsked(
  { rule, isBinding, needed }: DrinkersAsked,
  { device }: DeviceNeeded,
  system: UnitSystem,
): string {
  const title = sourceByKey(rule.citation.source)?.title ?? rule.citation.source;
  const asks = writeAsks({ rule }, device, system);
  return `${needed}: ${writeForce({ rule, isBinding })}: ${asks} [${title}, ${rule.citation.where}; ${rule.citation.seen}]`;
}

/**
 * Whether it is a rule that binds these birds, or advice.
 *
 * @example writeForce(birds.pens[0].drinkers.devices[0].asked[0])   // "advice (practice)"
 */
export function writeForce({ rule, isBinding }: Pick<DrinkersAsked, "rule" | "isBinding">): string {
  if (isBinding) return "rule that binds";
  return rule.bindsFrom > 0
    ? `rule that binds from ${rule.bindsFrom} birds on, here advice`
    : `advice (${rule.status})`;
}

/**
 * What it asks.
 *
 * @example writeAsks(birds.pens[0].drinkers.devices[0].asked[0], "nipple", "metric")   // "one nipple for 5 birds of the first 50"
 */
export function writeAsks({ rule }: Pick<DrinkersAsked, "rule">, device: string, system: UnitSystem): string {
  const first = rule.toBirds === undefined ? "" : ` of the first ${rule.toBirds}`;
  return `${writeAllowance({ ...rule, device }, system)}${first}`;
}

/**
 * Where the table says nothing, so that nothing looks satisfied that was not asked.
 *
 * @example writeSilences(birds.pens[0].drinkers.devices[0], "EU")   // []
 */
export function writeSilences(need: DeviceNeeded, region: Region): string[] {
  const { isSilent, silentOn, ruleOfRegion, device } = need;
  const names = silentOn.map((id) => birdById(id)?.many ?? id).join(", ");
  if (isSilent)
    return [
      `no rule and no advice we know of speaks of ${names} of this age at ${device}s: whether these are enough, only the birds tell`,
    ];
  return [
    ...(silentOn.length === 0 ? [] : [`none of these speaks of ${names}, who are counted as no one`]),
    ...(ruleOfRegion === "none" && region !== "none"
      ? [`we know of no rule in ${region} that binds for these birds at ${device}s; ask your own authority`]
      : []),
  ];
}
