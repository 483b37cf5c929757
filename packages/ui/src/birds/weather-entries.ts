import { DEFAULTS, type Plan, REGIONS } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { PlanChange } from "../store/plan-change.js";

/** A hot day to begin with, until the keeper says how hot it gets. */
const HOT: Readonly<Record<UnitSystem, string>> = { metric: "35 °C", us: "95 °F" };

/** The fields of the weather the birds live in. */
export function weatherEntries(plan: Plan): readonly Entry[] {
  const { weather } = plan;
  return [
    typed(plan, "high", "Warmest of the day", "temperature", DEFAULTS.air.typed.replace("deg", "°")),
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
      change: (value) => changed(plan, "dawn", value, "dawn"),
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
    change: (value) => changed(plan, "hotSpell", value ? { high: HOT[system] } : undefined, "hot spell"),
  };
  if (spell === undefined) return [tick];
  const at = (
    key: string,
    title: string,
    kind: FieldKind,
    value: string | undefined,
    standIn?: string,
  ): Entry => ({
    form: "typed",
    key: `weather spell ${key}`,
    title,
    name: `${title}, hot spell`,
    kind,
    typed: value,
    standIn,
    isNeeded: standIn === undefined,
    change: (text) => ({
      kind: "set",
      path: ["weather", "hotSpell", key],
      value: text,
      what: title.toLowerCase(),
    }),
  });
  return [
    tick,
    at("high", "Warmest then", "temperature", spell.high),
    at("low", "Coldest night then", "temperature", spell.low, "as far below as else"),
    at(
      "days",
      "Days in a row",
      "count",
      spell.days === undefined ? undefined : String(spell.days),
      DEFAULTS.hotDays.typed,
    ),
  ];
}

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
    change: (value) => ({
      kind: "set",
      path: ["region"],
      value: value === "" ? undefined : value,
      what: "region",
    }),
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
    change: (value) => changed(plan, key, value, title.toLowerCase()),
  };
}

/** A plan that says anything of its weather says how warm it is; what is taken for granted is then written down. */
function changed(plan: Plan, key: string, value: unknown, what: string): PlanChange {
  const entries = Object.entries({ ...plan.weather, [key]: value }).filter(([, each]) => each !== undefined);
  const weather = Object.fromEntries(entries);
  const hasHigh = weather["high"] !== undefined;
  const told =
    entries.length === 0 ? undefined : hasHigh ? weather : { high: DEFAULTS.air.typed, ...weather };
  return { kind: "set", path: ["weather"], value: told, what };
}
