import {
  allBirds,
  type BirdKind,
  batchesOf,
  DEFAULTS,
  type Plan,
  type PlanBirds,
  readDay,
  writeAge,
  writeDay,
} from "@headfall/hydraulics";
import type { ChoiceEntry, Entry, PickedEntry, TypedEntry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import { countedBirds, kindOf } from "../kernels/birds/kind-of-birds.js";
import { nameOfPen } from "../kernels/pen-names.js";
import { type BirdsPlace, birdsAt, pathOfBirds } from "../store/birds-place.js";
import type { PlanChange } from "../store/plan-change.js";

/** A batch of birds in a plan, and what its fields need to know. */
export interface BatchPlace extends BirdsPlace {
  readonly penName: string;
  /** The day ages are counted on. */
  readonly day: string;
}

/** The name of a pen. */
export function penNameEntry(plan: Plan, pen: number): TypedEntry {
  const name = nameOfPen(plan, pen);
  return {
    key: `pen ${pen + 1} name`,
    title: "Name",
    name: `Name of the pen ${name}`,
    kind: "name",
    typed: name,
    isNeeded: true,
    change: (value) => ({
      kind: "setAll",
      entries: [{ path: ["pens", pen, "id"], value }, ...movesRenamed(plan, name, value)],
      what: `${name} called ${value}`,
    }),
  };
}

/** Moves into the pen lead to it by its new name. */
const movesRenamed = (plan: Plan, from: string, to: unknown) =>
  (plan.pens ?? []).flatMap((pen, p) =>
    batchesOf(pen).flatMap((batch, k) =>
      (batch.moves ?? []).flatMap((move, m) =>
        move.to === from
          ? [{ path: [...pathOfBirds({ plan, pen: p, batch: k }), "moves", m, "to"], value: to }]
          : [],
      ),
    ),
  );

/** "30 × Laying hen, 20 × Meat chicken". */
export const whoIsIn = (plan: Plan, pen: number): string =>
  batchesOf(plan.pens?.[pen] ?? { birds: [] })
    .map(countedBirds)
    .join(", ");

const keyOf = ({ pen, batch }: BatchPlace, last: string) => `pen ${pen + 1} birds ${batch + 1} ${last}`;
const namedAs = ({ penName, batch }: BatchPlace) => `birds ${batch + 1} of ${penName}`;

function set(place: BatchPlace, entries: Readonly<Record<string, unknown>>, what: string): PlanChange {
  const path = pathOfBirds(place);
  return {
    kind: "setAll",
    entries: Object.entries(entries).map(([key, value]) => ({ path: [...path, key], value })),
    what: `${what} of the ${namedAs(place)}`,
  };
}

/** The fields of a batch, from top to bottom. */
export function batchEntries(place: BatchPlace): readonly Entry[] {
  const birds = birdsAt(place);
  const lays = kindOf(birds)?.lays ?? false;
  return [
    { form: "choice", ...kindEntry(place, birds) },
    { form: "typed", ...countEntry(place, birds) },
    { form: "choice", ...agedByEntry(place, birds) },
    ...ageEntry(place, birds),
    ...(lays || birds.lay !== undefined ? [{ form: "typed" as const, ...layEntry(place, birds) }] : []),
  ];
}

const SPECIES: Readonly<Record<BirdKind["species"], string>> = {
  chicken: "Chickens",
  turkey: "Turkeys",
  duck: "Ducks",
  goose: "Geese",
  quail: "Quail",
  game: "Game birds",
};

function kindEntry(place: BatchPlace, birds: PlanBirds): ChoiceEntry {
  const known = kindOf(birds);
  return {
    key: keyOf(place, "kind"),
    title: "Birds",
    name: `Kind of the ${namedAs(place)}`,
    value: known?.id ?? birds.kind,
    words: known?.name ?? birds.kind,
    isLong: true,
    note: known?.lays && daysOf(place, birds, known.grownDays) < known.grownDays ? ONLY_GROWN : undefined,
    groups: () =>
      Object.entries(SPECIES).map(([species, label]) => ({
        label,
        options: optionsOf(allBirds.filter((bird) => bird.species === species)),
      })),
    // What was said of laying means nothing of birds that do not lay.
    change: (value) => set(place, { kind: value, lay: keepsLay(value) ? birds.lay : undefined }, "kind"),
  };
}

/** Laying hens have no rows of younger birds. */
const ONLY_GROWN =
  "What laying hens drink is known of grown ones only: for these choose Growing pullet or cockerel.";

const keepsLay = (id: string): boolean => allBirds.find((bird) => bird.id === id)?.lays ?? false;

function countEntry(place: BatchPlace, birds: PlanBirds): TypedEntry {
  return {
    key: keyOf(place, "count"),
    title: "How many",
    name: `How many, ${namedAs(place)}`,
    kind: "count",
    typed: String(birds.count),
    isNeeded: true,
    change: (value) => set(place, { count: value }, "number"),
  };
}

/** How their age is told: grown, an age, or the day they hatched. What is known passes from one way to the other. */
function agedByEntry(place: BatchPlace, birds: PlanBirds): ChoiceEntry {
  const grown = kindOf(birds)?.grownDays ?? 0;
  const days = daysOf(place, birds, grown);
  const value = birds.age !== undefined ? "age" : birds.hatched !== undefined ? "hatched" : "grown";
  const options = [
    { value: "grown", words: "Grown" },
    { value: "age", words: "By age" },
    { value: "hatched", words: "By hatch day" },
  ];
  return {
    key: keyOf(place, "aged by"),
    title: "How old",
    name: `How the age of the ${namedAs(place)} is told`,
    value,
    words: options.find((option) => option.value === value)!.words,
    note: value === "grown" ? `Taken as ${writeAge(grown)}.` : undefined,
    groups: () => [{ options }],
    change: (chosen) =>
      set(
        place,
        {
          age: chosen === "age" ? typedAge(Math.max(0, days)) : undefined,
          hatched: chosen === "hatched" ? writeDay((readDay(place.day) ?? 0) - days) : undefined,
        },
        "age",
      ),
  };
}

/** Age on the day [days]. */
function daysOf({ plan, day }: BatchPlace, { age, hatched }: PlanBirds, grown: number): number {
  if (hatched !== undefined) return (readDay(plan.day ?? day) ?? 0) - (readDay(hatched) ?? 0);
  const typed = /^(\d+(?:\.\d+)?) ?(days?|weeks?)$/.exec(age ?? "");
  if (typed === null) return grown;
  return Math.round(Number(typed[1]) * (typed[2]!.startsWith("w") ? 7 : 1));
}

const typedAge = (days: number): string =>
  days % 7 === 0 && days > 0 ? `${days / 7} weeks` : `${days} days`;

function ageEntry(place: BatchPlace, birds: PlanBirds): readonly Entry[] {
  if (birds.hatched !== undefined) return [{ form: "picked", ...hatchedEntry(place, birds.hatched) }];
  if (birds.age === undefined) return [];
  return [
    {
      form: "typed",
      key: keyOf(place, "age"),
      title: "Age",
      name: `Age of the ${namedAs(place)}`,
      kind: "age",
      typed: birds.age,
      isNeeded: true,
      note: `On ${place.plan.day ?? "today"}. A bare number is weeks.`,
      change: (value) => set(place, { age: value }, "age"),
    },
  ];
}

function hatchedEntry(place: BatchPlace, hatched: string): PickedEntry {
  const days = (readDay(place.day) ?? 0) - (readDay(hatched) ?? 0);
  return {
    key: keyOf(place, "hatched"),
    title: "Hatched on",
    name: `Day the ${namedAs(place)} hatched`,
    picks: "date",
    value: hatched,
    note: days < 0 ? `In ${writeAge(-days)}.` : `${writeAge(days)} old on ${place.day}.`,
    change: (value) => set(place, { hatched: value }, "day of hatching"),
  };
}

function layEntry(place: BatchPlace, birds: PlanBirds): TypedEntry {
  return {
    key: keyOf(place, "lay"),
    title: "Eggs a day from a hundred",
    name: `Share of the ${namedAs(place)} that lay on a day`,
    kind: "share",
    typed: birds.lay,
    standIn: DEFAULTS.lay.typed,
    change: (value) => set(place, { lay: value }, "laying"),
  };
}
