import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import type { FindingCures } from "../../packages/hydraulics/src/search/find-cures.js";
import { faultsOfCure } from "../hostile/cure-faults.js";
import { faultsOfProblems, notFinite } from "../hostile/plan-faults.js";
import { type Answer, LONG_QUESTIONS, TIME_QUESTIONS } from "../hostile/plan-questions.js";
import { told } from "./told.js";

/** A plan with more drinkers than this is not asked for mishaps and cures, which would take minutes. */
const MOST_DRINKERS = 300;
const SLOW = ["mishapsOfPlan", "findCures"];

/** What goes wrong when a valid plan is asked every question there is. */
export function faultsOfAnswers(plan: Plan, drinkers: number): string[] {
  return Object.entries({ ...TIME_QUESTIONS, ...LONG_QUESTIONS }).flatMap(([name, ask]) => {
    if (drinkers > MOST_DRINKERS && SLOW.includes(name)) return [];
    return told(() => faultsOfAnswer(name, ask(plan))).map((fault) => `${name}: ${fault}`);
  });
}

function faultsOfAnswer(name: string, answer: Answer): string[] {
  if (!answer.ok) return answer.problems.length > 0 ? faultsOfProblems(answer.problems) : ["no answer"];
  if (name !== "findCures") return notFinite(answer).map((path) => `${path} is not finite`);
  const finding = answer as FindingCures;
  return finding.ok ? finding.answer.cures.flatMap(faultsOfCure) : [];
}
