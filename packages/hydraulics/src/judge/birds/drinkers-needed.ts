import type { Plan } from "../../document/plan-schema.js";
import { type Batch, isThere, type Pen } from "../../model/flock.js";
import { type Allowance, allAllowances } from "../../tables/allowances.js";

/** Whose rules bind. */
export type Region = NonNullable<Plan["region"]>;
/** A way of drinking at a line, as rules tell them apart. */
export type Device = "nipple" | "cup" | "bell" | "trough";

/**
 * What one bell or trough of the tables offers: its edge [m]. A bell of 40 cm, a trough of 60 cm that is drunk from on
 * both sides; common practice, no source.
 *
 * @source common-practice, not stated, from memory
 */
export const EDGES = { bell: Math.PI * 0.4, trough: 1.2 } as const;

/**
 * At least so many drinkers in reach of each bird, so that none can guard the only one: it governs most small flocks.
 *
 * @source common-practice, two stations at least, from memory
 */
export const IN_REACH = 2;

/** One rule's answer for a pen and a device. */
export interface DrinkersAsked {
  readonly needed: number;
  readonly isBinding: boolean;
  readonly rule: Allowance;
}

/** How many drinkers of a device a pen needs if it has no other kind, and why. */
export interface DrinkersNeeded {
  readonly device: Device;
  readonly birds: number;
  /** Greatest of all below. */
  readonly needed: number;
  /** What makes it so: a rule that binds, advice, two in reach of each bird, or the crowd at the busiest hour. */
  readonly because: "rule" | "advice" | "inReach" | "crowd" | "nobody";
  readonly byRule: number;
  /** By advice and rules together; never fewer than by rules alone. */
  readonly byAdvice: number;
  readonly inReach: number;
  /** So that the busiest minutes find a drinker for each bird that comes, once in a hundred times not. */
  readonly byCrowd: number;
  /** Every rule and advice that speaks of these birds, what binds first, the most asked first. */
  readonly asked: readonly DrinkersAsked[];
  /** Whether the table has a rule of the region for these birds: one that binds, one for larger flocks only, or none. */
  readonly ruleOfRegion: "binds" | "forMoreBirds" | "none";
  /** Whether no rule and no advice of the table speaks of any of these birds: then nothing is known to be enough. */
  readonly isSilent: boolean;
  /** Kinds, by id, that none speaks of. */
  readonly silentOn: readonly string[];
}

/** One device of a pen: what it needs of it if it has no other, and what it has. */
export interface DeviceNeeded extends DrinkersNeeded {
  readonly has: number;
}

/** The drinkers of one pen against what its birds need. */
export interface PenDrinkers {
  readonly pen: string;
  /** Position in the plan's list of pens. */
  readonly index: number;
  /** Each device among its drinkers; nipples, as a suggestion, where it has none. */
  readonly devices: readonly DeviceNeeded[];
  /** Whether it has none, so that the device is ours. */
  readonly isSuggestion: boolean;
  /** Its birds drink from loose waterers, and need none of the line. */
  readonly isElsewhere?: true;
  /** Devices together: shares of what is needed, summed; 1 is enough. */
  readonly covered: number;
}

/** What a pen's need is counted from. */
export interface DrinkersQuestion {
  readonly region: Region;
  /** Birds at drinkers of this device at once in the busiest minutes, and how many drink from one. */
  readonly atOnce: { readonly birds: number; readonly places: number };
  /** All birds that are kept: rules may bind from so many on. Those of the pen if left out. */
  readonly kept?: readonly Batch[];
}

/**
 * How many drinkers of one device a pen needs: by the rules that bind in a region, by advice, by two in reach of each
 * bird, and by the crowd at the busiest hour. Batches of a pen are added up, each by the strictest that speaks of it.
 *
 * @param pen     its birds, on the flock's day
 * @param device  nipple, cup, bell or trough
 * @example drinkersNeeded(flock.pens[0], "nipple", { region: "EU", atOnce: { birds: 3, places: 1 } }).needed   // 8
 */
