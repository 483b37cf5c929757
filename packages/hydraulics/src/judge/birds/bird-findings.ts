import { isThere, type Pen } from "../../model/flock.js";
import type { DrinkerGroup } from "../../model/line.js";
import { deviceOf, isOpen } from "../../simulate/crowd-want.js";
import type { DrinkerVerdict } from "../check-result.js";
import { needAtAge } from "./bird-needs.js";
import type { PenDrinkers } from "./drinkers-needed.js";
import type { BirdFinding, GroupCrowd, PenReport } from "./flock-report.js";
import type { MannedLine } from "./man-line.js";

/**
 * Flow of a nipple beyond which no trial found the birds better off [m3/s]: 120 mL/min.
 *
 * @source roush-2004, seen
 */
const MOST_USEFUL_FLOW = 120e-6 / 60;

/**
 * Nipples of 24 and 138 mL/min (0.4 and 2.3 mL/s) tried on meat chickens in summer: nearly twice as many died at the
 * lower flow, from day 38 on. A flow nearer to the lower one, as a ratio, is told where it gets as warm; air from 30 °C
 * and birds from four weeks count as alike, by common practice.
 *
 * @source nipple-types-1992, abstract, seen
 */
export const HEAT_TRIAL = {
  low: 24e-6 / 60,
  high: 138e-6 / 60,
  fromTemperature: 30,
  fromDays: 28,
  species: ["chicken", "turkey"] as readonly string[],
} as const;

/** What was found out already, for the findings to look through. */
export interface SeenOfBirds {
  readonly pens: readonly PenReport[];
  readonly groups: readonly GroupCrowd[];
  readonly drinkers: readonly Omit<DrinkerVerdict, "certainty">[];
  /** By pen. */
  readonly needed: readonly PenDrinkers[];
}

/** What is amiss, or worth knowing, between the birds of a plan and its drinkers; pen by pen. */
export function findBirdTroubles(manned: MannedLine, seen: SeenOfBirds): BirdFinding[] {
  return manned.flock.pens.flatMap((pen, p) => {
    const report = seen.pens[p];
    const groups = seen.groups.filter((group) => group.pen === pen.index);
    return [
      ...whoComesLater(pen),
      ...tooFew(pen, report),
      ...fewerThanAsked(pen, seen.needed[p]),
      ...crowded(report),
      ...groups.flatMap((group) => troublesOfGroup(manned, pen, group, seen)),
    ];
  });
}

function whoComesLater(pen: Pen): BirdFinding[] {
  return pen.batches
    .filter(({ ageDays }) => ageDays < 0)
    .map(({ kind, ageDays }) => ({ code: "notYetCome", pen: pen.id, kind: kind.name, days: -ageDays }));
}

function tooFew(pen: Pen, { birds, drinkers }: PenReport): BirdFinding[] {
  if (birds === 0) return [];
  if (drinkers === 0) return [{ code: "noDrinkers", pen: pen.id, birds }];
  return drinkers === 1 && birds > 1 ? [{ code: "oneInReach", pen: pen.id, birds }] : [];
}

/** Fewer than rules require, or else than advice asks; told of the device the pen has most of. */
function fewerThanAsked(pen: Pen, { devices, isSuggestion }: PenDrinkers): BirdFinding[] {
  if (isSuggestion) return [];
  const isShort = (pick: "byRule" | "byAdvice") =>
    devices.reduce((sum, one) => sum + (one[pick] === 0 ? 1 : one.has / one[pick]), 0) < 1 - 1e-9;
  const pick = isShort("byRule") ? "byRule" : "byAdvice";
  if (!isShort(pick)) return [];
  const most = leastBy(devices, ({ has }) => -has).of;
  // Several batches may each have a rule of their own; the one that asks the most stands for them.
  const [first] = most.asked
    .filter(({ isBinding }) => isBinding || pick === "byAdvice")
    .sort((a, b) => b.needed - a.needed);
  return [
    {
      code: "tooFewDrinkers",
      pen: pen.id,
      birds: most.birds,
      drinkers: most.has,
      needed: most[pick],
      device: most.device,
      rule: first.rule.id,
      counts: first.rule.counts,
      figure: first.rule.figure,
      source: first.rule.citation.source,
      binding: pick === "byRule",
    },
  ];
}

function crowded({ pen, saturates, demand, capacity, short, giving }: PenReport): BirdFinding[] {
  // Where nothing gives, each drinker's own verdict says it.
  return saturates && giving > 0 ? [{ code: "crowdSaturates", pen, demand, capacity, short }] : [];
}

