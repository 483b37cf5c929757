import { type Plan, runEnds, runNames, sourceNames } from "@headfall/hydraulics";
import type { Selected } from "../../kernels/selected.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { heightsOf } from "../plan-heights.js";
import { joinRuns } from "./join-runs.js";
import { keepHeights } from "./keep-heights.js";
import { withGroupsNamed } from "./keep-pens.js";
import { tidyGroup, tidySource } from "./part-keys.js";
import {
  GONE,
  groupsOf,
  jointNames,
  meetingRuns,
  refuse,
  withGroups,
  withoutPoints,
  withoutRuns,
  withoutSource,
  withRun,
} from "./plan-parts.js";
import { joinedToSources, looseRuns } from "./reach-parts.js";

/** Takes a part out, with all that then hangs on nothing; what stays keeps its height. */
export function deletePart(plan: Plan, part: Selected, system: UnitSystem): Edited {
  switch (part.kind) {
    case "source":
      return deleteSource(plan, part.source, system);
    case "run":
      return deleteRun(plan, part.run, system);
    case "joint":
      return deleteJoint(plan, part.joint, system);
    case "drinkers":
      return part.number === undefined
        ? deleteGroup(plan, part.run, part.group)
        : deleteDrinker(plan, part.run, part.group);
  }
}

function deleteSource(plan: Plan, index: number, system: UnitSystem): Edited {
  const name = sourceNames(plan)[index];
  if (name === undefined) return refuse(GONE);
  if (plan.sources.length === 1) return refuse("The last source cannot be deleted: no water would come.");
  const runs = new Set(meetingRuns(plan).get(name) ?? []);
  // The ends are told before the source goes: the first run starts at the first source.
  const without = withoutSource(withoutRuns(plan, runs), index);
  return swept(plan, without, { name, deleted: runs.size }, system);
}

function deleteRun(plan: Plan, index: number, system: UnitSystem): Edited {
  const name = runNames(plan)[index];
  if (name === undefined) return refuse(GONE);
  return swept(plan, withoutRuns(plan, new Set([index])), { name, deleted: 0 }, system);
}

/** A joint that two runs meet at is left out of the way; at any other, the runs beyond it go. */
function deleteJoint(plan: Plan, joint: string, system: UnitSystem): Edited {
  const source = sourceNames(plan).indexOf(joint);
  if (source >= 0) return deleteSource(plan, source, system);
  if (!jointNames(plan).has(joint)) return refuse(GONE);
  const meeting = meetingRuns(plan).get(joint) ?? [];
  if (meeting.length === 0)
    return swept(
      plan,
      withoutPoints(plan, (id) => id === joint),
      { name: joint, deleted: 0 },
      system,
    );
  const joined = meeting.length === 2 ? joinRuns(plan, joint, system) : undefined;
  if (joined?.ok) return { ...joined, words: `${joint} deleted: ${joined.words}` };
  const bringsWater = joinedToSources(plan).get(joint);
  const beyond = meeting.length === 1 ? meeting : meeting.filter((run) => run !== bringsWater);
  return swept(plan, withoutRuns(plan, new Set(beyond)), { name: joint, deleted: beyond.length }, system);
}

function deleteGroup(before: Plan, run: number, group: number): Edited {
  const plan = withGroupsNamed(before, [run]);
  const groups = groupsOf(plan.runs[run]);
  if (groups[group] === undefined) return refuse(GONE);
  const left = groups.filter((_, i) => i !== group);
  const count = groups[group].count ?? 1;
  return {
    ok: true,
    plan: withRun(plan, run, withGroups(plan.runs[run]!, left)),
    words: `${count} ${count === 1 ? "drinker" : "drinkers"} of ${runNames(plan)[run]} deleted`,
    selected: { kind: "run", run },
  };
}

/** One drinker fewer; a group has no holes, so the others close up or spread as the group says. */
function deleteDrinker(plan: Plan, run: number, group: number): Edited {
  const fewer = groupsOf(plan.runs[run])[group];
  const count = (fewer?.count ?? 1) - 1;
  if (fewer === undefined || count === 0) return deleteGroup(plan, run, group);
  const most = (typed: number | string | undefined) =>
    typeof typed === "number" ? Math.min(typed, count) : typed;
  const { busiest, ordinary } = fewer;
  const left = tidyGroup({ ...fewer, count, busiest: most(busiest), ordinary: most(ordinary) });
  const groups = groupsOf(plan.runs[run]).map((each, i) => (i === group ? left : each));
  return {
    ok: true,
    plan: withRun(plan, run, withGroups(plan.runs[run]!, groups)),
    words: `one drinker of ${runNames(plan)[run]} fewer`,
    selected: { kind: "drinkers", run, group },
  };
}

/** What is left once all that hangs on nothing is gone too: runs, their joints, and the filling of header tanks. */
function swept(
  before: Plan,
  plan: Plan,
  { name, deleted }: { readonly name: string; readonly deleted: number },
  system: UnitSystem,
): Edited {
  // What hung on nothing before was so by the user's will and stays.
  const wasLoose = new Set([...looseRuns(before)].map((run) => runNames(before)[run]));
  const loose = [...looseRuns(plan)].filter((run) => !wasLoose.has(runNames(plan)[run]));
  const runs = withoutRuns(plan, new Set(loose));
  const left = new Set(runEnds(runs).flatMap(({ from, to }) => [from, to]));
  const hung = new Set(runEnds(before).flatMap(({ from, to }) => [from, to]));
  const points = withoutPoints(runs, (id) => hung.has(id) && !left.has(id));
  const { plan: fed, unfed } = withoutLostFeeds(points);
  const kept = keepHeights(heightsOf(before), fed, system);
  const hangers = deleted + loose.length;
  const words = [`${name} deleted`];
  if (hangers > 0) words.push(`with ${hangers} ${hangers === 1 ? "run" : "runs"} that hung on it`);
  if (unfed.length > 0) words.push(`${unfed.join(", ")} no longer filled by the line`);
  return { ok: true, plan: kept, words: words.join(", ") };
}

function withoutLostFeeds(plan: Plan): { readonly plan: Plan; readonly unfed: readonly string[] } {
  const joints = jointNames(plan);
  const names = sourceNames(plan);
  const unfed = plan.sources.flatMap(({ feed }, i) =>
    feed !== undefined && !joints.has(feed.from) ? [i] : [],
  );
  if (unfed.length === 0) return { plan, unfed: [] };
  const sources = plan.sources.map((source, i) =>
    unfed.includes(i) ? tidySource({ ...source, feed: undefined }) : source,
  );
  return { plan: { ...plan, sources }, unfed: unfed.map((i) => names[i]!) };
}
