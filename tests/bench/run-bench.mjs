/**
 * `npm run bench`: times as ratios taken side by side in one run, a table on standard output, and the same as
 * JSON in node_modules/.cache/headfall-bench.json. Nothing here passes or fails.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { checkPlan, judgeWeeks, readPlan } from "../../packages/hydraulics/dist/index.js";
import { evaluateDrinkers } from "../../packages/hydraulics/dist/solve/laws/drinker-laws.js";
import { prepareLine } from "../../packages/hydraulics/dist/solve/prepare-line.js";
import { reachState, solveLine } from "../../packages/hydraulics/dist/solve/solve-line.js";
import { measureBatch } from "./batch.mjs";
import { measureBirds } from "./birds.mjs";
import { measureCure } from "./cure.mjs";
import { measureMishaps } from "./mishaps.mjs";
import { buildRings, buildYard } from "./networks.mjs";
import { measurePage } from "./page-bars.mjs";
import { measureSure } from "./sure.mjs";
import { measureTrouble } from "./trouble.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const results = { machine: `${cpus()[0].model}, ${cpus().length} cores, node ${process.version}`, rows: [] };
const LAWS = ["hazenWilliams", "darcyWeisbach"];

/** Median and least of the milliseconds of a call, after a warm-up, for at least `span` ms and 5 calls. */
function time(call, span = 300) {
  call();
  call();
  const times = [];
  const begin = performance.now();
  while (times.length < 5 || performance.now() - begin < span) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return { median: times[times.length >> 1], least: times[0] };
}

/** Two calls in turn, so that a drifting machine slows both; the median of the ratios pair by pair. */
function ratio(once, other, pairs, batch = 1) {
  const a = repeated(once, batch);
  const b = repeated(other, batch);
  for (let k = 0; k < 3; k += 1) for (const call of [a, b]) call();
  const ratios = [];
  const times = [];
  for (let k = 0; k < pairs; k += 1) {
    const t0 = performance.now();
    a();
    const t1 = performance.now();
    b();
    const t2 = performance.now();
    ratios.push((t1 - t0) / (t2 - t1));
    times.push((t1 - t0) / batch);
  }
  const middle = (list) => list.sort((x, y) => x - y)[list.length >> 1];
  return {
    ratio: middle(ratios),
    low: ratios[Math.floor(pairs * 0.1)],
    high: ratios[Math.floor(pairs * 0.9)],
    ms: middle(times),
  };
}

/** A call so short that the clock would show is timed in batches. */
const repeated = (call, batch) => () => {
  for (let k = 0; k < batch; k += 1) call();
};

function row(what, cells) {
  results.rows.push({ what, ...cells });
  const text = Object.entries(cells).map(
    ([key, value]) => `${key} ${typeof value === "number" ? Number(value.toPrecision(3)) : value}`,
  );
  console.log(`${what.padEnd(62)} ${text.join("   ")}`);
}

function againstBareLaws() {
  console.log(
    "\nOne cold solve against the bare cost of its own laws, as often as it evaluates them (bars: 1.5 Darcy-Weisbach, 2 Hazen-Williams)",
  );
  for (const friction of LAWS) {
    let before;
    for (const count of [60, 1000, 10_000, 100_000]) {
      const { line, moment } = buildYard(count);
      const prepared = prepareLine(line, friction);
      const { network, work } = prepared.current;
      const solve = () => {
        work.warm = false;
        return reachState(prepared, moment);
      };
      const { effort } = solve();
      const flow = work.flow.slice();
      const drinkerFlow = work.drinkerFlow.slice();
      const working = Int32Array.from(network.topology.drinker.keys()).filter(
        (d) => moment.atWork[network.topology.drinker[d]] === 1,
      );
      const bare = () => {
        for (let k = 0; k < effort.evaluations; k += 1) {
          network.pipes.kernel(network.pipes, flow.length, flow, work.trialLoss, work.trialSlope);
          evaluateDrinkers(
            network.drinkers,
            working,
            drinkerFlow,
            work.trialDrinkerLoss,
            work.trialDrinkerSlope,
          );
        }
      };
      const full = () => {
        work.warm = false;
        return solveLine(prepared, moment);
      };
      const pairs = count >= 100_000 ? 15 : count >= 10_000 ? 40 : 100;
      const batch = Math.max(1, Math.round(6000 / count));
      const loop = ratio(solve, bare, pairs, batch);
      const checked = ratio(full, bare, pairs, batch);
      row(`${friction}, ${count} drinkers`, {
        ratio: loop.ratio,
        "with check and result": checked.ratio,
        ms: loop.ms,
        evaluations: effort.evaluations,
        "growth per tenfold":
          before === undefined ? "-" : (loop.ms / before.ms / (count / before.count)) * 10,
      });
      before = { ms: loop.ms, count };
    }
  }
}

