import { DEFAULTS, type Plan, type PlanRefill } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { PlanChange } from "../store/plan-change.js";

type Habit = "none" | "every" | "hose";

const habitOf = (refill: PlanRefill | undefined): Habit =>
  refill === undefined || refill === "none" ? "none" : "hose" in refill ? "hose" : "every";

const HABITS: readonly { readonly value: Habit; readonly words: string }[] = [
  { value: "none", words: "Not filled again" },
  { value: "every", words: "By hand, every so often" },
  { value: "hose", words: "A hose with a float valve" },
];

/** How one source is filled again. */
export function refillEntries(plan: Plan, index: number, name: string, system: UnitSystem): readonly Entry[] {
  const { refill } = plan.sources[index]!;
  const habit = habitOf(refill);
  const set = (value: PlanRefill | undefined): PlanChange => ({
    kind: "set",
    path: ["sources", index, "refill"],
    value,
    what: `refill of ${name}`,
  });
  const begun: Readonly<Record<Habit, PlanRefill | undefined>> = {
    none: undefined,
    every: { every: "1 day" },
    hose: { hose: system === "us" ? "2 gpm" : "8 L/min" },
  };
  const choice: Entry = {
    form: "choice",
    key: `refill ${index}`,
    title: `${name} is filled`,
    name: `How ${name} is filled again`,
    value: habit,
    words: HABITS.find(({ value }) => value === habit)!.words,
    groups: () => [{ options: HABITS }],
    change: (value) => (value === habit ? undefined : set(begun[value as Habit])),
  };
  if (typeof refill !== "object") return [choice];
  if ("hose" in refill)
    return [
      choice,
      {
        form: "typed",
        key: `refill ${index} hose`,
        title: "It gives at most",
        name: `Flow of the hose at ${name}`,
        kind: "flow",
        typed: refill.hose,
        isNeeded: true,
        note: "Keep an air gap or a vacuum breaker: local codes and licensed practice decide.",
        change: (value) => ({ kind: "set", path: ["sources", index, "refill", "hose"], value, what: "hose" }),
      },
    ];
  return [
    choice,
    {
      form: "typed",
      key: `refill ${index} every`,
      title: "Every",
      name: `How often ${name} is filled`,
      kind: "days",
      typed: refill.every,
      isNeeded: true,
      change: (value) => ({
        kind: "set",
        path: ["sources", index, "refill", "every"],
        value,
        what: "refill",
      }),
    },
    {
      form: "picked",
      key: `refill ${index} at`,
      title: "At",
      name: `Time ${name} is filled`,
      picks: "time",
      value: refill.at ?? DEFAULTS.refillAt.typed,
      change: (value) => ({
        kind: "set",
        path: ["sources", index, "refill", "at"],
        value,
        what: "time of refill",
      }),
    },
  ];
}

/** What one trip brings, how far up, and the most it should weigh. */
export function carryEntries({ carry }: Plan): readonly Entry[] {
  const set = (key: string, value: unknown, what: string): PlanChange => {
    const entries = Object.entries({ ...carry, [key]: value }).filter(([, each]) => each !== undefined);
    return {
      kind: "set",
      path: ["carry"],
      value: entries.length === 0 ? undefined : Object.fromEntries(entries),
      what,
    };
  };
  return [
    {
      form: "typed",
      key: "carry each",
      title: "Water a trip",
      name: "Water carried in one trip",
      kind: "volume",
      typed: carry?.each,
      standIn: DEFAULTS.carryEach.typed,
      change: (value) => set("each", value, "water a trip"),
    },
    {
      form: "typed",
      key: "carry climb",
      title: "Climb a trip",
      name: "Climb of one trip",
      kind: "length",
      typed: carry?.climb,
      standIn: DEFAULTS.carryClimb.typed,
      change: (value) => set("climb", value, "climb a trip"),
    },
  ];
}
