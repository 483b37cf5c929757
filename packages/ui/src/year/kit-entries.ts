import { allDrinkers, allWaterers, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { PlanChange } from "../store/plan-change.js";

type Kit = NonNullable<Plan["kit"]>;

/** The fields of one entry of the kit. */
export function kitEntries(plan: Plan, index: number): readonly Entry[] {
  const entry = plan.kit![index]!;
  const name = nameOfKind(entry.kind);
  const set =
    (key: string, words: string) =>
    (value: unknown): PlanChange => ({
      kind: "set",
      path: ["kit", index, key],
      value,
      what: `${words} of ${name}`,
    });
  return [
    {
      form: "choice",
      key: `kit ${index + 1} kind`,
      title: "Kind",
      name: `Kind of kit ${index + 1}`,
      value: idOfKind(entry.kind),
      words: name,
      isLong: true,
      groups: () => KINDS,
      change: set("kind", "kind"),
    },
    {
      form: "typed",
      key: `kit ${index + 1} count`,
      title: "How many",
      name: `How many: ${name}`,
      kind: "count",
      typed: String(entry.count),
      isNeeded: true,
      change: set("count", "number"),
    },
    {
      form: "typed",
      key: `kit ${index + 1} spare`,
      title: "Kept back",
      name: `Kept back of ${name}`,
      kind: "count",
      typed: entry.spare === undefined ? undefined : String(entry.spare),
      standIn: "none",
      change: set("spare", "spares"),
    },
  ];
}

const KINDS = [
  { label: "Waterers", options: allWaterers.map(({ id, name }) => ({ value: id, words: name })) },
  { label: "Drinkers of a line", options: allDrinkers.map(({ id, name }) => ({ value: id, words: name })) },
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

const kitBecomes = (kit: Kit | undefined, what: string): PlanChange => ({
  kind: "set",
  path: ["kit"],
  value: kit,
  what,
});
