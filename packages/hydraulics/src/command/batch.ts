import { createReadStream } from "node:fs";
import { availableParallelism } from "node:os";
import { LIMITS } from "../document/limits.js";
import { type Given, readQuestion } from "./answer-plan.js";
import { readCount } from "./arguments.js";
import { type BatchOutput, resumeOutput, STANDARD_OUTPUT } from "./batch-output.js";
import { answersOf } from "./batch-threads.js";
import { fileFault } from "./file-fault.js";
import { refuse, UNREADABLE } from "./open-plan.js";
import { isQuestion, QUESTIONS, type QuestionName } from "./questions.js";
import { linesOf, type TextLine } from "./text-lines.js";

export const OWN = ["ask", "jobs", "resume"];

/** What would have every plan write to the same file, or print something else than a document. */
const NOT_OF_MANY = ["apply", "out", "csv", "ics", "paper"];

const MOST_JOBS = 64;

/**
 * `headfall batch FILE --ask check --jobs 2 --resume OUT`: the same question about every line's plan, a line of JSON
 * each, in order. The exit status is the worst of them.
 */
export async function runBatch(args: readonly string[]): Promise<number> {
  const ask = askedOf(args);
  if (!isQuestion(ask))
    return refuse(
      "batch",
      `--ask is one of ${Object.keys(QUESTIONS).join(", ")}, not ${JSON.stringify(ask)}.`,
    );
  const given = readQuestion(args, await QUESTIONS[ask](), OWN);
  if ("fault" in given) return refuse("batch", given.fault);
  const one = NOT_OF_MANY.find((name) => given.own[name] !== undefined || given.flags.has(name));
  if (one !== undefined) return refuse("batch", `--${one} is of one plan; a batch writes a line for each.`);
  const jobs = readCount("jobs", given.own["jobs"], Math.min(availableParallelism(), MOST_JOBS), MOST_JOBS);
  if (typeof jobs !== "number" || jobs === 0)
    return refuse("batch", `--jobs is a whole number from 1 to ${MOST_JOBS}.`);
  return withOutput(given, ask, (output) => answerAll(given, { ask, jobs, output }));
}

/** The question must be known before the options are: which there are, it says. */
function askedOf(args: readonly string[]): string {
  const at = args.findLastIndex((word) => word === "--ask" || word.startsWith("--ask="));
  if (at < 0) return "check";
  return args[at] === "--ask" ? (args[at + 1] ?? "") : args[at].slice("--ask=".length);
}

/** Opens what is written to; a file that cannot be opened, read or written is told in one line. */
async function withOutput(
  { own, plan }: Given,
  ask: QuestionName,
  answer: (output: BatchOutput) => Promise<number>,
): Promise<number> {
  const name = own["resume"];
  try {
    const output = name === undefined ? STANDARD_OUTPUT : await resumeOutput(name, ask);
    if ("fault" in output) return refuse("batch", output.fault);
    try {
      return await answer(output);
    } finally {
      await output.close();
    }
  } catch (error) {
    if (!(error instanceof Error) || !("code" in error)) throw error;
    const input = plan === "-" ? "standard input" : plan;
    const where = "path" in error ? String(error.path) : input;
    const what = where === name ? "write" : "read";
    process.stderr.write(`headfall: cannot ${what} ${where}: ${fileFault(error)}\n`);
    return UNREADABLE;
  }
}

async function answerAll(
  given: Given,
  { ask, jobs, output }: { readonly ask: QuestionName; readonly jobs: number; readonly output: BatchOutput },
): Promise<number> {
  let { status } = output;
  // A day's own workers would only get in the way of the batch's.
  const each: Given = { ...given, json: true, own: { ...given.own, jobs: undefined } };
  for await (const answer of answersOf(plansOf(given.plan, output.last), { ask, given: each }, jobs)) {
    status = Math.max(status, answer.status);
    await output.write(answer.text);
  }
  return status;
}

/** The lines that have a plan on them, after those already answered. */
async function* plansOf(name: string, last: number): AsyncGenerator<TextLine> {
  const stream = name === "-" ? process.stdin : createReadStream(name);
  for await (const line of linesOf(stream, 4 * LIMITS.textLength))
    if (line.line > last && line.text.trim() !== "") yield line;
}
