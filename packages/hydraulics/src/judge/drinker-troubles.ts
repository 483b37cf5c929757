import { flowOfDrinker, headOfDrinker } from "../model/drinker-flow.js";
import { type Line, STUCK } from "../model/line.js";
import { givenBeforeStall, type Moment, type Moments, stallsWithinUse } from "../model/moment.js";
import type { FrictionLaw, LineSolution } from "../solve/solution.js";
import {
  type DrinkerReading,
  type Judgement,
  type Reason,
  VERDICTS,
  type VerdictName,
} from "./check-result.js";
import type { Filling } from "./filling.js";
import { readDrinker } from "./read-drinker.js";
import type { OneMore, SolvedMoment } from "./solve-moments.js";

/** What the verdicts of drinkers hang on with one friction law. */
export interface WeighingCase {
  readonly line: Line;
  readonly moments: { readonly named: { readonly lowestBusiest: Pick<Moment, "atWork"> } };
  readonly fullIdle: { readonly idle: Pick<LineSolution, "head"> };
  readonly lowestBusiest: {
    readonly solution: Pick<LineSolution, "head" | "reached" | "outcome">;
    readonly idle: Pick<LineSolution, "head">;
    readonly oneMore: Pick<OneMore, "atNeed">;
  };
  readonly filling: Pick<Filling, "airHead" | "above">;
  /** Whether some sealed source stops giving before its lowest level. */
  readonly stalledBelow: boolean;
}

/** What is needed to judge drinkers with one friction law, and to say why. */
export interface JudgingCase extends WeighingCase {
  readonly moments: Moments;
  readonly friction: FrictionLaw;
  readonly fullIdle: SolvedMoment;
  readonly lowestBusiest: SolvedMoment;
  readonly filling: Filling;
}

/** The heads one drinker's verdict hangs on [m]. */
interface Weighing {
  /** Head at the drinker if it drew just its need, when the water is lowest and the birds busiest, less trapped air. */
  readonly head: number;
  readonly headNeeded: number;
  readonly opening: number;
  readonly airHead: number;
  /** Whether water can come at all: joined to a source that gives, no hump above the water. */
  readonly isCutOff: boolean;
  /** With nobody drinking: full, and at the lowest level; there also less trapped air, which presses no seal. */
  readonly idleFull: number;
  readonly idleLowest: number;
  readonly idleOnSeal: number;
  readonly isReached: boolean;
}

function weighDrinker(situation: WeighingCase, d: number): Weighing {
  const { line, moments, lowestBusiest, fullIdle, filling, stalledBelow } = situation;
  const { drinkers } = line;
  const point = drinkers.point[d];
  const opening = drinkers.openingHead[d];
  const headNeeded = headOfDrinker(drinkers, d, drinkers.need[d]);
  const airHead = filling.airHead[point];
  const bare = lowestBusiest.solution.head[point] - drinkers.height[d];
  const taken = moments.named.lowestBusiest.atWork[d] === 1 ? 0 : lowestBusiest.oneMore.atNeed[d];
  const idleLowest = lowestBusiest.idle.head[point] - drinkers.height[d];
  const isReached = lowestBusiest.solution.reached[point] === 1;
  // A drinker on a drop below the water gets none either where the pipe it hangs from stands above it.
  const isBehindHump = filling.above[point] > 0;
  const isStuckShut = drinkers.stuck?.[d] === STUCK.shut;
  return {
    head: bare - taken - airHead,
    headNeeded,
    opening,
    airHead,
    isCutOff: isStuckShut || !isReached || isBehindHump || (stalledBelow && idleLowest <= opening + 1e-9),
    idleFull: fullIdle.idle.head[point] - drinkers.height[d],
    idleLowest,
    idleOnSeal: idleLowest - airHead,
    isReached,
  };
}

function supplyVerdict(weighing: Weighing, isSolved: boolean): "good" | "starves" | "dry" {
  if (!isSolved || weighing.isCutOff || weighing.head <= weighing.opening) return "dry";
  return weighing.head < weighing.headNeeded ? "starves" : "good";
}

