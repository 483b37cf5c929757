import { type Line, SEGMENT_KIND } from "../model/line.js";
import { type Moments, momentsAlike, stallsWithinUse } from "../model/moment.js";
import { randomFrom } from "../numerics/random.js";
import { regimeAt, reynoldsNumber } from "../physics/darcy-weisbach.js";
import type { Crowd } from "../simulate/crowd.js";
import { atWorkVaried, intakeSpread } from "../simulate/crowd-numbers.js";
import { TAKEN_IN } from "../simulate/crowd-want.js";
import { type PreparedLine, prepareAlike, prepareLine } from "../solve/prepare-line.js";
import { FRICTION_LAWS, type LineSolution } from "../solve/solution.js";
import { type Certainty, SAMPLED_DOUBTS, VERDICTS, type VerdictName } from "./check-result.js";
import { verdictOfDrinker } from "./drinker-troubles.js";
import type { Filling } from "./filling.js";
import type { JudgedLine } from "./judge-line.js";
import { sampleMoment } from "./solve-moments.js";

/** How far the measurements may be off: two standard deviations each [m]. */
export interface Doubts {
  readonly heights: number;
  readonly level: number;
}

const { sureShare, coefficient, fittings, oneToTheNext, criticalLeast } = SAMPLED_DOUBTS;

interface Sample {
  readonly line: Line;
  /** Loss in the uncertain zone between laminar and turbulent, as a share of the turbulent one. */
  readonly criticalShare: number;
  /** Who is at work in the busiest minutes; undefined where that does not hang on birds. */
  readonly atWork: Uint8Array | undefined;
  /** What was drawn, in standard deviations, by the names a keeper could measure again. */
  readonly drawn: ReadonlyMap<string, number>;
}

/**
 * Judges every drinker again for many plans that fit the measurements as well as the one written, through the solver
 * each time, and tells which verdicts hold. Same seed, same answer.
 *
 * What the birds drink is drawn too, between what tables that disagree say; how many are at work follows from it and
 * from the drawn flow of the drinkers, without settling crowd and line with each other anew.
 *
 * @param judged  the plan as written; of its busy solution, which segments flow between laminar and turbulent
 * @param crowd   the crowd it was judged with; undefined for a plan without birds
 */
