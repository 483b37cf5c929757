import type { DeviceNeeded, PenDrinkers } from "../judge/drinkers-for-plan.js";
import type { DrinkersAsked, Region } from "../judge/drinkers-needed.js";
import { birdById } from "../tables/birds.js";
import { sourceByKey } from "../tables/sources.js";
import type { UnitSystem } from "../units/quantity.js";
import { writeAllowance } from "./bird-sentences.js";

const counted = (count: number, device: string) => `${count} ${device}${count === 1 ? "" : "s"}`;

/** How many drinkers a pen needs, why, and what it has: a sentence or more a device. */
export function writePenDrinkers(
  { pen, devices, isSuggestion, covered }: PenDrinkers,
  region: Region,
  system: UnitSystem,
): string[] {
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
    `${pen}: ${counted(need.needed, need.device)} for ${need.birds} birds, ${becauseOf(need)}; ${has}.`,
    `- in reach: ${need.inReach}, so that none can guard the only one, and one may fail`,
    `- the crowd of the busiest minutes: ${need.byCrowd}`,
    ...need.asked.map((one) => `- ${writeAsked(one, need, system)}`),
    ...silences(need, region).map((line) => `- ${line}`),
  ];
}

function becauseOf({ because }: DeviceNeeded): string {
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
  const force = isBinding
    ? "rule that binds"
    : rule.bindsFrom > 0
      ? `rule that binds from ${rule.bindsFrom} birds on, here advice`
      : `advice (${rule.status})`;
  const first = rule.toBirds === undefined ? "" : ` of the first ${rule.toBirds}`;
  return `${needed}: ${force}: ${writeAllowance({ ...rule, device }, system)}${first} [${title}, ${rule.citation.where}; ${rule.citation.seen}]`;
}

/** Where the table says nothing, so that nothing looks satisfied that was not asked. */
function silences(need: DeviceNeeded, region: Region): string[] {
  const { isSilent, silentOn, ruleOfRegion, device } = need;
  const names = silentOn.map((id) => birdById(id)?.name ?? id).join(", ");
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
