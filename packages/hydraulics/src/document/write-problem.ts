import type { Problem } from "./problem.js";

/** A problem as one sentence in four parts: where, what was found, what is allowed, how to mend it. */
export function writeProblem(problem: Problem): string {
  const where = problem.line === undefined ? problem.path : `${problem.path} (line ${problem.line})`;
  return `${where}: found ${problem.found}. ${problem.allowed} ${problem.mend}`;
}
