import { DEFAULTS, type Plan } from "@headfall/hydraulics";
import type { ChoiceEntry, Entry, TypedEntry } from "../fields/entry.js";
import { readFittings, writeFittings } from "../kernels/fitting-counts.js";
import { setAt } from "../store/set-at.js";
import { layoutOf, type PlanContext, runEnds, runNames, sourceNames } from "./plan-context.js";

/** Length of a run along the pipe. */
export function lengthEntry({ plan }: PlanContext, run: number): TypedEntry {
  const name = runNames(plan)[run]!;
  return {
    key: `${name} length`,
    title: "Length",
    name: `Length of ${name}`,
    kind: "distance",
    typed: plan.runs[run]!.length,
    isNeeded: true,
    note: "Along the pipe.",
    change: setAt(["runs", run, "length"], `length of ${name}`),
  };
}

/** How much lower its end is than where its falls are counted from. */
export function fallEntry({ plan }: PlanContext, run: number): TypedEntry {
  const name = runNames(plan)[run]!;
  const start = fallReferenceWords(plan, run);
  return {
    key: `${name} fall`,
    title: "Fall",
    name: `Fall of ${name}`,
    kind: "length",
    typed: plan.runs[run]!.fall,
    standIn: "by ends",
    note: `How much lower its end is than ${start}; a minus where higher.`,
    change: setAt(["runs", run, "fall"], `fall of ${name}`),
  };
}

/** What the falls of a run are counted from: its start, or the ground under the source it starts at. */
export function fallReferenceWords(plan: Plan, run: number): string {
  const { from } = runEnds(plan)[run]!;
  return sourceNames(plan).includes(from) ? `the ground under the ${from}` : "its start";
}

const TAPS = [
  { value: "open", words: "Open" },
  { value: "half", words: "Half open" },
  { value: "shut", words: "Shut" },
] as const;

export function tapEntry({ plan }: PlanContext, run: number): ChoiceEntry {
  const name = runNames(plan)[run]!;
  const value = plan.runs[run]!.tap ?? DEFAULTS.tap.typed;
  return {
    key: `${name} tap`,
    title: "Tap at its start",
    name: `Tap at the start of ${name}`,
    value,
    words: TAPS.find((tap) => tap.value === value)!.words,
    groups: () => [{ options: TAPS }],
    change: setAt(["runs", run, "tap"], `tap of ${name}`),
  };
}

export function oneWayEntries({ plan }: PlanContext, run: number): [Entry, ...Entry[]] {
  const name = runNames(plan)[run]!;
  const { oneWay } = plan.runs[run]!;
  const hasValve = oneWay !== undefined && oneWay !== false;
  const path = ["runs", run, "oneWay"] as const;
  const what = `one-way valve of ${name}`;
  const tick: Entry = {
    form: "tick",
    key: `${name} one-way`,
    title: "One-way valve at its start",
    name: `One-way valve at the start of ${name}`,
    value: hasValve,
    change: (value) => setAt(path, what)(value ? true : undefined),
  };
  if (!hasValve) return [tick];
  const opensAt: Entry = {
    form: "typed",
    key: `${name} one-way opens at`,
    title: "Head that opens it",
    name: `Head that opens the one-way valve of ${name}`,
    kind: "head",
    typed: typeof oneWay === "object" ? oneWay.opensAt : undefined,
    standIn: DEFAULTS.oneWayOpensAt.typed,
    change: (value) => setAt(path, what)(value === undefined ? true : { opensAt: value }),
  };
  return [tick, opensAt];
}

export function regulatorEntries({ plan, system }: PlanContext, run: number): [Entry, ...Entry[]] {
  const name = runNames(plan)[run]!;
  const { regulator } = plan.runs[run]!;
  const path = ["runs", run, "regulator"] as const;
  const what = `regulator of ${name}`;
  const usual = system === "us" ? "12 in" : "30 cm";
  const tick: Entry = {
    form: "tick",
    key: `${name} regulator`,
    title: "Low-pressure regulator at its start",
    name: `Low-pressure regulator at the start of ${name}`,
    value: regulator !== undefined,
    change: (value) => setAt(path, what)(value ? { sets: usual } : undefined),
  };
  if (regulator === undefined) return [tick];
  const sets: Entry = {
    form: "typed",
    key: `${name} regulator sets`,
    title: "Head it holds at its outlet",
    name: `Head the regulator of ${name} holds`,
    kind: "head",
    typed: regulator.sets,
    isNeeded: true,
    change: setAt([...path, "sets"], what),
  };
  const loss: Entry = {
    form: "typed",
    key: `${name} regulator k`,
    title: "Its own loss, wide open",
    name: `Loss coefficient of the regulator of ${name}`,
    kind: "number",
    typed: regulator.k === undefined ? undefined : String(regulator.k),
    standIn: "10",
    note: "In velocity heads of this run's bore.",
    change: setAt([...path, "k"], what),
  };
  return [tick, sets, loss];
}

/**
 * Where a run starts or ends. A run that says nothing starts where the one before it ends: what was meant without
 * being said is said before another end is given, so that no other run moves along.
 */
export function endEntry({ plan }: PlanContext, run: number, end: "from" | "to"): ChoiceEntry {
  const ends = runEnds(plan);
  const name = runNames(plan)[run]!;
  const value = ends[run]![end];
  const title = end === "from" ? "From" : "To";
  const next = plan.runs[run + 1];
  const pinned =
    end === "to" && next !== undefined && next.from === undefined
      ? [{ path: ["runs", run + 1, "from"], value: ends[run + 1]!.from }]
      : [];
  return {
    key: `${name} ${end}`,
    title,
    name: `${end === "from" ? "Start" : "End"} of ${name}`,
    value,
    words: value,
    isLazy: true,
    groups: () => [
      { options: layoutOf(plan).joints.map((joint) => ({ value: joint.name, words: joint.name })) },
    ],
    change: (chosen) => ({
      kind: "setAll",
      entries: [{ path: ["runs", run, end], value: chosen }, ...pinned],
      what: `${end === "from" ? "start" : "end"} of ${name}`,
    }),
  };
}

/** Whether the run hangs on cords and goes up with the birds that drink from it. */
export function hungEntry({ plan }: PlanContext, run: number): Entry {
  const name = runNames(plan)[run]!;
  return {
    form: "tick",
    key: `${name} hung`,
    title: "Hung: goes up with the birds",
    name: `${name} is hung and goes up with the birds`,
    value: plan.runs[run]!.hung === true,
    note: "The weeks to come are then judged with it raised.",
    change: (value) => setAt(["runs", run, "hung"], `cords of ${name}`)(value ? true : undefined),
  };
}

/** All fittings of a run as one line of text, for a cell of a table. */
export function fittingsEntry({ plan }: PlanContext, run: number): TypedEntry {
  const name = runNames(plan)[run]!;
  const { fittings } = plan.runs[run]!;
  const set = setAt(["runs", run, "fittings"], `fittings of ${name}`);
  return {
    key: `${name} fittings line`,
    title: "Fittings",
    name: `Fittings of ${name}`,
    kind: "name",
    typed: fittings === undefined ? undefined : writeFittings(fittings),
    standIn: "none",
    change: (value) => set(value === undefined ? undefined : readFittings(String(value))),
  };
}
