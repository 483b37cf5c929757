import { drinkerGroupsOf, type Plan, runNames } from "@headfall/hydraulics";

/** A group of drinkers, where it hangs, and the name by which a pen can mean it. */
export interface NamedGroup {
  readonly run: number;
  readonly group: number;
  readonly name: string;
  /** Whether the plan gives it that name itself. */
  readonly isOwn: boolean;
  /** Name of its run, which means all of that run's drinkers. */
  readonly runName: string;
}

/** Every group of drinkers, in the order of the plan; one without a name of its own is called after its run. */
export function namedGroups(plan: Plan): readonly NamedGroup[] {
  const names = runNames(plan);
  return plan.runs.flatMap((each, run) => {
    const groups = drinkerGroupsOf(each);
    const runName = names[run]!;
    return groups.map(({ id }, group) => ({
      run,
      group,
      name: id ?? (groups.length === 1 ? runName : `${runName} group ${group + 1}`),
      isOwn: id !== undefined,
      runName,
    }));
  });
}

/** Every name by which a pen can mean drinkers: of groups, and of runs that have any. */
export const drinkerNames = (plan: Plan): ReadonlySet<string> =>
  new Set(namedGroups(plan).flatMap(({ name, runName }) => [runName, name]));

/** The pen that takes what no other names: of several that name none, the first without loose waterers. */
function openPen(pens: NonNullable<Plan["pens"]>): number {
  const isOpen = ({ drinkers }: (typeof pens)[number]) => drinkers === undefined;
  const first = pens.findIndex((pen) => isOpen(pen) && (pen.waterers ?? []).length === 0);
  return first >= 0 ? first : pens.findIndex(isOpen);
}

/** By pen, the groups it reaches: those it names, or those that no other does. */
export function groupsReached(plan: Plan): readonly (readonly NamedGroup[])[] {
  const groups = namedGroups(plan);
  const pens = plan.pens ?? [];
  const isNamed = ({ name, runName }: NamedGroup, list: readonly string[] | undefined) =>
    list?.some((each) => each === name || each === runName) ?? false;
  const open = openPen(pens);
  return pens.map(({ drinkers }, p) =>
    drinkers === undefined
      ? groups.filter((group) => p === open && !pens.some((pen) => isNamed(group, pen.drinkers)))
      : groups.filter((group) => isNamed(group, drinkers)),
  );
}
