import type { Line } from "../model/line.js";
import { givenBeforeStall, type MomentName, type Moments, stallsWithinUse } from "../model/moment.js";
import type { FrictionLaw } from "../solve/solution.js";
import { type DrinkerReading, type Judgement, type Reason, VERDICTS } from "./check-result.js";
import type { Filling } from "./filling.js";
import { readDrinker } from "./read-drinker.js";
import type { SolvedMoment } from "./solve-moments.js";

/** What is needed to judge drinkers with one friction law. */
export interface JudgingCase {
  readonly line: Line;
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
  const judgements = [
    judgeSupply(situation, d),
    judgeHolding(situation, d),
    judgeSealing(situation, d),
  ].filter((judgement) => judgement !== undefined);
  const rank = (judgement: Judgement) => VERDICTS.indexOf(judgement.verdict);
  return judgements.sort((a, b) => rank(b) - rank(a) || a.margin - b.margin);
}

/** Dry, starves or good, by what reaches the drinker while worked at the lowest usable level. */
function judgeSupply(situation: JudgingCase, d: number): Judgement {
  const { line, friction, lowestBusiest, moments, filling, fullIdle } = situation;
  const moment: MomentName = "lowestBusiest";
  const { drinkers } = line;
  const point = drinkers.point[d];
  const reading = readDrinker(line, lowestBusiest, moments, moment, d);
  const need = drinkers.need[d];
  const opening = drinkers.openingHead[d];
  const headNeeded =
    opening + (need === 0 ? 0 : (need / drinkers.coefficient[d]) ** (1 / drinkers.exponent[d]));
  const airHead = filling.airHead[point];
  const head = headAtNeed(situation, reading, d) - airHead;
  const judgement = (verdict: "good" | "starves" | "dry", because: Reason): Judgement => ({
    verdict,
    margin: head - headNeeded,
    moment,
    friction,
    because,
  });

  if (lowestBusiest.solution.outcome !== "solved")
    return judgement("dry", { code: "notSolved", outcome: lowestBusiest.solution.outcome });
  const cut = reasonCutOff(situation, d, reading);
  if (cut !== undefined) return judgement("dry", cut);
  if (head <= opening) return judgement("dry", reasonDry(situation, d, reading, airHead));
  const { staticHead } = reading;
  const flow =
    airHead > 0 ? drinkers.coefficient[d] * (head - opening) ** drinkers.exponent[d] : reading.flow;
  if (head < headNeeded) {
    const lostOnTheWay = Math.max(0, staticHead - reading.flowingHead);
    return judgement("starves", {
      code: "flowTooLow",
      flow: Math.min(flow, reading.flow),
      need,
      head: reading.flowingHead - airHead,
      headNeeded,
      lostOnTheWay,
      airHead,
      staticHead,
    });
  }
  const idleHead = fullIdle.idle.head[point] - drinkers.height[d];
  const { holdsUpTo } = drinkers.groups[drinkers.group[d]];
  return judgement("good", {
    code: "flowsEnough",
    flow: reading.flow,
    need,
    head: reading.flowingHead,
    idleHead,
    holdsUpTo,
  });
}

/** Head at the drinker if it drew just its need: what the margin is measured from [m]. */
function headAtNeed(situation: JudgingCase, reading: DrinkerReading, d: number): number {
  const { line, moments, lowestBusiest } = situation;
  if (moments.named.lowestBusiest.atWork[d] === 1) return reading.flowingHead;
  const bare = lowestBusiest.solution.head[line.drinkers.point[d]] - line.drinkers.height[d];
  return bare - lowestBusiest.oneMore.atNeed[d];
}

/** Why no water can come at all, whatever the heads; undefined when it can. */
function reasonCutOff(situation: JudgingCase, d: number, reading: DrinkerReading): Reason | undefined {
  const { line, lowestBusiest, filling } = situation;
  const point = line.drinkers.point[d];
  if (lowestBusiest.solution.reached[point] === 0)
    return { code: "shutOff", at: line.runs[line.drinkers.run[d]].id };
  const stalled = line.sources.find((source) => stallsWithinUse(line, source));
  if (stalled !== undefined && reading.staticHead <= line.drinkers.openingHead[d] + 1e-9) {
    return {
      code: "sourceStalls",
      source: stalled.id,
      litres: (givenBeforeStall(line, stalled) ?? 0) * 1000,
    };
  }
  const above = filling.above[point];
  const isHump = above > 0 && line.points.height[point] < lowestBusiest.idle.head[point];
  return isHump ? { code: "humpAboveWater", hump: humpName(line, filling, point), above } : undefined;
}

function reasonDry(situation: JudgingCase, d: number, reading: DrinkerReading, airHead: number): Reason {
  const { line, filling } = situation;
  const openingHead = line.drinkers.openingHead[d];
  const { staticHead, flowingHead } = reading;
  if (staticHead <= openingHead) return { code: "tooHigh", staticHead, openingHead };
  const isAir = airHead > 0 && flowingHead > openingHead;
  if (isAir)
    return { code: "airLocked", hump: humpName(line, filling, line.drinkers.point[d]), airHead, staticHead };
  return { code: "frictionTakesAll", staticHead, head: flowingHead, openingHead };
}

function humpName(line: Line, filling: Filling, point: number): string {
  const hump = filling.hump[point];
  return hump >= 0 ? line.points.id[hump] : "a hump on the way";
}

/** Drips when the head with nobody drinking and the vessel full is more than the drinker holds. */
function judgeHolding(situation: JudgingCase, d: number): Judgement | undefined {
  const { line, friction, fullIdle } = situation;
  const head = fullIdle.idle.head[line.drinkers.point[d]] - line.drinkers.height[d];
  const { holdsUpTo } = line.drinkers.groups[line.drinkers.group[d]];
  if (fullIdle.idle.reached[line.drinkers.point[d]] === 0 || head <= holdsUpTo) return undefined;
  return {
    verdict: "drips",
    margin: holdsUpTo - head,
    moment: "fullIdle",
    friction,
    because: { code: "idleHeadTooHigh", head, holdsUpTo },
  };
}

/** Drips when the head with nobody drinking and the water at its lowest is too small to press the seal shut. */
function judgeSealing(situation: JudgingCase, d: number): Judgement | undefined {
  const { line, friction, lowestBusiest } = situation;
  const head = lowestBusiest.idle.head[line.drinkers.point[d]] - line.drinkers.height[d];
  const { sealsFrom } = line.drinkers.groups[line.drinkers.group[d]];
  if (lowestBusiest.idle.reached[line.drinkers.point[d]] === 0 || head >= sealsFrom || head <= 0)
    return undefined;
  return {
    verdict: "drips",
    margin: head - sealsFrom,
    moment: "lowestBusiest",
    friction,
    because: { code: "idleHeadTooLow", head, sealsFrom },
  };
}
