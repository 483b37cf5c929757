/**
 * Writes what a test run came to into the file named by HEADFALL_TALLY: how many tests passed, which failed, which were
 * skipped, and which passed only when tried again, with what the first try fell on. A file that does not load, a
 * failing hook and an error outside any test count as failed.
 */
import { writeFileSync } from "node:fs";
import { stripVTControlCharacters } from "node:util";

export default class TallyReporter {
  onTestRunEnd(modules, strayErrors) {
    const tally = { passed: 0, failed: [], skipped: [], again: [] };
    for (const module of modules) {
      const failedBefore = tally.failed.length;
      for (const test of module.children.allTests()) countTest(test, tally);
      for (const suite of module.children.allSuites()) {
        for (const error of suite.errors())
          tally.failed.push(`${module.relativeModuleId} > ${suite.fullName}: ${error.message}`);
      }
      for (const error of module.errors()) tally.failed.push(`${module.relativeModuleId}: ${error.message}`);
      if (module.state() === "failed" && tally.failed.length === failedBefore)
        tally.failed.push(module.relativeModuleId);
    }
    for (const error of strayErrors) tally.failed.push(`outside any test: ${error.message}`);
    const path = process.env.HEADFALL_TALLY;
    if (path) writeFileSync(path, JSON.stringify(tally));
  }
}

function countTest(test, tally) {
  const name = `${test.module.relativeModuleId} > ${test.fullName}`;
  const { state, errors } = test.result();
  if (test.diagnostic()?.flaky) tally.again.push(`${name}: ${firstLine(errors?.[0]?.message)}`);
  if (state === "passed") tally.passed += 1;
  else if (state === "skipped") tally.skipped.push(name);
  else tally.failed.push(state === "failed" ? name : `${name} (never finished)`);
}

/** Without the colours of a terminal. */
const firstLine = (message = "") => stripVTControlCharacters(message).split("\n", 1)[0];
