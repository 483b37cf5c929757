import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import type { FindingCures } from "../../packages/hydraulics/src/search/find-cures.js";
import { mutatedPlan } from "../arbitraries/mutate-plan.js";
import { type PlanData, randomPlan } from "../arbitraries/plans.js";
import { shrinkPlan } from "../arbitraries/shrink-plan.js";
import { faultsOfCure } from "../hostile/cure-faults.js";
import { faultsOfCutText, faultsOfDocument, faultsOfText } from "../hostile/document-faults.js";
import {
  checkData,
  faultsOfCheck,
  faultsOfChecked,
  faultsOfProblems,
  notFinite,
} from "../hostile/plan-faults.js";
import { LONG_QUESTIONS, type Questions, TIME_QUESTIONS } from "../hostile/plan-questions.js";

/** What a night is made of. */
export type CaseKind = "plans" | "documents";

/** A case that went wrong: its number, what is wrong, and the smallest document that still shows it. */
export interface Found {
  readonly kind: CaseKind;
  readonly number: number;
  readonly faults: readonly string[];
  readonly document: unknown;
}

/** One plan in so many is asked a question: the long ones, each of some milliseconds to a second, seldom. */
const ONE_IN: Readonly<Record<string, number>> = {
  howLongItLasts: 50,
  simulateDay: 100,
  frostOfPlan: 10,
  heatOfPlan: 10,
  yardForPlan: 10,
  yearForPlan: 200,
  compareSizes: 400,
  buildSheetOf: 100,
  mishapsOfPlan: 500,
  findCures: 2000,
};
const ONE_IN_OTHERWISE = 30;
/** One plan in so many is checked twice, to see that the answer is the same. */
const TWICE_ONE_IN = 10;
/** Shrinking stops here, with the smallest found by then [ms]. */
const SHRINKING = 60_000;

/** Goes through one case. Gives what went wrong with it, shrunk; nothing where all is well. */
export function tryCase(kind: CaseKind, number: number): Found | undefined {
  const document = kind === "plans" ? randomPlan(number) : mutatedPlan(number);
  const faultsOf = kind === "plans" ? faultsOfPlan : faultsOfHostile;
  const faults = told(() => faultsOf(document as PlanData, number));
  if (faults.length === 0) return undefined;
  return { kind, number, faults, document: shrunk(kind, number, { document, faults, faultsOf }) };
}

/** The faults of a plan that must be valid: checked, and asked what falls to its number. */
function faultsOfPlan(plan: PlanData, number: number): string[] {
  return [
    ...(number % TWICE_ONE_IN === 0 ? faultsOfCheck(plan) : faultsOfChecked(checkData(plan))),
    ...faultsOfAnswers(TIME_QUESTIONS, plan, number),
    ...faultsOfAnswers(LONG_QUESTIONS, plan, number),
  ];
}

function faultsOfAnswers(questions: Questions, plan: PlanData, number: number): string[] {
  return Object.entries(questions).flatMap(([name, ask], k) => {
    // Shifted, so that not all of them fall to the same plan.
    if ((number + k) % (ONE_IN[name] ?? ONE_IN_OTHERWISE) !== 0) return [];
    const reading = checkDocument(plan);
    if (!reading.ok) return [];
    return told(() => {
      const answer = ask(reading.plan);
      if (!answer.ok) return answer.problems.length > 0 ? faultsOfProblems(answer.problems) : ["no answer"];
      return name === "findCures" ? faultsOfCures(answer as FindingCures) : notFinite(answer);
    }).map((fault) => `${name}: ${fault}`);
  });
}

const faultsOfCures = (finding: FindingCures): string[] =>
  finding.ok ? finding.answer.cures.flatMap(faultsOfCure) : [];

function faultsOfHostile(document: unknown, number: number): string[] {
  const cut = { from: number * 7919, to: number * 104_729, between: "" };
  return [...faultsOfDocument(document), ...faultsOfText(document), ...faultsOfCutText(document, cut)];
}

/** The faults, or the one that nothing should throw. */
function told(ask: () => string[]): string[] {
  try {
    return ask();
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return [`throws ${stack.split("\n").slice(0, 4).join(" | ")}`];
  }
}

interface Shrinking {
  readonly document: unknown;
  readonly faults: readonly string[];
  readonly faultsOf: (document: PlanData, number: number) => string[];
}

/** The smallest document with a fault that begins like the first one found. */
function shrunk(kind: CaseKind, number: number, { document, faults, faultsOf }: Shrinking): unknown {
  const until = Date.now() + SHRINKING;
  const beginning = (faults[0] ?? "").slice(0, 30);
  return shrinkPlan(document, (smaller) => {
    if (Date.now() > until) return false;
    // Of plans only what is valid still counts; of hostile documents anything does.
    if (kind === "plans" && !checkDocument(smaller).ok) return false;
    return told(() => faultsOf(smaller as PlanData, number)).some((fault) => fault.startsWith(beginning));
  });
}
