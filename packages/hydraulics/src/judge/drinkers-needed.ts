import type { REGIONS } from "../document/birds-schema.js";
import type { Pen } from "../model/flock.js";
import { type Allowance, allAllowances } from "../tables/allowances.js";

export type Region = (typeof REGIONS)[number];
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

/** How many drinkers of a device a pen needs, and why. */
export interface DrinkersNeeded {
  readonly device: Device;
  readonly birds: number;
  /** Greatest of all below. */
  readonly needed: number;
  /** What makes it so: a rule that binds, advice, two in reach of each bird, or the crowd at the busiest hour. */
  readonly because: "rule" | "advice" | "inReach" | "crowd";
  readonly byRule: number;
  readonly byAdvice: number;
  readonly inReach: number;
  /** So that the busiest minutes find a drinker for each bird that comes, once in a hundred times not. */
  readonly byCrowd: number;
  /** Every rule and advice that speaks of these birds, what binds first, the most asked first. */
  readonly asked: readonly DrinkersAsked[];
}

/**
 * How many drinkers of one device a pen needs: by the rules that bind in a region, by advice, by two in reach of each
 * bird, and by the crowd at the busiest hour. Batches of a pen are added up, each by its own rule.
 *
 * @param pen      its birds, on the flock's day
 * @param device   nipple, cup, bell or trough
 * @param region   whose rules; "none" for common practice only
 * @param atOnce   birds at drinkers of this device at once in the busiest minutes, and how many drink from one
 */
export function drinkersNeeded(
  pen: Pen,
  device: Device,
  region: Region,
  atOnce: { readonly birds: number; readonly places: number },
): DrinkersNeeded {
  const there = pen.batches.filter(({ ageDays, count }) => ageDays >= 0 && count > 0);
  const birds = there.reduce((sum, { count }) => sum + count, 0);
  const rules = allAllowances.filter(
    (rule) =>
      rule.devices.includes(device) &&
      (rule.regions.includes("all") || rule.regions.includes(region)) &&
      there.some((batch) => speaksOf(rule, batch)),
  );
  const asked = rules
    .map(
      (rule): DrinkersAsked => ({
        rule,
        isBinding: rule.bindsFrom > 0 && birds >= rule.bindsFrom,
        needed: neededBy(rule, device, there),
      }),
    )
    .sort((a, b) => Number(b.isBinding) - Number(a.isBinding) || b.needed - a.needed);
  const most = (isBinding: boolean) =>
    asked.reduce((least, one) => (one.isBinding === isBinding ? Math.max(least, one.needed) : least), 0);
  const found = {
    byRule: most(true),
    byAdvice: most(false),
    inReach: birds > 1 ? IN_REACH : Math.min(birds, 1),
    byCrowd: Math.ceil(atOnce.birds / atOnce.places - 1e-9),
  };
  const needed = Math.max(found.byRule, found.byAdvice, found.inReach, found.byCrowd);
  return { device, birds, needed, because: reasonOf(found, needed), ...found, asked };
}

function reasonOf(
  { byRule, byAdvice, inReach, byCrowd }: Pick<DrinkersNeeded, "byRule" | "byAdvice" | "inReach" | "byCrowd">,
  needed: number,
): DrinkersNeeded["because"] {
  if (byRule === needed) return "rule";
  if (inReach === needed) return "inReach";
  if (byCrowd === needed && byCrowd > byAdvice) return "crowd";
  return "advice";
}

type There = Pen["batches"];

const speaksOf = (rule: Allowance, { kind, ageDays }: There[number]): boolean =>
  rule.birds.includes(kind.id) && ageDays >= rule.fromDays && ageDays <= rule.toDays;

function neededBy(rule: Allowance, device: Device, there: There): number {
  const birds = there.reduce((sum, batch) => sum + (speaksOf(rule, batch) ? batch.count : 0), 0);
  if (rule.counts === "least") return birds > 1 ? rule.figure : Math.min(birds, 1);
  if (rule.counts === "birds") return Math.ceil(birds / rule.figure - 1e-9);
  const edge = device === "bell" || device === "trough" ? EDGES[device] : 0;
  return edge === 0 ? 0 : Math.ceil(birds / Math.floor(edge / rule.figure + 1e-9) - 1e-9);
}
