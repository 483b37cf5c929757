import { allColours, DEFAULTS, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { PlanChange } from "../store/plan-change.js";

const shown = (typed: string): string => typed.replaceAll("deg", "°");

/** The fields of the night of frost. */
export function nightEntries(plan: Plan): readonly Entry[] {
  const frost = plan.weather?.frost;
  const at = (
    key: "low" | "high" | "hours" | "wind",
    title: string,
    kind: FieldKind,
    standIn: string,
  ): Entry => ({
    form: "typed",
    key: `frost ${key}`,
    title,
    name: `${title}, night of frost`,
    kind,
    typed: frost?.[key],
    standIn: shown(standIn),
    change: (value) => frostChanged(plan, key, value, title.toLowerCase()),
  });
  return [
    at("low", "Lowest of the night", "temperature", DEFAULTS.frostLow.typed),
    at("hours", "Hours of frost from dusk", "hours", DEFAULTS.frostHours.typed),
    at("wind", "Wind that night", "speed", DEFAULTS.frostWind.typed),
    at("high", "Highest the day after", "temperature", "as cold as the night"),
  ];
}

/** The fields of the hot day that stand in no other room. */
export function hotDayEntries(plan: Plan): readonly Entry[] {
  const at = (key: "sun" | "wind", title: string, kind: FieldKind, standIn: string): Entry => ({
    form: "typed",
    key: `heat ${key}`,
    title,
    name: `${title}, hot day`,
    kind,
    typed: plan.weather?.[key],
    standIn,
    change: (value) => weatherChanged(plan, key, value, title.toLowerCase()),
  });
  return [
    at("sun", "Sun at noon", "sunshine", DEFAULTS.sun.typed),
    at("wind", "Wind on a hot day", "speed", DEFAULTS.wind.typed),
  ];
}

/** What keeps weather off a run or a source: colour and shade, and of pipe its depth and lagging. */
export function coverEntries(
  plan: Plan,
  list: "runs" | "sources",
  index: number,
  name: string,
): readonly Entry[] {
  const part = plan[list][index];
  if (part === undefined) return [];
  const set =
    (key: string) =>
    (value: unknown): PlanChange => ({
      kind: "set",
      path: [list, index, key],
      value: value === "" ? undefined : value,
      what: `${key} of ${name}`,
    });
  const typed = (
    key: "shade" | "buried" | "lagging",
    title: string,
    kind: FieldKind,
    standIn: string,
  ): Entry => ({
    form: "typed",
    key: `${name} ${key}`,
    title,
    name: `${title}: ${name}`,
    kind,
    typed: (part as Partial<Record<typeof key, string>>)[key],
    standIn,
    change: set(key),
  });
  return [
    {
      form: "choice",
      key: `${name} colour`,
      title: "Colour the sun sees",
      name: `Colour of ${name}`,
      value: part.colour ?? "",
      words: allColours.find(({ id }) => id === part.colour)?.name ?? "Not said: taken as dark",
      groups: () => [
        {
          options: [
            { value: "", words: "Not said: taken as dark" },
            ...allColours.map(({ id, name: words }) => ({ value: id, words })),
          ],
        },
      ],
      change: set("colour"),
    },
    typed("shade", "Sun kept off", "share", "none"),
    ...(list === "sources"
      ? []
      : [
          typed("buried", "How deep under ground", "length", "not at all"),
          typed("lagging", "Foam around it", "bore", "none"),
        ]),
  ];
}

function frostChanged(plan: Plan, key: string, value: unknown, what: string): PlanChange {
  const frost = without({ ...plan.weather?.frost, [key]: value });
  const told = Object.keys(frost).length === 0 ? undefined : { low: DEFAULTS.frostLow.typed, ...frost };
  return weatherChanged(plan, "frost", told, what);
}

/** A plan that says anything of its weather says how warm it is; what is taken for granted is then written down. */
function weatherChanged(plan: Plan, key: string, value: unknown, what: string): PlanChange {
  const weather = without({ ...plan.weather, [key]: value });
  const told = Object.keys(weather).length === 0 ? undefined : { high: DEFAULTS.air.typed, ...weather };
  return { kind: "set", path: ["weather"], value: told, what };
}

const without = (keys: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(keys).filter(([, each]) => each !== undefined));
