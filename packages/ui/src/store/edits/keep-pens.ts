import type { Plan } from "@headfall/hydraulics";
import { drinkerNames, namedGroups } from "../../kernels/group-names.js";
import { isSameValue } from "../plan-values.js";
import { withPens } from "./edit-pens.js";
import { tidyGroup, tidyPen } from "./part-keys.js";
import { groupsOf, withGroups, withRun } from "./plan-parts.js";

/** Names by which pens mean their drinkers, kept right while the line beneath them becomes another. */

/** The plan with each name in its pens' lists of drinkers in the place of others; an empty list goes. */
function withNamesInPens(plan: Plan, namesFor: (name: string, pen: number) => readonly string[]): Plan {
  if (plan.pens === undefined) return plan;
  const pens = plan.pens.map((pen, p) => {
    if (pen.drinkers === undefined) return pen;
    const drinkers = [...new Set(pen.drinkers.flatMap((name) => namesFor(name, p)))];
    if (isSameValue(drinkers, pen.drinkers)) return pen;
    return tidyPen({ ...pen, drinkers: drinkers.length === 0 ? undefined : drinkers });
  });
  return pens.every((pen, p) => pen === plan.pens![p]) ? plan : withPens(plan, pens);
}

/** The plan after an edit without the names that meant drinkers before it and mean nothing now. */
export function withoutLostNames(before: Plan, after: Plan): Plan {
  if (after.pens === undefined || after.runs === before.runs) return after;
  const [then, now] = [drinkerNames(before), drinkerNames(after)];
  return withNamesInPens(after, (name) => (then.has(name) && !now.has(name) ? [] : [name]));
}

/**
 * The plan with names of their own for those groups of some runs that a pen means by their number, so that they are
 * still meant when that number is another.
 */
export function withGroupsNamed(plan: Plan, runs: readonly number[]): Plan {
  const meant = new Set(plan.pens?.flatMap(({ drinkers = [] }) => drinkers));
  const open = namedGroups(plan).filter(
    ({ run, name, runName, isOwn }) => runs.includes(run) && !isOwn && name !== runName && meant.has(name),
  );
  return open.reduce(
    (each, { run, group, name }) =>
      withRun(
        each,
        run,
        withGroups(
          each.runs[run]!,
          groupsOf(each.runs[run]).map((one, g) => (g === group ? tidyGroup({ ...one, id: name }) : one)),
        ),
      ),
    plan,
  );
}

const groupsOnRun = (plan: Plan, run: number) => namedGroups(plan).filter((group) => group.run === run);

/** After a run was called otherwise: pens that mean it, or groups that are called after it, say so. */
export function renamedRunInPens(before: Plan, after: Plan, run: number): Plan {
  if (before.pens === undefined) return after;
  const then = groupsOnRun(before, run);
  const now = groupsOnRun(after, run);
  const names = new Map<string, string>();
  then.forEach((group, g) => {
    names.set(group.name, now[g]!.name);
    names.set(group.runName, now[g]!.runName);
  });
  return withNamesInPens(after, (name) => renamed(name, names.get(name), isElsewhere(after, run, name)));
}

/** After a group was called otherwise. */
export function renamedGroupInPens(before: Plan, after: Plan, run: number, group: number): Plan {
  if (before.pens === undefined) return after;
  const find = (plan: Plan) => namedGroups(plan).find((each) => each.run === run && each.group === group)!;
  const [was, is] = [find(before), find(after)];
  // The name of its run goes on meaning all that hangs there.
  if (was.name === was.runName) return after;
  return withNamesInPens(after, (name) =>
    renamed(name, name === was.name ? is.name : undefined, isElsewhere(after, run, name)),
  );
}

const renamed = (was: string, is: string | undefined, isKept: boolean): readonly string[] => {
  if (is === undefined || is === was) return [was];
  return isKept ? [was, is] : [is];
};

/** Whether a name means drinkers of another run as well. */
const isElsewhere = (plan: Plan, run: number, name: string): boolean =>
  namedGroups(plan).some((group) => group.run !== run && (group.name === name || group.runName === name));

