import { type Plan, runEnds, sourceNames } from "@headfall/hydraulics";
import { meetingRuns } from "./plan-parts.js";

/** The joints that pipe joins to a source, each with the run that leads there on the shortest way by number of runs. */
export function joinedToSources(plan: Plan): ReadonlyMap<string, number> {
  const ends = runEnds(plan);
  const meeting = meetingRuns(plan);
  const queue = [...sourceNames(plan)];
  const reached = new Map(queue.map((name) => [name, -1]));
  for (let at = 0; at < queue.length; at++) {
    const here = queue[at]!;
    for (const run of meeting.get(here) ?? []) {
      const other = ends[run]!.from === here ? ends[run]!.to : ends[run]!.from;
      if (reached.has(other)) continue;
      reached.set(other, run);
      queue.push(other);
    }
  }
  return reached;
}

/** Positions of the runs that hang on no source. */
export function looseRuns(plan: Plan): Set<number> {
  const reached = joinedToSources(plan);
  return new Set(runEnds(plan).flatMap(({ from }, run) => (reached.has(from) ? [] : [run])));
}
