import type { Selected } from "../kernels/selected.js";

/** Fired by a view when its user has chosen a part of the plan, or none. */
export class PartChosenEvent extends Event {
  static readonly eventName = "part-chosen";

  constructor(readonly part: Selected | undefined) {
    super(PartChosenEvent.eventName, { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    "part-chosen": PartChosenEvent;
  }
}
