import type { Plan } from "../document/plan-schema.js";
import type { CompareCosts, Cost } from "./cost.js";
import type { Change, Cure, CureKind, SearchReport } from "./cure-answer.js";
import { changesOf } from "./cure-changes.js";
import { buildCureLines } from "./cure-lines.js";
import { type CureOptions, MOST_JUDGED } from "./cure-options.js";
import { closestOf, outcomeOf } from "./cure-outcome.js";
import { buildCureSpace, planOf } from "./cure-space.js";
import type { Relaxing } from "./relax.js";
import { type Requirement, requirementFor } from "./requirement.js";
import type { Searched } from "./searching.js";
import { type Effort, solveSpace } from "./solve-space.js";

/** A space to search: a plan, maybe changed by a remedy already, and what else may change. */
export interface Task {
  readonly kind: CureKind;
  readonly pipes: boolean | readonly number[];
  readonly stands: boolean;
  readonly fresh?: number;
  readonly plan: Plan;
  readonly changes: readonly Change[];
  readonly spent: Cost;
}

/** A remedy is searched with this part of what sizes and stands alone are; all pairs together with another, each with a small one. */
const REMEDY_SHARE = 8;
const ALL_PAIRS_SHARE = 4;
const PAIR_SHARE = 32;

/** Runs searches one after another and keeps the best of each kind. */
export function beginSearch(requirement: Requirement, options: CureOptions, compare: CompareCosts) {
  const cures = new Map<CureKind, Omit<Cure, "proven">>();
  const reports = new Map<CureKind, SearchReport>();
  const most = options.mostJudged ?? MOST_JUDGED;
  let trying: CureKind = "stand";
  const effort: Effort = {
    judged: 0,
    most,
    isStopped: options.isStopped ?? (() => false),
    progress: (judged) => options.progress?.(judged, trying),
  };
  const run = (task: Task, share = task.changes.length === 0 ? 1 : REMEDY_SHARE) => {
    trying = task.kind;
    const space = buildCureSpace(task.plan, options, task, task.spent);
    const building = buildCureLines(space);
    if (!building.ok) return;
    const { lines } = building;
    const own = requirementFor(requirement, task.plan, lines.present);
    effort.most = effort.judged + most / share;
    const known = cures.get(task.kind);
    const searched = solveSpace(lines, own, { compare, effort, below: known?.cost });
    reports.set(task.kind, joinReports(reports.get(task.kind), task.kind, searched, compare));
    if (searched.found === undefined) return;
    const { picks, cost } = searched.found;
    const line = lines.lineOf(picks);
    if (line === undefined) return;
    const after = outcomeOf(own, line);
    cures.set(task.kind, {
      kind: task.kind,
      cost,
      changes: joinChanges(task.changes, changesOf(lines, picks)),
      plan: planOf(space, picks),
      after,
      close: closestOf(after, line),
    });
  };
  const answer = () => {
    const searches = [...reports.values()];
    const isProven = ({ kind, cost }: Omit<Cure, "proven">) => {
      const report = reports.get(kind);
      return (
        report === undefined ||
        report.proven ||
        (report.bound !== undefined && compare(report.bound, cost) >= 0)
      );
    };
    const told = shortList(
      [...cures.values()].map((cure) => ({ ...cure, proven: isProven(cure) })),
      compare,
    );
    // A search that came to no end leaves nothing open that is dearer than the best anyway.
    const isDearer = (bound: Cost | undefined) =>
      bound !== undefined && told.length > 0 && compare(bound, told[0].cost) >= 0;
    return {
      cures: told,
      searches,
      proven: searches.every(({ proven, bound }) => proven || isDearer(bound)),
      stopped: effort.isStopped(),
    };
  };
  const relaxing = (plan: Plan): Relaxing => {
    effort.most = effort.judged + most;
    return { plan, requirement, options, compare, effort };
  };
  /** Pairs of remedies, from the cheapest on, until what may be judged of them is used up. */
  const runPairs = (tasks: readonly Task[]) => {
    const last = effort.judged + most / ALL_PAIRS_SHARE;
    for (const task of [...tasks].sort((a, b) => compare(a.spent, b.spent))) {
      const known = cures.get(task.kind);
      if (known !== undefined && compare(task.spent, known.cost) >= 0) break;
      if (effort.judged < last && !effort.isStopped()) run(task, PAIR_SHARE);
      else reports.set(task.kind, joinReports(reports.get(task.kind), task.kind, unsearched(task), compare));
    }
  };
  return { run, runPairs, answer, relaxing, hasCure: () => cures.size > 0 };
}

/** Whatever such a task could find costs no less than what it has cost to come to it. */
const unsearched = ({ spent }: Task): Searched => ({
  found: undefined,
  proven: false,
  bound: spent,
  plans: 0,
  judged: 0,
  parts: 0,
});

/** The stand of a tank that comes new, and the pipe of a run that does, are part of its coming. */
function joinChanges(first: readonly Change[], then: readonly Change[]): Change[] {
  const isPart = (change: Change, of: Change) =>
    (of.code === "headerTank" && change.code === "stand" && change.source === of.tank) ||
    (of.code === "newRun" && change.code === "pipe" && change.run === of.run);
  const joined = first.map((change): Change => {
    const part = then.find((one) => isPart(one, change));
    if (change.code === "headerTank" && part?.code === "stand") return { ...change, stand: part.to };
    if (change.code === "newRun" && part?.code === "pipe") return { ...change, pipe: part.to };
    return change;
  });
  return [...joined, ...then.filter((one) => !first.some((change) => isPart(one, change)))];
}

function joinReports(
  before: SearchReport | undefined,
  kind: CureKind,
  searched: Searched,
  compare: CompareCosts,
): SearchReport {
  const { plans, judged, parts, proven, found } = searched;
  const open = [before?.bound, searched.bound].filter((bound) => bound !== undefined);
  return {
    kind,
    plans: plans + (before?.plans ?? 0),
    judged: judged + (before?.judged ?? 0),
    parts: parts + (before?.parts ?? 0),
    proven: proven && (before?.proven ?? true),
    bound: open.sort(compare)[0],
    found: found !== undefined || (before?.found ?? false),
  };
}

/** At most so many are told. */
const MOST_CURES = 6;

/** In order of cost; one that does all that a cheaper one does, and more, is not told. */
function shortList(cures: readonly Cure[], compare: CompareCosts): Cure[] {
  const sorted = [...cures].sort((a, b) => compare(a.cost, b.cost));
  const told: Cure[] = [];
  for (const cure of sorted) {
    const done = new Set(cure.changes.map((change) => JSON.stringify(change)));
    const isMore = told.some(({ changes }) => changes.every((change) => done.has(JSON.stringify(change))));
    if (!isMore && told.length < MOST_CURES) told.push(cure);
  }
  return told;
}
