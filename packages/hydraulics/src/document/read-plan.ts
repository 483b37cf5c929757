import * as z from "zod/mini";
import { checkReferences } from "./check-references.js";
import { type ReadText, readJsonText } from "./json-text.js";
import { type Plan, planSchema } from "./plan-schema.js";
import { type PathStep, type Problem, sortProblems, writeFound } from "./problem.js";
import { readIssues } from "./read-issues.js";
import { upgradePlan } from "./upgrade-plan.js";

export type PlanReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

// The page runs under a policy that forbids code made from text.
z.config({ jitless: true });

/**
 * Reads a plan file. All that is wrong with it comes back at once, in the order of the text; nothing is half-read.
 *
 * @param text  the file's text: JSON, comments let pass
 * @returns the plan exactly as typed, or the problems; never throws
 */
export function readPlan(text: string): PlanReading {
  if (typeof text !== "string") return { ok: false, problems: [notText(text)] };
  const json = readJsonText(text.replace(/^\ufeff/, ""));
  if (!json.ok) return { ok: false, problems: sortProblems(json.problems) };
  const reading = checkDocument(json.read.value);
  return reading.ok
    ? reading
    : { ok: false, problems: sortProblems(reading.problems.map((problem) => placed(problem, json.read))) };
}

/** The same for a document that is already data: a plan made by a program or taken from a store. */
export function checkDocument(document: unknown): PlanReading {
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    return { ok: false, problems: [notAPlan(document)] };
  }
  const upgraded = upgradePlan(document as Record<string, unknown>);
  if (!upgraded.ok) return { ok: false, problems: [upgraded.problem] };
  const parsed = planSchema.safeParse(upgraded.document);
  const problems = [
    ...(parsed.success ? [] : readIssues(parsed.error.issues, upgraded.document)),
    ...checkReferences(upgraded.document),
  ];
  if (problems.length > 0 || !parsed.success) return { ok: false, problems: sortProblems(problems) };
  return { ok: true, plan: parsed.data };
}

/** A plan as file text: two spaces, a line feed at the end. What was typed is kept. */
export function writePlan(plan: Plan): string {
  return `${JSON.stringify(plan, null, 2)}\n`;
}

/** Adds line and column; a problem's path is read back into steps to find its place in the text. */
function placed(problem: Problem, read: ReadText): Problem {
  return { ...problem, ...read.placeOf(stepsOf(problem.path)) };
}

function stepsOf(path: string): PathStep[] {
  const steps: PathStep[] = [];
  for (const match of path.matchAll(/\[(\d+)\]|\["((?:[^"\\]|\\.)*)"\]|([A-Za-z_][\w-]*)/g)) {
    if (match[1] !== undefined) steps.push(Number(match[1]));
    else steps.push(match[2] === undefined ? match[3] : String(JSON.parse(`"${match[2]}"`)));
  }
  return path.startsWith("the plan") ? [] : steps;
}

const notText = (value: unknown): Problem => ({
  code: "notText",
  path: "the plan",
  found: writeFound(value),
  allowed: "A plan file is text.",
  mend: "Pass the text of the file.",
});

const notAPlan = (value: unknown): Problem => ({
  code: "notAPlan",
  path: "the plan",
  found: writeFound(value),
  allowed: 'A plan is one JSON object that begins {"headfall": 1, ...}.',
  mend: "Check that this is a plan file.",
});
