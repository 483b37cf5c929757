import type { Line, Plan } from "@headfall/hydraulics";
import { groupsReached } from "../group-names.js";
import { nameOfPen } from "../pen-names.js";

/** A pen with the drinkers it reaches, by name. */
export interface PenToLookAt {
  readonly pen: string;
  readonly drinkers: readonly string[];
}

/** Pens that reach any drinker, in the order of the plan. */
export function pensToLookAt({ drinkers, runs }: Line, plan: Plan): readonly PenToLookAt[] {
  const ofRun = new Map(runs.map(({ index }, run) => [index, groupsOf(drinkers.groups, run)]));
  return groupsReached(plan)
    .map((groups, p) => ({
      pen: nameOfPen(plan, p),
      drinkers: groups.flatMap(({ run, group }) => {
        const mine = ofRun.get(run)?.[group];
        return mine === undefined ? [] : drinkers.id.slice(mine.first, mine.first + mine.count);
      }),
    }))
    .filter((pen) => pen.drinkers.length > 0);
}

const groupsOf = (groups: Line["drinkers"]["groups"], run: number) =>
  groups.filter((group) => group.run === run);
