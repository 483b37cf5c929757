import { type PlanReading, type Problem, readPlan } from "@headfall/hydraulics";

/** Version of the file that holds several plans. */
const BUNDLE_VERSION = 1;
const MARK = "headfall-plans";

/** One plan of a file: where it stood, its name if it has one, and what it reads as. */
export interface BundledPlan {
  readonly place: string;
  readonly reading: PlanReading;
}

/** Several plans as one file: `{"headfall-plans": 1, "plans": [...]}`, each as it stands. */
export function writeBundle(plans: readonly unknown[]): string {
  return `${JSON.stringify({ [MARK]: BUNDLE_VERSION, plans }, null, 2)}\n`;
}

/** Whether a text says of itself that it holds several plans. */
export function isBundle(text: string): boolean {
  return /^\ufeff?\s*\{\s*"headfall-plans"\s*:/.test(text);
}

/** Reads such a file: each plan by itself, so that one that is faulty does not keep out the others. Never throws. */
export function readBundle(text: string): readonly BundledPlan[] | readonly Problem[] {
  const whole = parsed(text);
  if (whole === undefined) return [notWhole];
  const version = whole[MARK];
  if (typeof version !== "number" || !(version <= BUNDLE_VERSION)) return [newer(version)];
  const { plans } = whole;
  if (!Array.isArray(plans)) return [noPlans];
  return plans.map((plan: unknown, index) => ({ place: `plans[${index}]`, reading: readOne(plan) }));
}

export function isProblems(read: readonly BundledPlan[] | readonly Problem[]): read is readonly Problem[] {
  return read.some((each) => "code" in each);
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    return JSON.parse(text.replace(/^\ufeff/, "")) as Record<string, unknown>;
  } catch {
    return undefined;
  }
}

/** Back through text, so that each goes the way of a file of its own, with the same ceilings. */
function readOne(plan: unknown): PlanReading {
  try {
    const reading = readPlan(JSON.stringify(plan) ?? "");
    if (reading.ok) return reading;
    return { ok: false, problems: reading.problems.map(({ line: _, column: __, ...problem }) => problem) };
  } catch {
    return { ok: false, problems: [notWhole] };
  }
}

const notWhole: Problem = {
  code: "notJson",
  path: "the file",
  found: "text that breaks off or is nested too deep",
  allowed: 'A file of several plans is JSON: {"headfall-plans": 1, "plans": [...]}.',
  mend: "Check that it was copied whole.",
};

const noPlans: Problem = {
  code: "missing",
  path: "plans",
  found: "no list",
  allowed: "A file of several plans holds them in a list.",
  mend: "Check that this is a file of plans.",
};

const newer = (version: unknown): Problem => ({
  code: "versionNewer",
  path: MARK,
  found: JSON.stringify(version ?? null).slice(0, 40),
  allowed: `This program reads versions up to ${BUNDLE_VERSION}. The file is unharmed.`,
  mend: "Open it with a newer Headfall.",
});
