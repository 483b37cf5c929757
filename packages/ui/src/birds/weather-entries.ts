import { DEFAULTS, type Plan, REGIONS } from "@headfall/hydraulics";
import type { Entry, TypedEntry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { setAt } from "../store/set-at.js";
import { weatherChange } from "../store/weather-change.js";

/** A hot day to begin with, until the keeper says how hot it gets. */
const HOT: Readonly<Record<UnitSystem, string>> = { metric: "35 °C", us: "95 °F" };

/** The fields of the weather the birds live in. */
export function weatherEntries(plan: Plan): readonly Entry[] {
  const { weather } = plan;
  return [
    typed(plan, "high", "Warmest of the day", "temperature", DEFAULTS.air.typed),
    typed(plan, "low", "Coldest of the night", "temperature", "as warm as the day"),
    typed(plan, "light", "Hours of light", "hours", DEFAULTS.light.typed),
    {
      form: "picked",
      key: "weather dawn",
      title: "Light from",
      name: "Time the light begins",
      picks: "time",
      value: weather?.dawn ?? DEFAULTS.dawn.typed,
      note: weather?.dawn === undefined ? "Taken for granted." : undefined,
      change: (value) => weatherChange(plan, { key: "dawn", value, what: "dawn" }),
    },
  ];
}

/** The hot spell to be ready for: whether there is one, and how hot. */
export function hotSpellEntries(plan: Plan, system: UnitSystem): readonly Entry[] {
  const spell = plan.weather?.hotSpell;
  const tick: Entry = {
    form: "tick",
    key: "weather hot spell",
    title: "Be ready for a hot spell",
    name: "Be ready for a hot spell",
    value: spell !== undefined,
    change: (value) =>
      weatherChange(plan, {
        key: "hotSpell",
        value: value ? { high: HOT[system] } : undefined,
        what: "hot spell",
      }),
  };
  if (spell === undefined) return [tick];
  const { high, low, days } = spell;
  return [
    tick,
    spellEntry({ key: "high", title: "Warmest then", kind: "temperature", typed: high }),
    spellEntry({
      key: "low",
      title: "Coldest night then",
      kind: "temperature",
      typed: low,
      standIn: "as far below as else",
    }),
    spellEntry({
      key: "days",
      title: "Days in a row",
      kind: "count",
      typed: days === undefined ? undefined : String(days),
      standIn: DEFAULTS.hotDays.typed,
    }),
  ];
}

/** Where nothing stands in for it, it must be typed. */
const spellEntry = (told: Pick<TypedEntry, "key" | "title" | "kind" | "typed" | "standIn">): Entry => ({
  ...told,
  form: "typed",
  key: `weather spell ${told.key}`,
  name: `${told.title}, hot spell`,
  isNeeded: told.standIn === undefined,
  change: setAt(["weather", "hotSpell", told.key], told.title.toLowerCase()),
});

export function regionEntry({ region }: Plan): Entry {
  const words = (each: string) => (each === "none" ? "No rules, advice only" : each);
  return {
    form: "choice",
    key: "plan region",
    title: "Rules of",
    name: "Whose rules on drinkers count",
    value: region ?? "",
    words: region === undefined ? "Not said" : words(region),
    note: "Their rules and advice on how many drinkers there should be. Check your local code as well.",
    groups: () => [
      {
        options: [
          { value: "", words: "Not said" },
          ...REGIONS.map((each) => ({ value: each, words: words(each) })),
        ],
      },
    ],
    change: (value) => setAt(["region"], "region")(value === "" ? undefined : value),
  };
}

type WeatherKey = "high" | "low" | "light";

function typed(plan: Plan, key: WeatherKey, title: string, kind: FieldKind, standIn: string): Entry {
  return {
    form: "typed",
    key: `weather ${key}`,
    title,
    name: title,
    kind,
    typed: plan.weather?.[key],
    standIn,
    change: (value) => weatherChange(plan, { key, value, what: title.toLowerCase() }),
  };
}
