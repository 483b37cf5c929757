import type { Plan } from "@headfall/hydraulics";
import { applyChange, type PlanChange } from "./change.js";

/** Told after the plan has become another one; `change` is undefined when the whole plan was replaced. */
export type PlanListener = (plan: Plan, before: Plan, change: PlanChange | undefined) => void;

/**
 * Holds the plan that is being worked on. The plan itself never changes: an edit puts a new one in its place, so
 * that whoever kept the old one (a list of what can be undone, another view) still has it whole.
 */
export class PlanStore {
  #plan: Plan;
  readonly #listeners = new Set<PlanListener>();

  constructor(plan: Plan) {
    this.#plan = plan;
  }

  get plan(): Plan {
    return this.#plan;
  }

  /** Makes one named edit. */
  apply(change: PlanChange): void {
    this.#become(applyChange(this.#plan, change), change);
  }

  /** Puts a plan in place: a whole other one, as when a file is opened, or one an element made by a named edit. */
  replace(plan: Plan, change?: PlanChange): void {
    this.#become(plan, change);
  }

  /** Asks to be told of every new plan; the function returned ends that. */
  listen(listener: PlanListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #become(plan: Plan, change: PlanChange | undefined): void {
    const before = this.#plan;
    if (plan === before) return;
    this.#plan = plan;
    for (const listener of [...this.#listeners]) listener(plan, before, change);
  }
}
