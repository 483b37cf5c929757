/** What all mishaps of a plan cost, each run through line and time, and the guards of the worst twelve. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { mishapsOfPlan, readPlan } from "../../packages/hydraulics/dist/index.js";

const DAY = "2026-07-04";
/** Drinkers, and the runs that they hang on. */
const SIZES = [
  [60, 1],
  [60, 4],
  [1000, 20],
  [5000, 1],
  [5000, 100],
];

/** The hen house of the examples with its line made longer, or hung as often again from the same place. */
function planOf(drinkers, runs) {
  const url = new URL("../../docs/examples/alder-bank-hen-house.json", import.meta.url);
  const plan = JSON.parse(readFileSync(fileURLToPath(url), "utf8"));
  const [feed, riser, line] = plan.runs;
  const each = drinkers / runs;
  const hung = Array.from({ length: runs }, (_, k) => ({
    ...line,
    id: `hen line ${k + 1}`,
    from: "hung line",
    length: `${0.3 * each} m`,
    drinkers: { ...line.drinkers, count: each },
  }));
  const reading = readPlan(JSON.stringify({ ...plan, runs: [feed, riser, ...hung] }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** @param row  prints one row */
export function measureMishaps(row) {
  for (const [drinkers, runs] of SIZES) {
    const plan = planOf(drinkers, runs);
    const before = process.cpuUsage();
    const start = performance.now();
    const answer = mishapsOfPlan(plan, { day: DAY });
    const ms = performance.now() - start;
    const { user } = process.cpuUsage(before);
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const run = answer.mishaps.rows.reduce((sum, one) => sum + one.run, 0);
    row(`${drinkers} drinkers on ${runs} ${runs === 1 ? "run" : "runs"}`, {
      s: ms / 1000,
      "s of processor": user / 1e6,
      "mishaps run": run,
      "of so many": answer.mishaps.rows.reduce((sum, one) => sum + one.count, 0),
      "ms of processor each": user / 1000 / run,
    });
  }
}