/** The worst verdict of one drinker with one law, without the reasons: for the many samples of a tolerance. */
export function verdictOfDrinker(situation: WeighingCase, d: number): VerdictName {
  const weighing = weighDrinker(situation, d);
  const supply = supplyVerdict(weighing, situation.lowestBusiest.solution.outcome === "solved");
  if (supply !== "good") return supply;
  return drips(situation, weighing, d) ? "drips" : "good";
}

/** How far one drinker with one law is from the edges of "good" [m]; below 0 where it is beyond them. */
export interface Spare {
  /** On the side where more head would help: to its need, and to what presses its seal shut. */
  readonly below: number;
  /** On the side where less would: to what it holds. */
  readonly above: number;
}

/** Its head to spare on both sides; no end of it is missing where no head of the source would bring water. */
export function spareOfDrinker(situation: WeighingCase, d: number): Spare {
  const weighing = weighDrinker(situation, d);
  const { holdsUpTo, sealsFrom } = situation.line.drinkers.groups[situation.line.drinkers.group[d]];
  if (situation.lowestBusiest.solution.outcome !== "solved" || !weighing.isReached)
    return { below: Number.NEGATIVE_INFINITY, above: holdsUpTo - weighing.idleFull };
  const hump = situation.filling.above[situation.line.drinkers.point[d]];
  const toNeed = weighing.head - weighing.headNeeded;
  const toSeal = weighing.idleOnSeal - sealsFrom;
  return {
    below: Math.min(toNeed, toSeal, hump > 0 ? -hump : Number.POSITIVE_INFINITY),
    above: holdsUpTo - weighing.idleFull,
  };
}

function drips(situation: WeighingCase, weighing: Weighing, d: number): boolean {
  const { holdsUpTo, sealsFrom } = situation.line.drinkers.groups[situation.line.drinkers.group[d]];
  if (!weighing.isReached) return false;
  return weighing.idleFull > holdsUpTo || (weighing.idleOnSeal > 0 && weighing.idleOnSeal < sealsFrom);
}

/** A judgement without its reason. */
export interface Weighed {
  readonly verdict: VerdictName;
  readonly margin: number;
  readonly of: "supply" | "fullSeal" | "lowSeal";
}

/**
 * Every judgement on one drinker with one law, worst first: whether it gives enough when the water is lowest and the
 * birds are busiest, and whether it holds when the water is highest and nobody drinks. The first is its verdict.
 */
export function judgeDrinker(situation: JudgingCase, d: number): Judgement[] {
  const weighing = weighDrinker(situation, d);
  return troublesOf(situation, weighing, d).map((weighed) => withReason(situation, weighing, weighed, d));
}

/** The same without the reasons. */
export const weighTroubles = (situation: WeighingCase, d: number): Weighed[] =>
  troublesOf(situation, weighDrinker(situation, d), d);

function troublesOf(situation: WeighingCase, weighing: Weighing, d: number): Weighed[] {
  const isSolved = situation.lowestBusiest.solution.outcome === "solved";
  const supply: Weighed = {
    verdict: supplyVerdict(weighing, isSolved),
    margin: weighing.head - weighing.headNeeded,
    of: "supply",
  };
  const rank = ({ verdict }: Weighed) => VERDICTS.indexOf(verdict);
  return [supply, ...troublesOfSeal(situation, weighing, d)].sort(
    (a, b) => rank(b) - rank(a) || a.margin - b.margin,
  );
}

/**
 * Drips when the head with nobody drinking and the vessel full is more than the drinker holds, or at the lowest level
 * too small to press its seal shut.
 */
function troublesOfSeal(situation: WeighingCase, weighing: Weighing, d: number): Weighed[] {
  const { holdsUpTo, sealsFrom } = situation.line.drinkers.groups[situation.line.drinkers.group[d]];
  const { idleFull, idleOnSeal } = weighing;
  if (!drips(situation, weighing, d)) return [];
  const troubles: Weighed[] = [];
  if (idleFull > holdsUpTo) troubles.push({ verdict: "drips", margin: holdsUpTo - idleFull, of: "fullSeal" });
  if (idleOnSeal > 0 && idleOnSeal < sealsFrom)
    troubles.push({ verdict: "drips", margin: idleOnSeal - sealsFrom, of: "lowSeal" });
  return troubles;
}