export function judgeTolerance(
  judged: JudgedLine,
  doubts: Doubts,
  crowd: Crowd | undefined,
  options: {
    readonly samples: number;
    readonly seed: number;
    readonly progress?: (share: number) => void;
  },
): Certainty[] {
  const { samples, seed } = options;
  const { line, moments, fill } = judged;
  const baseline = judged.drinkers.map(({ verdict }) => verdict);
  if (samples === 0 || line.drinkers.count === 0) return baseline.map(() => ({ kind: "notSampled" }));
  const random = randomFrom(seed);
  const inCritical = segmentsInCriticalZone(line, judged.solved.darcyWeisbach.lowestBusiest.solution);
  let prepared = FRICTION_LAWS.map((friction) => prepareLine(line, friction));
  const counts = baseline.map(() => new Uint32Array(VERDICTS.length));
  const influence = new Map<string, Float64Array>();
  for (let k = 0; k < samples; k += 1) {
    const sample = drawSample(line, doubts, crowd, random);
    const sampled = judgeSample(sample, moments, inCritical, prepared, fill);
    prepared = sampled.prepared;
    sampled.verdicts.forEach((verdict, d) => {
      counts[d][VERDICTS.indexOf(verdict)] += 1;
    });
    noteInfluence(influence, sample.drawn, sampled.verdicts, baseline);
    options.progress?.((k + 1) / samples);
  }
  return baseline.map((verdict, d) => certaintyOf(verdict, d, counts[d], samples, influence));
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

function drawSample(
  line: Line,
  doubts: Doubts,
  crowd: Crowd | undefined,
  random: ReturnType<typeof randomFrom>,
): Sample {
  const drawn = new Map<string, number>();
  const draw = (name: string) => {
    const value = random.normal();
    drawn.set(name, value);
    return value;
  };
  const shift = drawHeights(line, doubts.heights / 2, draw);
  const levelOff = (doubts.level / 2) * draw("the water level");
  const fittingOff = (1 + fittings) ** (draw("the losses of the fittings") / 2);
  const roughnessOff = 1 + (coefficient / 2) * draw("the roughness of the pipe");
  const groupFactor = line.drinkers.groups.map((group) => {
    const z = draw(`the flow of ${group.kindName} (jug and watch)`);
    return spreadBy({ low: group.flowLow, high: group.flowHigh }, z);
  });
  const boreOff = line.runs.map(
    (run) =>
      ((run.boreHigh - run.boreLow) / 4) * (run.boreHigh > run.boreLow ? draw(`the bore of ${run.id}`) : 0),
  );
  const atWork = crowd === undefined ? undefined : drawAtWork(line, crowd, groupFactor, draw);
  const { points, segments, drinkers, sources } = line;
  return {
    atWork,
    criticalShare: criticalLeast + (1 - criticalLeast) * random.uniform(),
    drawn,
    line: {
      ...line,
      points: { ...points, height: points.height.map((h, p) => h + shift[p]) },
      segments: {
        ...segments,
        bore: segments.bore.map((bore, s) => Math.max(0.5 * bore, bore + (boreOff[segments.run[s]] ?? 0))),
        k1: segments.k1.map((k) => k * fittingOff),
        kInfinity: segments.kInfinity.map((k) => k * fittingOff),
        hazenWilliams: segments.hazenWilliams.map((c) => c * Math.max(0.5, roughnessOff)),
      },
      drinkers: {
        ...drinkers,
        height: drinkers.height.map((h, d) => h + shift[drinkers.point[d]]),
        coefficient: drinkers.coefficient.map(
          (k, d) => k * groupFactor[drinkers.group[d]] * Math.exp((oneToTheNext / 2) * random.normal()),
        ),
      },
      sources: sources.map((source) => ({
        ...source,
        base: source.base + shift[source.point],
        levels: {
          full: source.levels.full + levelOff,
          lowest: source.levels.lowest + levelOff,
          ordinary: source.levels.ordinary + levelOff,
        },
      })),
    },
  };
}

/** Who is at work with birds that drink as much, and take in as much of a nipple's flow, as is drawn. */
function drawAtWork(
  line: Line,
  crowd: Crowd,
  flow: readonly number[],
  draw: (name: string) => number,
): Uint8Array {
  const { share, least, most } = TAKEN_IN;
  const intake = crowd.pens.map((pen) =>
    spreadBy(intakeSpread(pen), draw(`what the birds of ${pen.pen.id} drink`)),
  );
  const takenIn = spreadBy(
    { low: least / share, high: most / share },
    draw("how long a bird drinks at a nipple"),
  );
  return atWorkVaried(line, crowd, { intake, flow, takenIn });
}

/** A factor whose two standard deviations are `low` and `high`. */
const spreadBy = ({ low, high }: { readonly low: number; readonly high: number }, z: number): number =>
  z < 0 ? low ** (-z / 2) : high ** (z / 2);

/** A shift for each measured height, and in between what a straight pipe would have [m]. */
function drawHeights(line: Line, deviation: number, draw: (name: string) => number): Float64Array {
  const shift = new Float64Array(line.points.count);
  for (let p = 0; p < line.points.count; p += 1) {
    if (line.points.measured[p] === 1) shift[p] = deviation * draw(`the height of ${line.points.id[p]}`);
  }
  // A device sits where its run begins.
  const { segments } = line;
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.kind[s] !== SEGMENT_KIND.pipe) shift[segments.to[s]] = shift[segments.from[s]];
  }
  for (const run of line.runs) {
    let before = 0;
    for (let k = 1; k < run.points.length; k += 1) {
      if (line.points.measured[run.points[k]] === 0) continue;
      const [a, b] = [run.along[before], run.along[k]];
      for (let between = before + 1; between < k; between += 1) {
        const share = b > a ? (run.along[between] - a) / (b - a) : 1;
        shift[run.points[between]] = (1 - share) * shift[run.points[before]] + share * shift[run.points[k]];
      }
      before = k;
    }
  }
  return shift;
}

