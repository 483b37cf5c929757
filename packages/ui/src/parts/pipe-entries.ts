import {
  allPipes,
  DEFAULTS,
  findPipe,
  kindFound,
  type PipeSize,
  type PlanPipe,
  pipesOfFamily,
} from "@headfall/hydraulics";
import type { ChoiceEntry, Entry } from "../fields/entry.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import { setAt } from "../store/set-at.js";
import { type PlanContext, runNames } from "./plan-context.js";

const OWN = "own pipe";

/** The choice of pipe: sizes of its own family first, then all others, then one by its bore. */
export function pipeEntry({ plan, system }: PlanContext, run: number): ChoiceEntry {
  const name = runNames(plan)[run]!;
  const pipe = plan.runs[run]!.pipe ?? DEFAULTS.pipe.typed;
  const known = sizeOf(pipe);
  const value = typeof pipe === "object" ? OWN : (known?.id ?? pipe);
  const set = setAt(["runs", run, "pipe"], `pipe of ${name}`);
  return {
    key: `${name} pipe`,
    title: "Pipe",
    name: `Pipe of ${name}`,
    value,
    words: typeof pipe === "object" ? (pipe.name ?? "Own bore") : (known?.name ?? pipe),
    isLong: true,
    groups: () => pipeGroups(known, typeof pipe === "string" && known === undefined ? pipe : undefined),
    change: (chosen) => set(chosen === OWN ? ownPipe(known, system) : chosen),
  };
}

const option = ({ id, name }: PipeSize) => ({ value: id, words: name });

function pipeGroups(known: PipeSize | undefined, stray: string | undefined) {
  const family = known?.family;
  return [
    { options: stray === undefined ? [] : [{ value: stray, words: stray }] },
    ...(family === undefined
      ? []
      : [{ label: "Sizes of this pipe", options: pipesOfFamily(family).map(option) }]),
    { label: "Measured", options: [{ value: OWN, words: "Own bore" }] },
    { label: "Other pipes", options: allPipes.filter((pipe) => pipe.family !== family).map(option) },
  ];
}

/** The size of the table that is meant, if one is. */
export function sizeOf(pipe: PlanPipe): PipeSize | undefined {
  return kindFound(typeof pipe === "string" ? findPipe(pipe) : undefined);
}

function ownPipe(known: PipeSize | undefined, system: PlanContext["system"]): PlanPipe {
  return { bore: TEXT_KINDS.bore.write(known?.bore ?? 0.013, system) };
}

/** Bore, coefficient and roughness of a pipe of one's own; nothing for one of the table. */
export function ownPipeEntries({ plan }: PlanContext, run: number): Entry[] {
  const { pipe } = plan.runs[run]!;
  if (typeof pipe !== "object") return [];
  const name = runNames(plan)[run]!;
  const at = (key: string) => setAt(["runs", run, "pipe", key], `pipe of ${name}`);
  return [
    {
      form: "typed",
      key: `${name} bore`,
      title: "Bore",
      name: `Bore of ${name}`,
      kind: "bore",
      typed: pipe.bore,
      isNeeded: true,
      note: "Inside diameter.",
      change: at("bore"),
    },
    {
      form: "typed",
      key: `${name} coefficient`,
      title: "Hazen-Williams C",
      name: `Hazen-Williams C of ${name}`,
      kind: "number",
      typed: pipe.hazenWilliams === undefined ? undefined : String(pipe.hazenWilliams),
      standIn: "140",
      change: at("hazenWilliams"),
    },
    {
      form: "typed",
      key: `${name} roughness`,
      title: "Roughness",
      name: `Roughness of ${name}`,
      kind: "bore",
      typed: pipe.roughness,
      standIn: "that of smooth plastic",
      change: at("roughness"),
    },
  ];
}
