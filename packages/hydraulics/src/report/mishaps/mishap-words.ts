import type { Guard, GuardResult } from "../../judge/mishaps/guard.js";
import type { Flock } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { Mishap, MishapKind } from "../../model/mishap.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeDuration } from "../durations.js";
import { writeFlow, writeVolume } from "../words.js";

/** What is named by its place: a line and who drinks from it. */
export interface Named {
  readonly line: Line;
  readonly flock: Flock;
}

/** A mishap in a few words, with its place: "drinker lane 3 stuck open". */
export function writeMishap(mishap: Mishap, { line, flock }: Named): string {
  switch (mishap.kind) {
    case "jointApart":
      return writeJoint(line, mishap.point);
    case "moreBirds": {
      const { batches, id } = flock.pens[mishap.pen];
      const { count, kind } = batches[mishap.batch];
      return `${count} more birds in ${id} (${kind.many})`;
    }
    case "hottestWeek":
      return "the hottest week";
    case "cupTipped":
    case "drinkerStuckOpen":
    case "drinkerBlocked":
    case "floatStuckDown":
    case "floatStuckUp":
      return `${line.drinkers.id[mishap.drinker]} ${STATE[mishap.kind]}`;
    case "runBlocked":
    case "tapLeftShut":
    case "tapLeftOpen":
    case "regulatorGone":
    case "regulatorShut":
    case "oneWayOpen":
    case "oneWayShut":
      return `${line.runs[mishap.run].id} ${STATE[mishap.kind]}`;
    default:
      return `${line.sources[mishap.source].id} ${STATE[mishap.kind]}`;
  }
}

/** What follows the name of the place. */
const STATE: Readonly<Record<Exclude<MishapKind, "jointApart" | "moreBirds" | "hottestWeek">, string>> = {
  ventBlocked: "gets no air",
  lidOff: "with its lid off",
  drinkerStuckOpen: "stuck open",
  drinkerBlocked: "blocked",
  floatStuckDown: "with its float stuck down",
  floatStuckUp: "with its float stuck up",
  cupTipped: "tipped",
  runBlocked: "blocked",
  tapLeftShut: "with its tap left shut",
  tapLeftOpen: "with its tap left open",
  regulatorGone: "with its regulator gone",
  regulatorShut: "with its regulator stuck shut",
  oneWayOpen: "with its one-way valve stuck open",
  oneWayShut: "with its one-way valve stuck shut",
  feedStuckDown: "with its float valve stuck open",
  feedStuckUp: "with its float valve stuck shut",
  refillMissed: "not filled at its hour",
  hoseOff: "with its hose off",
};

/** The kinds that do the same at one place: "stuck down, or tipped". */
export function writeKinds(kinds: readonly MishapKind[]): string {
  const others = kinds.slice(1).map((kind) => (kind in STATE ? STATE[kind as keyof typeof STATE] : kind));
  return others.length === 0 ? "" : `, or ${others.join(", or ")}`;
}

/** Where only one run ends, and no vessel stands, it is the cap that comes off. */
function writeJoint({ points, runs, sources }: Line, point: number): string {
  const ends = runs.flatMap(({ points: own }) => [own[0], own[own.length - 1]]);
  const isBareEnd =
    ends.filter((one) => one === point).length === 1 && sources.every((source) => source.point !== point);
  return isBareEnd ? `cap off at ${points.id[point]}` : `joint apart at ${points.id[point]}`;
}

/**
 * A guard in a sentence of its own, with what has to be bought or done.
 *
 * @example writeGuard({ kind: "look", every: 43200 }, mishaps, "metric")   // "Look every 12 h"
 */
export function writeGuard(guard: Guard, { line }: Named, system: UnitSystem): string {
  const length = (metres: number) => writeQuantity(metres, "length", system);
  switch (guard.kind) {
    case "look":
      return `Look ${guard.every >= 86_400 ? "every day" : `every ${writeDuration(guard.every).replace(/^1 h$/, "hour")}`}`;
    case "secondVent":
      return `A second opening for air in ${line.sources[guard.source].id}`;
    case "tap":
      return `A tap at the start of ${line.runs[guard.run].id}, shut at a look every ${writeDuration(
        guard.within,
      )
        .replace(/^1 day$/, "day")
        .replace(/^1 h$/, "hour")}`;
    case "limiter":
      return `A disc with a hole of ${length(guard.hole)} at the start of ${line.runs[guard.run].id}`;
    case "spareDrinker":
      return `One more drinker of ${line.drinkers.groups[guard.group].id}`;
    case "alarm":
      return `A float alarm in ${line.sources[guard.source].id} at ${length(guard.level)}`;
    case "secondBarrel":
      return `A second vessel like ${line.sources[guard.source].id}, joined to it`;
    case "secondStation":
      return "A second vessel with a line of its own for the same birds";
  }
}

/**
 * What it buys, after its name: time, litres, the most that can pour.
 *
 * @param pours     what pours out without it [m³/s]
 * @param hasBirds  whether harm is told by birds; else by drinkers
 * @example writeGain({ guard: { kind: "look", every: 3600 }, harmAfter: undefined, lost: 0.002, buysTime: 7200, savesWater: 0.01, leakRate: 0, isEnough: true }, 0, "metric")   // ": no bird goes without, 10 L less to the ground"
 */
export function writeGain(result: GuardResult, pours: number, system: UnitSystem, hasBirds = true): string {
  const { guard, buysTime, savesWater, harmAfter, leakRate } = result;
  const [nobody, harm] = hasBirds
    ? ["no bird goes without", "a bird goes without"]
    : ["the drinkers do not run dry", "half of the drinkers are dry"];
  const gains: string[] = [];
  if (buysTime === undefined || guard.kind === "look" || guard.kind === "alarm") gains.push(nobody);
  else if (buysTime >= 60 && harmAfter !== undefined)
    gains.push(`${writeDuration(buysTime)} more before ${harm}`);
  if (savesWater >= 1e-4) gains.push(`${writeVolume(savesWater, system)} less to the ground`);
  if (leakRate < 0.98 * pours) gains.push(`no more than ${writeFlow(leakRate, system)} can pour`);
  return gains.length === 0 ? "" : `: ${gains.join(", ")}`;
}
