/** What birds and time cost: one simulated day, a thousand of them on two workers, how long the water lasts, rain. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { howLongItLasts, readPlan, simulateDay } from "../../packages/hydraulics/dist/index.js";

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
 * @param time  of a call: median and least of its milliseconds
 * @param row   prints one row
 */
export async function measureBirds(time, row) {
  const plan = henHouse(BIRDS);
  const one = time(() => simulateDay(plan), 1500);
  const { result } = simulateDay(plan);
  row(`one day of ${BIRDS} hens at 24 nipples, line solved along`, {
    ms: one.median,
    least: one.least,
    bouts: result.drinkers.reduce((sum, { bouts }) => sum + bouts, 0),
    solves: result.solver.solves,
  });
  const lasts = time(() => howLongItLasts(plan), 500);
  row("how long it lasts, with its range", { ms: lasts.median, least: lasts.least });
  const seeds = Array.from({ length: 1000 }, (_, k) => k + 1);
  const ratios = [];
  let alone = 0;
  let together = 0;
  for (let pair = 0; pair < 3; pair += 1) {
    alone = await spread(plan, seeds, 1);
    together = await spread(plan, seeds, 2);
    ratios.push(alone / together);
  }
  ratios.sort((a, b) => a - b);
  row("a thousand such days, one worker against two", {
    "times faster": ratios[1],
    low: ratios[0],
    high: ratios[2],
    "one [s]": alone / 1000,
    "two [s]": together / 1000,
  });
}

/** Milliseconds for all the days, spread over so many workers that have loaded already. */
async function spread(plan, seeds, jobs) {
  const workers = Array.from({ length: jobs }, () => new Worker(WORKER, { eval: true, workerData: SHARE }));
  await Promise.all(workers.map((worker) => answerOf(worker)));
  const start = performance.now();
  const parts = workers.map((worker, j) => {
    worker.postMessage({ plan, options: {}, seeds: seeds.filter((_, k) => k % jobs === j) });
    return answerOf(worker);
  });
  const counts = await Promise.all(parts);
  const took = performance.now() - start;
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
