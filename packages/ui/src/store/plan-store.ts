import type { Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { editPlan } from "./edit-plan.js";
import { type Edited, type PlanChange, subjectOf } from "./plan-change.js";
import { NO_HISTORY, type PlanHistory, type PlanStep, withStep } from "./plan-history.js";

/** Why the plan became another one; "elsewhere" is an edit made in another tab. */
export type PlanCause = "edit" | "undo" | "redo" | "open" | "elsewhere";

/** Told after the plan has become another one. */
export type PlanListener = (plan: Plan, before: Plan, cause: PlanCause) => void;

/**
 * Holds the plan that is being worked on, and what was done to it. The plan itself never changes: an edit puts a new
 * one in its place, so that whoever kept the old one (the history, another view, a save under way) still has it whole.
 */
export class PlanStore {
  #plan: Plan;
  /** The drag under way: what its edits are about, and the plan before the first of them. */
  #drag: { readonly gesture: string; readonly subject: string; readonly before: Plan } | undefined;
  #history: PlanHistory = NO_HISTORY;
  readonly #listeners = new Set<PlanListener>();

  constructor(plan: Plan) {
    this.#plan = plan;
  }

  /** The plan as it is now. */
  get plan(): Plan {
    return this.#plan;
  }

  /** The step that `undo` would take back. */
  get canUndo(): PlanStep | undefined {
    return this.#history.done.at(-1);
  }
  /** The step that `redo` would bring again. */
  get canRedo(): PlanStep | undefined {
    return this.#history.undone.at(-1);
  }

  /**
   * Makes an edit. All edits with the same `gesture` in a row are one step; those of them that put the same thing
   * somewhere else are each made on the plan before the drag, so that what gave way on the way there (drinkers pushed
   * together, readings dropped) comes back when the hand does.
   */
  edit(change: PlanChange, system: UnitSystem, gesture?: string): Edited {
    const edited = editPlan(this.#beforeDrag(change, gesture), change, system);
    if (edited.ok && edited.plan !== this.#plan) {
      const step = { before: this.#plan, after: edited.plan, words: edited.words, gesture };
      this.#history = withStep(this.#history, step);
      this.#become(edited.plan, "edit");
    }
    return edited;
  }

  #beforeDrag(change: PlanChange, gesture: string | undefined): Plan {
    const subject = subjectOf(change);
    if (gesture === undefined || subject === undefined) this.#drag = undefined;
    else if (this.#drag?.gesture !== gesture || this.#drag.subject !== subject)
      this.#drag = { gesture, subject, before: this.#plan };
    return this.#drag?.before ?? this.#plan;
  }

  /** Takes the last step back; tells which, or undefined when there is none. */
  undo(): PlanStep | undefined {
    const step = this.canUndo;
    if (step === undefined) return undefined;
    const { done, undone } = this.#history;
    this.#history = { done: done.slice(0, -1), undone: [...undone, step] };
    this.#become(step.before, "undo");
    return step;
  }

  /** Brings the last step taken back again; tells which, or undefined when there is none. */
  redo(): PlanStep | undefined {
    const step = this.canRedo;
    if (step === undefined) return undefined;
    const { done, undone } = this.#history;
    this.#history = { done: [...done, step], undone: undone.slice(0, -1) };
    this.#become(step.after, "redo");
    return step;
  }

  /** Takes back what a drag has done so far, as if it had never begun. */
  giveUp(gesture: string): void {
    const step = this.canUndo;
    if (step?.gesture !== gesture) return;
    this.#history = { ...this.#history, done: this.#history.done.slice(0, -1) };
    this.#become(step.before, "undo");
  }

  /** Puts a whole other plan in place, as when a file is opened. The history begins anew. */
  open(plan: Plan): void {
    this.#history = NO_HISTORY;
    this.#become(plan, "open");
  }

  /** Puts a changed plan in place as one step: a cure taken, an edit made by a program or in another tab. */
  replace(plan: Plan, words: string, cause: "edit" | "elsewhere" = "edit"): void {
    if (plan === this.#plan) return;
    this.#history = withStep(this.#history, { before: this.#plan, after: plan, words, gesture: undefined });
    this.#drag = undefined;
    this.#become(plan, cause);
  }

  /** Asks to be told of every new plan; the function returned ends that. */
  listen(listener: PlanListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #become(plan: Plan, cause: PlanCause): void {
    const before = this.#plan;
    this.#plan = plan;
    // A plan that came by other ways than the drag's own edits is what the next of them starts from.
    if (cause !== "edit") this.#drag = undefined;
    if (plan === before) return;
    for (const listener of [...this.#listeners]) listener(plan, before, cause);
  }
}
