import {
  allWaterers,
  DEFAULTS,
  findWaterer,
  type Plan,
  type PlanWaterer,
  watererById,
} from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import { groupsReached } from "../kernels/group-names.js";
import type { PlanChange } from "../store/plan-change.js";

/** What the first waterer of a pen is until it is told otherwise. */
const FIRST_KIND = "fount-1gal";

export const nameOfPen = (plan: Plan, pen: number): string => plan.pens?.[pen]?.id ?? `pen ${pen + 1}`;
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
  return {
    kind: "set",
    path: ["pens", pen, "waterers"],
    value: left.length === 0 ? undefined : left,
    what: `${nameOfWaterer(plan, pen, at)} taken out`,
  };
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
    change: (value) => ({ kind: "set", path: ["pens", pen, "slope"], value, what: `slope of ${name}` }),
  };
}

/** The fields of one waterer, from top to bottom. */
export function watererEntries(plan: Plan, pen: number, at: number): readonly Entry[] {
  const waterer = waterersOf(plan, pen)[at];
  if (waterer === undefined) return [];
  const name = nameOfWaterer(plan, pen, at);
  const found = findWaterer(waterer.kind);
  const kind = found.outcome === "found" ? watererById(found.kind.id) : undefined;
  const keyOf = (last: string) => `pen ${pen + 1} waterer ${at + 1} ${last}`;
  const set =
    (key: string) =>
    (value: unknown): PlanChange => ({
      kind: "set",
      path: ["pens", pen, "waterers", at, key],
      value: value === "" ? undefined : value,
      what: `${key} of ${name}`,
    });
  const typed = (key: keyof PlanWaterer, title: string, field: FieldKind, standIn: string): Entry => ({
    form: "typed",
    key: keyOf(key),
    title,
    name: `${title}: ${name}`,
    kind: field,
    typed: waterer[key] === undefined ? undefined : String(waterer[key]),
    standIn,
    change: set(key),
  });
  return [
    {
      form: "choice",
      key: keyOf("kind"),
      title: "Kind",
      name: `Kind of ${name}`,
      value: kind?.id ?? waterer.kind,
      words: kind?.name ?? waterer.kind,
      isLong: true,
      groups: () => [{ options: allWaterers.map(({ id, name: words }) => ({ value: id, words })) }],
      // Sizes measured at one kind say nothing of another.
      change: (value) => ({
        kind: "setAll",
        entries: ["kind", "sizes", "holds"].map((key) => ({
          path: ["pens", pen, "waterers", at, key],
          value: key === "kind" ? value : undefined,
        })),
        what: `kind of ${name}`,
      }),
    },
    typed("id", "Name", "name", name),
    typed("count", "How many alike", "count", DEFAULTS.waterers.typed),
    ...(kind?.hangs === true
      ? [typed("cord", "Cord from hook to water", "length", DEFAULTS.cord.typed)]
      : [typed("slope", "Slope under it", "slope", "that of the pen")]),
    ...(kind?.works === "vacuum" ? [holeEntry()] : []),
    typed(
      "hang",
      kind?.heightAs === "nipple" ? "Height of the pins" : "Height of the lip",
      "length",
      kind?.hangs ? "at the birds' height" : "it stands on the ground",
    ),
    typed("refill", "Filled every", "days", "when it is empty"),
    {
      form: "tick",
      key: keyOf("shade"),
      title: "In the shade",
      name: `${name} stands in the shade`,
      value: waterer.shade ?? kind?.hasShade ?? false,
      change: set("shade"),
    },
  ];

  function holeEntry(): Entry {
    const options = [
      { value: "", words: "Uphill, the worst" },
      { value: "sideways", words: "Sideways" },
      { value: "downhill", words: "Downhill" },
    ];
    const value = waterer?.hole === "uphill" ? "" : (waterer?.hole ?? "");
    return {
      form: "choice",
      key: keyOf("hole"),
      title: "Its air hole looks",
      name: `Which way the air hole of ${name} looks`,
      value,
      words: options.find((option) => option.value === value)?.words ?? value,
      groups: () => [{ options }],
      change: set("hole"),
    };
  }
}
