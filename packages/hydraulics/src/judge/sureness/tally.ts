import { chanceOfAtMost } from "../../numerics/binomial.js";
import { type Agreement, type Certainty, VERDICTS, type VerdictName } from "../check-result.js";
import { type DoubtedInput, type Input, type InputKind, SAMPLED_DOUBTS } from "./doubted-inputs.js";
import type { Keeping, Sample, Sampler } from "./sample-verdicts.js";

/** A verdict counts as decided when what was seen is less likely than this on the other side of the line. */
const DOUBTFUL = 0.01;
/** Numbers of plans after which more are tried only for those still undecided; common practice, no source. */
const LOOKS = [200, 400, 1000] as const;
/** What a keeper has no means to measure. */
const NOT_MEASURED: readonly InputKind[] = ["roughness", "fittings"];

/** What the samples say of one drinker. */
export interface Tally {
  readonly agreement: Agreement;
  readonly certainty: Certainty;
  /** Inputs that can be measured, by how much their draws went with a change of verdict. */
  readonly ranked: readonly Ranked[];
}

export interface Ranked {
  readonly input: Input;
  /** Whether they went with it more than chance alone would have them. */
  readonly isClear: boolean;
}

export interface TallyOptions {
  /** Plans to try at first, above 0. */
  readonly samples: number;
  /** Plans to try at most where that decides not every drinker. */
  readonly most: number;
  /** Drinkers to ask about, by index. */
  readonly among: readonly number[];
  readonly keeping?: Keeping;
  readonly progress?: (share: number) => void;
  readonly soFar?: SoFar;
}

/** Word of what the samples so far say, before they are all taken; it decides nothing. */
export interface SoFar {
  /** Numbers of samples after which it is given. */
  readonly after: readonly number[];
  readonly tell: (certainties: readonly Certainty[], samples: number) => void;
}

/**
 * Counts how many plans that fit the measurements as well share the verdict of each drinker. Stops as soon as all are
 * decided; a drinker keeps what it was decided with.
 *
 * @param baseline  verdicts of the plan as written, by drinker, as places in `VERDICTS`
 * @returns one a drinker asked about, in the same order
 */
export function tallyVerdicts(sampler: Sampler, baseline: readonly number[], options: TallyOptions): Tally[] {
  const { samples, most, among, keeping, progress, soFar } = options;
  const counting = among.map((d) => createCount(baseline[d], sampler.inputs));
  const looks = new Set([samples, ...LOOKS.filter((look) => look > samples && look < most), most]);
  for (let k = 1; k <= most; k += 1) {
    const sample = sampler.take(k - 1, keeping);
    counting.forEach((count, a) => {
      count.note(sample, among[a]);
    });
    if (looks.has(k)) {
      for (const count of counting) count.look(k);
      if (counting.every(({ agreement }) => agreement.isDecided)) break;
    }
    if (k < most && soFar?.after.includes(k) === true)
      soFar.tell(
        counting.map((count) => count.certaintyAfter(k)),
        k,
      );
    progress?.(k / most);
  }
  return counting;
}

interface Count extends Tally {
  note(sample: Sample, drinker: number): void;
  /** Decides it, if so many samples do. */
  look(samples: number): void;
  /** What it comes to so far, undecided as it may be. */
  certaintyAfter(samples: number): Certainty;
}

function createCount(baseline: number, inputs: readonly Input[]): Count {
  const counts = new Uint32Array(VERDICTS.length);
  /** Of the samples with another verdict, the sum of what was drawn for each input. */
  let sums: Float64Array | undefined;
  let agreement: Agreement = { share: 0, samples: 0, isDecided: false };
  const rankedBy = (now: Agreement) => (sums === undefined ? [] : rankInputs(inputs, sums, now));
  const certaintyBy = (now: Agreement): Certainty => {
    if (now.share >= SAMPLED_DOUBTS.sureShare) return { kind: "sure", ...now };
    const [first] = rankedBy(now);
    return {
      kind: "closeCall",
      ...now,
      measureAgain: first && asDoubted(first.input),
      otherwise: otherwiseOf(counts, baseline),
    };
  };
  const agreementAfter = (samples: number) =>
    agreement.isDecided ? agreement : agreementOf(counts[baseline], samples);
  return {
    get agreement() {
      return agreement;
    },
    get ranked() {
      return rankedBy(agreement);
    },
    note({ verdicts, off }, d) {
      if (agreement.isDecided) return;
      counts[verdicts[d]] += 1;
      if (verdicts[d] === baseline) return;
      sums ??= new Float64Array(inputs.length);
      for (let i = 0; i < inputs.length; i += 1) sums[i] += off.inputs[i];
    },
    look(samples) {
      agreement = agreementAfter(samples);
    },
    certaintyAfter: (samples) => certaintyBy(agreementAfter(samples)),
    get certainty() {
      return certaintyBy(agreement);
    },
  };
}

/** An input without what only the sampling needs. */
export const asDoubted = ({ input, doubt }: Input): DoubtedInput => ({ input, doubt });

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

/** Deviations by which a sum of draws must stand out. */
const CLEAR = 2.5;

function rankInputs(inputs: readonly Input[], sums: Float64Array, { share, samples }: Agreement): Ranked[] {
  // A sum of so many standard normal draws has this deviation if they have nothing to do with the verdict.
  const byChance = Math.sqrt((1 - share) * samples);
  return inputs
    .map((input, i) => ({ input, size: Math.abs(sums[i]) }))
    .filter(({ input, size }) => size > 0 && !NOT_MEASURED.includes(input.input.kind))
    .sort((a, b) => b.size - a.size)
    .map(({ input, size }) => ({ input, isClear: size > CLEAR * byChance }));
}

/** The verdict that most of the others share. */
function otherwiseOf(counts: Uint32Array, baseline: number): VerdictName {
  const others = VERDICTS.filter((_, v) => v !== baseline);
  return others.reduce((a, b) => (counts[VERDICTS.indexOf(b)] > counts[VERDICTS.indexOf(a)] ? b : a));
}
