import { findPipeByName } from "../document/find-names.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { checkPlan } from "../judge/check-plan.js";
import type { Checked, DrinkerVerdict, RunReading, VerdictName } from "../judge/check-result.js";
import type { Run } from "../model/line.js";
import { allPipes, type PipeSize, pipesOfFamily } from "../tables/pipes.js";
import { readQuantity } from "../units/quantity.js";

/** One size of the shelf in place of the pipe of the runs compared. */
export interface SizeRow {
  readonly pipe: string;
  readonly name: string;
  readonly bore: number;
  readonly verdict: VerdictName;
  readonly counts: Readonly<Record<VerdictName, number>>;
  /** The drinker with the least margin, at the lowest usable level and busiest. */
  readonly worst: DrinkerVerdict | undefined;
  /** The busiest of the runs compared, full and busiest. */
  readonly busiest: RunReading;
  /** Water standing in the runs compared [m3]. */
  readonly volume: number;
  /** Price of the pipe of the runs compared; undefined where the shelf gives none. */
  readonly cost: number | undefined;
  readonly isPresent: boolean;
}

/** Each size on the shelf in place of the pipe of these runs. */
export interface SizeComparison {
  /** Runs whose pipe is exchanged. */
  readonly runs: readonly string[];
  readonly rows: readonly SizeRow[];
  /** Id of the smallest bore with which every drinker is good; undefined when no size does it. */
  readonly smallestThatWorks: string | undefined;
  /** Id of the smallest bore with which no drinker starves or is dry, though some may drip (which no pipe cures). */
  readonly smallestThatFeeds: string | undefined;
  readonly money: string | undefined;
}

/** Pipe sizes compared, or what in the plan contradicts itself. */
export type Comparing =
  | { readonly ok: true; readonly comparison: SizeComparison }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Compares the sizes on the shelf for one run or for all: the whole line is solved and judged again with each.
 *
 * @param plan         from `readPlan` or `checkDocument`
 * @param options.run  id of the run; all runs when left out
 * @param options.day  the day asked about, for the birds' ages, where the plan names none
 * @example compareSizes(small).comparison.rows.length   // 6
 */
export function compareSizes(
  plan: Plan,
  options: { readonly run?: string; readonly day?: string } = {},
): Comparing {
  const asked = { samples: 0, ...(options.day === undefined ? {} : { day: options.day }) };
  const base = checkPlan(plan, asked);
  if (!base.ok) return base;
  const { runs } = base.checked.line;
  const chosen = runs.filter((run) => options.run === undefined || run.id === options.run);
  if (chosen.length === 0) return { ok: false, problems: [unknownRun(options.run ?? "", namesOf(runs))] };
  const places = chosen.map(({ index }) => index);
  const present = chosen.map(({ pipeId }) => pipeId);
  const rows: SizeRow[] = [];
  for (const size of shelfOf(plan, present)) {
    const changed = checkPlan(withPipe(plan, places, size.id), asked);
    if (!changed.ok) return changed;
    const isPresent = present.every((pipe) => pipe === size.id);
    rows.push(rowOf(plan, changed.checked, places, size, isPresent));
  }
  rows.sort((a, b) => a.bore - b.bore);
  return {
    ok: true,
    comparison: {
      runs: namesOf(chosen),
      rows,
      smallestThatWorks: rows.find((row) => row.verdict === "good")?.pipe,
      smallestThatFeeds: rows.find((row) => row.counts.starves + row.counts.dry === 0)?.pipe,
      money: plan.money,
    },
  };
}

const namesOf = (runs: readonly Run[]) => runs.map(({ id }) => id);

/** The plan's own shelf, else every size of the families its runs are of. */
function shelfOf(plan: Plan, present: readonly string[]): PipeSize[] {
  if (plan.shelf !== undefined && plan.shelf.length > 0) {
    const sizes = plan.shelf.flatMap((entry) => findPipeByName(entry.pipe) ?? []);
    return [...new Map(sizes.map((size) => [size.id, size])).values()];
  }
  const families = new Set(allPipes.filter((size) => present.includes(size.id)).map((size) => size.family));
  if (families.size === 0) families.add("pvc-sch40");
  return [...families].flatMap((family) => [...pipesOfFamily(family)]);
}

/** The plan with other pipe in some of its runs; everything else as it was. */
export function withPipe(plan: Plan, runs: readonly number[], pipe: string): Plan {
  return { ...plan, runs: plan.runs.map((run, i) => (runs.includes(i) ? { ...run, pipe } : run)) };
}

function rowOf(
  plan: Plan,
  checked: Checked,
  runs: readonly number[],
  size: PipeSize,
  isPresent: boolean,
): SizeRow {
  const reports = checked.runs.filter((report) => runs.includes(report.index));
  const busiest = reports.reduce((a, b) =>
    Math.abs(b.busiest.flow) > Math.abs(a.busiest.flow) ? b : a,
  ).busiest;
  return {
    pipe: size.id,
    name: size.name,
    bore: size.bore,
    verdict: checked.verdict,
    counts: checked.counts,
    worst: worstDrinker(checked.drinkers),
    busiest,
    volume: reports.reduce((sum, report) => sum + report.volume, 0),
    cost: costOf(
      plan,
      size,
      reports.reduce((sum, report) => sum + report.length, 0),
    ),
    isPresent,
  };
}

/** The drinker that is served worst: by what reaches it, not by how it drips. */
export function worstDrinker(drinkers: readonly DrinkerVerdict[]): DrinkerVerdict | undefined {
  const flowAt = (verdict: DrinkerVerdict) => {
    const { hazenWilliams, darcyWeisbach } = verdict.moments.lowestBusiest;
    return Math.min(hazenWilliams.flow, darcyWeisbach.flow);
  };
  return drinkers.reduce<DrinkerVerdict | undefined>(
    (worst, one) => (worst === undefined || flowAt(one) < flowAt(worst) ? one : worst),
    undefined,
  );
}

function costOf(plan: Plan, size: PipeSize, length: number): number | undefined {
  const entry = plan.shelf?.find((candidate) => findPipeByName(candidate.pipe)?.id === size.id);
  if (entry?.price === undefined) return undefined;
  const per = entry.per === undefined ? undefined : readQuantity(entry.per, "length");
  return (entry.price * length) / (per?.ok ? per.quantity.si : 1);
}

function unknownRun(run: string, known: readonly string[]): Problem {
  return {
    code: "unknownName",
    path: "runs",
    found: JSON.stringify(run),
    allowed: "A run of the plan.",
    mend: `Known here: ${known
      .slice(0, 8)
      .map((id) => JSON.stringify(id))
      .join(", ")}.`,
  };
}
