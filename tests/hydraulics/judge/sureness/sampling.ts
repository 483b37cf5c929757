import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { checkWith } from "../../../../packages/hydraulics/src/judge/look-at-plan.js";
import { listInputs } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import { doubtsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubts.js";
import {
  createSampler,
  type Keeping,
  type Sampler,
  type SamplerOptions,
} from "../../../../packages/hydraulics/src/judge/sureness/sample-verdicts.js";
import { verdictsOf } from "../../../../packages/hydraulics/src/judge/sureness/tolerance.js";
import type { Draws } from "../../../../packages/hydraulics/src/numerics/even-draws.js";
import { randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";

/** A plan made ready to be sampled by hand. */
export interface Sampled {
  /** Verdicts as written, as places in `VERDICTS`. */
  readonly baseline: readonly number[];
  readonly drinkers: readonly string[];
  readonly sampler: (options: SamplerOptions) => Sampler;
}

/** The plan given as data; undefined where it has problems. */
export function sampledOf(document: unknown): Sampled | undefined {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const { plan } = reading;
  let sampled: Sampled | undefined;
  checkWith(plan, "2026-07-04", {
    samples: 0,
    seed: 1,
    report: undefined,
    sample: (judged, crowd) => {
      const inputs = listInputs(judged.line, doubtsOf(plan, judged.line), crowd);
      const baseline = verdictsOf(judged);
      sampled = {
        baseline,
        drinkers: judged.line.drinkers.id,
        sampler: (options) => createSampler(judged, inputs, crowd, options),
      };
      return baseline.map(() => ({ kind: "notSampled" }));
    },
  });
  return sampled;
}

/** Draws without any order in them, for comparison. */
export function plainDraws(names: readonly string[], seed: number): Draws {
  const random = randomFrom(seed);
  const rows: Float64Array[] = [];
  return {
    uniform(sample, input) {
      while (rows.length <= sample) rows.push(Float64Array.from(names, () => random.uniform() || 1e-12));
      return rows[sample]![input]!;
    },
  };
}

/** Share of so many samples that agree with the plan as written, by drinker. */
export function sharesOf(
  { baseline, sampler }: Sampled,
  samples: number,
  options: SamplerOptions,
  keeping?: Keeping,
): number[] {
  const taking = sampler(options);
  const agreeing = baseline.map(() => 0);
  for (let k = 0; k < samples; k += 1) {
    const { verdicts } = taking.take(k, keeping);
    baseline.forEach((verdict, d) => {
      if (verdicts[d] === verdict) agreeing[d]! += 1;
    });
  }
  return agreeing.map((count) => count / samples);
}
