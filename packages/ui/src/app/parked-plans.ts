import type { Plan } from "@headfall/hydraulics";
import type { Draft } from "../storage/autosave.js";
import type { PlanLibrary } from "../storage/plan-library.js";

/** A plan that is no longer in hand and could not be saved. */
export interface ParkedPlan {
  readonly draft: Draft;
  readonly plan: Plan;
}

/** Plans that the browser would not keep, held in memory until it does, or until they are saved as files. */
export class ParkedPlans {
  readonly #library: PlanLibrary;
  #plans: readonly ParkedPlan[] = [];

  constructor(library: PlanLibrary) {
    this.#library = library;
  }

  get all(): readonly ParkedPlan[] {
    return this.#plans;
  }

  park(draft: Draft, plan: Plan): void {
    this.#plans = [...this.#plans, { draft, plan }];
  }

  /** Takes one out, to be worked on. */
  take(id: string): ParkedPlan | undefined {
    const found = this.#plans.find(({ draft }) => draft.id === id);
    this.#plans = this.#plans.filter((parked) => parked !== found);
    return found;
  }

  /** Tries again to save them; what still cannot be stays. One that was changed elsewhere becomes one of its own. */
  async save(): Promise<void> {
    for (const parked of this.#plans) {
      const { draft, plan } = parked;
      try {
        const saving = await this.#library.save(draft.id, plan, draft.revision);
        if (!saving.ok) await this.#library.add(plan);
        this.#plans = this.#plans.filter((each) => each !== parked);
      } catch {
        return; // told by the state of the plan in hand, or by the list
      }
    }
  }
}
