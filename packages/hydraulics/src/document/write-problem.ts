import type { Problem } from "./problem.js";

/**
 * A problem as one sentence in four parts: where, what was found, what is allowed, how to mend it.
 *
 * @example writeProblem(checkDocument({ headfall: 1, sources: [], runs: [{ length: "12 furlongs" }] }).problems[0])   // "runs[0].length: found \"12 furlongs\". A length is a number ..."
 */
export function writeProblem(problem: Problem): string {
  const where = problem.line === undefined ? problem.path : `${problem.path} (line ${problem.line})`;
  return `${where}: found ${problem.found}. ${problem.allowed} ${problem.mend}`;
}
