import { allSoils, type Plan, sourceNames } from "@headfall/hydraulics";
import type { Entry, TypedEntry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { PlanChange } from "../store/plan-change.js";
import { partWith } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";

type Footing = NonNullable<Plan["sources"][number]["footing"]>;
type FootingKey = "feet" | "foot" | "width" | "weighs" | "vessel";

/** The stand of one source, and what its fields need to know. */
interface StandPlace {
  readonly index: number;
  readonly name: string;
  readonly footing: Footing | undefined;
}

/** What a source's stand rests on. */
export function footingEntries(plan: Plan, index: number): readonly Entry[] {
  const footing = plan.sources[index]?.footing;
  const stand = { index, name: sourceNames(plan)[index] ?? "", footing };
  const field = (key: FootingKey, title: string, kind: FieldKind, standIn: string) =>
    footingField(stand, key, { title, kind, standIn });
  return [
    field("feet", "Feet", "number", "4 where there is a stand"),
    field("foot", "Side of a foot", "length", "9 cm"),
    padField(stand, "length", { title: "Length of a pad", standIn: "no pads" }),
    ...(footing?.pad === undefined
      ? []
      : [padField(stand, "width", { title: "Width of a pad", standIn: "as its length" })]),
    field("width", "Width of the stand", "length", "as the vessel"),
    field("weighs", "The stand weighs, kg", "number", "not counted"),
    field("vessel", "The empty vessel weighs, kg", "number", "as its kind"),
    tiedEntry(stand),
  ];
}

const footingChange = ({ index, footing }: StandPlace, key: keyof Footing, value: unknown, what: string) =>
  setAt(["sources", index, "footing"], what)(partWith(footing, key, value));

function footingField(
  stand: StandPlace,
  key: FootingKey,
  { title, kind, standIn }: Pick<TypedEntry, "title" | "kind" | "standIn">,
): Entry {
  const typed = stand.footing?.[key];
  return {
    form: "typed",
    key: `footing ${stand.index} ${key}`,
    title,
    name: `${title}, ${stand.name}`,
    kind,
    typed: typed === undefined ? undefined : String(typed),
    standIn,
    change: (value) => footingChange(stand, key, value, `${title.toLowerCase()} of ${stand.name}`),
  };
}

/** Side of a pad; without a length there is none. */
function padField(
  stand: StandPlace,
  key: "length" | "width",
  { title, standIn }: Pick<TypedEntry, "title" | "standIn">,
): Entry {
  const { index, name, footing } = stand;
  return {
    form: "typed",
    key: `footing ${index} pad ${key}`,
    title,
    name: `${title}, ${name}`,
    kind: "length",
    typed: footing?.pad?.[key],
    standIn,
    change: (value) => {
      const told = partWith(footing?.pad, key, value) as { length?: string } | undefined;
      return footingChange(stand, "pad", told?.length === undefined ? undefined : told, `pads of ${name}`);
    },
  };
}

const tiedEntry = (stand: StandPlace): Entry => ({
  form: "tick",
  key: `footing ${stand.index} tied`,
  title: "Tied down",
  name: `${stand.name} is tied down`,
  value: stand.footing?.tied ?? false,
  change: (value) => footingChange(stand, "tied", value ? true : undefined, `whether ${stand.name} is tied`),
});

const SOILS = [{ value: "", words: "Not told: the least counts" }, ...optionsOf(allSoils)] as const;

/** The soil under all stands. */
export const soilEntry = ({ soil }: Plan): Entry => ({
  form: "choice",
  key: "build soil",
  title: "Soil under the stands",
  name: "Soil under the stands",
  value: soil ?? "",
  words: SOILS.find(({ value }) => value === (soil ?? ""))!.words,
  isLong: true,
  groups: () => [{ options: SOILS }],
  change: (value) => setAt(["soil"], "the soil")(value === "" ? undefined : value),
});

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
    change: (value) => setAt(["shelf", index, key], `${title.toLowerCase()} of ${pipe}`)(listOf(value)),
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
    change: setAt(["contacts", index, key], `${title.toLowerCase()} of contact ${index + 1}`),
  });
  return [
    field("who", "Who", true),
    field("phone", "Telephone", false),
    field("note", "When to call", false),
  ];
}

export const addContact = ({ contacts = [] }: Plan): PlanChange =>
  setAt(["contacts"], "one more to call")([...contacts, { who: "Neighbour" }]);

/** Takes a contact out; with the last one the list goes. */
export function dropContact({ contacts = [] }: Plan, index: number): PlanChange {
  const left = contacts.filter((_, i) => i !== index);
  return setAt(["contacts"], `contact ${index + 1}, taken out`)(left.length === 0 ? undefined : left);
}
