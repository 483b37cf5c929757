import type { Line, Plan, Sign } from "@headfall/hydraulics";
import { groupsReached } from "../group-names.js";
import { namesOfPens } from "../pen-names.js";

/** A run with the drinkers on it, by name. */
export interface RunToLookAt {
  readonly run: string;
  readonly drinkers: readonly string[];
  /** Pens that drink there. */
  readonly pens: readonly string[];
}

/** Runs in the order of the plan; those without drinkers too, since their ground and ends can be looked at. */
export function runsToLookAt(line: Line, plan: Plan): readonly RunToLookAt[] {
  const drinkersOf = line.runs.map((): string[] => []);
  line.drinkers.id.forEach((id, d) => {
    drinkersOf[line.drinkers.run[d]!]!.push(id);
  });
  const reached = groupsReached(plan);
  return line.runs.map(({ id, index }, run) => ({
    run: id,
    drinkers: drinkersOf[run]!,
    pens: namesOfPens(plan).filter((_, p) => reached[p]!.some((group) => group.run === index)),
  }));
}

/** How many signs tell of a run: of itself and of its drinkers. */
export function toldOf({ run, drinkers }: RunToLookAt, signs: readonly Sign[]): number {
  const names = new Set(drinkers);
  return signs.filter(({ at, id }) => (at === "run" ? id === run : at === "drinker" && names.has(id))).length;
}
