/**
 * Runs tests again and again in one process, each time with one mutant switched on. It is told what to do by messages,
 * and may be stopped at any time: whoever started it starts another.
 */
import { makeSwitch, RUNS_AWAY } from "./switch.mjs";
import { describeAgain, takeTests } from "./warm-tests.mjs";

const [bundle, count] = process.argv.slice(2);
const mutation = makeSwitch(Number(count));
globalThis.__mutation = mutation;
let tests = [];

process.on("message", async (message) => {
  if (tests.length === 0 && message.ask !== "cover") tests = await loadTests();
  process.send(message.ask === "cover" ? await cover(message) : await tryMutant(message));
});
process.on("disconnect", () => process.exit());
process.send("ready");

/** Imports the tests, and with them the core. */
async function loadTests() {
  await import(bundle);
  return takeTests();
}

/** Runs each test and tells how long it takes, and which places it passes how often. */
async function cover({ tooLong }) {
  const atLoad = {};
  let file = "";
  mutation.isCounting = true;
  mutation.startFile = (path) => {
    keepCounts(atLoad, file);
    file = path;
  };
  tests = await loadTests();
  keepCounts(atLoad, file);
  mutation.startFile = () => {};
  const covered = [];
  const skipped = new Set(tooLong);
  for (const test of tests) {
    const title = titleOf(test);
    covered.push({
      file: test.file,
      title,
      ...(skipped.has(title) ? { failed: "it takes too long", places: [], time: 0 } : await coverOne(test)),
    });
  }
  mutation.isCounting = false;
  return { tests: covered, atLoad };
}

const titleOf = ({ file, name }) => `${file} > ${name}`;

function keepCounts(into, file) {
  into[file] = [...(into[file] ?? []), ...passedPlaces()];
  mutation.counts.fill(0);
}

const passedPlaces = () => [...mutation.counts].flatMap((times, id) => (times > 0 ? [[id, times]] : []));

async function coverOne({ run }) {
  mutation.counts.fill(0);
  const start = process.cpuUsage();
  const failed = await failureOf(run);
  return { places: passedPlaces(), time: milliseconds(process.cpuUsage(start)), failed };
}

/** Time of the processor, which a busy machine does not stretch. */
const milliseconds = ({ user, system }) => (user + system) / 1000;

async function failureOf(run) {
  try {
    await run();
    return undefined;
  } catch (error) {
    // An error may be thrown without a word.
    return String(error?.message ?? error) || "it failed";
  }
}

/** Switches a mutant on and runs tests until one fails. */
async function tryMutant({ id, limit, indices, isAtLoad, described }) {
  mutation.on = id;
  mutation.limit = limit;
  mutation.passed = 0;
  const again = new Map();
  const failed = isAtLoad ? await failureOf(() => importAgain(described, again)) : undefined;
  const result = failed
    ? { outcome: "killed", by: "the import", detail: failed }
    : await firstFailure(indices, again);
  mutation.on = 0;
  if (isAtLoad) makeConstants();
  return { id, ...result };
}

const makeConstants = () => {
  for (const make of mutation.makers) make();
};

/** Works out again what files of the core hold, and what files of tests do before their tests: those by their titles. */
function importAgain(files, again) {
  makeConstants();
  for (const file of files) for (const test of describeAgain(file)) again.set(titleOf(test), test);
}

async function firstFailure(indices, again) {
  for (const index of indices) {
    const { run } = again.get(titleOf(tests[index])) ?? tests[index];
    mutation.passed = 0;
    const failed = await failureOf(run);
    const ranAway = mutation.passed > mutation.limit || failed?.includes(RUNS_AWAY);
    if (failed || ranAway) {
      return { outcome: ranAway ? "timed out" : "killed", by: titleOf(tests[index]), detail: failed };
    }
  }
  return { outcome: "survived" };
}