/** After a run was cut in two, its second part the last run of the plan: who reached the whole reaches both parts. */
export function splitRunInPens(before: Plan, after: Plan, run: number): Plan {
  if (before.pens === undefined) return after;
  const last = after.runs.length - 1;
  const was = groupsOnRun(before, run);
  const beyond = groupsOnRun(after, last);
  const known = new Set(was.map(({ name }) => name));
  const partOf = (name: string) =>
    beyond.filter(
      (group) => group.isOwn && !known.has(group.name) && group.name.replace(/ \d+$/, "") === name,
    );
  const names = drinkerNames(after);
  return withNamesInPens(after, (name) => {
    const isRun = was.some(({ runName }) => runName === name);
    const parts = isRun
      ? beyond.slice(0, 1).map(({ runName }) => runName)
      : partOf(name).map((group) => group.name);
    return [...(names.has(name) || parts.length === 0 ? [name] : []), ...parts];
  });
}

/** After a copy was put beside a part: who reached that reaches the copy too. */
export function copiedInPens(after: Plan, name: string, copy: string): Plan {
  return withNamesInPens(after, (each) => (each === name ? [name, copy] : [each]));
}

/** Pens that mean a name, by position. */
const pensMeaning = ({ pens = [] }: Plan, name: string): string =>
  pens.flatMap(({ drinkers }, p) => (drinkers?.includes(name) ? [p] : [])).join();

/**
 * The plan before two runs are made one, told so that each pen keeps its drinkers: where one pen reaches both, by the
 * name of the run that stays; else group by group.
 */
export function withRunsToJoin(plan: Plan, kept: number, gone: number): Plan {
  if (plan.pens === undefined) return plan;
  const here = groupsOnRun(plan, kept);
  const there = groupsOnRun(plan, gone);
  if (there.length === 0) return plan;
  const goneName = there[0]!.runName;
  if (here.length === 0) {
    const keptName = plan.runs[kept]!.id ?? `run ${kept + 1}`;
    return withNamesInPens(withGroupsNamed(plan, [gone]), (name) =>
      name === goneName ? [goneName, keptName] : [name],
    );
  }
  const keptName = here[0]!.runName;
  const isByGroup = [...here, ...there].some(
    ({ name, runName }) => name !== runName && pensMeaning(plan, name) !== "",
  );
  if (!isByGroup && pensMeaning(plan, keptName) === pensMeaning(plan, goneName)) return plan;
  return withRunsSpelledOut(plan, [kept, gone]);
}

/** The plan with names of their own for all groups of some runs, by which pens that meant the runs now mean them. */
function withRunsSpelledOut(plan: Plan, runs: readonly number[]): Plan {
  const taken = new Set(drinkerNames(plan));
  const spelled = new Map<string, string[]>();
  let told = plan;
  for (const run of runs) {
    const named = groupsOf(plan.runs[run]).map((group, g) => {
      const { name, runName } = namedGroups(plan).find((each) => each.run === run && each.group === g)!;
      const id = name === runName ? freeOf(`${runName} drinkers`, taken) : name;
      taken.add(id);
      spelled.set(runName, [...(spelled.get(runName) ?? []), id]);
      return tidyGroup({ ...group, id });
    });
    told = withRun(told, run, withGroups(told.runs[run]!, named));
  }
  return withNamesInPens(told, (name) => [
    ...(spelled.get(name) ?? [name]),
    ...(spelled.has(name) &&
    namedGroups(told).some((group) => !runs.includes(group.run) && group.name === name)
      ? [name]
      : []),
  ]);
}

function freeOf(stem: string, taken: ReadonlySet<string>): string {
  let name = stem;
  for (let number = 2; taken.has(name); number += 1) name = `${stem} ${number}`;
  return name;
}

/** Whether two groups of a run are the same pen's. */
export function haveOnePen(plan: Plan, one: string | undefined, other: string | undefined): boolean {
  if (plan.pens === undefined) return true;
  const meant = (name: string | undefined) => (name === undefined ? "" : pensMeaning(plan, name));
  return meant(one) === meant(other);
}
