import type { Plan } from "../document/plan-schema.js";
import type { Flock, Pen } from "./flock.js";

/**
 * The birds that drink from the line: those of pens with loose waterers and no drinkers drink elsewhere, and count for
 * nothing at it. Those of pens that have both are taken to drink from the line alone, which is the cautious side.
 *
 * @param plan   the plan the flock was made from
 * @param flock  every bird of it
 * @returns the same flock where every pen drinks from the line
 * @example flockAtLine(plan, flock).pens.length   // 1
 */
export function flockAtLine(plan: Plan, flock: Flock): Flock {
  const isElsewhere = ({ drinkers, index }: Pen): boolean =>
    drinkers.length === 0 && (plan.pens?.[index]?.waterers ?? []).length > 0;
  if (!flock.pens.some(isElsewhere)) return flock;
  return {
    ...flock,
    pens: flock.pens.map((pen) => (isElsewhere(pen) ? emptied({ ...pen, isElsewhere: true }) : pen)),
  };
}

/** A pen whose birds drink elsewhere, without them. */
export function emptied(pen: Pen): Pen {
  return { ...pen, batches: pen.batches.map((batch) => ({ ...batch, count: 0 })) };
}
