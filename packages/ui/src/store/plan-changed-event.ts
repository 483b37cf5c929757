import type { Plan } from "@headfall/hydraulics";
import type { PlanCause } from "./plan-store.js";

/** Fired after the plan has become another one; `plan` is the new one, `before` the one it came from. */
export class PlanChangedEvent extends Event {
  static readonly eventName = "plan-changed";

  constructor(
    readonly plan: Plan,
    readonly before: Plan,
    /** an edit, undo or redo, another plan opened, or an edit made elsewhere */
    readonly cause: PlanCause,
  ) {
    super(PlanChangedEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "plan-changed": PlanChangedEvent;
  }
}
