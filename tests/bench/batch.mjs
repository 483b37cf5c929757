import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { middleOf } from "./time.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const COMMAND = here("../../packages/hydraulics/bin/headfall.mjs");
const HEN_HOUSE = JSON.stringify(
  JSON.parse(readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8")),
);

/** Asked of each plan, and of how many in a run: so many that a thread has long compiled what it needs. */
const ASKED = [
  ["check, verdicts alone", ["--samples", "0"], 2000],
  ["check, with its samples", [], 300],
  ["how long it lasts", ["--ask", "lasts"], 300],
];
const TURNS = 3;

/**
 * A batch of so many plans on standard input, by the clock and by the processor, all its threads together [s].
 *
 * @returns the two, and what it wrote, which must be a line for each plan
 */
export function runBatch(input, words) {
  const count = input.trimEnd().split("\n").length;
  const begin = performance.now();
  const run = spawnSync(
    process.execPath,
    ["--import", here("tell-processor.mjs"), COMMAND, "batch", "-", "--day", "2026-07-04", ...words],
    { input, encoding: "utf8", maxBuffer: 1e9, stdio: ["pipe", "pipe", "pipe", "pipe"] },
  );
  const clock = (performance.now() - begin) / 1000;
  const lines = run.stdout.split("\n").length - 1;
  if (run.stderr !== "" || lines !== count) throw new Error(`${lines} of ${count} plans: ${run.stderr}`);
  return { clock, processor: Number(run.output[3]) / 1000, stdout: run.stdout };
}

/**
 * Plans a second of the hen house (24 drinkers and its birds) on one thread and two, turn by turn; the start of the
 * command left out. By the processor first: by the clock a busy machine tells of what else it does.
 */
export function measureBatch(row) {
  for (const [what, words, count] of ASKED) {
    const turns = Array.from({ length: TURNS }, () => [1, 2].map((jobs) => ratesOf(count, words, jobs)));
    const middle = (tell) => middleOf(turns.map(tell));
    row(`headfall batch, ${what}`, {
      "plans in a second of the processor": middle(([one]) => one.processor),
      "plans/s by the clock, one thread": middle(([one]) => one.clock),
      "two threads": middle(([, two]) => two.clock),
      "times as many": middle(([one, two]) => two.clock / one.clock),
    });
  }
}

function ratesOf(count, words, jobs) {
  const own = [...words, "--jobs", String(jobs)];
  const [start, whole] = [jobs, count].map((plans) => runBatch(`${HEN_HOUSE}\n`.repeat(plans), own));
  const rate = (by) => (count - jobs) / (whole[by] - start[by]);
  return { clock: rate("clock"), processor: rate("processor") };
}