function withReason(
  situation: JudgingCase,
  weighing: Weighing,
  { verdict, margin, of }: Weighed,
  d: number,
): Judgement {
  const { line, friction } = situation;
  const { holdsUpTo, sealsFrom } = line.drinkers.groups[line.drinkers.group[d]];
  if (of === "supply")
    return {
      verdict,
      margin,
      moment: "lowestBusiest",
      friction,
      because: reasonOfSupply(situation, weighing, verdict, d),
    };
  if (of === "fullSeal")
    return {
      verdict,
      margin,
      moment: "fullIdle",
      friction,
      because: { code: "idleHeadTooHigh", head: weighing.idleFull, holdsUpTo },
    };
  return {
    verdict,
    margin,
    moment: "lowestBusiest",
    friction,
    because: { code: "idleHeadTooLow", head: weighing.idleOnSeal, sealsFrom },
  };
}

/** Dry, starves or good, by what reaches the drinker while worked at the lowest usable level. */
function reasonOfSupply(situation: JudgingCase, weighing: Weighing, verdict: VerdictName, d: number): Reason {
  const { line, lowestBusiest, moments } = situation;
  const reading = readDrinker(line, lowestBusiest, moments, "lowestBusiest", d);
  return verdict === "dry"
    ? reasonDry(situation, weighing, reading, d)
    : reasonOfFlow(situation, weighing, reading, d);
}

function reasonOfFlow(
  situation: JudgingCase,
  weighing: Weighing,
  reading: DrinkerReading,
  d: number,
): Reason {
  const { drinkers } = situation.line;
  const { airHead, headNeeded, idleFull } = weighing;
  const need = drinkers.need[d];
  const head = reading.flowingHead - airHead;
  const flow = airHead > 0 ? flowOfDrinker(drinkers, d, head) : reading.flow;
  if (weighing.head >= headNeeded) {
    const { holdsUpTo } = drinkers.groups[drinkers.group[d]];
    return { code: "flowsEnough", flow, need, head, idleHead: idleFull, holdsUpTo };
  }
  const { staticHead } = reading;
  const lostOnTheWay = Math.max(0, staticHead - reading.flowingHead);
  return { code: "flowTooLow", flow, need, head, headNeeded, lostOnTheWay, airHead, staticHead };
}

function reasonDry(situation: JudgingCase, weighing: Weighing, reading: DrinkerReading, d: number): Reason {
  const { line, lowestBusiest, filling } = situation;
  const point = line.drinkers.point[d];
  const { outcome } = lowestBusiest.solution;
  const { opening: openingHead, airHead } = weighing;
  const { staticHead, flowingHead } = reading;
  if (outcome !== "solved") return { code: "notSolved", outcome };
  if (line.drinkers.stuck?.[d] === STUCK.shut) return { code: "blocked" };
  if (!weighing.isReached) return { code: "shutOff", at: line.runs[line.drinkers.run[d]].id };
  const stalled = line.sources.find((source) => stallsWithinUse(line, source));
  if (stalled !== undefined && staticHead <= openingHead + 1e-9) {
    return {
      code: "sourceStalls",
      source: stalled.id,
      litres: (givenBeforeStall(line, stalled) ?? 0) * 1000,
    };
  }
  if (staticHead <= openingHead) return { code: "tooHigh", staticHead, openingHead };
  if (weighing.isCutOff)
    return { code: "humpAboveWater", hump: humpName(line, filling, point), above: filling.above[point] };
  if (airHead > 0 && flowingHead > openingHead)
    return { code: "airLocked", hump: humpName(line, filling, point), airHead, staticHead };
  return { code: "frictionTakesAll", staticHead, head: flowingHead, openingHead };
}

function humpName(line: Line, filling: Filling, point: number): string {
  const hump = filling.hump[point];
  return hump >= 0 ? line.points.id[hump] : "a hump on the way";
}