function rings() {
  console.log("\n10,000 points with 500 rings against the tree of that size (bar: 5)");
  for (const friction of LAWS) {
    const cold = ({ line, moment }) => {
      const prepared = prepareLine(line, friction);
      return () => {
        prepared.current.work.warm = false;
        return reachState(prepared, moment);
      };
    };
    const ringed = cold(buildRings(10_000, 500));
    const tree = cold(buildRings(10_000, 0));
    const { ratio: r, ms } = ratio(ringed, tree, 15);
    row(`${friction}, ringed against tree`, {
      ratio: r,
      ms,
      steps: ringed().effort.steps,
      "steps of the tree": tree().effort.steps,
    });
  }
}

function checks() {
  console.log(
    "\nA whole check of 60 drinkers: text to verdict, four moments, both laws (bar: 16.7 ms at a quarter of this speed)",
  );
  const plan = JSON.parse(readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8"));
  Object.assign(plan.runs[2], {
    length: "18 m",
    drinkers: { ...plan.runs[2].drinkers, count: 60, busiest: 20, ordinary: 2 },
  });
  // As many at work as the bar speaks of, not as its birds would be.
  delete plan.pens;
  const reading = readPlan(JSON.stringify(plan));
  const quick = time(() => checkPlan(reading.plan, { samples: 0 }));
  row("verdicts after a drag", { ms: quick.median, least: quick.least, "times four": 4 * quick.median });
  const sure = time(() => checkPlan(reading.plan, { samples: 200 }), 1500);
  row("the same with 200 tolerance samples (bar: 250 ms)", {
    ms: sure.median,
    least: sure.least,
    "times four": 4 * sure.median,
  });
  checkWithBirds(plan);
}

/** The same line with 150 hens at it, their crowd solved with the line; and nine weeks of it. */
function checkWithBirds(plan) {
  const { busiest: _, ordinary: __, ...drinkers } = plan.runs[2].drinkers;
  const runs = [...plan.runs.slice(0, 2), { ...plan.runs[2], drinkers, hung: true }];
  const penned = { ...plan, runs, pens: [{ birds: { kind: "hen", count: 150, age: "3 weeks" } }] };
  const reading = readPlan(JSON.stringify(penned));
  const quick = time(() => checkPlan(reading.plan, { samples: 0 }));
  row("verdicts with 150 hens", { ms: quick.median, least: quick.least, "times four": 4 * quick.median });
  const sure = time(() => checkPlan(reading.plan, { samples: 200 }), 1500);
  row("the same with 200 samples", { ms: sure.median, least: sure.least, "times four": 4 * sure.median });
  const weeks = time(() => judgeWeeks(reading.plan, { weeks: 8 }));
  row("nine weeks of it", { ms: weeks.median, least: weeks.least, "times four": 4 * weeks.median });
}

function againstSparseNewton() {
  console.log(
    "\nThe same network and tolerance by a sparse Newton written with scipy (bars: 10 at 60 and 1,000, 3 at 100,000)",
  );
  const python = ["/usr/bin/python3", "python3"].find(
    (one) => spawnSync(one, ["-c", "import scipy.sparse"]).status === 0,
  );
  if (python === undefined) {
    console.log("scipy is not installed: not compared");
    return;
  }
  for (const friction of LAWS) {
    for (const count of [60, 1000, 10_000, 100_000]) {
      const { line, moment } = buildYard(count);
      const prepared = prepareLine(line, friction);
      const ours = time(() => {
        prepared.current.work.warm = false;
        return reachState(prepared, moment);
      });
      const setUp = time(() => prepareLine(line, friction));
      const solution = solveLine(prepared, moment);
      const file = join(tmpdir(), `headfall-bench-${process.pid}.json`);
      writeFileSync(file, JSON.stringify(problemOf(line, moment, friction)));
      const run = spawnSync(python, [here("sparse_newton.py"), file], {
        encoding: "utf8",
        maxBuffer: 1e9,
        env: quietBlas(),
      });
      if (run.status !== 0) throw new Error(run.stderr);
      const theirs = JSON.parse(run.stdout);
      const apart = theirs.head.reduce(
        (most, head, p) => Math.max(most, Math.abs(head - solution.head[p])),
        0,
      );
      row(`${friction}, ${count} drinkers`, {
        "times faster": theirs.ms / ours.median,
        "with set-up": theirs.ms / (ours.median + setUp.median),
        ours: ours.median,
        theirs: theirs.ms,
        "their steps": theirs.steps,
        "heads apart [m]": apart,
      });
    }
  }
}

/** A small machine's threads get in each other's way; one is the fair comparison with one of ours. */
function quietBlas() {
  return { ...process.env, OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1" };
}

function problemOf(line, moment, friction) {
  const plain = (list) => Array.from(list);
  const { segments, drinkers, water } = line;
  return {
    friction,
    viscosity: water.viscosity,
    points: line.points.count,
    from: plain(segments.from),
    to: plain(segments.to),
    length: plain(segments.length),
    bore: plain(segments.bore),
    c: plain(segments.hazenWilliams),
    roughness: plain(segments.roughness),
    source: line.sources[0].point,
    head: moment.sourceHead[0],
    drinker: plain(drinkers.point).filter((_, d) => moment.atWork[d] === 1),
    start: plain(drinkers.height)
      .map((h, d) => h + drinkers.openingHead[d])
      .filter((_, d) => moment.atWork[d] === 1),
    k: plain(drinkers.coefficient).filter((_, d) => moment.atWork[d] === 1),
  };
}

console.log(results.machine);
const only = process.argv[2];
if (only === undefined || only === "laws") againstBareLaws();
if (only === undefined || only === "rings") rings();
if (only === undefined || only === "checks") checks();
if (only === undefined || only === "birds") {
  console.log(
    "\nBirds and time (bars: a day of 85 birds 100 ms; a thousand days 1.5 times faster on two workers)",
  );
  await measureBirds(time, row);
}
if (only === undefined || only === "mishaps") {
  console.log(
    "\nAll mishaps of a plan and the guards of the worst twelve (bars: 2 s for 60 drinkers, 60 s for 5,000)",
  );
  measureMishaps(row);
}
if (only === undefined || only === "trouble") {
  console.log("\nWhat is wrong: faults made in the examples, told by a keeper who errs, looked for");
  await measureTrouble(time, row);
}
if (only === undefined || only === "sure") {
  console.log(
    "\nSure or close: even draws against plain ones, samples that decide, and what 10,000 fresh plans say",
  );
  measureSure(row);
}
if (only === undefined || only === "cure") {
  console.log(
    "\nThe cheapest cure: 12 runs of 6 sizes, 20 heights of the stand, 4e10 plans (bar: 1 s, proven)",
  );
  measureCure(row);
}
if (only === undefined || only === "batch") {
  console.log("\nMany plans as JSON lines, through threads");
  measureBatch(row);
}
if (only === undefined || only === "scipy") againstSparseNewton();
if (only === undefined || only === "page") {
  console.log("\nThe page, as shipped, with the processor slowed down four times");
  await measurePage(({ what, ...cells }) => row(what, cells));
}
const cache = here("../../node_modules/.cache");
mkdirSync(cache, { recursive: true });
writeFileSync(join(cache, "headfall-bench.json"), `${JSON.stringify(results, null, 2)}\n`);
