import { DEFAULTS } from "../document/defaults.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { writePlan } from "../document/read-plan.js";
import { VERSION } from "../document/version.js";
import { buildFlock } from "../model/build-flock.js";
import { buildLine } from "../model/build-line.js";
import type { Line } from "../model/line.js";
import { MOMENTS } from "../model/moment.js";
import type { DefaultUsed } from "../model/typed-values.js";
import { digestOf } from "../numerics/digest.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { readQuantity } from "../units/quantity.js";
import { gatherCautions } from "./cautions.js";
import type { Certainty, Checked, DrinkerVerdict } from "./check-result.js";
import { findSuction } from "./filling.js";
import { countVerdicts, judgeLine, worstOf } from "./judge-line.js";
import { type MannedLine, manLine } from "./man-line.js";
import { reportFlock } from "./report-flock.js";
import { reportRuns } from "./run-reports.js";
import type { SolvedMoments } from "./solve-moments.js";
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
  readonly day?: string | undefined;
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
  const manning = manPlan(plan, built, options.day);
  if (!manning.ok) return manning;
  const { manned, line, defaults } = manning;
  const friction: FrictionLaw = plan.friction === "darcy-weisbach" ? "darcyWeisbach" : "hazenWilliams";
  const judged = judgeLine(line);
  const { solved, moments, filling } = judged;
  const certainties = judgeTolerance(judged, doubtsOf(plan), manned?.crowd, {
    samples,
    seed,
    ...(progress === undefined ? {} : { progress }),
  });
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
  const drinkers = judged.drinkers.map(
    (drinker, d): DrinkerVerdict => ({ ...drinker, certainty: certainties[d] as Certainty }),
  );
  return {
    ok: true,
    checked: {
      line,
      friction,
      verdict: worstOf(drinkers),
      counts: countVerdicts(drinkers),
      drinkers,
      runs,
      sources,
      filling: [...filling.findings, ...suctionOf(line, solved)],
      cautions: gatherCautions(line, runs, sources, built.openWater),
      defaults,
      ...(manned === undefined ? {} : { flock: reportFlock(manned, drinkers) }),
      solutions: solutionsOf(solved),
      madeFrom: { planDigest: digestOf(writePlan(plan)), version: VERSION, seed, samples },
    },
  };
}

type Manning =
  | {
      readonly ok: true;
      readonly line: Line;
      readonly manned: MannedLine | undefined;
      readonly defaults: readonly DefaultUsed[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The plan's line with its birds at it, if it has any: those that are there on the day. */
function manPlan(plan: Plan, built: { line: Line; defaults: readonly DefaultUsed[] }, day?: string): Manning {
  const { line, defaults } = built;
  if (plan.pens === undefined || plan.pens.length === 0)
    return { ok: true, line, manned: undefined, defaults };
  const flocking = buildFlock(plan, line, day);
  if (!flocking.ok) return flocking;
  const manned = manLine(plan, line, flocking.flock);
  const left = defaults.filter(({ path }) => !manned.replaced.has(path));
  return { ok: true, line: manned.line, manned, defaults: [...left, ...flocking.defaults] };
}

function suctionOf(line: Line, solved: SolvedMoments) {
  for (const moment of ["lowestBusiest", "fullBusiest"] as const) {
    const found = findSuction(line, solved.darcyWeisbach[moment].solution, moment);
    if (found.length > 0) return found;
  }
  return [];
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
