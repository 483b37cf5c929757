import { chanceOfAtMost } from "../numerics/binomial.js";
import type { Crowd } from "../simulate/crowd.js";
import { type Agreement, type Certainty, VERDICTS, type VerdictName } from "./check-result.js";
import {
  type DoubtedInput,
  type Input,
  type InputKind,
  listInputs,
  SAMPLED_DOUBTS,
} from "./doubted-inputs.js";
import type { Doubts } from "./doubts.js";
import type { JudgedLine } from "./judge-line.js";
import { createSampler, type Sample, type SamplerOptions } from "./sample-verdicts.js";

export interface ToleranceOptions extends SamplerOptions {
  /** Plans to try at first; 0 for none. */
  readonly samples: number;
  /** Plans to try at most where that decides not every drinker; as many as at first where left out. */
  readonly most?: number;
  readonly progress?: (share: number) => void;
}

/** A verdict counts as decided when what was seen is less likely than this on the other side of the line. */
const DOUBTFUL = 0.01;
/** Numbers of plans after which more are tried only for those still undecided; common practice, no source. */
const LOOKS = [200, 400, 1000] as const;
/** What a keeper has no means to measure. */
const NOT_MEASURED: readonly InputKind[] = ["roughness", "fittings"];

/**
 * Judges every drinker again for many plans that fit the measurements as well as the one written, through the solver
 * each time, and tells which verdicts hold. Where the first of them leave open whether a verdict is sure, more are
 * tried, up to `most`; a drinker keeps what it was decided with. Same seed, same answer.
 */
export function judgeTolerance(
  judged: JudgedLine,
  doubts: Doubts,
  crowd: Crowd | undefined,
  options: ToleranceOptions,
): Certainty[] {
  const { samples, most = samples, progress } = options;
  const { line } = judged;
  const baseline = judged.drinkers.map(({ verdict }) => VERDICTS.indexOf(verdict));
  if (samples === 0 || line.drinkers.count === 0) return baseline.map(() => ({ kind: "notSampled" }));
  const inputs = listInputs(line, doubts, crowd);
  const sampler = createSampler(judged, inputs, crowd, options);
  const tally = baseline.map((verdict) => createTally(verdict, inputs));
  const looks = new Set([samples, ...LOOKS.filter((look) => look > samples && look < most), most]);
  for (let k = 1; k <= most; k += 1) {
    const sample = sampler.take(k - 1);
    tally.forEach((drinker, d) => {
      drinker.note(sample, d);
    });
    if (looks.has(k)) {
      for (const drinker of tally) drinker.look(k);
      if (tally.every(({ isDecided }) => isDecided)) break;
    }
    progress?.(Math.min(1, k / (k > samples ? most : samples)));
  }
  return tally.map((drinker) => drinker.certainty());
}

/** What the samples say of one drinker. */
interface Tally {
  readonly isDecided: boolean;
  note(sample: Sample, drinker: number): void;
  /** Decides it, if so many samples do. */
  look(samples: number): void;
  certainty(): Certainty;
}

function createTally(baseline: number, inputs: readonly Input[]): Tally {
  const counts = new Uint32Array(VERDICTS.length);
  /** Of the samples with another verdict, the sum of what was drawn for each input. */
  let sums: Float64Array | undefined;
  let agreement: Agreement = { share: 0, samples: 0, isDecided: false };
  return {
    get isDecided() {
      return agreement.isDecided;
    },
    note({ verdicts, off }, d) {
      if (agreement.isDecided) return;
      counts[verdicts[d]] += 1;
      if (verdicts[d] === baseline) return;
      sums ??= new Float64Array(inputs.length);
      for (let i = 0; i < inputs.length; i += 1) sums[i] += off.inputs[i];
    },
    look(samples) {
      if (!agreement.isDecided) agreement = agreementOf(counts[baseline], samples);
    },
    certainty() {
      if (agreement.share >= SAMPLED_DOUBTS.sureShare) return { kind: "sure", ...agreement };
      return {
        kind: "closeCall",
        ...agreement,
        measureAgain: strongest(inputs, sums),
        otherwise: otherwiseOf(counts, baseline),
      };
    },
  };
}

/** How sure so many agreeing samples make a verdict: decided where the other side of the line is hardly possible. */
export function agreementOf(agreeing: number, samples: number): Agreement {
  const share = agreeing / samples;
  const trials = { count: samples, chance: SAMPLED_DOUBTS.sureShare };
  const byChance =
    share >= SAMPLED_DOUBTS.sureShare
      ? 1 - chanceOfAtMost({ ...trials, successes: agreeing - 1 })
      : chanceOfAtMost({ ...trials, successes: agreeing });
  return { share, samples, isDecided: byChance < DOUBTFUL };
}

/** The measurable input whose draws most went with a change of verdict. */
function strongest(inputs: readonly Input[], sums: Float64Array | undefined): DoubtedInput | undefined {
  return rankInputs(inputs, sums ?? new Float64Array(inputs.length))[0];
}

/** Inputs that can be measured, by how much their draws went with a change of verdict. */
export function rankInputs(inputs: readonly Input[], sums: Float64Array): DoubtedInput[] {
  return inputs
    .map((input, i) => ({ input, size: Math.abs(sums[i]) }))
    .filter(({ input, size }) => size > 0 && !NOT_MEASURED.includes(input.input.kind))
    .sort((a, b) => b.size - a.size)
    .map(({ input }) => ({ input: input.input, doubt: input.doubt }));
}

/** The verdict that most of the others share. */
function otherwiseOf(counts: Uint32Array, baseline: number): VerdictName {
  const others = VERDICTS.filter((_, v) => v !== baseline);
  return others.reduce((a, b) => (counts[VERDICTS.indexOf(b)] > counts[VERDICTS.indexOf(a)] ? b : a));
}
