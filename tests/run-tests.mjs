/**
 * What can be checked, in one run: installs, checks types and style, then runs the tests.
 *   npm test                    all but the longest visits to the page (tests/ui/page/long-visits.ts)
 *   npm test -- --all           these too
 *   npm test -- tests/laws      types, style, and the tests whose path contains these words
 * The last line printed is "N passed, N failed"; types and style count as one test each.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ensureInstalled } from "../.ci/ensure-installed.mjs";

const top = fileURLToPath(new URL("..", import.meta.url));
const passed = [];
const failed = [];
let passedTests = 0;

try {
  ensureInstalled();
  count("types", runTool("typescript/bin/tsc", ["-b"]).status === 0);
  count("style", runTool("@biomejs/biome/bin/biome", ["check", "--error-on-warnings"]).status === 0);
  const words = process.argv.slice(2);
  const filters = words.filter((word) => word !== "--all");
  // What is asked for by name is run, however long it takes.
  if (words.length === 0) {
    process.env.HEADFALL_LONG_VISITS = "0";
    process.stdout.write("left out  the longest visits to the page; npm test -- --all makes them too\n");
  }
  await runTests(filters);
} catch (error) {
  process.stdout.write(`${error.message}\n`);
  failed.push(error.message);
}
conclude();

function count(name, isGood) {
  process.stdout.write(`${isGood ? "ok    " : "FAILED"}  ${name}\n`);
  (isGood ? passed : failed).push(name);
}

async function runTests(filters) {
  const projects = ["node"];
  try {
    const { ensureBrowser } = await import("./browser/find-browser.mjs");
    process.env.CHROME_PATH = await ensureBrowser();
    projects.push("browser", "page");
  } catch (error) {
    process.stdout.write(`${error.message}\n`);
    failed.push("a browser for the tests of the page");
  }
  const tally = tallyOf([
    "run",
    "--config=tests/vitest.config.ts",
    "--allowOnly=false",
    "--reporter=default",
    "--reporter=./tests/tally-reporter.mjs",
    ...projects.map((name) => `--project=${name}`),
    ...filters,
  ]);
  passedTests += tally.passed;
  failed.push(...tally.failed);
  for (const name of tally.skipped) process.stdout.write(`skipped  ${name}\n`);
  for (const name of tally.again) process.stdout.write(`passed only when tried again  ${name}\n`);
  if (tally.passed + tally.failed.length === 0) failed.push("no test ran");
}

/** Runs the tests in a process of their own: whatever ends it, this one still counts and reports. */
function tallyOf(words) {
  const folder = mkdtempSync(join(tmpdir(), "headfall-tests-"));
  const path = join(folder, "tally.json");
  try {
    const run = runTool("vitest/vitest.mjs", words, { HEADFALL_TALLY: path });
    const tally = readTally(path);
    if (run.status !== 0 && tally.failed.length === 0) {
      tally.failed.push(`the test run ended with ${run.status ?? run.signal}`);
    }
    return tally;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readTally(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return { passed: 0, failed: ["the test run ended before it could report"], skipped: [], again: [] };
  }
}

function runTool(file, words, environment = {}) {
  return spawnSync(process.execPath, [join(top, "node_modules", file), ...words], {
    cwd: top,
    stdio: ["ignore", 1, 2],
    env: { ...process.env, ...environment },
  });
}

function conclude() {
  if (failed.length > 0) process.stdout.write(`\nFailed:\n${failed.map((name) => `  ${name}\n`).join("")}`);
  process.stdout.write(`${passed.length + passedTests} passed, ${failed.length} failed\n`);
  process.exitCode = failed.length > 0 ? 1 : 0;
}
