/** What birds and time cost: one simulated day, a thousand of them on two workers, how long the water lasts, rain. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { howLongItLasts, readPlan, simulateDay } from "../../packages/hydraulics/dist/index.js";
import { middleOf, processorTime, time } from "./time.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const SHARE = new URL("../../packages/hydraulics/dist/command/day-share.js", import.meta.url).href;
/** Hens, as many as the bar speaks of. */
const BIRDS = 85;

/** The hen house of the examples, with this many hens. */
function henHouse(count) {
  const plan = JSON.parse(readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8"));
  const pens = [{ ...plan.pens[0], birds: { ...plan.pens[0].birds, count } }];
  const reading = readPlan(JSON.stringify({ ...plan, pens }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/**
 * @param bench  where rows and measured bars go (book.mjs)
 * @param pairs  how often the days are run on one worker and on two
 */
export async function measureBirds({ row, measured }, { pairs = 3 } = {}) {
  const plan = henHouse(BIRDS);
  const one = time(() => simulateDay(plan), 1500);
  const { result } = simulateDay(plan);
  row(`one day of ${BIRDS} hens at 24 nipples, line solved along`, {
    "processor [ms]": one.processor,
    ms: one.median,
    least: one.least,
    bouts: result.drinkers.reduce((sum, { bouts }) => sum + bouts, 0),
    solves: result.solver.solves,
  });
  measured("day", one.processor, { "least by the clock": one.least });
  const lasts = time(() => howLongItLasts(plan), 500);
  row("how long it lasts, with its range", {
    "processor [ms]": lasts.processor,
    ms: lasts.median,
    least: lasts.least,
  });
  if (pairs > 0) await measureManyDays(plan, { row, measured, pairs });
}

/** By the clock, since it is what workers side by side are for; and what the processor had to do, which tells what sharing out costs. */
async function measureManyDays(plan, { row, measured, pairs }) {
  const seeds = Array.from({ length: 1000 }, (_, k) => k + 1);
  const ratios = [];
  const works = [];
  let alone;
  let together;
  for (let pair = 0; pair < pairs; pair += 1) {
    alone = await spread(plan, seeds, 1);
    together = await spread(plan, seeds, 2);
    ratios.push(alone.clock / together.clock);
    works.push(together.processor / alone.processor);
  }
  const times = middleOf(ratios);
  const work = middleOf(works);
  row("a thousand such days, one worker against two", {
    "times faster": times,
    low: ratios[0],
    high: ratios.at(-1),
    "one [s]": alone.clock / 1000,
    "two [s]": together.clock / 1000,
    "processor of two against one": work,
  });
  measured("days", times, { "processor of two against one": work });
}

/** Milliseconds for all the days, spread over so many workers that have loaded already. */
async function spread(plan, seeds, jobs) {
  const workers = Array.from({ length: jobs }, () => new Worker(WORKER, { eval: true, workerData: SHARE }));
  await Promise.all(workers.map((worker) => answerOf(worker)));
  const before = processorTime();
  const start = performance.now();
  const parts = workers.map((worker, j) => {
    worker.postMessage({ plan, options: {}, seeds: seeds.filter((_, k) => k % jobs === j) });
    return answerOf(worker);
  });
  const counts = await Promise.all(parts);
  const took = { clock: performance.now() - start, processor: processorTime() - before };
  await Promise.all(workers.map((worker) => worker.terminate()));
  if (counts.reduce((sum, count) => sum + count, 0) !== seeds.length) throw new Error("days are missing");
  return took;
}

const WORKER = `
const { parentPort, workerData } = require("node:worker_threads");
import(workerData).then(({ rowsOf }) => {
  parentPort.on("message", (share) => parentPort.postMessage(rowsOf(share).length));
  parentPort.postMessage(0);
});`;

const answerOf = (worker) =>
  new Promise((resolve, reject) => {
    worker.once("message", resolve);
    worker.once("error", reject);
  });
