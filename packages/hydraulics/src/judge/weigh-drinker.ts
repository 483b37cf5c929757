import { headOfDrinker } from "../model/drinker-flow.js";
import { type Line, STUCK } from "../model/line.js";
import type { Moment } from "../model/moment.js";
import type { LineSolution } from "../solve/solution.js";
import { VERDICTS, type VerdictName } from "./check-result.js";
import type { Filling } from "./filling.js";
import type { OneMore } from "./solve-moments.js";

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

/** The heads one drinker's verdict hangs on [m]. */
export interface Weighing {
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

/** The heads of one drinker with one law. */
export function weighDrinker(situation: WeighingCase, d: number): Weighing {
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

/** The worst verdict of one drinker with one law, without its reason: for the many samples of a tolerance. */
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

/** Its head to spare on both sides; all of it is missing (-Infinity) where no head of the source would bring water. */
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

/** What may be said of one drinker with one law, the worst first: its supply, and each way in which it drips. */
export const weighTroubles = (situation: WeighingCase, d: number): Weighed[] =>
  troublesOf(situation, weighDrinker(situation, d), d);

/** The same of a drinker that is weighed. */
export function troublesOf(situation: WeighingCase, weighing: Weighing, d: number): Weighed[] {
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
