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
  const most = options.mostJudged ?? MOST_JUDGED;
  const running: Running = {
    requirement,
    options,
    compare,
    most,
    effort: {
      judged: 0,
      most,
      isStopped: options.isStopped ?? (() => false),
      progress: (judged) => options.progress?.(judged, running.trying),
    },
    trying: "stand",
    cures: new Map(),
    reports: new Map(),
  };
  return {
    run: (task: Task) => runTask(running, task, task.changes.length === 0 ? 1 : REMEDY_SHARE),
    runPairs: (tasks: readonly Task[]) => runPairs(running, tasks),
    answer: () => answerOf(running),
    relaxing: (plan: Plan): Relaxing => {
      running.effort.most = running.effort.judged + most;
      return { plan, requirement, options, compare, effort: running.effort };
    },
    hasCure: () => running.cures.size > 0,
  };
}

type FoundCure = Omit<Cure, "proven">;

/** The searches so far. */
interface Running {
  readonly requirement: Requirement;
  readonly options: CureOptions;
  readonly compare: CompareCosts;
  /** Plans that may be judged for sizes and stands alone. */
  readonly most: number;
  readonly effort: Effort;
  trying: CureKind;
  readonly cures: Map<CureKind, FoundCure>;
  readonly reports: Map<CureKind, SearchReport>;
}

/** Searches the space of one task with this part of what may be judged. */
function runTask(running: Running, task: Task, share: number): void {
  const { options, compare, effort, cures } = running;
  running.trying = task.kind;
  const space = buildCureSpace(task.plan, options, task, task.spent);
  const building = buildCureLines(space);
  if (!building.ok) return;
  const { lines } = building;
  const own = requirementFor(running.requirement, task.plan, lines.present);
  effort.most = effort.judged + running.most / share;
  const searched = solveSpace(lines, own, { compare, effort, below: cures.get(task.kind)?.cost });
  report(running, task.kind, searched);
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
}

function report({ reports, compare }: Running, kind: CureKind, searched: Searched): void {
  reports.set(kind, joinReports(reports.get(kind), kind, searched, compare));
}

/** Pairs of remedies, from the cheapest on, until what may be judged of them is used up. */
function runPairs(running: Running, tasks: readonly Task[]): void {
  const { compare, effort, cures } = running;
  const last = effort.judged + running.most / ALL_PAIRS_SHARE;
  for (const task of [...tasks].sort((a, b) => compare(a.spent, b.spent))) {
    const known = cures.get(task.kind);
    if (known !== undefined && compare(task.spent, known.cost) >= 0) break;
    if (effort.judged < last && !effort.isStopped()) runTask(running, task, PAIR_SHARE);
    else report(running, task.kind, unsearched(task));
  }
}

function answerOf(running: Running) {
  const { compare, effort, cures, reports } = running;
  const searches = [...reports.values()];
  const told = shortList(
    [...cures.values()].map((cure) => ({ ...cure, proven: isProven(running, cure) })),
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
}

/** Whether no cure of its kind is cheaper. */
function isProven({ reports, compare }: Running, { kind, cost }: FoundCure): boolean {
  const known = reports.get(kind);
  if (known === undefined || known.proven) return true;
  return known.bound !== undefined && compare(known.bound, cost) >= 0;
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
