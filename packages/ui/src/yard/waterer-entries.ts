import {
  allWaterers,
  DEFAULTS,
  findWaterer,
  kindFound,
  type Plan,
  type PlanWaterer,
  watererById,
} from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import type { FieldKind } from "../fields/text-kinds.js";
import { groupsReached } from "../kernels/group-names.js";
import { nameOfPen } from "../kernels/pen-names.js";
import type { PlanChange } from "../store/plan-change.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";

/** What the first waterer of a pen is until it is told otherwise. */
const FIRST_KIND = "fount-1gal";

export const waterersOf = (plan: Plan, pen: number): readonly PlanWaterer[] =>
  plan.pens?.[pen]?.waterers ?? [];

/** As the yard names it: its own name, or the pen's with its place. */
export function nameOfWaterer(plan: Plan, pen: number, at: number): string {
  const all = waterersOf(plan, pen);
  return all[at]?.id ?? `${nameOfPen(plan, pen)} waterer${all.length === 1 ? "" : ` ${at + 1}`}`;
}

/** One more waterer in a pen; a pen that reaches nothing of the line is then told so. */
export function addWaterer(plan: Plan, pen: number): PlanChange {
  const waterers = [...waterersOf(plan, pen), { kind: FIRST_KIND }];
  const reachesNone = plan.pens?.[pen]?.drinkers === undefined && groupsReached(plan)[pen]?.length === 0;
  return {
    kind: "setAll",
    entries: [
      { path: ["pens", pen, "waterers"], value: waterers },
      ...(reachesNone ? [{ path: ["pens", pen, "drinkers"], value: [] }] : []),
    ],
    what: `a waterer in ${nameOfPen(plan, pen)}`,
  };
}

/** The pen without one of its waterers. */
export function dropWaterer(plan: Plan, pen: number, at: number): PlanChange {
  const left = waterersOf(plan, pen).filter((_, k) => k !== at);
  const write = setAt(["pens", pen, "waterers"], `${nameOfWaterer(plan, pen, at)} taken out`);
  return write(left.length === 0 ? undefined : left);
}

/** The slope of a pen's ground. */
export function slopeEntry(plan: Plan, pen: number): Entry {
  const name = nameOfPen(plan, pen);
  return {
    form: "typed",
    key: `pen ${pen + 1} slope`,
    title: "Slope of the ground",
    name: `Slope of the ground of ${name}`,
    kind: "slope",
    typed: plan.pens?.[pen]?.slope,
    standIn: "level",
    note: "35 mm under a board of 50 cm is 7 %.",
    change: setAt(["pens", pen, "slope"], `slope of ${name}`),
  };
}

/** One waterer of a pen, and what its fields need to know. */
interface WatererPlace {
  readonly pen: number;
  readonly at: number;
  readonly waterer: PlanWaterer;
  readonly name: string;
  /** As the table has it; undefined where the plan names one that no table has. */
  readonly kind: ReturnType<typeof watererById>;
}

/** The fields of one waterer, from top to bottom. */
export function watererEntries(plan: Plan, pen: number, at: number): readonly Entry[] {
  const waterer = waterersOf(plan, pen)[at];
  if (waterer === undefined) return [];
  const name = nameOfWaterer(plan, pen, at);
  const named = kindFound(findWaterer(waterer.kind));
  const kind = named && watererById(named.id);
  const place = { pen, at, waterer, name, kind };
  return [
    kindEntry(place),
    typedEntry(place, { key: "id", title: "Name", kind: "name", standIn: name }),
    typedEntry(place, {
      key: "count",
      title: "How many alike",
      kind: "count",
      standIn: DEFAULTS.waterers.typed,
    }),
    typedEntry(place, kind?.hangs === true ? CORD : SLOPE),
    ...(kind?.works === "vacuum" ? [holeEntry(place)] : []),
    typedEntry(place, {
      key: "hang",
      title: kind?.heightAs === "nipple" ? "Height of the pins" : "Height of the lip",
      kind: "length",
      standIn: kind?.hangs ? "at the birds' height" : "it stands on the ground",
    }),
    typedEntry(place, { key: "refill", title: "Filled every", kind: "days", standIn: "when it is empty" }),
    shadeEntry(place),
  ];
}

interface WatererField {
  readonly key: keyof PlanWaterer;
  readonly title: string;
  readonly kind: FieldKind;
  readonly standIn: string;
}

const CORD = {
  key: "cord",
  title: "Cord from hook to water",
  kind: "length",
  standIn: DEFAULTS.cord.typed,
} as const satisfies WatererField;
const SLOPE = {
  key: "slope",
  title: "Slope under it",
  kind: "slope",
  standIn: "that of the pen",
} as const satisfies WatererField;

const keyOf = ({ pen, at }: WatererPlace, last: string) => `pen ${pen + 1} waterer ${at + 1} ${last}`;
const pathOf = ({ pen, at }: WatererPlace, key: string): Path => ["pens", pen, "waterers", at, key];
const setKey = (place: WatererPlace, key: string) => setAt(pathOf(place, key), `${key} of ${place.name}`);

function typedEntry(place: WatererPlace, { key, title, kind, standIn }: WatererField): Entry {
  const typed = place.waterer[key];
  return {
    form: "typed",
    key: keyOf(place, key),
    title,
    name: `${title}: ${place.name}`,
    kind,
    typed: typed === undefined ? undefined : String(typed),
    standIn,
    change: (value) => setKey(place, key)(value === "" ? undefined : value),
  };
}

function kindEntry(place: WatererPlace): Entry {
  const { waterer, kind, name } = place;
  return {
    form: "choice",
    key: keyOf(place, "kind"),
    title: "Kind",
    name: `Kind of ${name}`,
    value: kind?.id ?? waterer.kind,
    words: kind?.name ?? waterer.kind,
    isLong: true,
    groups: () => [{ options: optionsOf(allWaterers) }],
    // Sizes measured at one kind say nothing of another.
    change: (value) => ({
      kind: "setAll",
      entries: ["kind", "sizes", "holds"].map((key) => ({
        path: pathOf(place, key),
        value: key === "kind" ? value : undefined,
      })),
      what: `kind of ${name}`,
    }),
  };
}

const HOLES = [
  { value: "", words: "Uphill, the worst" },
  { value: "sideways", words: "Sideways" },
  { value: "downhill", words: "Downhill" },
] as const;

function holeEntry(place: WatererPlace): Entry {
  const { waterer, name } = place;
  const value = waterer.hole === "uphill" ? "" : (waterer.hole ?? "");
  return {
    form: "choice",
    key: keyOf(place, "hole"),
    title: "Its air hole looks",
    name: `Which way the air hole of ${name} looks`,
    value,
    words: HOLES.find((option) => option.value === value)!.words,
    groups: () => [{ options: HOLES }],
    change: (chosen) => setKey(place, "hole")(chosen === "" ? undefined : chosen),
  };
}

function shadeEntry(place: WatererPlace): Entry {
  const { waterer, kind, name } = place;
  return {
    form: "tick",
    key: keyOf(place, "shade"),
    title: "In the shade",
    name: `${name} stands in the shade`,
    value: waterer.shade ?? kind?.hasShade ?? false,
    change: setKey(place, "shade"),
  };
}
