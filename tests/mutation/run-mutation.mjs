/**
 * Mutation testing of the core: changes one place at a time and looks whether a test notices.
 *   npm run mutate                     numerics, physics, solve
 *   npm run mutate -- physics/vent     files whose path begins so; of birds, judge, model, report, search and simulate, too
 *   npm run mutate -- --one-in=3       every third mutant; with --from=1 a second sample: those next to these
 *   npm run mutate -- --left           those that the last run of the same files tried: what it left over unexplained is tried again
 *   npm run mutate -- --seconds=6      tests of one mutant take so long altogether, where the quick ones show little
 * Prints what no test noticed and nobody explained; keeps the score by file and writes docs/method/mutation.md anew.
 */
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { bundleTests } from "./bundle-tests.mjs";
import { planTrials } from "./plan-trials.mjs";
import { keepScore, keyOf, readExplained, writePage } from "./score.mjs";
import { startTrials } from "./trial-process.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${top}node_modules/.cache/mutation/`;
/** The tests that concern a folder of the core: its own, and those that hold it against other answers or laws. */
const TESTS_OF = {
  birds: /^(hydraulics\/(birds|simulate)|published\/published|laws\/(birds|crowd))/,
  judge: /^(hydraulics\/judge|laws\/(balance|building|parts|stand|sure|weather|yard|year))/,
  model:
    /^(hydraulics\/(model|document\/waterer-problems)|published\/published|laws\/(parts|building|stand|yard|birds-on-plans))/,
  numerics: /^(hydraulics\/numerics|oracle)\//,
  physics: /^(hydraulics\/physics|published\/published|oracle)/,
  report:
    /^(hydraulics\/(report|document\/name-list|judge\/(build\/stand-loads|sureness\/tolerance|time\/time|year\/year-for))|hostile\/(exports|names)|laws\/building)/,
  search: /^(hydraulics\/search|oracle\/cure-search|laws\/cure)/,
  simulate: /^(hydraulics\/simulate|laws\/(crowd|day-on-plans|time-on-plans))/,
  solve: /^(hydraulics\/solve|laws\/(alike|balance|same-line|scaling|more-head)|regress)/,
};
/** Outcomes of a mutant that was noticed. */
const SETTLED = new Set(["killed", "timed out"]);
/** A test that took longer the last time is left out: hundreds of mutants would wait for it [ms]. */
const TOO_LONG = 4000;
/** Longer than all tests take to be run once; longer than the tests of one mutant [ms]. */
const PATIENCE = { allTests: 900_000, oneMutant: 40_000 };

const words = process.argv.slice(2);
const numberOf = (option) => words.find((word) => word.startsWith(option))?.slice(option.length);
const oneIn = Number(numberOf("--one-in=") ?? 1);
const from = Number(numberOf("--from=") ?? 0);
const patience = 1000 * Number(numberOf("--seconds=") ?? 1.5);
const isLeftOnly = words.includes("--left");
const named = words.filter((word) => !word.startsWith("--"));
const wanted = named.length > 0 ? named : ["numerics/", "physics/", "solve/"];

/** What came of each mutant of these files, one a line, written as they are tried. */
const name = wanted.join("+").replaceAll("/", "-");
const log = `${folder}${name}.jsonl`;
const timesPath = `${folder}times.json`;
mkdirSync(folder, { recursive: true });
const { mutants, importers } = await bundleTests({
  tests: testFiles("")
    .filter((path) => wanted.some((file) => TESTS_OF[file.split("/")[0]].test(path)))
    .map((path) => `${top}tests/${path}`),
  isWanted: (file) => wanted.some((prefix) => file.startsWith(prefix)),
  folder,
  name: `${name}.mjs`,
});
const bundle = pathToFileURL(`${folder}${name}.mjs`).href;
const trials = await startTrials({ bundle, count: mutants.length, folder: top });
const results = await tryAll();
trials.stop();
keepScore(results, { date: new Date().toISOString().slice(0, 10), oneIn });
writePage();
tell(results);

