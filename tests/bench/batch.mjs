import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const COMMAND = here("../../packages/hydraulics/bin/headfall.mjs");
const HEN_HOUSE = JSON.stringify(
  JSON.parse(readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8")),
);

/** Asked of each plan, and of how many in a run. */
const ASKED = [
  ["check, verdicts alone", ["--samples", "0"], 400],
  ["check, with its samples", [], 20],
  ["how long it lasts", ["--ask", "lasts"], 40],
];

/** Seconds that a batch of so many plans takes; what it wrote must be whole. */
function secondsOf(count, words) {
  const start = performance.now();
  const run = spawnSync(process.execPath, [COMMAND, "batch", "-", "--day", "2026-07-04", ...words], {
    input: `${HEN_HOUSE}\n`.repeat(count),
    encoding: "utf8",
    maxBuffer: 1e9,
  });
  const lines = run.stdout.split("\n").length - 1;
  if (run.status !== 0 || lines !== count) throw new Error(`${lines} of ${count} plans: ${run.stderr}`);
  return (performance.now() - start) / 1000;
}

/** Plans a second of the hen house (24 drinkers) on one thread and two, turn by turn; the start of the command left out. */
export function measureBatch(row) {
  for (const [what, words, count] of ASKED) {
    const rates = [1, 2].map(() => []);
    for (let turn = 0; turn < 3; turn += 1)
      for (const jobs of [1, 2]) {
        const own = [...words, "--jobs", String(jobs)];
        const start = secondsOf(jobs, own);
        rates[jobs - 1].push((count - jobs) / (secondsOf(count, own) - start));
      }
    const [one, two] = rates.map((list) => list.sort((a, b) => a - b)[1]);
    row(`headfall batch, ${what}`, {
      "plans/s, one thread": one,
      "two threads": two,
      "times as many": two / one,
    });
  }
}
