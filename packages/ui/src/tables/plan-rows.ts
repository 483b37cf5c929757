import { drinkerGroupsOf, type Plan } from "@headfall/hydraulics";
import type { ChoiceEntry, Entry, TypedEntry } from "../fields/entry.js";
import { keyOfPart, type Selected } from "../kernels/selected.js";
import { groupEntries, kindEntry, nameOfGroup } from "../parts/drinkers-entries.js";
import { ownPipeEntries, pipeEntry } from "../parts/pipe-entries.js";
import { jointNames, type PlanContext, runNames, sourceNames } from "../parts/plan-context.js";
import { jointEntries, nameEntry } from "../parts/plan-entries.js";
import {
  endEntry,
  fallEntry,
  fittingsEntry,
  lengthEntry,
  oneWayEntries,
  regulatorEntries,
  tapEntry,
} from "../parts/run-entries.js";
import { outletBoreEntry, sourceLengths } from "../parts/source-entries.js";
import { feedEntries, ventEntries } from "../parts/source-inlets.js";
import { readingEntries } from "../parts/survey-view.js";
import { dimensionEntries, vesselChoice } from "../parts/vessel-entries.js";

/** One row of a table of the plan: the part it is about, its name, and its cells. */
export interface PlanRow {
  /** One text for the row while the plan changes around it. */
  readonly key: string;
  readonly part: Selected;
  /** As spoken in the names of its buttons: "run feed". */
  readonly name: string;
  /** Each cell has one field, or one with those that belong to it. */
  readonly cells: readonly (readonly [Entry, ...Entry[]])[];
  /** Position of a reading in its survey; rows of surveys only. */
  readonly reading?: number;
  /** Whether the part has its own row elsewhere, and this one only tells more of it. */
  readonly tellsMore?: true;
}

/** The sorts of row, in the order of the tables. */
export const SORTS = ["sources", "points", "runs", "drinkers", "surveys", "fittings"] as const;
export type RowSort = (typeof SORTS)[number];

/** What a row stands for; its cells are made only when it is shown. */
export interface RowSeat {
  readonly part: Selected;
  readonly reading?: number;
  readonly tellsMore?: true;
}

/** All rows of one table, as seats. */
export function seatsOf(plan: Plan, sort: RowSort): readonly RowSeat[] {
  switch (sort) {
    case "sources":
      return plan.sources.map((_, source) => ({ part: { kind: "source", source } }));
    case "points":
      return jointNames(plan).map((joint) => ({ part: { kind: "joint", joint } }));
    case "runs":
      return plan.runs.map((_, run) => ({ part: { kind: "run", run } }));
    case "drinkers":
      return plan.runs.flatMap((run, index) =>
        drinkerGroupsOf(run).map((_, group): RowSeat => ({ part: { kind: "drinkers", run: index, group } })),
      );
    case "surveys":
      return plan.runs.flatMap((run, index) =>
        (run.survey ?? []).map((_, reading): RowSeat => ({ part: { kind: "run", run: index }, reading })),
      );
    case "fittings":
      return plan.runs.map((_, run) => ({ part: { kind: "run", run }, tellsMore: true }));
  }
}

/** The row of a seat. */
export function rowOf(context: PlanContext, { part, reading, tellsMore }: RowSeat): PlanRow {
  if (tellsMore && part.kind === "run") return fittingsRow(context, part.run);
  if (reading !== undefined && part.kind === "run") return surveyRow(context, part.run, reading);
  switch (part.kind) {
    case "source":
      return sourceRow(context, part.source);
    case "joint":
      return pointRow(context, part.joint);
    case "run":
      return runRow(context, part.run);
    case "drinkers":
      return drinkersRow(context, part.run, part.group);
  }
}

const typed = (entry: TypedEntry): [Entry] => [{ form: "typed", ...entry }];
const choice = (entry: ChoiceEntry): [Entry] => [{ form: "choice", ...entry }];
const alone = (entry: Entry): [Entry] => [entry];

function sourceRow(context: PlanContext, source: number): PlanRow {
  const name = sourceNames(context.plan)[source]!;
  const part = { kind: "source", source } as const;
  const { stand, full, lowest, ordinary, outlet, ground } = sourceLengths(context, source);
  const cells = [
    typed(nameEntry(part, name, "the source")),
    [...choice(vesselChoice(context, source, name)), ...dimensionEntries(context, source, name)],
    ...[stand, full, lowest, ordinary, outlet, ground].map(typed),
    [...ventEntries(context, source), ...feedEntries(context, source), outletBoreEntry(context, source)],
  ] as const;
  return { key: keyOfPart(part), part, name: `source ${name}`, cells };
}

function pointRow(context: PlanContext, joint: string): PlanRow {
  const part = { kind: "joint", joint } as const;
  const { ground, above, bleed } = jointEntries(context, joint);
  const cells = [typed(nameEntry(part, joint, "the point")), alone(ground), alone(above), alone(bleed)];
  return { key: keyOfPart(part), part, name: `point ${joint}`, cells };
}

function runRow(context: PlanContext, run: number): PlanRow {
  const name = runNames(context.plan)[run]!;
  const part = { kind: "run", run } as const;
  const cells: PlanRow["cells"] = [
    typed(nameEntry(part, name, "the run")),
    choice(endEntry(context, run, "from")),
    choice(endEntry(context, run, "to")),
    typed(lengthEntry(context, run)),
    typed(fallEntry(context, run)),
    [...choice(pipeEntry(context, run)), ...ownPipeEntries(context, run)],
    choice(tapEntry(context, run)),
  ];
  return { key: keyOfPart(part), part, name: `run ${name}`, cells };
}

function drinkersRow(context: PlanContext, run: number, group: number): PlanRow {
  const name = nameOfGroup(context.plan, run, group);
  const part = { kind: "drinkers", run, group } as const;
  const { count, every, first, drop, busiest, ordinary, need } = groupEntries(context, run, group);
  const cells = [
    typed(nameEntry(part, name, "the drinkers")),
    choice(kindEntry(context, run, group)),
    ...[count, every, first, drop, busiest, ordinary, need].map(alone),
  ];
  return { key: keyOfPart(part), part, name: `drinkers ${name}`, cells };
}

function surveyRow(context: PlanContext, run: number, reading: number): PlanRow {
  const part = { kind: "run", run } as const;
  const { along, fall, bleed } = readingEntries(context, run, reading);
  const name = `reading ${reading + 1} of ${runNames(context.plan)[run]}`;
  return {
    key: `${keyOfPart(part)} ${reading}`,
    part,
    reading,
    name,
    cells: [alone(along), alone(fall), alone(bleed)],
  };
}

function fittingsRow(context: PlanContext, run: number): PlanRow {
  const part = { kind: "run", run } as const;
  const name = runNames(context.plan)[run]!;
  const cells = [
    typed(fittingsEntry(context, run)),
    oneWayEntries(context, run),
    regulatorEntries(context, run),
  ];
  return { key: `more of ${keyOfPart(part)}`, part, tellsMore: true, name, cells };
}
