import {
  allDrinkers,
  DEFAULTS,
  drinkerGroupsOf,
  findDrinker,
  kindFound,
  type Plan,
  type PlanDrinkerGroup,
} from "@headfall/hydraulics";
import type { ChoiceEntry, ChoiceOption, Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import { type FieldKind, TEXT_KINDS } from "../fields/text-kinds.js";
import { groupsReached } from "../kernels/group-names.js";
import type { PlanChange } from "../store/plan-change.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import { type PlanContext, runNames } from "./plan-context.js";

/** Where a group of drinkers stands in the plan: a run holds one, or a list of them. */
function pathOfGroup(plan: Plan, run: number, group: number): Path {
  return Array.isArray(plan.runs[run]?.drinkers)
    ? ["runs", run, "drinkers", group]
    : ["runs", run, "drinkers"];
}

/** The name of a group: its own, or made from its run. */
export function nameOfGroup(plan: Plan, run: number, group: number): string {
  const groups = drinkerGroupsOf(plan.runs[run]!);
  const name = runNames(plan)[run]!;
  return groups[group]?.id ?? (groups.length === 1 ? name : `${name} group ${group + 1}`);
}

/** Every kind of drinker a plan can have, its own ones first. */
export function drinkerKinds(plan: Plan): readonly { label: string; options: readonly ChoiceOption[] }[] {
  const own = Object.keys(plan.ownDrinkers ?? {}).map((name) => ({ value: name, words: name }));
  return [
    ...(own.length > 0 ? [{ label: "Measured", options: own }] : []),
    { label: "Known", options: optionsOf(allDrinkers) },
  ];
}

/** The choice of the kind of drinker. */
export function kindEntry({ plan }: PlanContext, run: number, group: number): ChoiceEntry {
  const { kind } = drinkerGroupsOf(plan.runs[run]!)[group]!;
  const name = nameOfGroup(plan, run, group);
  const known = knownKind(plan, kind);
  return {
    key: `drinkers ${name} kind`,
    title: "Kind",
    name: `Kind of the drinkers ${name}`,
    value: known?.id ?? kind,
    words: known?.name ?? kind,
    isLong: true,
    groups: () => drinkerKinds(plan),
    change: setAt([...pathOfGroup(plan, run, group), "kind"], `kind of ${name}`),
  };
}

function knownKind(plan: Plan, kind: string) {
  if (plan.ownDrinkers !== undefined && Object.hasOwn(plan.ownDrinkers, kind)) return undefined;
  return kindFound(findDrinker(kind));
}

/** Drinkers that share more than the rest of their entries. */
type GroupKey = Exclude<keyof PlanDrinkerGroup, "id" | "kind">;

interface GroupField {
  readonly key: GroupKey;
  readonly title: string;
  readonly kind: FieldKind;
  readonly standIn?: string;
  readonly note?: string;
}

const FIELDS: readonly GroupField[] = [
  { key: "count", title: "How many", kind: "count", standIn: DEFAULTS.drinkerCount.typed },
  {
    key: "every",
    title: "One every",
    kind: "length",
    standIn: "spread evenly",
    note: "From one drinker to the next.",
  },
  {
    key: "first",
    title: "First at",
    kind: "length",
    standIn: "one spacing",
    note: "From the start of the run.",
  },
  {
    key: "drop",
    title: "Drop",
    kind: "length",
    standIn: DEFAULTS.drop.typed,
    note: "How far the valve hangs below the pipe.",
  },
  { key: "busiest", title: "At work, busiest minutes", kind: "atWork", standIn: DEFAULTS.busiest.typed },
  { key: "ordinary", title: "At work, ordinary hour", kind: "atWork", standIn: DEFAULTS.ordinary.typed },
  { key: "need", title: "Flow each must give", kind: "flow" },
];

/** The typed fields of a group of drinkers, by key. */
export function groupEntries(context: PlanContext, run: number, group: number): Record<GroupKey, Entry> {
  const { plan, system } = context;
  const typed = drinkerGroupsOf(plan.runs[run]!)[group]!;
  const name = nameOfGroup(plan, run, group);
  const path = pathOfGroup(plan, run, group);
  const needed = knownKind(plan, typed.kind)?.need;
  const kindsNeed =
    needed === undefined ? plan.ownDrinkers?.[typed.kind]?.need : TEXT_KINDS.flow.write(needed, system);
  const byBirds = numbersOfBirds(context, run, group);
  const entries = FIELDS.map(({ key, title, ...rest }): [GroupKey, Entry] => [
    key,
    {
      form: "typed",
      key: `drinkers ${name} ${key}`,
      title,
      name: `${title}, drinkers ${name}`,
      typed: typed[key] === undefined ? undefined : String(typed[key]),
      ...rest,
      ...(key === "need" && kindsNeed !== undefined ? { standIn: kindsNeed } : {}),
      ...(isOfBirds(key) && byBirds !== undefined ? ofBirds(typed[key] !== undefined, byBirds[key]) : {}),
      change: setAt([...path, key], `${title.toLowerCase()} of ${name}`),
    },
  ]);
  return Object.fromEntries(entries) as Record<GroupKey, Entry>;
}

/** What the birds decide where the plan is silent. */
const OF_BIRDS = ["busiest", "ordinary", "need"] as const;
type BirdKey = (typeof OF_BIRDS)[number];
const isOfBirds = (key: GroupKey): key is BirdKey => (OF_BIRDS as readonly GroupKey[]).includes(key);

/** How a field says whose figure it shows: what is typed stands, else the birds decide. */
const ofBirds = (isTyped: boolean, figure: string | undefined) =>
  isTyped
    ? { note: "Typed. Empty it, and the birds decide.", standIn: "as the birds need" }
    : { standIn: figure ?? "as the birds need", standInFrom: "from the birds" };

/** The numbers a group is judged with, where birds reach it; undefined where none do. */
function numbersOfBirds(
  { plan, checked, system }: PlanContext,
  run: number,
  group: number,
): Partial<Record<BirdKey, string>> | undefined {
  if (!isReached(plan, run, group)) return undefined;
  const found = checked?.line.drinkers.groups.filter((each) => each.run === run)[group];
  if (found === undefined || found.id !== nameOfGroup(plan, run, group)) return {};
  return {
    busiest: String(found.busiest),
    ordinary: String(found.ordinary),
    ...(found.need > 0 ? { need: TEXT_KINDS.flow.write(found.need, system) } : {}),
  };
}

/** Whether birds of a pen reach a group. */
const isReached = (plan: Plan, run: number, group: number): boolean =>
  groupsReached(plan).some((groups) => groups.some((each) => each.run === run && each.group === group));

/** Takes out what is typed of a group that its birds can decide; undefined where nothing is. */
export function leaveToBirds(plan: Plan, run: number, group: number): PlanChange | undefined {
  const typed = drinkerGroupsOf(plan.runs[run]!)[group]!;
  const told = OF_BIRDS.filter((key) => typed[key] !== undefined);
  if (told.length === 0 || !isReached(plan, run, group)) return undefined;
  const path = pathOfGroup(plan, run, group);
  return {
    kind: "setAll",
    entries: told.map((key) => ({ path: [...path, key], value: undefined })),
    what: `drinkers ${nameOfGroup(plan, run, group)} left to the birds`,
  };
}
