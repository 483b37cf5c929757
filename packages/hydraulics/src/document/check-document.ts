import * as z from "zod/mini";
import { checkReferences } from "./check-references.js";
import { type Plan, planSchema } from "./plan-schema.js";
import { type Problem, sortProblems, writeFound } from "./problem.js";
import { readIssues } from "./read-issues.js";
import { upgradePlan } from "./upgrade-plan.js";

/** A plan, or what is wrong with the text; nothing is half-read. */
export type PlanReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

// The page runs under a policy that forbids code made from text.
z.config({ jitless: true });

/**
 * Checks a document that is already data: a plan made by a program or taken from a store. Text is read by `readPlan`.
 *
 * @returns the plan exactly as given, or all its problems; never throws
 * @example checkDocument({ headfall: 1, sources: [], runs: [] }).ok   // false
 */
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

const notAPlan = (value: unknown): Problem => ({
  code: "notAPlan",
  path: "the plan",
  found: writeFound(value),
  allowed: 'A plan is one JSON object that begins {"headfall": 1, ...}.',
  mend: "Check that this is a plan file.",
});
