import { type Plan, runEnds, runNames, sourceNames } from "@headfall/hydraulics";
import type { Selected } from "../../kernels/selected.js";
import type { Edited } from "../plan-change.js";
import { renamedGroupInPens, renamedRunInPens } from "./keep-pens.js";
import { tidyGroup, tidyPoint, tidyRun, tidySource } from "./part-keys.js";
import { GONE, groupsOf, jointNames, refuse, withGroups, withRun, withSource } from "./plan-parts.js";

/** Gives a part another name, wherever the plan mentions it. */
export function renamePart(plan: Plan, part: Selected, typed: string): Edited {
  const name = typed.trim();
  if (name === "") return refuse("A name is needed.");
  switch (part.kind) {
    case "source":
      return renameSource(plan, part.source, name);
    case "run":
      return withPensKept(renameRun(plan, part.run, name), (after) =>
        renamedRunInPens(plan, after, part.run),
      );
    case "joint": {
      const source = sourceNames(plan).indexOf(part.joint);
      return source < 0 ? renameJoint(plan, part.joint, name) : renameSource(plan, source, name);
    }
    case "drinkers":
      return withPensKept(renameGroup(plan, part.run, part.group, name), (after) =>
        renamedGroupInPens(plan, after, part.run, part.group),
      );
  }
}

const withPensKept = (edited: Edited, keep: (after: Plan) => Plan): Edited =>
  edited.ok ? { ...edited, plan: keep(edited.plan) } : edited;

const taken = (name: string) => refuse(`Something is called ${name} already.`);
const called = (plan: Plan, was: string, name: string, selected: Selected): Edited => ({
  ok: true,
  plan,
  words: `${was} called ${name}`,
  selected,
});

function renameSource(plan: Plan, index: number, name: string): Edited {
  const was = sourceNames(plan)[index];
  if (was === undefined) return refuse(GONE);
  const selected = { kind: "source", source: index } as const;
  if (was === name) return called(plan, was, name, selected);
  if (jointNames(plan).has(name)) return taken(name);
  const named = withSource(plan, index, tidySource({ ...plan.sources[index]!, id: name }));
  return called(withMentions(named, was, name), was, name, selected);
}

function renameJoint(plan: Plan, was: string, name: string): Edited {
  const joints = jointNames(plan);
  if (!joints.has(was)) return refuse(GONE);
  const selected = { kind: "joint", joint: name } as const;
  if (was === name) return called(plan, was, name, selected);
  if (joints.has(name)) return taken(name);
  // An end that a run names after itself is written down before it can have another name.
  const ends = runEnds(plan);
  const told = plan.runs.map((run, i) =>
    run.to === undefined && ends[i]!.to === was ? tidyRun({ ...run, to: was }) : run,
  );
  return called(withMentions({ ...plan, runs: told }, was, name), was, name, selected);
}

function renameRun(plan: Plan, index: number, name: string): Edited {
  const was = runNames(plan)[index];
  if (was === undefined) return refuse(GONE);
  const selected = { kind: "run", run: index } as const;
  if (was === name) return called(plan, was, name, selected);
  if (runNames(plan).includes(name)) return taken(name);
  const run = plan.runs[index]!;
  const end = runEnds(plan)[index]!.to;
  const named = (to: string | undefined) => withRun(plan, index, tidyRun({ ...run, id: name, to }));
  if (run.to !== undefined) return called(named(run.to), was, name, selected);
  // The end it names after itself takes the new name too, unless something has that.
  const newEnd = `${name} end`;
  if (jointNames(plan).has(newEnd)) return called(named(end), was, name, selected);
  return called(withMentions(named(undefined), end, newEnd), was, name, selected);
}

function renameGroup(plan: Plan, run: number, group: number, name: string): Edited {
  const groups = groupsOf(plan.runs[run]);
  if (groups[group] === undefined) return refuse(GONE);
  const selected = { kind: "drinkers", run, group } as const;
  if (groups.some(({ id }, i) => id === name && i !== group)) return taken(name);
  const was = groups[group].id ?? `drinkers of ${runNames(plan)[run]}`;
  const named = groups.map((each, i) => (i === group ? tidyGroup({ ...each, id: name }) : each));
  const renamed = withRun(plan, run, withGroups(plan.runs[run]!, named));
  return called(renamed, was, name, selected);
}

/** The plan with a joint called otherwise by all that mention it. */
function withMentions(plan: Plan, was: string, name: string): Plan {
  const sources = plan.sources.map((source) =>
    source.feed?.from === was ? tidySource({ ...source, feed: { ...source.feed, from: name } }) : source,
  );
  const points = plan.points?.map((point) => (point.id === was ? tidyPoint({ ...point, id: name }) : point));
  const runs = plan.runs.map((run) => {
    if (run.from !== was && run.to !== was) return run;
    const renamed = (each: string | undefined) => (each === was ? name : each);
    return tidyRun({ ...run, from: renamed(run.from), to: renamed(run.to) });
  });
  return points === undefined ? { ...plan, sources, runs } : { ...plan, sources, points, runs };
}
