import type { PlanChange } from "./plan-change.js";

/**
 * Fired by a view when its user wants the plan changed. All edits of one drag carry the same `gesture`, so that they
 * are one step to undo.
 */
export class EditWantedEvent extends Event {
  static readonly eventName = "edit-wanted";

  constructor(
    readonly change: PlanChange,
    readonly gesture?: string,
  ) {
    super(EditWantedEvent.eventName, { bubbles: true, composed: true });
  }
}

/** Fired when a drag was given up (Escape): what it has changed so far is to be taken back. */
export class GestureGivenUpEvent extends Event {
  static readonly eventName = "gesture-given-up";

  constructor(readonly gesture: string) {
    super(GestureGivenUpEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "edit-wanted": EditWantedEvent;
    "gesture-given-up": GestureGivenUpEvent;
  }
}
