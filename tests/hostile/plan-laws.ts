import { expect } from "vitest";
import { PROBLEM_CODES, type Problem } from "../../packages/hydraulics/src/document/problem.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../packages/hydraulics/src/document/write-problem.js";
import { checkPlan, type DrinkerVerdict, MOMENTS } from "../../packages/hydraulics/src/index.js";
import { writeCheckDocument } from "../../packages/hydraulics/src/report/check-document.js";
import { CONTINUITY_BAR, ENERGY_BAR } from "../../packages/hydraulics/src/solve/check-solution.js";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import type { PlanData } from "../arbitraries/plans.js";

/** Each problem with its code, where, what was found, what is allowed, how to mend it. */
export function expectReadable(problems: readonly Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const problem of problems) {
    const { code, path, found, allowed, mend } = problem;
    expect(PROBLEM_CODES).toContain(code);
    for (const part of [path, found, allowed, mend]) expect(part.trim()).not.toBe("");
    const sentence = writeProblem(problem);
    expect(sentence.length).toBeLessThan(1000);
    expect(sentence).not.toMatch(/undefined|\[object|invalid_|Invalid input/);
  }
}

/** Checks a plan that must be valid, without samples; throws where it is not. */
export function checkData(data: PlanData) {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(reading.problems.map(writeProblem).join("\n"));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(checking.problems.map(writeProblem).join("\n"));
  return checking.checked;
}

/** Every way in which the check of a valid plan breaks a promise; none is the law. */
export function faultsOfCheck(data: PlanData): string[] {
  const checked = checkData(data);
  const faults = notFinite(checked).map((path) => `${path} is not finite`);
  for (const moment of MOMENTS) {
    for (const law of FRICTION_LAWS) {
      const { outcome, checks, flow } = checked.solutions[moment][law];
      const largest = flow.reduce((most, q) => Math.max(most, Math.abs(q)), 0);
      if (outcome !== "solved") faults.push(`${moment} by ${law} is ${outcome}`);
      if (!(checks.continuity.worst <= CONTINUITY_BAR * largest + 1e-18))
        faults.push(`${moment} by ${law}: water is lost`);
      if (!(checks.energy.worst <= ENERGY_BAR)) faults.push(`${moment} by ${law}: energy is off`);
    }
  }
  const text = (one: typeof checked) => JSON.stringify(writeCheckDocument(one, "us"));
  if (text(checked) !== text(checkData(data))) faults.push("the same plan gave another result");
  return faults;
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

/** The verdicts of a plan by run, group and place, whatever its runs and places are called. */
export function verdictsByPlace(
  data: PlanData,
  nameOfRun: (id: string) => string,
): Map<string, DrinkerVerdict> {
  const checked = checkData(data);
  const { drinkers, runs } = checked.line;
  return new Map(
    checked.drinkers.map((verdict): [string, DrinkerVerdict] => {
      const group = drinkers.group[verdict.index] as number;
      const run = drinkers.run[verdict.index] as number;
      const firstOfRun = drinkers.groups.findIndex((one) => one.run === run);
      const place = `${nameOfRun((runs[run] as { id: string }).id)}, group ${group - firstOfRun}, drinker ${verdict.index - (drinkers.groups[group] as { first: number }).first}`;
      return [place, verdict];
    }),
  );
}

const rename = (name: unknown) => (typeof name === "string" ? `other ${name}` : name);

/** A pen whose drinkers are called after runs that were renamed. */
const renamedPen = (pen: PlanData): PlanData =>
  pen["drinkers"] === undefined ? pen : { ...pen, drinkers: (pen["drinkers"] as unknown[]).map(rename) };

/** The plan with its runs in another order and every place and run called something else. */
export function renamed(data: PlanData, shuffle: (runs: PlanData[]) => PlanData[]): PlanData {
  const keys = (entry: PlanData, names: readonly string[]) =>
    Object.fromEntries(
      Object.entries(entry).map(([key, value]) => [key, names.includes(key) ? rename(value) : value]),
    );
  return {
    ...data,
    sources: (data["sources"] as PlanData[]).map((source) => ({
      ...keys(source, ["id"]),
      ...(source["feed"] === undefined ? {} : { feed: keys(source["feed"] as PlanData, ["from"]) }),
    })),
    runs: shuffle((data["runs"] as PlanData[]).map((run) => keys(run, ["id", "from", "to"]))),
    ...(data["pens"] === undefined ? {} : { pens: (data["pens"] as PlanData[]).map(renamedPen) }),
  };
}
