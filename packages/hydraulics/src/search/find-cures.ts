import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { judgeLine } from "../judge/judge-line.js";
import { buildLine } from "../model/build-line.js";
import { type CompareCosts, type Cost, compareBy, NO_COST } from "./cost.js";
import type { Change, Cure, CureAnswer, CureKind, SearchReport } from "./cure-answer.js";
import { changesOf } from "./cure-changes.js";
import { buildCureLines } from "./cure-lines.js";
import { type CureOptions, MOST_JUDGED, STAND_MOST } from "./cure-options.js";
import { closestOf, outcomeOf } from "./cure-outcome.js";
import { buildCureSpace, hasPrices, planOf } from "./cure-space.js";
import { type Relaxing, relaxationsOf } from "./relax.js";
import { remediesFor } from "./remedies/all-remedies.js";
import { buildRequirement, lineInScene, type Requirement, requirementFor } from "./requirement.js";
import type { Searched } from "./searching.js";
import { type Effort, solveSpace } from "./solve-space.js";

export type FindingCures =
  | { readonly ok: true; readonly answer: CureAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Finds the smallest change that makes a plan work: the cheapest of each kind of remedy, and what was searched.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  what counts, how far to look, what must hold
 * @returns the cures, or what in the plan contradicts itself; the same plan and options give the same answer
 */
export function findCures(plan: Plan, options: CureOptions = {}): FindingCures {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const building = buildRequirement(plan, built.line, options);
  if (!building.ok) return building;
  const { requirement } = building;
  const by = options.by ?? (hasPrices(plan) ? "money" : "parts");
  const before = outcomeOf(requirement, built.line);
  const search = beginSearch(requirement, options, compareBy(by));
  if (!before.meets) {
    const { never = [] } = options;
    const isOut = (kind: CureKind) =>
      never.includes(kind) || PARTS_OF[kind]?.some((part) => never.includes(part));
    for (const task of BASE) {
      if (!isOut(task.kind)) search.run({ ...task, plan, changes: [], spent: NO_COST });
    }
    // What ails is looked for in the first state of affairs in which anything does.
    const scene = requirement.scenes[before.scenes.findIndex(({ meets }) => !meets)];
    const judged = judgeLine(lineInScene(requirement, built.line, scene));
    const { system = "metric" } = options;
    const ailing = {
      plan,
      line: judged.line,
      judged,
      system,
      margin: requirement.margin,
      requirement,
      scene,
    };
    for (const remedy of remediesFor(ailing)) {
      if (isOut(remedy.kind)) continue;
      search.run({ ...remedy, pipes: false, stands: false });
      search.run({ ...remedy, pipes: remedy.fresh === undefined ? true : [remedy.fresh], stands: true });
    }
  }
  return {
    ok: true,
    answer: {
      by,
      money: plan.money,
      margin: requirement.margin,
      standMost: options.standMost ?? STAND_MOST,
      before,
      ...search.answer(),
      relaxations: before.meets || search.hasCure() ? [] : relaxationsOf(search.relaxing(plan)),
    },
  };
}

/** A space to search: a plan, maybe changed by a remedy already, and what else may change. */
interface Task {
  readonly kind: CureKind;
  readonly pipes: boolean | readonly number[];
  readonly stands: boolean;
  readonly fresh?: number;
  readonly plan: Plan;
  readonly changes: readonly Change[];
  readonly spent: Cost;
}

const BASE: readonly Pick<Task, "kind" | "pipes" | "stands">[] = [
  { kind: "stand", pipes: false, stands: true },
  { kind: "pipe", pipes: true, stands: false },
  { kind: "standAndPipe", pipes: true, stands: true },
];

/** Kinds that are others together: out of the question with either. */
const PARTS_OF: Partial<Record<CureKind, readonly CureKind[]>> = { standAndPipe: ["stand", "pipe"] };

/** A remedy is searched with this part of what sizes and stands alone are. */
const REMEDY_SHARE = 8;

/** Runs searches one after another and keeps the best of each kind. */
function beginSearch(requirement: Requirement, options: CureOptions, compare: CompareCosts) {
  const cures = new Map<CureKind, Cure>();
  const reports = new Map<CureKind, SearchReport>();
  const most = options.mostJudged ?? MOST_JUDGED;
  let trying: CureKind = "stand";
  const effort: Effort = {
    judged: 0,
    most,
    isStopped: options.isStopped ?? (() => false),
    progress: (judged) => options.progress?.(judged, trying),
  };
  const run = (task: Task) => {
    trying = task.kind;
    const space = buildCureSpace(task.plan, options, task, task.spent);
    const building = buildCureLines(space);
    if (!building.ok) return;
    const { lines } = building;
    const own = requirementFor(requirement, task.plan, lines.present);
    effort.most = effort.judged + (task.changes.length === 0 ? most : most / REMEDY_SHARE);
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
      proven: searched.proven,
    });
  };
  const answer = () => {
    const searches = [...reports.values()];
    const told = shortList([...cures.values()], compare);
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
  return { run, answer, relaxing, hasCure: () => cures.size > 0 };
}

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
