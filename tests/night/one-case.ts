import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../packages/hydraulics/src/document/write-problem.js";
import { madeReady } from "../arbitraries/long-enough.js";
import { createNightDocuments, nightPlan } from "../arbitraries/night-plans.js";
import type { PlanData } from "../arbitraries/plans.js";
import { shrinkPlan } from "../arbitraries/shrink-plan.js";
import { faultsOfCutText, faultsOfDocument, faultsOfText } from "../hostile/document-faults.js";
import { checkData, faultsOfCheck, faultsOfChecked } from "../hostile/plan-faults.js";
import { faultsOfSolving } from "../hostile/solve-faults.js";
import { faultsOfAnswers } from "./plan-answers.js";
import { told } from "./told.js";

/** What a night is made of. */
export type CaseKind = "plans" | "documents";

/** One plan in so many is checked in full, and one in so many asked every question there is. */
export interface OneIn {
  readonly checkedOneIn: number;
  readonly askedOneIn: number;
}

/** A case that went wrong: its number, what is wrong, and the smallest document that still shows it. */
export interface Found {
  readonly kind: CaseKind;
  readonly number: number;
  readonly faults: readonly string[];
  readonly document: unknown;
}

/** Of the plans checked in full one in so many is checked twice, to see that the answer is the same. */
const TWICE_ONE_IN = 10;
/** Shrinking stops here, with the smallest found by then [ms]. */
const SHRINKING = 60_000;

/** Goes through cases by number. Gives what went wrong with one, shrunk; nothing where all is well. */
export function createCases(oneIn: OneIn) {
  const nightDocument = createNightDocuments();
  return (kind: CaseKind, number: number): Found | undefined => {
    const document = kind === "plans" ? nightPlan(number) : nightDocument(number);
    const faultsOf =
      kind === "plans" ? (plan: unknown) => faultsOfPlan(plan, number, oneIn) : faultsOfHostile;
    const faults = told(() => faultsOf(document, number));
    if (faults.length === 0) return undefined;
    const shrinking = { document, faults, faultsOf: (smaller: unknown) => faultsOf(smaller, number) };
    return { kind, number, faults, document: shrunk(kind, shrinking) };
  };
}

/** The faults of a plan that must be valid: each is solved, some are checked, and some asked everything. */
function faultsOfPlan(drawn: unknown, number: number, { checkedOneIn, askedOneIn }: OneIn): string[] {
  const ready = madeReady(drawn as PlanData);
  if (!ready.ok) return ready.problems.map((problem) => `refused: ${writeProblem(problem)}`);
  return [
    ...faultsOfSolving(ready.plan, ready.line),
    ...(number % checkedOneIn === 0 ? faultsOfChecking(ready.data, number / checkedOneIn) : []),
    ...(number % askedOneIn === 0 ? faultsOfAnswers(ready.plan, ready.line.drinkers.count) : []),
  ];
}

const faultsOfChecking = (plan: PlanData, turn: number): string[] =>
  turn % TWICE_ONE_IN === 0 ? faultsOfCheck(plan) : faultsOfChecked(checkData(plan));

function faultsOfHostile(document: unknown, number: number): string[] {
  const cut = { from: number * 7919, to: number * 104_729, between: "" };
  return [...faultsOfDocument(document), ...faultsOfText(document), ...faultsOfCutText(document, cut)];
}

interface Shrinking {
  readonly document: unknown;
  readonly faults: readonly string[];
  readonly faultsOf: (document: unknown) => string[];
}

/** The smallest document with a fault that begins like the first one found. */
function shrunk(kind: CaseKind, { document, faults, faultsOf }: Shrinking): unknown {
  const until = Date.now() + SHRINKING;
  const beginning = (faults[0] ?? "").slice(0, 30);
  const begun = kind === "plans" ? madeReady(document as PlanData).data : document;
  return shrinkPlan(begun, (smaller) => {
    if (Date.now() > until) return false;
    // Of plans only what is valid still counts; of hostile documents anything does.
    if (kind === "plans" && !checkDocument(smaller).ok) return false;
    return told(() => faultsOf(smaller)).some((fault) => fault.startsWith(beginning));
  });
}
