import { allDrinkers, allWaterers, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import type { PlanChange } from "../store/plan-change.js";
import { setAt } from "../store/set-at.js";

type Kit = NonNullable<Plan["kit"]>;

/** The fields of one entry of the kit. */
export function kitEntries(plan: Plan, index: number): readonly Entry[] {
  const { kind, count, spare } = plan.kit![index]!;
  const name = nameOfKind(kind);
  const set = (key: keyof Kit[number], words: string) => setAt(["kit", index, key], `${words} of ${name}`);
  return [
    { ...kindChoice(kind, index + 1), change: set("kind", "kind") },
    {
      form: "typed",
      key: `kit ${index + 1} count`,
      title: "How many",
      name: `How many: ${name}`,
      kind: "count",
      typed: String(count),
      isNeeded: true,
      change: set("count", "number"),
    },
    {
      form: "typed",
      key: `kit ${index + 1} spare`,
      title: "Kept back",
      name: `Kept back of ${name}`,
      kind: "count",
      typed: spare === undefined ? undefined : String(spare),
      standIn: "none",
      change: set("spare", "spares"),
    },
  ];
}

const kindChoice = (kind: string, number: number) =>
  ({
    form: "choice",
    key: `kit ${number} kind`,
    title: "Kind",
    name: `Kind of kit ${number}`,
    value: idOfKind(kind),
    words: nameOfKind(kind),
    isLong: true,
    groups: () => KINDS,
  }) as const;

const KINDS = [
  { label: "Waterers", options: optionsOf(allWaterers) },
  { label: "Drinkers of a line", options: optionsOf(allDrinkers) },
];

const all = [...allWaterers, ...allDrinkers];
const known = (words: string) => all.find(({ id, name }) => id === words || name === words);
const idOfKind = (words: string): string => known(words)?.id ?? words;
export const nameOfKind = (words: string): string => known(words)?.name ?? words;

/** One more kind on hand: the first that is not there yet. */
export function addKit(plan: Plan): PlanChange {
  const kit = plan.kit ?? [];
  const next = allWaterers.find(({ id }) => !kit.some(({ kind }) => kind === id)) ?? allWaterers[0]!;
  return kitBecomes([...kit, { kind: next.id, count: 1 }], `${next.name} on hand`);
}

export function dropKit(plan: Plan, index: number): PlanChange {
  const kit = plan.kit ?? [];
  const left = kit.filter((_, k) => k !== index);
  return kitBecomes(
    left.length === 0 ? undefined : left,
    `${nameOfKind(kit[index]?.kind ?? "")} no longer on hand`,
  );
}

const kitBecomes = (kit: Kit | undefined, what: string): PlanChange => setAt(["kit"], what)(kit);
