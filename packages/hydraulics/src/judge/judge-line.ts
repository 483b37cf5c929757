import type { Line } from "../model/line.js";
import { buildMoments, MOMENTS, type MomentName, type Moments, stallsWithinUse } from "../model/moment.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { emptyCourses } from "./air-courses.js";
import {
  type DrinkerReading,
  type DrinkerVerdict,
  type Judgement,
  VERDICTS,
  type VerdictName,
} from "./check-result.js";
import { type Filling, judgeFilling } from "./filling.js";
import { judgeDrinker } from "./judge-drinker.js";
import { findLowestWays, type Ways } from "./lowest-ways.js";
import { readAsFilled, readDrinker } from "./read-drinker.js";
import { type SolvedMoments, solveMoments } from "./solve-moments.js";

/** A line solved at its moments with both laws, filled from empty, and each of its drinkers judged. */
export interface JudgedLine {
  readonly line: Line;
  readonly moments: Moments;
  readonly solved: SolvedMoments;
  readonly ways: Ways;
  readonly filling: Filling;
  /** How a line that differs only in figures is left when it has been filled from empty. */
  readonly fill: (line: Line, low: Pick<LineSolution, "head">) => Filling;
  readonly drinkers: readonly Omit<DrinkerVerdict, "certainty">[];
}

/** Solves a line for its four moments and judges every drinker on the worse of the two friction laws. */
export function judgeLine(line: Line): JudgedLine {
  const moments = buildMoments(line);
  const solved = solveMoments(line, moments);
  const ways = findLowestWays(line);
  const busy = solved.darcyWeisbach.fullBusiest.solution;
  const courses = emptyCourses(ways);
  const fill: JudgedLine["fill"] = (like, low) => judgeFilling(like, ways, low, busy, courses);
  const filling = fill(line, solved.darcyWeisbach.lowestBusiest.idle);
  return { line, moments, solved, ways, filling, fill, drinkers: judgeAll(line, moments, solved, filling) };
}

function judgeAll(
  line: Line,
  moments: Moments,
  solved: SolvedMoments,
  filling: Filling,
): Omit<DrinkerVerdict, "certainty">[] {
  const cases = FRICTION_LAWS.map((friction) => ({
    line,
    moments,
    friction,
    filling,
    stalledBelow: line.sources.some((source) => stallsWithinUse(line, source)),
    fullIdle: solved[friction].fullIdle,
    lowestBusiest: solved[friction].lowestBusiest,
  }));
  return line.drinkers.id.map((drinker, index) => {
    const byLaw = cases.map((situation) => judgeDrinker(situation, index));
    const [worse, other] = isWorse(byLaw[1][0], byLaw[0][0]) ? [byLaw[1], byLaw[0]] : [byLaw[0], byLaw[1]];
    return {
      drinker,
      index,
      ...worse[0],
      also: worse.slice(1).filter((judgement) => judgement.verdict !== "good"),
      lawsAgree: worse[0].verdict === other[0].verdict,
      moments: readMoments(line, moments, solved, filling, index),
    };
  });
}

/** The cautious one of two judgements: the worse verdict, or at the same verdict the smaller margin. */
export function isWorse(
  a: Pick<Judgement, "verdict" | "margin">,
  b: Pick<Judgement, "verdict" | "margin">,
): boolean {
  const [rankA, rankB] = [VERDICTS.indexOf(a.verdict), VERDICTS.indexOf(b.verdict)];
  return rankA > rankB || (rankA === rankB && a.margin < b.margin);
}

function readMoments(
  line: Line,
  moments: Moments,
  solved: SolvedMoments,
  filling: Filling,
  d: number,
): DrinkerVerdict["moments"] {
  const point = line.drinkers.point[d];
  const read = (law: FrictionLaw, name: MomentName): DrinkerReading => {
    const reading = readDrinker(line, solved[law][name], moments, name, d);
    const higher = solved[law][name].idle.head[point] - solved[law].lowestBusiest.idle.head[point];
    return readAsFilled(line, d, reading, {
      airHead: filling.airHead[point],
      above: filling.above[point] - higher,
    });
  };
  return Object.fromEntries(
    MOMENTS.map((name) => [name, Object.fromEntries(FRICTION_LAWS.map((law) => [law, read(law, name)]))]),
  ) as unknown as DrinkerVerdict["moments"];
}

export function countVerdicts(drinkers: readonly Judgement[]): Record<VerdictName, number> {
  const counts: Record<VerdictName, number> = { good: 0, drips: 0, starves: 0, dry: 0 };
  for (const { verdict } of drinkers) counts[verdict] += 1;
  return counts;
}

export function worstOf(drinkers: readonly Judgement[]): VerdictName {
  return VERDICTS[drinkers.reduce((worst, { verdict }) => Math.max(worst, VERDICTS.indexOf(verdict)), 0)];
}
