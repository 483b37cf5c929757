/** The same network and tolerance by a sparse Newton written with scipy (sparse_newton.py), side by side. */
import { spawnSync } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { prepareLine } from "../../packages/hydraulics/dist/solve/prepare-line.js";
import { reachState, solveLine } from "../../packages/hydraulics/dist/solve/solve-line.js";
import { FRICTIONS, SIZES } from "./laws.mjs";
import { buildYard } from "./networks.mjs";
import { time } from "./time.mjs";

const NEWTON = fileURLToPath(new URL("sparse_newton.py", import.meta.url));

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureScipy({ row, measured }) {
  const python = ["/usr/bin/python3", "python3"].find(
    (one) => spawnSync(one, ["-c", "import scipy.sparse"]).status === 0,
  );
  if (python === undefined) {
    console.log("scipy is not installed: not compared");
    return;
  }
  for (const friction of FRICTIONS) {
    for (const count of SIZES) {
      const found = sideBySide(python, friction, count);
      row(`${friction}, ${count} drinkers`, found);
      measured(`scipy ${friction} ${count}`, found["times faster"], {
        "numbering counted too": found["with set-up"],
      });
    }
  }
}

function sideBySide(python, friction, count) {
  const { line, moment } = buildYard(count);
  const prepared = prepareLine(line, friction);
  // So many at once that reading the clock does not count.
  const batch = Math.max(1, Math.round(12_000 / count));
  const ours =
    time(() => {
      for (let k = 0; k < batch; k += 1) {
        prepared.current.work.warm = false;
        reachState(prepared, moment);
      }
    }).processor / batch;
  const setUp = time(() => prepareLine(line, friction));
  const solution = solveLine(prepared, moment);
  const theirs = runNewton(python, problemOf(line, moment, friction));
  const apart = theirs.head.reduce((most, head, p) => Math.max(most, Math.abs(head - solution.head[p])), 0);
  return {
    "times faster": theirs.ms / ours,
    "with set-up": theirs.ms / (ours + setUp.processor),
    ours,
    theirs: theirs.ms,
    "their steps": theirs.steps,
    "heads apart [m]": apart,
  };
}

function runNewton(python, problem) {
  const file = join(tmpdir(), `headfall-bench-${process.pid}.json`);
  writeFileSync(file, JSON.stringify(problem));
  // A small machine's threads get in each other's way; one is the fair comparison with one of ours.
  const env = { ...process.env, OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1" };
  const run = spawnSync(python, [NEWTON, file], { encoding: "utf8", maxBuffer: 1e9, env });
  rmSync(file);
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

function problemOf(line, moment, friction) {
  const plain = (list) => Array.from(list);
  const { segments, drinkers, water } = line;
  const working = (list) => plain(list).filter((_, d) => moment.atWork[d] === 1);
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
    drinker: working(drinkers.point),
    start: working(drinkers.height.map((h, d) => h + drinkers.openingHead[d])),
    k: working(drinkers.coefficient),
  };
}
