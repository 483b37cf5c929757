import { allSoils, type Plan, sourceNames } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { PlanChange } from "../store/plan-change.js";

type Path = readonly (string | number)[];
const set = (path: Path, value: unknown, what: string): PlanChange => ({ kind: "set", path, value, what });

type Footing = NonNullable<Plan["sources"][number]["footing"]>;

/** A part of an entry of the plan with one key changed; none where nothing is left of it. */
function without<Part extends object>(
  part: Part | undefined,
  key: keyof Part,
  value: unknown,
): object | undefined {
  const told = Object.entries({ ...part, [key]: value }).filter(([, each]) => each !== undefined);
  return told.length === 0 ? undefined : Object.fromEntries(told);
}

/** What a source's stand rests on. */
export function footingEntries(plan: Plan, index: number): readonly Entry[] {
  const footing = plan.sources[index]?.footing;
  const name = sourceNames(plan)[index] ?? "";
  const path = ["sources", index, "footing"];
  const field = (
    key: "feet" | "foot" | "width" | "weighs" | "vessel",
    title: string,
    kind: FieldKind,
    standIn: string,
  ): Entry => ({
    form: "typed",
    key: `footing ${index} ${key}`,
    title,
    name: `${title}, ${name}`,
    kind,
    typed: footing?.[key] === undefined ? undefined : String(footing[key]),
    standIn,
    change: (value) => set(path, without<Footing>(footing, key, value), `${title.toLowerCase()} of ${name}`),
  });
  const pad = (key: "length" | "width", title: string): Entry => ({
    form: "typed",
    key: `footing ${index} pad ${key}`,
    title,
    name: `${title}, ${name}`,
    kind: "length",
    typed: footing?.pad?.[key],
    standIn: key === "length" ? "no pads" : "as its length",
    change: (value) => {
      const told = without(footing?.pad, key, value) as { length?: string } | undefined;
      const kept = told?.length === undefined ? undefined : told;
      return set(path, without<Footing>(footing, "pad", kept), `pads of ${name}`);
    },
  });
  return [
    field("feet", "Feet", "number", "4 where there is a stand"),
    field("foot", "Side of a foot", "length", "9 cm"),
    pad("length", "Length of a pad"),
    ...(footing?.pad === undefined ? [] : [pad("width", "Width of a pad")]),
    field("width", "Width of the stand", "length", "as the vessel"),
    field("weighs", "The stand weighs, kg", "number", "not counted"),
    field("vessel", "The empty vessel weighs, kg", "number", "as its kind"),
    {
      form: "tick",
      key: `footing ${index} tied`,
      title: "Tied down",
      name: `${name} is tied down`,
      value: footing?.tied ?? false,
      change: (value) =>
        set(path, without<Footing>(footing, "tied", value ? true : undefined), `whether ${name} is tied`),
    },
  ];
}

/** The soil under all stands. */
export function soilEntry({ soil }: Plan): Entry {
  const words = (id: string) => allSoils.find((one) => one.id === id)?.name ?? id;
  return {
    form: "choice",
    key: "build soil",
    title: "Soil under the stands",
    name: "Soil under the stands",
    value: soil ?? "",
    words: soil === undefined ? "Not told: the least counts" : words(soil),
    isLong: true,
    groups: () => [
      {
        options: [
          { value: "", words: "Not told: the least counts" },
          ...allSoils.map(({ id, name }) => ({ value: id, words: name })),
        ],
      },
    ],
    change: (value) => set(["soil"], value === "" ? undefined : value, "the soil"),
  };
}

/** "2.9 m; 1.3 m" as a list; nothing typed takes it out. */
const listOf = (value: string | number | undefined): readonly string[] | undefined => {
  const parts = String(value ?? "")
    .split(";")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return parts.length === 0 ? undefined : parts;
};

/** Lengths of one pipe on the shelf: what the shop has, and what lies there. */
export function lengthEntries({ shelf = [] }: Plan, index: number, pipe: string): readonly Entry[] {
  const { sold, pieces } = shelf[index]!;
  const told = typeof sold === "string" ? [sold] : sold;
  const list = (
    key: "sold" | "pieces",
    title: string,
    typed: readonly string[] | undefined,
    standIn: string,
  ): Entry => ({
    form: "typed",
    key: `shelf ${index} ${key}`,
    title,
    name: `${title}: ${pipe}`,
    kind: "name",
    typed: typed?.join("; "),
    standIn,
    note: 'Lengths with their units, apart by ";": 2.9 m; 85 cm.',
    change: (value) => set(["shelf", index, key], listOf(value), `${title.toLowerCase()} of ${pipe}`),
  });
  return [
    list("sold", "Lengths sold", told, "the usual one"),
    list("pieces", "Pieces on hand", pieces, "none"),
  ];
}

/** One person to call. */
export function contactEntries({ contacts = [] }: Plan, index: number): readonly Entry[] {
  const contact = contacts[index];
  const field = (key: "who" | "phone" | "note", title: string, isNeeded: boolean): Entry => ({
    form: "typed",
    key: `contact ${index} ${key}`,
    title,
    name: `${title}, contact ${index + 1}`,
    kind: "name",
    typed: contact?.[key],
    isNeeded,
    change: (value) => set(["contacts", index, key], value, `${title.toLowerCase()} of contact ${index + 1}`),
  });
  return [
    field("who", "Who", true),
    field("phone", "Telephone", false),
    field("note", "When to call", false),
  ];
}

export const addContact = ({ contacts = [] }: Plan): PlanChange =>
  set(["contacts"], [...contacts, { who: "Neighbour" }], "one more to call");

/** Takes a contact out; with the last one the list goes. */
export function dropContact({ contacts = [] }: Plan, index: number): PlanChange {
  const left = contacts.filter((_, i) => i !== index);
  return set(["contacts"], left.length === 0 ? undefined : left, `contact ${index + 1}, taken out`);
}
