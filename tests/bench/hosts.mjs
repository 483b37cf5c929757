/**
 * Many plans dealt out by GNU parallel over logins: `HEADFALL_LOGINS="1/barn.example,1/shed.example"`, each with Headfall
 * as `HEADFALL_THERE` (the command of this checkout if left out); without them, over processes of this machine. How to
 * get in is parallel's own setting (PARALLEL_SSH).
 */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runBatch } from "./batch.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const COMMAND = `node ${here("../../packages/hydraulics/bin/headfall.mjs")}`;
const ASKED = ["--ask", "check", "--samples", "0", "--jobs", "1"];
const PLANS = 200;
/** The place of a line that is no plan. */
const BROKEN = 137;

/** @param row  prints one row */
export function measureHosts(row) {
  if (spawnSync("parallel", ["--version"]).status !== 0) {
    console.log("GNU parallel is not installed: not measured");
    return;
  }
  const logins = process.env.HEADFALL_LOGINS?.split(",");
  const places = logins ?? ["1/:", "2/:"];
  const lines = plans();
  const alone = runBatch(lines, ASKED);
  const expected = answersIn(alone.stdout);
  row(`${PLANS} plans through one process, its start counted`, {
    "plans in a second of the processor": PLANS / alone.processor,
    "by the clock": PLANS / alone.clock,
  });
  const there = process.env.HEADFALL_THERE ?? COMMAND;
  const tell = (over) => {
    const dealt = `parallel --will-cite --pipe --block 50k -k --sshlogin ${over} ${there} batch - --day 2026-07-04 ${ASKED.join(" ")}`;
    const { seconds, answers } = answersOf(dealt, lines);
    const count = logins === undefined ? over.split("/")[0] : over.split(",").length;
    row(`dealt out over so many ${logins === undefined ? "processes here" : "logins by ssh"}: ${count}`, {
      "plans/s by the clock": PLANS / seconds,
      "answers in their place and the same": answers.filter((answer, k) => answer === expected[k]).length,
    });
  };
  if (logins === undefined) for (const place of places) tell(place);
  else for (let count = 1; count <= logins.length; count += 1) tell(logins.slice(0, count).join(","));
}

/** Plans that differ by their name and stand, one of them broken. */
function plans() {
  const plan = JSON.parse(readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8"));
  const lines = Array.from({ length: PLANS }, (_, k) => {
    const sources = [{ ...plan.sources[0], stand: `${20 + (k % 60)} cm` }, ...plan.sources.slice(1)];
    return k === BROKEN ? '{"headfall": 1, "name": "bro' : JSON.stringify({ ...plan, name: `${k}`, sources });
  });
  return `${lines.join("\n")}\n`;
}

/** Seconds by the clock, and what was answered. */
function answersOf(command, input) {
  const start = performance.now();
  const run = spawnSync("sh", ["-c", command], { input, encoding: "utf8", maxBuffer: 1e9 });
  const seconds = (performance.now() - start) / 1000;
  const answers = answersIn(run.stdout);
  if (answers.length !== PLANS) throw new Error(`${answers.length} of ${PLANS} answers: ${run.stderr}`);
  return { seconds, answers };
}

/** Each answer without the number of its line, which counts within a piece. */
const answersIn = (text) =>
  text
    .trimEnd()
    .split("\n")
    .map((line) => JSON.stringify({ ...JSON.parse(line), line: 0 }));
