import { runNames } from "../document/run-ends.js";
import { buildLine } from "../model/build-line.js";
import { addCosts } from "./cost.js";
import { CURE_KINDS, type CureKind } from "./cure-kinds.js";
import { remediesFor } from "./remedies/all-remedies.js";
import { type Ailing, ailingIn, type Remedy } from "./remedies/remedy.js";
import { requirementFor } from "./requirement.js";
import type { Task } from "./run-searches.js";

/** Of each kind, so many ways are put together with others. */
const MOST_OF_KIND = 4;

/**
 * Two remedies of different kinds together, the second made for the plan that the first leaves, each pair once; with
 * sizes and stands to be searched as for one.
 */
export function pairsOf(ailing: Ailing, isOut: (kind: CureKind) => boolean | undefined): Task[] {
  const firsts = remediesFor(ailing, (kind) => !isOut(kind));
  return fewOfKind(firsts).flatMap((first): Task[] => {
    const built = buildLine(first.plan);
    const own = built.ok ? requirementFor(ailing.requirement, first.plan, built.line) : undefined;
    const left = built.ok && own ? ailingIn(own, built.line, ailing.system) : undefined;
    if (left === undefined) return [];
    const isLater = (kind: CureKind) => CURE_KINDS.indexOf(kind) > CURE_KINDS.indexOf(first.kind);
    const seconds = remediesFor(left, (kind) => !isOut(kind) && isLater(kind));
    return fewOfKind(seconds).flatMap((second) => together(first, second) ?? []);
  });
}

function fewOfKind(remedies: readonly Remedy[]): Remedy[] {
  const counts = new Map<CureKind, number>();
  return remedies.filter(({ kind }) => {
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    return count <= MOST_OF_KIND;
  });
}

/** Undefined where both lay a run: of those only one is searched in every size. */
function together(first: Remedy, second: Remedy): Task | undefined {
  if (first.fresh !== undefined && second.fresh !== undefined) return undefined;
  const laid = first.changes.find((change) => change.code === "newRun");
  const fresh = laid === undefined ? second.fresh : runNames(second.plan).indexOf(laid.run);
  return {
    kind: "two",
    plan: second.plan,
    changes: [...first.changes, ...second.changes],
    spent: addCosts(first.spent, second.spent),
    pipes: fresh === undefined ? true : [fresh],
    stands: true,
    ...(fresh === undefined ? {} : { fresh }),
  };
}