export function drinkersNeeded(
  pen: Pen,
  device: Device,
  { region, atOnce, kept = pen.batches }: DrinkersQuestion,
): DrinkersNeeded {
  const there = pen.batches.filter(isThere);
  const birds = countOf(there);
  const rules = allAllowances.filter(
    (rule) =>
      rule.devices.includes(device) &&
      (rule.regions.includes("all") || rule.regions.includes(region)) &&
      there.some((batch) => speaksOf(rule, device, batch)),
  );
  const all = kept.filter(isThere);
  const binds = (rule: Allowance): boolean =>
    rule.bindsFrom > 0 && countOf(all.filter((batch) => speaksOf(rule, device, batch))) >= rule.bindsFrom;
  const asked = rules
    .map((rule) => ({
      rule,
      isBinding: binds(rule),
      needed: neededBy([rule], device, there),
    }))
    .sort((a, b) => Number(b.isBinding) - Number(a.isBinding) || b.needed - a.needed);
  const silent = there.filter((batch) => !rules.some((rule) => speaksOf(rule, device, batch)));
  const found = {
    byRule: neededBy(rules.filter(binds), device, there),
    byAdvice: neededBy(rules, device, there),
    inReach: Math.min(birds, IN_REACH),
    byCrowd: Math.max(Math.min(birds, 1), Math.ceil(atOnce.birds / atOnce.places - 1e-9)),
  };
  const needed = Math.max(found.byAdvice, found.inReach, found.byCrowd);
  return {
    device,
    birds,
    needed,
    because: reasonOf(found, needed),
    ...found,
    asked,
    ruleOfRegion: regionRule(asked),
    isSilent: birds > 0 && rules.length === 0,
    silentOn: [...new Set(silent.map(({ kind }) => kind.id))],
  };
}

const countOf = (batches: readonly Batch[]): number => batches.reduce((sum, { count }) => sum + count, 0);

function regionRule(asked: readonly DrinkersAsked[]): DrinkersNeeded["ruleOfRegion"] {
  if (asked.some(({ isBinding }) => isBinding)) return "binds";
  return asked.some(({ rule }) => rule.bindsFrom > 0) ? "forMoreBirds" : "none";
}

function reasonOf(
  { byRule, byAdvice, inReach, byCrowd }: Pick<DrinkersNeeded, "byRule" | "byAdvice" | "inReach" | "byCrowd">,
  needed: number,
): DrinkersNeeded["because"] {
  if (needed === 0) return "nobody";
  if (byRule === needed) return "rule";
  if (inReach === needed) return "inReach";
  return byCrowd === needed && byCrowd > byAdvice ? "crowd" : "advice";
}

/** Whether a rule is for birds of this kind and age. A day-old is in its first day. */
export function speaksOf(rule: Allowance, device: Device, { kind, ageDays }: Batch): boolean {
  if (!rule.birds.includes(kind.id)) return false;
  const age = Math.max(1, ageDays);
  if (age < rule.fromDays) return false;
  return age <= rule.toDays || isLastBefore(rule, device, kind.id, age);
}

/** Between two bands of one source, the younger one goes on; beyond its last band a source says nothing. */
function isLastBefore(rule: Allowance, device: Device, kind: string, age: number): boolean {
  const bands = allAllowances.filter(
    ({ citation, counts, devices, birds }) =>
      citation.source === rule.citation.source &&
      counts === rule.counts &&
      devices.includes(device) &&
      birds.includes(kind),
  );
  return (
    bands.some(({ fromDays }) => fromDays > age) &&
    !bands.some(({ fromDays }) => fromDays > rule.fromDays && fromDays <= age)
  );
}

/** What some rules ask of birds together: batch by batch the strictest, and never fewer than the least number of any. */
function neededBy(rules: readonly Allowance[], device: Device, there: readonly Batch[]): number {
  let least = 0;
  const shares = there.map(() => 0);
  for (const rule of rules) {
    const spoken = there.map((batch) => speaksOf(rule, device, batch));
    const birds = countOf(there.filter((_, k) => spoken[k]));
    if (rule.counts === "least") least = Math.max(least, birds > 1 ? rule.figure : Math.min(birds, 1));
    const each = birdsOnOne(rule, device);
    const counted = Math.min(1, (rule.toBirds ?? birds) / birds);
    there.forEach(({ count }, k) => {
      if (spoken[k] && each > 0) shares[k] = Math.max(shares[k], (counted * count) / each);
    });
  }
  return Math.max(least, Math.ceil(shares.reduce((sum, share) => sum + share, 0) - 1e-9));
}

/** Birds that one drinker is enough for; 0 where the rule does not count in birds. */
function birdsOnOne({ counts, figure }: Allowance, device: Device): number {
  if (counts === "least") return 0;
  if (counts === "birds") return figure;
  return device === "bell" || device === "trough" ? Math.floor(EDGES[device] / figure + 1e-9) : 0;
}
