import { DEFAULTS, type Plan, type PlanRefill } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { type Path, partWith } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";

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
  const choice = habitEntry(refill, index, name, system);
  if (typeof refill !== "object") return [choice];
  return "hose" in refill
    ? [choice, hoseEntry(refill, index, name)]
    : [choice, everyEntry(refill, index, name), timeEntry(refill, index, name)];
}

/** What a habit is begun with. */
const BEGUN: Readonly<Record<Habit, (system: UnitSystem) => PlanRefill | undefined>> = {
  none: () => undefined,
  every: () => ({ every: "1 day" }),
  hose: (system) => ({ hose: system === "us" ? "2 gpm" : "8 L/min" }),
};

const pathOf = (index: number, ...keys: string[]): Path => ["sources", index, "refill", ...keys];

function habitEntry(refill: PlanRefill | undefined, index: number, name: string, system: UnitSystem): Entry {
  const habit = habitOf(refill);
  const write = setAt(pathOf(index), `refill of ${name}`);
  return {
    form: "choice",
    key: `refill ${index}`,
    title: `${name} is filled`,
    name: `How ${name} is filled again`,
    value: habit,
    words: HABITS.find(({ value }) => value === habit)!.words,
    groups: () => [{ options: HABITS }],
    change: (value) => (value === habit ? undefined : write(BEGUN[value as Habit](system))),
  };
}

const hoseEntry = ({ hose }: Extract<PlanRefill, { hose: string }>, index: number, name: string): Entry => ({
  form: "typed",
  key: `refill ${index} hose`,
  title: "It gives at most",
  name: `Flow of the hose at ${name}`,
  kind: "flow",
  typed: hose,
  isNeeded: true,
  note: "Keep an air gap or a vacuum breaker: local codes and licensed practice decide.",
  change: setAt(pathOf(index, "hose"), "hose"),
});

type ByHand = Extract<PlanRefill, { every: string }>;

const everyEntry = ({ every }: ByHand, index: number, name: string): Entry => ({
  form: "typed",
  key: `refill ${index} every`,
  title: "Every",
  name: `How often ${name} is filled`,
  kind: "days",
  typed: every,
  isNeeded: true,
  change: setAt(pathOf(index, "every"), "refill"),
});

const timeEntry = ({ at }: ByHand, index: number, name: string): Entry => ({
  form: "picked",
  key: `refill ${index} at`,
  title: "At",
  name: `Time ${name} is filled`,
  picks: "time",
  value: at ?? DEFAULTS.refillAt.typed,
  change: setAt(pathOf(index, "at"), "time of refill"),
});

/** What one trip brings, how far up, and the most it should weigh. */
export function carryEntries({ carry }: Plan): readonly Entry[] {
  const set = (key: string, value: unknown, what: string) =>
    setAt(["carry"], what)(partWith(carry, key, value));
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
