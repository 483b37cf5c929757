import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import type { Crowd } from "../../simulate/crowd.js";
import { reportFlock } from "../birds/report-flock.js";
import { type CheckOptions, FIRST_SAMPLES, MOST_SAMPLES } from "../check-plan.js";
import type { Certainty, Checked, Judgement, VerdictName } from "../check-result.js";
import type { JudgedLine } from "../judge-line.js";
import { checkWith } from "../look-at-plan.js";
import { listInputs } from "./doubted-inputs.js";
import { doubtsOf } from "./doubts.js";
import { findRemedies } from "./find-remedies.js";
import type { CloseCall, Measuring } from "./measuring.js";
import { createSampler, type Sampler } from "./sample-verdicts.js";
import { findMovers, findSpares } from "./spares.js";
import { type Tally, tallyVerdicts } from "./tally.js";
import { verdictsOf } from "./tolerance.js";
import { rankMeasurements } from "./worthwhile.js";

/** Which measurements to take again, or what in the plan contradicts itself. */
export type MeasureAnswer =
  | { readonly ok: true; readonly checked: Checked; readonly measuring: Measuring }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Checks a plan, and finds for every close call which measurement to take again and how good it must be: the same
 * plans
 * that fit the measurements as well, judged again through the solver with that one thing less in doubt.
 *
 * A doubt found to be enough, written into the plan, makes a check with the same seed sure.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  as for `checkPlan`; the share done is of the check first, then of the measurements
 * @returns the check, as `checkPlan` gives it, and the measurements
 * @example measureAgain({ ...small, sources: [{ ...small.sources[0], stand: "14 cm" }] }, { samples: 20 }).measuring.close[0].verdict   // "good"
 */
export function measureAgain(plan: Plan, options: CheckOptions = {}): MeasureAnswer {
  const { samples = FIRST_SAMPLES, seed = 1, day, progress = () => undefined } = options;
  const most = options.samples === undefined ? MOST_SAMPLES : samples;
  let measuring: Measuring = { sure: 0, close: [], measurements: [], samples: 0 };
  const sample = (judged: JudgedLine, crowd: Crowd | undefined): Certainty[] => {
    const inputs = listInputs(judged.line, doubtsOf(plan, judged.line), crowd);
    const sampler = createSampler(judged, inputs, crowd, { seed });
    const baseline = verdictsOf(judged);
    if (samples === 0 || baseline.length === 0) return baseline.map(() => ({ kind: "notSampled" }));
    const among = baseline.map((_, d) => d);
    const tallies = tallyVerdicts(sampler, baseline, {
      samples,
      most,
      among,
      progress: (share) => progress(CHECK_SHARE * share),
    });
    measuring = measure(judged, sampler, tallies, {
      samples,
      most,
      tried: (done, of) => progress(CHECK_SHARE + ((1 - CHECK_SHARE) * done) / of),
    });
    return tallies.map(({ certainty }) => certainty);
  };
  const checking = checkWith(plan, day, { samples, seed, report: reportFlock, sample });
  return checking.ok ? { ok: true, checked: checking.checked, measuring } : checking;
}

/** Plans whose spare heads are sorted, at most. */
const MOST_SPARES = 400;
/** Things in doubt told of each drinker. */
const SWAYS_TOLD = 3;
/** Of the work, about what the check takes. */
const CHECK_SHARE = 0.2;

/** Which edge a close call is at: it holds too little, or it has too little. */
const sideOf = ({ verdict, because }: Judgement, otherwise: VerdictName): "above" | "below" =>
  because.code !== "idleHeadTooLow" && [verdict, otherwise].includes("drips") ? "above" : "below";

interface Trying {
  readonly samples: number;
  readonly most: number;
  readonly tried: (done: number, of: number) => void;
}

function measure(judged: JudgedLine, sampler: Sampler, tallies: readonly Tally[], trying: Trying): Measuring {
  const baseline = verdictsOf(judged);
  const open = tallies.flatMap(({ certainty, ranked }, drinker) =>
    certainty.kind === "closeCall"
      ? [{ drinker, ranked, side: sideOf(judged.drinkers[drinker], certainty.otherwise) }]
      : [],
  );
  if (open.length === 0) return { sure: tallies.length, close: [], measurements: [], samples: trying.most };
  const movers = findMovers(sampler, open);
  const remedies = findRemedies(
    sampler,
    baseline,
    open.map(({ drinker }, o) => ({ drinker, ranked: movers[o].map(({ input }) => input) })),
    trying,
  );
  const spares = findSpares(
    sampler,
    open.map(({ drinker }) => drinker),
    Math.min(trying.most, MOST_SPARES),
  );
  const close = open.map(({ drinker }, o): CloseCall => {
    const { certainty } = tallies[drinker];
    if (certainty.kind !== "closeCall") throw new RangeError("measure: a close call is none");
    return {
      drinker: judged.line.drinkers.id[drinker],
      index: drinker,
      verdict: judged.drinkers[drinker].verdict,
      otherwise: certainty.otherwise,
      share: certainty.share,
      samples: certainty.samples,
      remedy: remedies.get(drinker) ?? { kind: "none" },
      sways: movers[o].slice(0, SWAYS_TOLD).map(({ sway }) => sway),
      ...spares[o],
    };
  });
  return {
    sure: tallies.length - close.length,
    close,
    measurements: rankMeasurements(close),
    samples: trying.most,
  };
}
