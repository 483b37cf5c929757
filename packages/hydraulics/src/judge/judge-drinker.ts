import { flowOfDrinker } from "../model/drinker-flow.js";
import { type Line, STUCK } from "../model/line.js";
import { givenBeforeStall, type Moments, stallsWithinUse } from "../model/moment.js";
import type { FrictionLaw } from "../solve/solution.js";
import type { DrinkerReading, Judgement, Reason, VerdictName } from "./check-result.js";
import type { Filling } from "./filling.js";
import { readDrinker } from "./read-drinker.js";
import type { SolvedMoment } from "./solve-moments.js";
import { troublesOf, type Weighed, type Weighing, type WeighingCase, weighDrinker } from "./weigh-drinker.js";

/** What is needed to judge drinkers with one friction law, and to say why. */
export interface JudgingCase extends WeighingCase {
  readonly moments: Moments;
  readonly friction: FrictionLaw;
  readonly fullIdle: SolvedMoment;
  readonly lowestBusiest: SolvedMoment;
  readonly filling: Filling;
}

/**
 * Every judgement on one drinker with one law, worst first: whether it gives enough when the water is lowest and the
 * birds are busiest, and whether it holds when the water is highest and nobody drinks. The first is its verdict.
 */
export function judgeDrinker(situation: JudgingCase, d: number): Judgement[] {
  const weighing = weighDrinker(situation, d);
  return troublesOf(situation, weighing, d).map((weighed) => withReason(situation, weighing, weighed, d));
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
