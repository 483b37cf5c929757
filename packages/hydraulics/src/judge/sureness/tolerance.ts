import type { Crowd } from "../../simulate/crowd.js";
import { type Certainty, VERDICTS } from "../check-result.js";
import type { JudgedLine } from "../judge-line.js";
import { listInputs } from "./doubted-inputs.js";
import type { Doubts } from "./doubts.js";
import { createSampler, type SamplerOptions } from "./sample-verdicts.js";
import { type SoFar, tallyVerdicts } from "./tally.js";

export interface ToleranceOptions extends SamplerOptions {
  /** Plans to try at first; 0 for none. */
  readonly samples: number;
  /** Plans to try at most where that decides not every drinker; as many as at first where left out. */
  readonly most?: number;
  readonly progress?: (share: number) => void;
  readonly soFar?: SoFar;
}

/**
 * Judges every drinker again for many plans that fit the measurements as well as the one written, through the solver
 * each time, and tells which verdicts hold. Where the first of them leave open whether a verdict is sure, more are
 * tried, up to `most`. Same seed, same answer.
 */
export function judgeTolerance(
  judged: JudgedLine,
  doubts: Doubts,
  crowd: Crowd | undefined,
  options: ToleranceOptions,
): Certainty[] {
  const { samples, most = samples } = options;
  const baseline = verdictsOf(judged);
  if (samples === 0 || baseline.length === 0) return baseline.map(() => ({ kind: "notSampled" }));
  const sampler = createSampler(judged, listInputs(judged.line, doubts, crowd), crowd, options);
  const among = baseline.map((_, d) => d);
  return tallyVerdicts(sampler, baseline, { ...options, most, among }).map(({ certainty }) => certainty);
}

/** Verdicts of the plan as written, by drinker, as places in `VERDICTS`. */
export const verdictsOf = ({ drinkers }: JudgedLine): number[] =>
  drinkers.map(({ verdict }) => VERDICTS.indexOf(verdict));
