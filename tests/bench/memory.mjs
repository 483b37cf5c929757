/** Memory: bytes of a prepared line by its drinkers, bytes that a step of the solver allocates, and what solves leave. */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const COUNTED = fileURLToPath(new URL("memory-counted.mjs", import.meta.url));
// Room for all that is allocated between two collections: what the heap grows by is then what was asked of it.
const SWITCHES = ["--expose-gc", "--min-semi-space-size=64", "--max-semi-space-size=64"];

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureMemory({ row, measured }) {
  const run = spawnSync(process.execPath, [...SWITCHES, COUNTED], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  const { lines, steps, leak } = JSON.parse(run.stdout);
  for (const { what, ...cells } of lines) row(what, cells);
  for (const { what, ...cells } of steps) row(what, cells);
  const most = Math.max(...steps.map((each) => each["bytes a step"]));
  measured("allocated", most, {
    "and for the answer": Math.max(...steps.map((each) => each["bytes a solve"])),
  });
  row(leak.what, { solves: leak.solves, "heap grown [kB]": leak.grown });
  measured("leak of solves", Math.max(0, leak.grown));
}
