import { batchesOf } from "../document/plan-lists.js";
import type { Plan, PlanBirds } from "../document/plan-schema.js";
import { readDay } from "../units/day.js";
import type { Pen, RosterEntry, Stay } from "./flock.js";

/**
 * Every batch of a plan with the pens it stays in, and when.
 *
 * @param pens  the plan's pens with their own batches, as old as they are on the flock's day
 * @returns undefined where no bird comes, moves or leaves on a date
 */
export function buildRoster(plan: Plan, pens: readonly Pen[]): readonly RosterEntry[] | undefined {
  const birds = (plan.pens ?? []).map(batchesOf);
  const isDated = ({ arrives, leaves, moves }: PlanBirds) => (arrives ?? leaves ?? moves) !== undefined;
  if (!birds.flat().some(isDated)) return undefined;
  const next = pens.map(({ batches }) => batches.length);
  return pens.flatMap((pen) =>
    pen.batches.map((batch, k) => ({ batch, stays: staysOf(birds[pen.index][k], { pen, place: k }) })),
  );

  function staysOf(typed: PlanBirds, home: { readonly pen: Pen; readonly place: number }): Stay[] {
    const moves = typed.moves ?? [];
    const from = [typed.arrives, ...moves.map(({ on }) => on)].map(dayOf);
    const to = [...moves.map(({ on }) => on), typed.leaves].map(dayOf);
    const into = moves.map((move) => pens.findIndex(({ id }) => id === move.to));
    return [home.pen.index, ...into].map((pen, k) => ({
      pen,
      place: k === 0 ? home.place : next[pen]++,
      from: from[k],
      to: to[k],
    }));
  }
}

const dayOf = (typed: string | undefined): number | undefined =>
  typed === undefined ? undefined : readDay(typed);
