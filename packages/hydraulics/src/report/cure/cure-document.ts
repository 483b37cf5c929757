import type { Cure, CureAnswer } from "../../search/cure-answer.js";
import type { FrontAnswer, FrontPoint } from "../../search/find-front.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeChange, writeCureHeadline } from "./cure-sentences.js";

const CURE_FORMAT = { format: "headfall cure", version: 1 } as const;

/**
 * The cures of a plan as a plain document, SI throughout; described in docs/reference/cure-result.md.
 *
 * @example writeCureDocument("a bucket", cures, "metric").answer   // "The smallest change that makes it work, and others; nothing ..."
 */
export function writeCureDocument(name: string, answer: CureAnswer, system: UnitSystem) {
  const { cures, money, searches, ...rest } = answer;
  return {
    ...CURE_FORMAT,
    plan: { name },
    answer: writeCureHeadline(answer),
    money: money ?? null,
    ...rest,
    cures: cures.map((cure) => documentOf(cure, system)),
    searches: searches.map(({ bound, ...search }) => ({ ...search, bound: bound ?? null })),
  };
}

function documentOf({ changes, close, ...cure }: Cure, system: UnitSystem) {
  return {
    ...cure,
    changes: changes.map((change) => ({ ...change, words: writeChange(change, system) })),
    close: close ?? null,
  };
}

/**
 * A trade-off as a plain document, SI throughout.
 *
 * @example writeFrontDocument("a bucket", front, "metric").format   // "headfall front"
 */
export function writeFrontDocument(name: string, front: FrontAnswer, system: UnitSystem) {
  const pointsOf = (points: readonly FrontPoint[]) =>
    points.map(({ changes, ...point }) => ({
      ...point,
      changes: changes.map((change) => ({ ...change, words: writeChange(change, system) })),
    }));
  return {
    format: "headfall front",
    version: 1,
    plan: { name },
    by: front.by,
    money: front.money ?? null,
    proven: front.proven,
    costAgainstMargin: pointsOf(front.costAgainstMargin),
    heightAgainstSize: pointsOf(front.heightAgainstSize),
  };
}
