import type { Line } from "../../model/line.js";
import { type Draws, evenDraws, SOBOL_DIMENSIONS } from "../../numerics/even-draws.js";
import { normalQuantile } from "../../numerics/normal-quantile.js";
import { regimeAt, reynoldsNumber } from "../../physics/darcy-weisbach.js";
import type { Crowd } from "../../simulate/crowd.js";
import type { LineSolution } from "../../solve/solution.js";
import { VERDICTS } from "../check-result.js";
import type { JudgedLine } from "../judge-line.js";
import { type Spare, spareOfDrinker, verdictOfDrinker, type WeighingCase } from "../weigh-drinker.js";
import { type Input, SAMPLED_DOUBTS } from "./doubted-inputs.js";
import { createSampleSolver } from "./solve-sample.js";
import { createVarier, type Off } from "./vary-line.js";

/** One plan that fits the measurements as well, judged. */
export interface Sample {
  readonly off: Off;
  /** By drinker: the worse verdict of the two laws, as its place in `VERDICTS`. */
  readonly verdicts: Uint8Array;
  /** Head to spare of a drinker on both sides, the smaller of the two laws each [m]; asked before the next is made. */
  readonly spare: (drinker: number) => Spare;
}

/** How much of its doubt everything keeps, from 0 (the plan is right) to 1. */
export interface Keeping {
  /** By input; all of it where left out. */
  readonly inputs?: Float64Array;
  /** Of one drinker against the next, and of the loss between laminar and turbulent; all of it where left out. */
  readonly rest?: number;
}

export interface Sampler {
  readonly inputs: readonly Input[];
  /** How many drinkers there are. */
  readonly drinkers: number;
  /** Sample by number, from 0; the same number gives the same plan, but for how much of the doubt is kept. */
  take(sample: number, keeping?: Keeping): Sample;
  /** The plan with just this far off. */
  judge(off: Off, criticalShare?: number): Sample;
}

export interface SamplerOptions {
  readonly seed: number;
  /** How to draw; evenly where left out. Given the inputs' names, then the drinkers' own. */
  readonly draws?: (names: readonly string[], seed: number, together: number) => Draws;
}

const CRITICAL = "loss between laminar and turbulent";

/**
 * Makes plans that fit the measurements as well as the one written, and judges each through the solver.
 *
 * What the birds drink is drawn too, between what tables that disagree say; how many are at work follows from it and
 * from the drawn flow of the drinkers, without settling crowd and line with each other anew.
 *
 * @param judged  the plan as written; of its busy solution, which segments flow between laminar and turbulent
 * @param crowd   the crowd it was judged with; undefined for a plan without birds
 */
export function createSampler(
  judged: JudgedLine,
  inputs: readonly Input[],
  crowd: Crowd | undefined,
  { seed, draws = evenDraws }: SamplerOptions,
): Sampler {
  const { line } = judged;
  const names = [CRITICAL, ...inputs.map(({ key }) => key), ...line.drinkers.id.map((id) => `drinker ${id}`)];
  const drawn = draws(names, seed, Math.min(SOBOL_DIMENSIONS, 1 + inputs.length));
  const inCritical = segmentsInCriticalZone(line, judged.solved.darcyWeisbach.lowestBusiest.solution);
  const solveSample = createSampleSolver(judged);
  const vary = createVarier(line, inputs, crowd);
  const length = line.segments.length.slice();
  const judge = (off: Off, criticalShare = 1): Sample => {
    const varied = vary(off);
    shortenCritical(length, line, inCritical, criticalShare);
    const shortened = { ...varied.line, segments: { ...varied.line.segments, length } };
    return { off, ...judgeSample(solveSample(varied, shortened)) };
  };
  return {
    inputs,
    drinkers: line.drinkers.count,
    judge,
    take(sample, { inputs: kept, rest = 1 } = {}) {
      const normal = (input: number) => normalQuantile(drawn.uniform(sample, input));
      const off: Off = {
        inputs: new Float64Array(inputs.length),
        own: new Float64Array(line.drinkers.count),
      };
      for (let i = 0; i < inputs.length; i += 1) off.inputs[i] = (kept?.[i] ?? 1) * normal(1 + i);
      for (let d = 0; d < off.own.length; d += 1) off.own[d] = rest * normal(1 + inputs.length + d);
      return judge(off, 1 - rest * (1 - SAMPLED_DOUBTS.criticalLeast) * drawn.uniform(sample, 0));
    },
  };
}

function segmentsInCriticalZone(line: Line, solution: LineSolution): Uint8Array {
  const { segments, water } = line;
  return Uint8Array.from(segments.bore, (bore, s) => {
    return regimeAt(Math.abs(reynoldsNumber({ bore, viscosity: water.viscosity }, solution.flow[s]))) ===
      "critical"
      ? 1
      : 0;
  });
}

/** Between laminar and turbulent the loss is uncertain by a factor of two: taken as so much less pipe. */
function shortenCritical(
  into: Float64Array,
  { segments }: Line,
  inCritical: Uint8Array,
  share: number,
): void {
  for (let s = 0; s < segments.count; s += 1)
    into[s] = inCritical[s] === 1 ? segments.length[s] * share : segments.length[s];
}

function judgeSample(situations: readonly WeighingCase[]): Omit<Sample, "off"> {
  const verdicts = new Uint8Array(situations[0].line.drinkers.count);
  for (const situation of situations)
    for (let d = 0; d < verdicts.length; d += 1)
      verdicts[d] = Math.max(verdicts[d], VERDICTS.indexOf(verdictOfDrinker(situation, d)));
  return {
    verdicts,
    spare(d) {
      const byLaw = situations.map((situation) => spareOfDrinker(situation, d));
      return {
        below: Math.min(...byLaw.map(({ below }) => below)),
        above: Math.min(...byLaw.map(({ above }) => above)),
      };
    },
  };
}
