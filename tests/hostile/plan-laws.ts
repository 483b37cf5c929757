import { expect } from "vitest";
import type { Problem } from "../../packages/hydraulics/src/document/problem.js";
import type { DrinkerVerdict } from "../../packages/hydraulics/src/index.js";
import type { PlanData } from "../arbitraries/plans.js";
import { checkData, faultsOfProblems } from "./plan-faults.js";

/** Each problem with its code, where, what was found, what is allowed, how to mend it. */
export function expectReadable(problems: readonly Problem[]): void {
  expect(faultsOfProblems(problems)).toEqual([]);
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
