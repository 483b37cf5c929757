import { DEFAULTS } from "../document/defaults.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { writePlan } from "../document/read-plan.js";
import { VERSION } from "../document/version.js";
import { buildLine } from "../model/build-line.js";
import type { Line } from "../model/line.js";
import { buildMoments, MOMENTS, type MomentName, type Moments, stallsWithinUse } from "../model/moment.js";
import { digestOf } from "../numerics/digest.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { readQuantity } from "../units/quantity.js";
import { gatherCautions } from "./cautions.js";
import {
  type Certainty,
  type Checked,
  type DrinkerReading,
  type DrinkerVerdict,
  type Judgement,
  VERDICTS,
  type VerdictName,
} from "./check-result.js";
import { judgeDrinker } from "./drinker-troubles.js";
import { type Filling, findSuction, judgeFilling } from "./filling.js";
import { findLowestWays } from "./lowest-ways.js";
import { readAsFilled, readDrinker } from "./read-drinker.js";
import { reportRuns } from "./run-reports.js";
import { type SolvedMoments, solveMoments } from "./solve-moments.js";
import { reportSources } from "./source-reports.js";
import { type Doubts, judgeTolerance } from "./tolerance.js";

export type Checking =
  | { readonly ok: true; readonly checked: Checked }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface CheckOptions {
  /** Plans to try that fit the measurements as well as this one; 0 leaves sure or close call open. Default 200. */
  readonly samples?: number;
  /** Seed of those samples; the same seed gives the same answer. Default 1. */
  readonly seed?: number;
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string;
  /** Called after each sample with the share of them done, from 0 to 1. What it does changes no figure. */
  readonly progress?: (share: number) => void;
}

/**
 * Checks a plan: solves its four moments with both friction laws, judges every drinker on the worse of the two, and
 * says how sure that is.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  samples and seed for sure or close call
 * @returns the result, or what in the plan contradicts itself; the same plan and options give the same result to the bit
 */
export function checkPlan(plan: Plan, options: CheckOptions = {}): Checking {
  const { samples = 200, seed = 1, progress } = options;
  const built = buildLine(plan);
  if (!built.ok) return built;
  const { line } = built;
  const friction: FrictionLaw = plan.friction === "darcy-weisbach" ? "darcyWeisbach" : "hazenWilliams";
  const moments = buildMoments(line);
  const solved = solveMoments(line, moments);
  const fill = fillingOf(line, solved);
  const filling = fill(line, solved.darcyWeisbach.lowestBusiest.idle);
  const drinkers = judgeAll(line, moments, solved, filling);
  const certainties = judgeTolerance(
    line,
    moments,
    doubtsOf(plan),
    fill,
    drinkers.map(({ verdict }) => verdict),
    solved.darcyWeisbach.lowestBusiest.solution,
    { samples, seed, ...(progress === undefined ? {} : { progress }) },
  );
  const runs = reportRuns(
    line,
    {
      hazenWilliams: solved.hazenWilliams.fullBusiest.solution,
      darcyWeisbach: solved.darcyWeisbach.fullBusiest.solution,
    },
    friction,
  );
  const sources = reportSources(
    line,
    moments,
    solved.darcyWeisbach.fullBusiest.solution,
    solved.darcyWeisbach.lowestBusiest.solution,
  );
  const judged = drinkers.map(
    (drinker, d): DrinkerVerdict => ({ ...drinker, certainty: certainties[d] as Certainty }),
  );
  return {
    ok: true,
    checked: {
      line,
      friction,
      verdict: worstOf(judged),
      counts: countVerdicts(judged),
      drinkers: judged,
      runs,
      sources,
      filling: [...filling.findings, ...suctionOf(line, solved)],
      cautions: gatherCautions(line, runs, sources, built.openWater),
      defaults: built.defaults,
      solutions: solutionsOf(solved),
      madeFrom: { planDigest: digestOf(writePlan(plan)), version: VERSION, seed, samples },
    },
  };
}

/** How this line, or one that differs from it only in figures, is left when it has been filled from empty. */
function fillingOf(line: Line, solved: SolvedMoments): (line: Line, low: LineSolution) => Filling {
  const ways = findLowestWays(line);
  const busy = solved.darcyWeisbach.fullBusiest.solution;
  return (like, low) => judgeFilling(like, ways, low, busy);
}

function suctionOf(line: Line, solved: SolvedMoments) {
  for (const moment of ["lowestBusiest", "fullBusiest"] as const) {
    const found = findSuction(line, solved.darcyWeisbach[moment].solution, moment);
    if (found.length > 0) return found;
  }
  return [];
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
function isWorse(a: Judgement, b: Judgement): boolean {
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
    return readAsFilled(line, reading, filling.airHead[point], filling.above[point] - higher, d);
  };
  return Object.fromEntries(
    MOMENTS.map((name) => [name, Object.fromEntries(FRICTION_LAWS.map((law) => [law, read(law, name)]))]),
  ) as unknown as DrinkerVerdict["moments"];
}

function solutionsOf(solved: SolvedMoments): Checked["solutions"] {
  return Object.fromEntries(
    MOMENTS.map((name) => [
      name,
      Object.fromEntries(
        FRICTION_LAWS.map((law): [string, LineSolution] => [law, solved[law][name].solution]),
      ),
    ]),
  ) as unknown as Checked["solutions"];
}

function doubtsOf(plan: Plan): Doubts {
  const metres = (typed: string) => {
    const read = readQuantity(typed, "length");
    return read.ok ? read.quantity.si : 0;
  };
  return {
    heights: metres(plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed),
    level: metres(plan.doubts?.level ?? DEFAULTS.levelDoubt.typed),
  };
}

function countVerdicts(drinkers: readonly DrinkerVerdict[]): Record<VerdictName, number> {
  const counts: Record<VerdictName, number> = { good: 0, drips: 0, starves: 0, dry: 0 };
  for (const { verdict } of drinkers) counts[verdict] += 1;
  return counts;
}

function worstOf(drinkers: readonly DrinkerVerdict[]): VerdictName {
  return VERDICTS[drinkers.reduce((worst, { verdict }) => Math.max(worst, VERDICTS.indexOf(verdict)), 0)];
}
