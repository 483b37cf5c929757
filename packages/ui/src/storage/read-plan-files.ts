import { type Plan, type Problem, readPlan } from "@headfall/hydraulics";
import { isBundle, isProblems, readBundle } from "./plan-bundle.js";

/** What was found in the files: the plans, and for each file or part of one that is refused all that is wrong. */
export interface ReadFiles {
  readonly plans: readonly Plan[];
  readonly refusals: readonly Refusal[];
}

export interface Refusal {
  readonly name: string;
  readonly problems: readonly Problem[];
}

/** Larger files are refused unread: nothing of ours comes near it, and reading it would stall the page. */
const MOST_BYTES = 64_000_000;

/** Reads plans from files that were chosen or dropped: one plan each, or several in one. Nothing else is touched. */
export async function readFiles(files: readonly File[]): Promise<ReadFiles> {
  const read: ReadFiles[] = [];
  for (const file of files) read.push(await readFile(file));
  return { plans: read.flatMap(({ plans }) => plans), refusals: read.flatMap(({ refusals }) => refusals) };
}

async function readFile(file: File): Promise<ReadFiles> {
  if (file.size > MOST_BYTES) return refused(file.name, [tooLarge(file.size)]);
  const text = await file.text();
  return isBundle(text) ? readMany(file.name, text) : readOne(file.name, text);
}

function readOne(name: string, text: string): ReadFiles {
  const reading = readPlan(text);
  return reading.ok ? { plans: [reading.plan], refusals: [] } : refused(name, reading.problems);
}

function readMany(name: string, text: string): ReadFiles {
  const bundled = readBundle(text);
  if (isProblems(bundled)) return refused(name, bundled);
  const plans = bundled.flatMap(({ reading }) => (reading.ok ? [reading.plan] : []));
  const refusals = bundled.flatMap(({ place, reading }) =>
    reading.ok ? [] : [{ name: `${name}, ${place}`, problems: reading.problems }],
  );
  return { plans, refusals };
}

const refused = (name: string, problems: readonly Problem[]): ReadFiles => ({
  plans: [],
  refusals: [{ name, problems }],
});

const tooLarge = (size: number): Problem => ({
  code: "tooLarge",
  path: "the file",
  found: `${Math.round(size / 1e6)} MB`,
  allowed: "A file of plans is at most 64 MB.",
  mend: "Check that this is a plan file.",
});