function testFiles(path) {
  return readdirSync(`${top}tests/${path}`, { withFileTypes: true }).flatMap((entry) => {
    const inner = path === "" ? entry.name : `${path}/${entry.name}`;
    if (entry.isDirectory()) return testFiles(inner);
    return entry.name.endsWith(".test.ts") ? [inner] : [];
  });
}

async function tryAll() {
  const coverage = await coverTests();
  const names = nameEach(mutants);
  const before = isLeftOnly ? lastRun() : undefined;
  const known = new Set(readExplained().flatMap(({ mutants: explained }) => explained));
  const planned = planTrials({ mutants, importers, ...coverage, patience })
    .sort((a, b) => (names.get(a.mutant) < names.get(b.mutant) ? -1 : 1))
    .filter(({ mutant }, at) => before?.has(names.get(mutant)) ?? at % oneIn === from);
  process.stdout.write(`${planned.length} mutants, ${coverage.tests.length} tests\n`);
  writeFileSync(log, "");
  const results = [];
  for (const trial of planned) {
    const name = names.get(trial.mutant);
    const last = before?.get(name);
    const isSettled = last !== undefined && (SETTLED.has(last.outcome) || known.has(keyOf(trial.mutant)));
    results.push(isSettled ? { ...last, name } : { ...trial.mutant, name, ...(await outcomeOf(trial)) });
    appendFileSync(log, `${JSON.stringify(results.at(-1))}\n`);
    if (results.length % 100 === 0) process.stdout.write(`${results.length} of ${planned.length}\n`);
  }
  return results;
}

/** Runs each test once, but for those known to be long, and remembers how long it took. */
async function coverTests() {
  const times = existsSync(timesPath) ? JSON.parse(readFileSync(timesPath, "utf8")) : {};
  const tooLong = Object.keys(times).filter((name) => times[name] > TOO_LONG);
  const coverage = await trials.ask({ ask: "cover", tooLong }, PATIENCE.allTests);
  for (const { title, time, failed } of coverage.tests) {
    if (failed) process.stdout.write(`left out: ${title}: ${failed}\n`);
    else times[title] = time;
  }
  writeFileSync(timesPath, JSON.stringify(times, null, 1));
  return coverage;
}

/** A name for each mutant, the same whatever was changed above it: its key, and which of those alike in its file it is. */
function nameEach(all) {
  const alike = new Map();
  return new Map(
    all.map((mutant) => {
      const key = keyOf(mutant);
      alike.set(key, (alike.get(key) ?? 0) + 1);
      return [mutant, `${key} | ${alike.get(key)}`];
    }),
  );
}

/** What came of the mutants that the last run of the same files tried, by name. */
function lastRun() {
  const tried = readFileSync(log, "utf8")
    .trim()
    .split("\n")
    .map((text) => JSON.parse(text))
    .sort((a, b) => a.id - b.id);
  return new Map([...nameEach(tried)].map(([result, name]) => [result.name ?? name, result]));
}

async function outcomeOf({ mutant, indices, limit, isAtLoad, described }) {
  if (indices.length === 0) return { outcome: "not reached" };
  const answer = await trials.ask(
    { ask: "mutant", id: mutant.id, indices, limit, isAtLoad, described },
    PATIENCE.oneMutant,
  );
  return answer ?? { outcome: "timed out" };
}

/** Prints each mutant that is left over, as a change of a line; with any of them the command ends with 1. */
function tell(found) {
  const known = new Set(readExplained().flatMap((reason) => reason.mutants));
  const left = found.filter(({ outcome }) => outcome === "survived" || outcome === "not reached");
  const unknown = left.filter((mutant) => !known.has(keyOf(mutant)));
  for (const { file, line, code, was, became, outcome } of unknown) {
    process.stdout.write(
      `${file}:${line} ${outcome}\n    ${code}\n    ${was} -> ${became || "(left out)"}\n`,
    );
  }
  const noticed = found.length - left.length;
  process.stdout.write(
    `${noticed} of ${found.length} noticed; ${left.length - unknown.length} explained, ${unknown.length} not\n`,
  );
  process.exitCode = unknown.length > 0 ? 1 : 0;
}
