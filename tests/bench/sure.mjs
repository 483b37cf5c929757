/** How well sure and close are told: error of even draws against plain ones, samples that decide, calibration. */
import { readPlan } from "../../packages/hydraulics/dist/index.js";
import { checkWith } from "../../packages/hydraulics/dist/judge/look-at-plan.js";
import { listInputs } from "../../packages/hydraulics/dist/judge/sureness/doubted-inputs.js";
import { doubtsOf } from "../../packages/hydraulics/dist/judge/sureness/doubts.js";
import { createSampler } from "../../packages/hydraulics/dist/judge/sureness/sample-verdicts.js";
import { tallyVerdicts } from "../../packages/hydraulics/dist/judge/sureness/tally.js";
import { verdictsOf } from "../../packages/hydraulics/dist/judge/sureness/tolerance.js";
import { randomFrom } from "../../packages/hydraulics/dist/numerics/random.js";

const YARDS = 40;
const FRESH = 10_000;
const SURE = 0.95;
const cm = (metres) => `${(100 * metres).toFixed(2)} cm`;

/** A small yard that stands near the edge of something; every figure is invented. */
function drawYard(random) {
  const between = (low, high) => low + (high - low) * random.uniform();
  const runs = Array.from({ length: 1 + random.integerBelow(3) }, (_, i) => ({
    id: `lane ${i + 1}`,
    from: "barrel",
    length: `${between(4, 25).toFixed(1)} m`,
    fall: cm(between(-0.1, 0.15)),
    pipe: ["pvc-sch40-1/2", "pvc-sch40-3/4", "pe-metric-sdr11-20"][random.integerBelow(3)],
    drinkers: {
      kind: ["nipple-side-action", "cup-trigger", "cup-float"][random.integerBelow(3)],
      count: 2 + random.integerBelow(6),
    },
  }));
  const level = { full: cm(between(0.5, 0.8)), lowest: "8 cm" };
  const sources = [{ id: "barrel", vessel: "drum-55gal-plastic", stand: cm(between(0, 0.6)), level }];
  const doubts = { heights: cm(between(0.002, 0.03)), level: cm(between(0.002, 0.05)) };
  const reading = readPlan(JSON.stringify({ headfall: 1, sources, runs, doubts }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** The plan made ready: verdicts as written, and a sampler for any seed and way to draw. */
function samplingOf(plan) {
  let sampling;
  checkWith(plan, undefined, {
    samples: 0,
    seed: 1,
    report: undefined,
    sample: (judged, crowd) => {
      const inputs = listInputs(judged.line, doubtsOf(plan, judged.line), crowd);
      const baseline = verdictsOf(judged);
      sampling = {
        baseline,
        inputs: inputs.length,
        sampler: (options) => createSampler(judged, inputs, crowd, options),
      };
      return baseline.map(() => ({ kind: "notSampled" }));
    },
  });
  return sampling;
}

/** Draws without any order in them. */
function plainDraws(names, seed) {
  const random = randomFrom(seed);
  const rows = [];
  return {
    uniform(sample, input) {
      if (rows[sample] === undefined) {
        rows.length = 0;
        rows[sample] = Float64Array.from(names, () => random.uniform() || 1e-12);
      }
      return rows[sample][input];
    },
  };
}

function sharesOf({ baseline, sampler }, samples, options) {
  const taking = sampler(options);
  const agreeing = baseline.map(() => 0);
  for (let k = 0; k < samples; k += 1) {
    const { verdicts } = taking.take(k);
    baseline.forEach((verdict, d) => {
      if (verdicts[d] === verdict) agreeing[d] += 1;
    });
  }
  return agreeing.map((count) => count / samples);
}

/** @param row  prints one row */
export function measureSure(row) {
  const random = randomFrom(11);
  const yards = Array.from({ length: YARDS }, () => samplingOf(drawYard(random)));
  const truths = yards.map((yard, y) => sharesOf(yard, FRESH, { seed: 1000 + y, draws: plainDraws }));
  compareErrors(row, yards, truths);
  calibrate(row, yards, truths);
}

function compareErrors(row, yards, truths) {
  const SEEDS = 8;
  for (const samples of [64, 200, 256]) {
    const error = (draws) => {
      let [squares, count] = [0, 0];
      yards.slice(0, 12).forEach((yard, y) => {
        for (let seed = 1; seed <= SEEDS; seed += 1)
          sharesOf(yard, samples, { seed, ...draws }).forEach((share, d) => {
            if (truths[y][d] > 0.999) return;
            squares += (share - truths[y][d]) ** 2;
            count += 1;
          });
      });
      return Math.sqrt(squares / count);
    };
    const [even, plain] = [error({}), error({ draws: plainDraws })];
    row(`error of a share from ${samples} samples`, { even, plain, ratio: even / plain });
  }
}

/** Verdicts by the share they were said to have; how that share turned out in fresh plans drawn another way. */
function calibrate(row, yards, truths) {
  const said = yards.flatMap(({ baseline, sampler }, y) => {
    const among = baseline.map((_, d) => d);
    const tallies = tallyVerdicts(sampler({ seed: 1 }), baseline, { samples: 200, most: 1000, among });
    return tallies.map(({ agreement, certainty }, d) => ({
      ...agreement,
      kind: certainty.kind,
      truth: truths[y][d],
    }));
  });
  for (const looked of [200, 400, 1000])
    row(`decided with ${looked} samples or fewer`, {
      "of 100":
        (100 * said.filter(({ samples, isDecided }) => isDecided && samples <= looked).length) / said.length,
    });
  const table = (what, those) => {
    if (those.length === 0) return;
    const mean = (pick) => those.reduce((sum, one) => sum + pick(one), 0) / those.length;
    row(what, {
      verdicts: those.length,
      "said [%]": 100 * mean(({ share }) => share),
      "held of 10,000 [%]": 100 * mean(({ truth }) => truth),
      "held in 95 % or more": those.filter(({ truth }) => truth >= SURE).length,
      "least held [%]": 100 * Math.min(...those.map(({ truth }) => truth)),
    });
  };
  const sure = said.filter(({ kind }) => kind === "sure");
  table("said to be sure", sure);
  table(
    "of these, decided",
    sure.filter(({ isDecided }) => isDecided),
  );
  table(
    "of these, not beyond doubt",
    sure.filter(({ isDecided }) => !isDecided),
  );
  const close = said.filter(({ kind }) => kind === "closeCall");
  for (const [low, high] of [
    [0, 0.6],
    [0.6, 0.7],
    [0.7, 0.8],
    [0.8, 0.9],
    [0.9, 0.95],
  ])
    table(
      `close, ${100 * low} to ${100 * high} %`,
      close.filter(({ share }) => share >= low && share < high),
    );
}
