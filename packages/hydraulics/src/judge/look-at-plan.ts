import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { VERSION } from "../document/version.js";
import { writePlan } from "../document/write-plan.js";
import { buildFlock } from "../model/build-flock.js";
import { buildLine } from "../model/build-line.js";
import { flockAtLine } from "../model/flock-at-line.js";
import type { Line } from "../model/line.js";
import { MOMENTS } from "../model/moment.js";
import type { DefaultUsed } from "../model/typed-values.js";
import { digestOf } from "../numerics/digest.js";
import type { Crowd } from "../simulate/crowd.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import { type MannedLine, manLine } from "./birds/man-line.js";
import type { reportFlock as ReportFlock } from "./birds/report-flock.js";
import { gatherCautions } from "./cautions.js";
import type { Certainty, Checked, DrinkerVerdict } from "./check-result.js";
import { countVerdicts, type JudgedLine, judgeLine, worstOf } from "./judge-line.js";
import { reportRuns } from "./run-reports.js";
import type { SolvedMoments } from "./solve-moments.js";
import { reportSources } from "./source-reports.js";
import { findSuction } from "./suction.js";

/** A plan checked, or what in it contradicts itself. */
export type Checking =
  | { readonly ok: true; readonly checked: Checked }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a look at a plan is asked with. */
export interface LookOptions {
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string | undefined;
}

/**
 * Looks at a plan once: solves its four moments with both friction laws and judges every drinker on the worse of the
 * two. How sure a verdict is, and how the birds fare, stays open; `checkPlan` tells both.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  the day asked about
 * @returns the result, or what in the plan contradicts itself; the same plan and options give the same result to the bit
 * @example lookAtPlan(plan).checked.verdict   // "good"
 */
export function lookAtPlan(plan: Plan, options: LookOptions = {}): Checking {
  return checkWith(plan, options.day, { samples: 0, seed: 1, sample: undefined, report: undefined });
}

/** Tries the verdicts of a judged line; `checkedWith` gives the whole check with what so many samples say. */
type Sampling = (
  judged: JudgedLine,
  crowd: Crowd | undefined,
  checkedWith: (certainties: readonly Certainty[], samples: number) => Checked,
) => readonly Certainty[];

/** How the verdicts of a judged line are tried. */
export interface Trying {
  readonly samples: number;
  readonly seed: number;
  readonly sample: Sampling | undefined;
  /** What is told of the birds. */
  readonly report: typeof ReportFlock | undefined;
}

/** A check that is made in steps: whoever goes through them may do something else in between. */
export type CheckSteps = Generator<undefined, Checking, undefined>;

/** A plan looked at, its verdicts tried by sampling where there is something to try them with. */
export function checkWith(plan: Plan, day: string | undefined, trying: Trying): Checking {
  return allOf(checkSteps(plan, day, trying));
}

/** All steps of a check, one after the other. */
export function allOf(steps: CheckSteps): Checking {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** The steps of it: the line with its birds, its moments with their verdicts, and all else that is told of them. */
export function* checkSteps(
  plan: Plan,
  day: string | undefined,
  { samples, seed, sample, report }: Trying,
): CheckSteps {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const manning = manPlan(plan, built, day);
  if (!manning.ok) return manning;
  const { manned, line } = manning;
  yield;
  const judged = judgeLine(line);
  yield;
  const found = findAllElse(plan, judged, built.openWater);
  const flock =
    manned === undefined || report === undefined ? {} : { flock: report(manned, judged.drinkers) };
  const planDigest = digestOf(writePlan(plan));
  const checkedWith = (certainties: readonly Certainty[] | undefined, tried: number): Checked => {
    const drinkers = judged.drinkers.map(
      (drinker, d): DrinkerVerdict => ({ ...drinker, certainty: certainties?.[d] ?? NOT_SAMPLED }),
    );
    return {
      line,
      friction: frictionOf(plan),
      verdict: worstOf(drinkers),
      counts: countVerdicts(drinkers),
      drinkers,
      ...found,
      defaults: manning.defaults,
      ...flock,
      solutions: solutionsOf(judged.solved),
      madeFrom: { planDigest, version: VERSION, seed, samples: tried },
    };
  };
  return { ok: true, checked: checkedWith(sample?.(judged, manned?.crowd, checkedWith), samples) };
}

const frictionOf = ({ friction }: Plan): FrictionLaw =>
  friction === "darcy-weisbach" ? "darcyWeisbach" : "hazenWilliams";

/** What a check finds besides its drinkers. */
function findAllElse(
  plan: Plan,
  { line, moments, solved, filling }: JudgedLine,
  openWater: Parameters<typeof gatherCautions>[3],
): Pick<Checked, "runs" | "sources" | "filling" | "cautions"> {
  const { hazenWilliams, darcyWeisbach } = solved;
  const runs = reportRuns(
    line,
    {
      hazenWilliams: hazenWilliams.fullBusiest.solution,
      darcyWeisbach: darcyWeisbach.fullBusiest.solution,
    },
    frictionOf(plan),
  );
  const sources = reportSources(
    line,
    moments,
    darcyWeisbach.fullBusiest.solution,
    darcyWeisbach.lowestBusiest.solution,
  );
  return {
    runs,
    sources,
    filling: [...filling.findings, ...suctionOf(line, solved)],
    cautions: gatherCautions(line, runs, sources, openWater),
  };
}

const NOT_SAMPLED: Certainty = { kind: "notSampled" };

type Manning =
  | {
      readonly ok: true;
      readonly line: Line;
      readonly manned: MannedLine | undefined;
      readonly defaults: readonly DefaultUsed[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The plan's line with the birds at it that are there on the day; as it is where no pens are told. */
function manPlan(plan: Plan, built: { line: Line; defaults: readonly DefaultUsed[] }, day?: string): Manning {
  const { line, defaults } = built;
  if (plan.pens === undefined || plan.pens.length === 0)
    return { ok: true, line, manned: undefined, defaults };
  const flocking = buildFlock(plan, line, day);
  if (!flocking.ok) return flocking;
  const manned = manLine(plan, line, flockAtLine(plan, flocking.flock));
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
