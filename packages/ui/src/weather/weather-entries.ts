import { allColours, DEFAULTS, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import type { FieldKind } from "../fields/text-kinds.js";
import { partWith } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import { frostChange, weatherChange } from "../store/weather-change.js";

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
    change: (value) => frostChange(plan, { key, value, what: title.toLowerCase() }),
  });
  return [
    at("low", "Lowest of the night", "temperature", DEFAULTS.frostLow.typed),
    at("hours", "Hours of frost from dusk", "hours", DEFAULTS.frostHours.typed),
    at("wind", "Wind that night", "speed", DEFAULTS.frostWind.typed),
    at("high", "Highest the day after", "temperature", "as cold as the night"),
  ];
}

/** How hot the hot day gets: the plan's hot spell, as the room Birds has it too. */
function spellEntries(plan: Plan): readonly Entry[] {
  const spell = plan.weather?.hotSpell;
  const at = (key: "high" | "low", title: string, standIn: string): Entry => ({
    form: "typed",
    key: `heat ${key}`,
    title,
    name: `${title}, hot day`,
    kind: "temperature",
    typed: spell?.[key],
    standIn,
    change: (value) => {
      const told = key === "high" && value === undefined ? undefined : partWith(spell, key, value);
      return weatherChange(plan, { key: "hotSpell", value: told, what: title.toLowerCase() });
    },
  });
  return [
    at("high", "Warmest of the hot day", "32 °C, or the plan's own day where that is warmer"),
    ...(spell === undefined ? [] : [at("low", "Coldest night then", "as far below as else")]),
  ];
}

/** The fields of the hot day. */
export function hotDayEntries(plan: Plan): readonly Entry[] {
  const at = (key: "sun" | "wind", title: string, kind: FieldKind, standIn: string): Entry => ({
    form: "typed",
    key: `heat ${key}`,
    title,
    name: `${title}, hot day`,
    kind,
    typed: plan.weather?.[key],
    standIn,
    change: (value) => weatherChange(plan, { key, value, what: title.toLowerCase() }),
  });
  return [
    ...spellEntries(plan),
    at("sun", "Sun at noon", "sunshine", DEFAULTS.sun.typed),
    at("wind", "Wind on a hot day", "speed", DEFAULTS.wind.typed),
  ];
}

type CoverKey = "shade" | "buried" | "lagging";

/** What keeps weather off a run or a source: colour and shade, and of pipe its depth and lagging. */
export function coverEntries(
  plan: Plan,
  list: "runs" | "sources",
  index: number,
  name: string,
): readonly Entry[] {
  const part = plan[list][index];
  if (part === undefined) return [];
  const write = (key: string) => (value: unknown) =>
    setAt([list, index, key], `${key} of ${name}`)(value === "" ? undefined : value);
  const typed = (key: CoverKey, title: string, kind: FieldKind, standIn: string): Entry => ({
    form: "typed",
    key: `${name} ${key}`,
    title,
    name: `${title}: ${name}`,
    kind,
    typed: (part as Partial<Record<CoverKey, string>>)[key],
    standIn,
    change: write(key),
  });
  return [
    { ...colourChoice(part.colour, name), change: write("colour") },
    typed("shade", "Sun kept off", "share", "none"),
    ...(list === "sources"
      ? []
      : [
          typed("buried", "How deep under ground", "length", "not at all"),
          typed("lagging", "Foam around it", "bore", "none"),
        ]),
  ];
}

const COLOURS = [{ value: "", words: "Not said: taken as dark" }, ...optionsOf(allColours)] as const;

const colourChoice = (colour: string = "", name: string) =>
  ({
    form: "choice",
    key: `${name} colour`,
    title: "Colour the sun sees",
    name: `Colour of ${name}`,
    value: colour,
    words: (COLOURS.find(({ value }) => value === colour) ?? COLOURS[0]).words,
    groups: () => [{ options: COLOURS }],
  }) as const;
