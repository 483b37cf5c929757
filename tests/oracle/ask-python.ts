import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/**
 * The other implementation: Python with scipy and fluids, two general-purpose libraries that Debian packages. Where it
 * is installed it is asked anew at every run; elsewhere its recorded answers stand in. Under CI it must be there.
 * HEADFALL_PYTHON names another interpreter; HEADFALL_RECORD=yes writes the record anew.
 */
const { HEADFALL_PYTHON, HEADFALL_RECORD, CI } = process.env;
const PYTHONS = HEADFALL_PYTHON === undefined ? ["/usr/bin/python3", "python3"] : [HEADFALL_PYTHON];
const python = PYTHONS.find((path) => spawnSync(path, ["-c", "import scipy, fluids"]).status === 0);

/** For the titles of tests: which of the two they compare with. */
export const PYTHON_IS = python === undefined ? "as recorded" : "live";

export interface Answered<Answer> {
  readonly answer: Answer;
  /** What the record holds; the answer itself where Python was not asked. */
  readonly recorded: Answer;
}

/** What of an answer is written down. */
export interface Recording<Answer> {
  readonly digits: number;
  /** Name of the record; that of the script unless given. */
  readonly name?: string;
  /** Leaves out what the rest decides; all is kept unless given. */
  readonly keep?: (answer: Answer) => Answer;
}

/** Puts a question to python/<script>.py, or reads what was recorded of its answer. */
export function askPython<Answer>(
  script: string,
  question: unknown,
  { digits, name = script, keep = (answer) => answer }: Recording<Answer>,
): Answered<Answer> {
  const record = new URL(`./recorded/${name}.json`, import.meta.url);
  if (python === undefined) {
    if (CI === "true") {
      throw new Error(
        "Python with scipy and fluids is missing; .ci/run installs python3-scipy and python3-fluids",
      );
    }
    const recorded = readRecord<Answer>(record);
    return { answer: recorded, recorded };
  }
  const answer = askLive<Answer>(script, question);
  if (HEADFALL_RECORD === "yes") writeFileSync(record, writeRecord(keep(answer), digits));
  return { answer, recorded: readRecord<Answer>(record) };
}

/** Puts a question to python/<script>.py now; an error where no Python has scipy and fluids. */
export function askLive<Answer>(script: string, question: unknown): Answer {
  if (python === undefined) throw new Error(`none of ${PYTHONS.join(", ")} has scipy and fluids`);
  const file = fileURLToPath(new URL(`./python/${script}.py`, import.meta.url));
  // -B: no compiled copies left in the checkout.
  const run = spawnSync(python, ["-B", file], {
    input: JSON.stringify(question),
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
  if (run.status !== 0) throw new Error(`${script}.py ended with ${run.status ?? run.signal}: ${run.stderr}`);
  return JSON.parse(run.stdout) as Answer;
}

/** What was written down under a name. */
export const readRecorded = <Answer>(name: string): Answer =>
  readRecord<Answer>(new URL(`./recorded/${name}.json`, import.meta.url));

/** Writes something down under a name. */
export const record = (name: string, what: unknown, digits: number): void =>
  writeFileSync(new URL(`./recorded/${name}.json`, import.meta.url), writeRecord(what, digits));

const readRecord = <Answer>(record: URL): Answer => JSON.parse(readFileSync(record, "utf8")) as Answer;

/** One member a line, numbers shortened; whole ones are counts. */
function writeRecord(answer: unknown, digits: number): string {
  const shorten = (_key: string, value: unknown) =>
    typeof value === "number" && !Number.isInteger(value) ? Number(value.toPrecision(digits)) : value;
  const members = Object.entries(answer as object).map(
    ([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value, shorten)}`,
  );
  return `{\n${members.join(",\n")}\n}\n`;
}