function judgeSample(
  sample: Sample,
  written: Moments,
  inCritical: Uint8Array,
  prepared: readonly PreparedLine[],
  fill: (line: Line, low: LineSolution) => Filling,
): { prepared: PreparedLine[]; verdicts: VerdictName[] } {
  const moments = withAtWork(momentsAlike(sample.line, written), sample.atWork);
  const stalledBelow = sample.line.sources.some((source) => stallsWithinUse(sample.line, source));
  const next: PreparedLine[] = [];
  const worst = new Uint8Array(sample.line.drinkers.count);
  let filling: Filling | undefined;
  FRICTION_LAWS.forEach((friction, f) => {
    const line = friction === "darcyWeisbach" ? shortenCritical(sample, inCritical) : sample.line;
    const ready = prepareAlike(prepared[f], line);
    const fullIdle = sampleMoment(ready, moments, "fullIdle");
    const lowestBusiest = sampleMoment(ready, moments, "lowestBusiest");
    next.push(ready);
    // Humps stand where the sample has them; with nobody drinking both laws have the same heads.
    filling ??= fill(sample.line, lowestBusiest.idle);
    const situation = { line, moments, friction, fullIdle, lowestBusiest, filling, stalledBelow };
    for (let d = 0; d < line.drinkers.count; d += 1) {
      worst[d] = Math.max(worst[d], VERDICTS.indexOf(verdictOfDrinker(situation, d)));
    }
  });
  return { prepared: next, verdicts: Array.from(worst, (v) => VERDICTS[v]) };
}

function withAtWork(moments: Moments, atWork: Uint8Array | undefined): Moments {
  if (atWork === undefined) return moments;
  const lowestBusiest = { ...moments.named.lowestBusiest, atWork };
  return { ...moments, named: { ...moments.named, lowestBusiest } };
}

/** Between laminar and turbulent the loss is uncertain by a factor of two: taken as so much less pipe. */
function shortenCritical(sample: Sample, inCritical: Uint8Array): Line {
  const { segments } = sample.line;
  return {
    ...sample.line,
    segments: {
      ...segments,
      length: segments.length.map((length, s) =>
        inCritical[s] === 1 ? length * sample.criticalShare : length,
      ),
    },
  };
}

/** By what was drawn: for each drinker, how the draws of samples that changed its verdict add up. */
function noteInfluence(
  influence: Map<string, Float64Array>,
  drawn: ReadonlyMap<string, number>,
  verdicts: readonly VerdictName[],
  baseline: readonly VerdictName[],
): void {
  for (const [name, value] of drawn) {
    let sums = influence.get(name);
    if (sums === undefined) {
      sums = new Float64Array(baseline.length);
      influence.set(name, sums);
    }
    for (let d = 0; d < baseline.length; d += 1) if (verdicts[d] !== baseline[d]) sums[d] += value;
  }
}

function certaintyOf(
  verdict: VerdictName,
  d: number,
  counts: Uint32Array,
  samples: number,
  influence: ReadonlyMap<string, Float64Array>,
): Certainty {
  const share = counts[VERDICTS.indexOf(verdict)] / samples;
  if (share >= sureShare) return { kind: "sure", share, samples };
  let otherwise: VerdictName = verdict === "good" ? "starves" : "good";
  let most = 0;
  VERDICTS.forEach((name, v) => {
    if (name !== verdict && counts[v] > most) [otherwise, most] = [name, counts[v]];
  });
  let measureAgain = "the heights";
  let strongest = 0;
  for (const [name, sums] of influence) {
    if (Math.abs(sums[d]) > strongest) [measureAgain, strongest] = [name, Math.abs(sums[d])];
  }
  return { kind: "closeCall", share, samples, measureAgain, otherwise };
}
