import { PROBLEM_CODES, type Problem } from "../../packages/hydraulics/src/document/problem.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../packages/hydraulics/src/document/write-problem.js";
import { checkPlan, MOMENTS } from "../../packages/hydraulics/src/index.js";
import { writeCheckDocument } from "../../packages/hydraulics/src/report/check-document.js";
import { CONTINUITY_BAR, ENERGY_BAR } from "../../packages/hydraulics/src/solve/check-solution.js";
import { FRICTION_LAWS, type LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import type { PlanData } from "../arbitraries/plans.js";

/*
 * Broken promises as lists of sentences, so that a test and the long search through the night judge alike: no
 * sentence, no fault.
 */

/** Longer than this, nobody reads a problem to its end [characters]. */
const READABLE = 1000;

/** What keeps problems from being readable: each has a code, where, what was found, what is allowed, how to mend it. */
export function faultsOfProblems(problems: readonly Problem[]): string[] {
  if (problems.length === 0) return ["refused without a problem"];
  return problems.flatMap((problem) => {
    const { code, path, found, allowed, mend } = problem;
    const sentence = writeProblem(problem);
    return [
      ...(PROBLEM_CODES.includes(code) ? [] : [`the code ${code} is not known`]),
      ...([path, found, allowed, mend].every((part) => part.trim() !== "")
        ? []
        : [`a part is empty: ${sentence}`]),
      ...(sentence.length < READABLE ? [] : [`too long: ${sentence.slice(0, 80)}`]),
      ...(/undefined|\[object|invalid_|Invalid input/.test(sentence) ? [`unreadable: ${sentence}`] : []),
    ];
  });
}

/** Checks a plan that must be valid, without samples; throws where it is not. */
export function checkData(data: PlanData) {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(reading.problems.map(writeProblem).join("\n"));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(checking.problems.map(writeProblem).join("\n"));
  return checking.checked;
}

type Checked = ReturnType<typeof checkData>;

/** Every way in which a checked plan breaks a promise: each moment by both friction laws. */
export function faultsOfChecked(checked: Checked): string[] {
  return [
    ...notFinite(checked).map((path) => `${path} is not finite`),
    ...MOMENTS.flatMap((moment) =>
      FRICTION_LAWS.flatMap((law) => faultsOfSolution(checked.solutions[moment][law], moment)),
    ),
  ];
}

/** What keeps a solution of a moment from being one: not reached, or against the laws of mass and energy. */
export function faultsOfSolution(
  { outcome, checks, flow, friction }: LineSolution,
  moment: string,
): string[] {
  const called = `${moment} by ${friction}`;
  const largest = flow.reduce((most, q) => Math.max(most, Math.abs(q)), 0);
  return [
    ...(outcome === "solved" ? [] : [`${called} is ${outcome}`]),
    ...(checks.continuity.worst <= CONTINUITY_BAR * largest + 1e-18 ? [] : [`${called}: water is lost`]),
    ...(checks.energy.worst <= ENERGY_BAR ? [] : [`${called}: energy is off`]),
  ];
}

/** Every way in which the check of a valid plan breaks a promise, done twice; none is the law. */
export function faultsOfCheck(data: PlanData): string[] {
  const checked = checkData(data);
  const text = (one: Checked) => JSON.stringify(writeCheckDocument(one, "us"));
  const isSame = text(checked) === text(checkData(data));
  return [...faultsOfChecked(checked), ...(isSame ? [] : ["the same plan gave another result"])];
}

/** Paths of every number in a result that is not finite. */
export function notFinite(value: unknown, path = "result"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  if (ArrayBuffer.isView(value)) {
    const numbers = value as unknown as ArrayLike<number>;
    return Array.from(numbers).every(Number.isFinite) ? [] : [path];
  }
  return Object.entries(value).flatMap(([key, inside]) => notFinite(inside, `${path}.${key}`));
}
