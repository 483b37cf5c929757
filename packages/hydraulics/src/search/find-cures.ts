import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { buildLine } from "../model/build-line.js";
import { compareBy, NO_COST } from "./cost.js";
import type { CureAnswer, CureKind } from "./cure-answer.js";
import { type CureOptions, STAND_MOST } from "./cure-options.js";
import { outcomeOf } from "./cure-outcome.js";
import { hasPrices } from "./cure-space.js";
import { relaxationsOf } from "./relax.js";
import { remediesFor } from "./remedies/all-remedies.js";
import { ailingIn } from "./remedies/remedy.js";
import { pairsOf } from "./remedy-pairs.js";
import { buildRequirement } from "./requirement.js";
import { beginSearch, type Task } from "./run-searches.js";

/** Cures, or what in the plan contradicts itself. */
export type FindingCures =
  | { readonly ok: true; readonly answer: CureAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Finds the smallest change that makes a plan work: the cheapest of each kind of remedy, and what was searched.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  what counts, how far to look, what must hold
 * @returns the cures, or what in the plan contradicts itself; the same plan and options give the same answer
 * @example findCures(small, { weeks: 0 }).answer.cures[0].changes   // [{ code: "stand", source: "bucket", from: 0.05, to: 0.1 }]
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
    const ailing = ailingIn(requirement, built.line, options.system);
    const remedies = ailing === undefined ? [] : remediesFor(ailing, (kind) => !isOut(kind));
    for (const remedy of remedies) {
      search.run({ ...remedy, pipes: false, stands: false });
      search.run({ ...remedy, pipes: remedy.fresh === undefined ? true : [remedy.fresh], stands: true });
    }
    if (ailing !== undefined && !search.hasCure() && !isOut("two")) search.runPairs(pairsOf(ailing, isOut));
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

const BASE: readonly Pick<Task, "kind" | "pipes" | "stands">[] = [
  { kind: "stand", pipes: false, stands: true },
  { kind: "pipe", pipes: true, stands: false },
  { kind: "standAndPipe", pipes: true, stands: true },
];

/** Kinds that are others together: out of the question with either. */
const PARTS_OF: Partial<Record<CureKind, readonly CureKind[]>> = { standAndPipe: ["stand", "pipe"] };
