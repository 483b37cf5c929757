import type { Plan } from "../document/plan-schema.js";
import { reportFlock } from "./birds/report-flock.js";
import type { Certainty, Checked } from "./check-result.js";
import { allOf, type Checking, type CheckSteps, checkSteps } from "./look-at-plan.js";
import { doubtsOf } from "./sureness/doubts.js";
import { judgeTolerance } from "./sureness/tolerance.js";

/** How a plan is checked. */
export interface CheckOptions {
  /**
   * Plans to try that fit the measurements as well as this one; 0 leaves sure or close call open. Default 200, and up
   * to `MOST_SAMPLES` where these do not decide.
   */
  readonly samples?: number;
  /** Seed of those samples; the same seed gives the same answer. Default 1. */
  readonly seed?: number;
  /** The day asked about, "2026-07-04": how old the birds are. Counts where the plan names none. */
  readonly day?: string | undefined;
  /**
   * Called after each sample with the share of them done, from 0 to 1, of the most that may be tried. What it does
   * changes no figure.
   */
  readonly progress?: (share: number) => void;
  /** Told of the whole check with what the samples so far say, after these numbers of them; not where they are all. */
  readonly soFar?: { readonly after: readonly number[]; readonly tell: (checked: Checked) => void };
}

/** Plans tried where nobody says how many: at first, and at most. */
export const [FIRST_SAMPLES, MOST_SAMPLES] = [200, 1000];

/**
 * Checks a plan: solves its four moments with both friction laws, judges every drinker on the worse of the two, and
 * says how sure that is.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  samples and seed for sure or close call
 * @returns the result, or what in the plan contradicts itself; the same plan and options give the same result to the bit
 * @example checkPlan(plan, { samples: 0 }).checked.verdict   // "good"
 */
export function checkPlan(plan: Plan, options: CheckOptions = {}): Checking {
  return allOf(checkPlanInSteps(plan, options));
}

/**
 * The check of `checkPlan` in steps, each about a third of what it takes without samples, so that a page that follows a
 * hand can draw in between. What is left at any step may be given up.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  samples and seed for sure or close call
 * @returns a generator of steps that gives at its end what `checkPlan` gives
 * @example [...checkPlanInSteps(plan, { samples: 0 })].length   // 2
 */
export function checkPlanInSteps(plan: Plan, options: CheckOptions = {}): CheckSteps {
  const { samples = FIRST_SAMPLES, seed = 1, day, progress, soFar } = options;
  const most = options.samples === undefined ? MOST_SAMPLES : samples;
  const trying = { samples, most, seed, ...(progress === undefined ? {} : { progress }) };
  return checkSteps(plan, day, {
    samples,
    seed,
    report: reportFlock,
    sample: (judged, crowd, checkedWith) => {
      const telling = soFar && {
        after: soFar.after,
        tell: (certainties: readonly Certainty[], tried: number) =>
          soFar.tell(checkedWith(certainties, tried)),
      };
      return judgeTolerance(judged, doubtsOf(plan, judged.line), crowd, {
        ...trying,
        ...(telling === undefined ? {} : { soFar: telling }),
      });
    },
  });
}
