import type { Plan } from "@headfall/hydraulics";

/** One step that can be undone: the plans before and after it, and its name in a few words. */
export interface PlanStep {
  readonly before: Plan;
  readonly after: Plan;
  readonly words: string;
  /** The drag it belongs to; further edits of the same drag become part of it. */
  readonly gesture: string | undefined;
}

/** What was done and what was undone, newest last. Plans share all that a step left alone, so a step costs little. */
export interface PlanHistory {
  readonly done: readonly PlanStep[];
  readonly undone: readonly PlanStep[];
}

export const NO_HISTORY: PlanHistory = { done: [], undone: [] };

/** Steps kept; the oldest are forgotten first. */
const MOST_STEPS = 1000;

/** The history with one more step; edits of one drag are gathered into a single one. */
export function withStep({ done }: PlanHistory, step: PlanStep): PlanHistory {
  const last = done[done.length - 1];
  if (last !== undefined && step.gesture !== undefined && last.gesture === step.gesture) {
    // A drag that has come back to where it began has done nothing.
    if (step.after === last.before) return { done: done.slice(0, -1), undone: [] };
    return { done: [...done.slice(0, -1), { ...step, before: last.before }], undone: [] };
  }
  return { done: [...done.slice(-(MOST_STEPS - 1)), step], undone: [] };
}