function troublesOfGroup(manned: MannedLine, pen: Pen, crowd: GroupCrowd, seen: SeenOfBirds): BirdFinding[] {
  const group = manned.line.drinkers.groups[crowd.index];
  const there = pen.batches.filter(isThere);
  if (there.length === 0) return [];
  const members = seen.drinkers.filter(({ index }) => manned.line.drinkers.group[index] === crowd.index);
  return [
    ...drowning(pen, group),
    ...hanging(pen, crowd),
    ...(group.workedBy === "trigger" ? flowing(manned, pen, group, crowd, members) : []),
  ];
}

function drowning(pen: Pen, group: DrinkerGroup): BirdFinding[] {
  if (!isOpen(group)) return [];
  return pen.batches
    .filter((batch) => isThere(batch) && batch.ageDays < batch.kind.drownsUntilDays)
    .map(({ kind, ageDays }) => ({
      code: "mayDrown",
      pen: pen.id,
      group: group.id,
      kind: kind.name,
      ageDays,
      untilDays: kind.drownsUntilDays,
    }));
}

function hanging(pen: Pen, { group, height, hangAt }: GroupCrowd): BirdFinding[] {
  if (height === undefined || hangAt === undefined) return [];
  const { low, high, ageDays } = hangAt;
  if (height >= low && height <= high) return [];
  const code = height > high ? "hangsTooHigh" : "hangsTooLow";
  return [{ code, pen: pen.id, group, height, low, high, ageDays }];
}

/** Flow of a worked trigger against the birds' age: the weakest when it is low and busy, the strongest when full. */
function flowing(
  manned: MannedLine,
  pen: Pen,
  group: DrinkerGroup,
  crowd: GroupCrowd,
  members: readonly Omit<DrinkerVerdict, "certainty">[],
): BirdFinding[] {
  const flows = (drinker: Omit<DrinkerVerdict, "certainty">, moment: "lowestBusiest" | "fullBusiest") =>
    Object.values(drinker.moments[moment]).map(({ flow }) => flow);
  const weakest = leastBy(members, (drinker) => Math.min(...flows(drinker, "lowestBusiest")));
  const strongest = leastBy(members, (drinker) => -Math.max(...flows(drinker, "fullBusiest")));
  const findings: BirdFinding[] = hotAndSlow(manned, pen, group, {
    drinker: weakest.of.drinker,
    flow: weakest.least,
  });
  const need = needOfOldest(pen);
  // Where the need is the birds' own, the verdict says so already; a drinker that gives nothing is dry.
  if (crowd.need.from !== "birds" && weakest.least > 0 && weakest.least < need.flow) {
    const { drinker } = weakest.of;
    findings.push({
      code: "flowUnderNeed",
      pen: pen.id,
      group: group.id,
      drinker,
      flow: weakest.least,
      need: need.flow,
      ageDays: need.ageDays,
    });
  }
  if (deviceOf(group) === "nipple" && -strongest.least > MOST_USEFUL_FLOW) {
    const { drinker } = strongest.of;
    findings.push({
      code: "flowAboveBenefit",
      pen: pen.id,
      group: group.id,
      drinker,
      flow: -strongest.least,
      most: MOST_USEFUL_FLOW,
    });
  }
  return findings;
}

/** Birds old enough to suffer from heat, at a drinker that gives little, on the plan's hottest days. */
function hotAndSlow(
  { flock }: MannedLine,
  pen: Pen,
  group: DrinkerGroup,
  { drinker, flow }: { readonly drinker: string; readonly flow: number },
): BirdFinding[] {
  const { low, high: triedHigh, fromTemperature, fromDays, species } = HEAT_TRIAL;
  const high = Math.max(flock.weather.high, flock.weather.hotSpell?.high ?? flock.weather.high);
  const suffer = pen.batches.some(
    (batch) => isThere(batch) && batch.ageDays >= fromDays && species.includes(batch.kind.species),
  );
  if (!suffer || high < fromTemperature || flow <= 0 || flow >= Math.sqrt(low * triedHigh)) return [];
  return [
    { code: "lowFlowInHeat", pen: pen.id, group: group.id, drinker, flow, high, triedLow: low, triedHigh },
  ];
}

function needOfOldest(pen: Pen): { flow: number; ageDays: number } {
  let most = { flow: 0, ageDays: 0 };
  for (const { kind, ageDays } of pen.batches.filter(isThere)) {
    const flow = needAtAge(kind, ageDays);
    if (flow > most.flow) most = { flow, ageDays };
  }
  return most;
}

function leastBy<T>(list: readonly T[], measure: (one: T) => number): { of: T; least: number } {
  return list.reduce(
    (best, one) => {
      const least = measure(one);
      return least < best.least ? { of: one, least } : best;
    },
    { of: list[0], least: measure(list[0]) },
  );
}
