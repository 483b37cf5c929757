import type { Plan } from "@headfall/hydraulics";
import type { LineChange } from "./change.js";

/** Fired by an element after its user has edited the plan; `plan` is the new one, `before` the one it came from. */
export class PlanChangedEvent extends Event {
  static readonly eventName = "plan-changed";

  constructor(
    readonly plan: Plan,
    readonly before: Plan,
    readonly change: LineChange,
  ) {
    super(PlanChangedEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "plan-changed": PlanChangedEvent;
  }
}
